import { describe, expect, it } from 'vitest';
import { at, handFillet, pathOf, polar } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// Throat terms: public welding glossary; which root and which line each takes is
// Toeline's own reading. Closed forms are derived, sums in the comments.

const root2 = Math.SQRT2;

describe('the throats of a concave fillet', () => {
  const hollow = handFillet({ leg1: 10, leg2: 10, sagitta: -1 });

  it('keep the chord throat, a construction, apart from the theoretical one, which is metal', () => {
    expect(valueOf(hollow, 'chordThroat')).toBeCloseTo(10 / root2, 12);
    expect(valueOf(hollow, 'theoreticalThroat')).toBeCloseTo(10 / root2 - 1, 12);
    expect(valueOf(hollow, 'actualThroat')).toBeCloseTo(10 / root2 - 1, 12);
    expect(valueOf(hollow, 'effectiveThroat')).toBeCloseTo(10 / root2 - 1, 12);
  });

  it('show the chord throat from O to the chord, with the chord drawn', () => {
    expect(read(hollow, 'chordThroat').witness).toEqual({
      kind: 'distance',
      from: at(0, 0),
      to: { x: about(5), y: about(5) },
      extensions: [],
      construction: [[at(10, 0), polar(10, 90)]],
    });
  });
});

describe('the actual throat', () => {
  it('counts convexity on a modest bead', () => {
    const swell = handFillet({ leg1: 8, leg2: 8, sagitta: 1 });
    expect(valueOf(swell, 'actualThroat')).toBeCloseTo(8 / root2 + 1, 12);
    expect(valueOf(swell, 'effectiveThroat')).toBeCloseTo(8 / root2, 12);
  });

  it('stops growing at a toe on a very convex bead: 6 mm legs, 2.5 mm swell', () => {
    // throat and swell would add up to 6.743; the toes are only 6 away
    const over = handFillet({ leg1: 6, leg2: 6, sagitta: 2.5 });
    expect(valueOf(over, 'actualThroat')).toBeCloseTo(6, 12);
    expect(endsOf(over, 'actualThroat')[3]).toBeCloseTo(0, 12);
  });

  it('is taken from whichever weld root is nearest', () => {
    // an empty gap of 3: roots at O and at plate 2's corner (0, 3); face x + y = 8
    const gap = handFillet({
      leg1: 8,
      leg2: 8,
      weldRoots: [at(0, 0), at(0, 3)],
      plate2Corner: at(0, 3),
    });
    expect(valueOf(gap, 'actualThroat')).toBeCloseTo(5 / root2, 12);
    expect(endsOf(gap, 'actualThroat')).toEqual([0, 3, about(2.5), about(5.5)]);
  });

  it('counts penetration: from 2 mm behind O along plate 1', () => {
    // from (-2, 0) to the line x + y = 8: 10/√2
    const deep = handFillet({ leg1: 8, leg2: 8, weldRoots: [at(-2, 0)] });
    expect(valueOf(deep, 'actualThroat')).toBeCloseTo(10 / root2, 12);
    expect(valueOf(deep, 'effectiveThroat')).toBeCloseTo(8 / root2, 12);
  });

  it('is taken from O when no root is marked', () => {
    const bare = handFillet({ leg1: 8, leg2: 8, weldRoots: [] });
    expect(valueOf(bare, 'actualThroat')).toBeCloseTo(8 / root2, 12);
  });
});

describe('the effective throat', () => {
  it('is taken from the corner of plate 2 over a gap', () => {
    const gap = handFillet({ leg1: 8, leg2: 8, plate2Corner: at(0, 1) });
    expect(valueOf(gap, 'effectiveThroat')).toBeCloseTo(7 / root2, 12);
  });

  it('ends on the chord between the toes, not on the chord carried on', () => {
    // 4 x 12 at 60°: the foot of the chord line falls outside; nearest is toe 1, 4 mm away
    const foot = handFillet({ dihedral: 60, leg1: 4, leg2: 12 });
    // 48 sin 60° / √(16 + 144 - 48) = 3.9279
    expect(valueOf(foot, 'chordThroat')).toBeCloseTo(
      (48 * Math.sin(Math.PI / 3)) / Math.sqrt(112),
      12,
    );
    expect(valueOf(foot, 'effectiveThroat')).toBeCloseTo(4, 12);
  });

  it('ends on the face where that is hollow, and draws the chord', () => {
    const hollow = handFillet({ leg1: 10, leg2: 10, sagitta: -1 });
    const { witness } = read(hollow, 'effectiveThroat');
    const reach = 5 - 1 / root2;
    expect(witness).toMatchObject({
      to: { x: about(reach), y: about(reach) },
      construction: [[at(10, 0), polar(10, 90)]],
    });
  });
});

