import { describe, expect, it } from 'vitest';
import { at, handFillet, pathOf, polar } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// Leg: US Army TC 9-237, 6-8b. The other readings are derived; sums in the comments.

describe('the legs of an unequal fillet', () => {
  const fillet = handFillet({ leg1: 6, leg2: 10 });

  it('run along each plate from the root to the toe', () => {
    expect(valueOf(fillet, 'leg1')).toBe(6);
    expect(valueOf(fillet, 'leg2')).toBe(10);
    expect(read(fillet, 'leg1').witness).toEqual({
      kind: 'distance',
      from: at(0, 0),
      to: at(6, 0),
      extensions: [],
      construction: [],
    });
  });

  it('differ by 4 mm, shown on the part of the longer leg past the shorter', () => {
    expect(valueOf(fillet, 'legDifference')).toBe(4);
    const [fromX, fromY, toX, toY] = endsOf(fillet, 'legDifference');
    expect([fromX, toX]).toEqual([about(0), about(0)]);
    expect([fromY, toY]).toEqual([6, 10]);
  });

  it('differ as much when leg 1 is the longer', () => {
    const other = handFillet({ leg1: 10, leg2: 6 });
    expect(valueOf(other, 'legDifference')).toBe(4);
    expect(endsOf(other, 'legDifference')).toEqual([6, 0, 10, 0]);
  });
});

describe('the legs of a skewed fillet', () => {
  // 120°: from a toe 8 mm out square to the other surface line: 8 sin 120° = 6.9282
  const skewed = handFillet({ dihedral: 120, leg1: 8, leg2: 6 });

  it('stay along the plate', () => {
    expect(valueOf(skewed, 'leg1')).toBeCloseTo(8, 12);
    expect(valueOf(skewed, 'leg2')).toBeCloseTo(6, 12);
  });

  it('read less by a right-angle gauge', () => {
    expect(valueOf(skewed, 'perpendicularLeg1')).toBeCloseTo(4 * Math.sqrt(3), 12);
    expect(valueOf(skewed, 'perpendicularLeg2')).toBeCloseTo(3 * Math.sqrt(3), 12);
  });

  it('show the gauge reading from the foot on the other surface line to the toe', () => {
    // toe 2 at (-3, 5.196): its foot on plate 1's line is (-3, 0), which the line from O is carried on to
    const { witness } = read(skewed, 'perpendicularLeg2');
    expect(witness).toMatchObject({
      from: { x: about(-3), y: about(0) },
      to: { x: about(-3), y: about(3 * Math.sqrt(3)) },
      extensions: [[at(0, 0), { x: about(-3), y: about(0) }]],
    });
  });
});

describe('the legs over a root gap', () => {
  it('include the gap; the leg in contact does not', () => {
    const gap = handFillet({ leg1: 8, leg2: 8, plate2Corner: at(0, 3) });
    expect(valueOf(gap, 'leg2')).toBe(8);
    expect(valueOf(gap, 'contactLeg2')).toBe(5);
    expect(endsOf(gap, 'contactLeg2')).toEqual([0, 3, about(0), 8]);
  });

  it('lose the gap divided by the sine on a skewed plate', () => {
    // gap 1.5 at 60°: the corner is 1.5 / sin 60° = 1.7321 up plate 2
    const up = 1.5 / Math.sin(Math.PI / 3);
    const gap = handFillet({ dihedral: 60, leg1: 8, leg2: 8, plate2Corner: polar(up, 60) });
    expect(valueOf(gap, 'contactLeg2')).toBeCloseTo(8 - Math.sqrt(3), 12);
  });
});

describe('the legs of a fillet that overhangs', () => {
  const bead = pathOf([at(8, 0), at(9, 0.5), at(8, 2), at(0, 8)]);
  const over = handFillet({ leg1: 8, leg2: 8, bead, lips: [at(9, 0), at(0, 8)] });

  it('end at the fused toe', () => {
    expect(valueOf(over, 'leg1')).toBe(8);
  });

  it('look longer by the overlap', () => {
    expect(valueOf(over, 'visibleLeg1')).toBe(9);
    expect(valueOf(over, 'visibleLeg2')).toBe(8);
    expect(endsOf(over, 'visibleLeg1')).toEqual([0, 0, 9, 0]);
  });
});

describe('a lap joint whose edge is melted away', () => {
  const gone = handFillet({ leg1: 8, leg2: 8, edge: [] });
  const stands = handFillet({ leg1: 8, leg2: 8, edge: pathOf([at(0, 8), at(0, 10)]) });

  it.each([
    'leg2',
    'contactLeg2',
    'perpendicularLeg2',
    'visibleLeg2',
    'legDifference',
    'sizeEqual',
    'sizePair.1',
    'sizePair.2',
    'isoscelesThroat',
    'theoreticalThroat',
    'chordThroat',
    'effectiveThroat',
    'deepThroat',
  ] as const)('leaves %s to refer', (id) => {
    expect(read(gone, id).note).toEqual({ key: 'measure_note_edge_gone', refer: true });
    expect(read(stands, id).note).toBeUndefined();
  });

  it.each(['leg1', 'perpendicularLeg1', 'visibleLeg1', 'actualThroat', 'toeAngle1'] as const)(
    'still settles %s',
    (id) => {
      expect(read(gone, id).note).toBeUndefined();
    },
  );
});
