import { describe, expect, it } from 'vitest';
import { build } from '../../src/joint/index.ts';
import { measure } from '../../src/measure/index.ts';
import { fillet } from '../joint/joints.ts';
import { at, handFillet, pathOf } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

describe('the edge remaining above a lap fillet', () => {
  it('is what is left of the end face above the toe', () => {
    const lap = handFillet({ leg1: 6, leg2: 6, edge: pathOf([at(0, 6), at(0, 8), at(0, 9.5)]) });
    expect(valueOf(lap, 'edgeRemaining')).toBeCloseTo(3.5, 12);
    expect(endsOf(lap, 'edgeRemaining')).toEqual([0, 6, 0, 9.5]);
  });

  it('doesn’t count an undercut as unmelted edge', () => {
    // the end face goes up to 12 and toe 2 stands at 10.5; the undercut takes 1.3 of the 1.5 between
    const lap = fillet({
      arrangement: 'lap',
      leg2: 10.5,
      undercut2Depth: 0.5,
      undercut2Width: 1.3,
    });
    expect(valueOf(build(lap), 'edgeRemaining')).toBeCloseTo(0.2, 12);
    expect(endsOf(build(lap), 'edgeRemaining')).toEqual([0, about(11.8), 0, 12]);
    // half of the edge melted too: 11.25 - 10.5, less an undercut of 0.6
    const melted = { ...lap, edgeMelt: 0.5, undercut2Width: 0.6, undercut2Depth: 0.2 };
    expect(valueOf(build(melted), 'edgeRemaining')).toBeCloseTo(0.15, 12);
  });

  it('is nothing, and certain, when it is all melted', () => {
    const lap = handFillet({ leg1: 6, leg2: 6, edge: [] });
    expect(valueOf(lap, 'edgeRemaining')).toBe(0);
    expect(read(lap, 'edgeRemaining').note).toBeUndefined();
    expect(read(lap, 'edgeRemaining').witness).toEqual({ kind: 'none' });
  });

  it('is no question of a tee', () => {
    expect(measure(handFillet({ leg1: 6, leg2: 6 })).values.edgeRemaining).toBeUndefined();
  });
});
