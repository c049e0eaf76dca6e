import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import { at, handFillet, pathOf } from '../section-fixtures.ts';
import { endsOf, read, valueOf } from './reading.ts';

describe('the edge remaining above a lap fillet', () => {
  it('is what is left of the end face above the toe', () => {
    const lap = handFillet({ leg1: 6, leg2: 6, edge: pathOf([at(0, 6), at(0, 8), at(0, 9.5)]) });
    expect(valueOf(lap, 'edgeRemaining')).toBeCloseTo(3.5, 12);
    expect(endsOf(lap, 'edgeRemaining')).toEqual([0, 6, 0, 9.5]);
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