describe('the throat with penetration', () => {
  it('adds p = q cos(ψ/2) to the throat along the bisector', () => {
    // 10 mm legs at 120°, q = 4: p = 2; bisector to chord 5
    const deep = handFillet({ dihedral: 120, leg1: 10, leg2: 10, weldRoots: [at(-4, 0)] });
    expect(valueOf(deep, 'rootPenetration')).toBe(4);
    expect(valueOf(deep, 'throatPenetration')).toBeCloseTo(2, 12);
    expect(valueOf(deep, 'deepThroat')).toBeCloseTo(7, 12);
    // from 2 mm behind O to 5 mm before it, along 60°; the chord is drawn
    const half = Math.sqrt(3) / 2;
    expect(read(deep, 'deepThroat').witness).toEqual({
      kind: 'distance',
      from: { x: about(-1), y: about(-2 * half) },
      to: { x: about(2.5), y: about(5 * half) },
      extensions: [],
      construction: [[at(10, 0), polar(10, 120)]],
    });
  });

  it('ends on the face when the face is hollow, on the chord when it swells', () => {
    const hollow = handFillet({ leg1: 8, leg2: 8, sagitta: -0.7, weldRoots: [at(-2, 0)] });
    expect(valueOf(hollow, 'deepThroat')).toBeCloseTo(8 / root2 - 0.7 + root2, 12);
    const swell = handFillet({ leg1: 8, leg2: 8, sagitta: 0.7, weldRoots: [at(-2, 0)] });
    expect(valueOf(swell, 'deepThroat')).toBeCloseTo(8 / root2 + root2, 12);
  });

  it('runs along the bisector also between unequal legs', () => {
    // 6 x 12 at 90°: the bisector meets x/6 + y/12 = 1 at x = y = 4
    const uneven = handFillet({ leg1: 6, leg2: 12 });
    expect(valueOf(uneven, 'deepThroat')).toBeCloseTo(4 * root2, 12);
    expect(endsOf(uneven, 'deepThroat')).toEqual([0, 0, 4, 4].map((n) => about(n)));
  });

  it('takes the nearest of several crossings of a wavy face', () => {
    // the face crosses y = x at (3.5, 3.5), (4, 4) and (4.5, 4.5)
    const bead = pathOf([at(8, 0), at(3, 3.2), at(4.4, 3.6), at(3.6, 4.4), at(5, 4.8), at(0, 8)]);
    const wavy = handFillet({ leg1: 8, leg2: 8, bead });
    const [x, y] = endsOf(wavy, 'deepThroat').slice(2) as [number, number];
    expect(x).toBeCloseTo(y, 12);
    expect(x).toBeLessThan(3.5);
  });
});

describe('root penetration', () => {
  it('is nothing when fusion stops at O', () => {
    const flat = handFillet({ leg1: 8, leg2: 8 });
    expect(valueOf(flat, 'rootPenetration')).toBe(0);
    expect(valueOf(flat, 'throatPenetration')).toBe(0);
    expect(read(flat, 'rootPenetration').witness).toEqual({ kind: 'none' });
  });

  it('is read on plate 1, whatever the root under plate 2 does', () => {
    // gap of 1 with 1.5 mm of metal run into it under plate 2, 2 mm along plate 1
    const both = handFillet({
      leg1: 8,
      leg2: 8,
      plate2Corner: at(0, 1),
      weldRoots: [at(-1.5, 1), at(-2, 0)],
    });
    expect(valueOf(both, 'rootPenetration')).toBe(2);
    expect(endsOf(both, 'rootPenetration')).toEqual([0, 0, -2, 0]);
    expect(valueOf(both, 'rootGap')).toBe(1);
    // from the corner: (0, 1) to x + y = 8; the penetration doesn't count
    expect(valueOf(both, 'effectiveThroat')).toBeCloseTo(7 / root2, 12);
    // from (-1.5, 1) to x + y = 8
    expect(valueOf(both, 'actualThroat')).toBeCloseTo(8.5 / root2, 12);
  });

  it('shows on the bisector what it adds to the throat', () => {
    const deep = handFillet({ leg1: 8, leg2: 8, weldRoots: [at(-2, 0)] });
    expect(read(deep, 'throatPenetration').witness).toMatchObject({
      from: at(0, 0),
      to: { x: about(-1), y: about(-1) },
      extensions: [[at(-2, 0), { x: about(-1), y: about(-1) }]],
    });
  });
});

describe('the root gap', () => {
  it('is the height of plate 2’s corner above plate 1, square to plate 1', () => {
    const gap = handFillet({ dihedral: 120, leg1: 8, leg2: 8, plate2Corner: polar(2, 120) });
    expect(valueOf(gap, 'rootGap')).toBeCloseTo(Math.sqrt(3), 12);
    expect(endsOf(gap, 'rootGap')[0]).toBeCloseTo(-1, 12);
    expect(endsOf(gap, 'rootGap')[1]).toBeCloseTo(0, 12);
  });

  it('is nothing where the plates touch', () => {
    const touching = handFillet({ leg1: 8, leg2: 8 });
    expect(valueOf(touching, 'rootGap')).toBe(0);
    expect(read(touching, 'rootGap').witness).toEqual({ kind: 'none' });
  });
});
