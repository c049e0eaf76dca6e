import { describe, expect, it } from 'vitest';
import { at, handFillet, pathOf, polar } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// Convexity and concavity: AWS A3.0, public extract.

describe('a face of one arc', () => {
  it('swells or is hollow by its sagitta, never both', () => {
    const swell = handFillet({ leg1: 8, leg2: 10, sagitta: 1.2 });
    expect(valueOf(swell, 'convexity')).toBeCloseTo(1.2, 12);
    expect(valueOf(swell, 'concavity')).toBeCloseTo(0, 12);
    const hollow = handFillet({ leg1: 8, leg2: 10, sagitta: -1.2 });
    expect(valueOf(hollow, 'convexity')).toBeCloseTo(0, 12);
    expect(valueOf(hollow, 'concavity')).toBeCloseTo(1.2, 12);
  });

  it('is measured square to the chord, from chord to face', () => {
    const swell = handFillet({ leg1: 8, leg2: 8, sagitta: 1 });
    const out = 4 + Math.SQRT1_2;
    expect(endsOf(swell, 'convexity')).toEqual([4, 4, out, out].map((n) => about(n)));
    expect(read(swell, 'convexity').witness).toMatchObject({
      construction: [[at(8, 0), polar(8, 90)]],
    });
  });

  it('has neither when flat', () => {
    const flat = handFillet({ dihedral: 90, leg1: 8, leg2: 8 });
    expect(valueOf(flat, 'convexity')).toBeLessThan(1e-12);
    expect(valueOf(flat, 'concavity')).toBeLessThan(1e-12);
  });
});

describe('an S-shaped face', () => {
  it('has both a convexity and a concavity', () => {
    // chord from (8, 0) to (0, 8), middle (4, 4): half out by 0.5, half in by 0.3
    const half = 4 * Math.SQRT2;
    const bead = pathOf([at(8, 0), at(4, 4), at(0, 8)], [(2 * 0.5) / half, (-2 * 0.3) / half]);
    const wave = handFillet({ leg1: 8, leg2: 8, bead });
    expect(valueOf(wave, 'convexity')).toBeCloseTo(0.5, 12);
    expect(valueOf(wave, 'concavity')).toBeCloseTo(0.3, 12);
    // the hollow lies in the upper half of the face, inside (2, 6) on the chord
    const inside = 0.3 * Math.SQRT1_2;
    expect(endsOf(wave, 'concavity')).toEqual([2, 6, 2 - inside, 6 - inside].map(about));
    const { witness } = read(wave, 'concavity');
    expect(witness).toMatchObject({ extensions: [], construction: [[at(8, 0), at(0, 8)]] });
  });
});
