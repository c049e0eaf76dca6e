/**
 * The figures of each built-in set against a second copy of the table as it was read, in the
 * document's own unit; rows marked "memory" in the data are from memory here too, verify.
 * ISO 5817 level C: tests/limits/iso5817-level-c.test.ts.
 */
import { describe, expect, it } from 'vitest';
import { judge, type JobSheet } from '../../src/limits/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import {
  flatFillet,
  inch,
  limitSet,
  measured,
  mm,
  sheetWith,
  soundButt,
} from '../limits/hand-made.ts';

type Values = Readonly<Partial<Record<MeasurementId, number>>>;
type Service = Partial<JobSheet['service']>;

const IN = 25.4;
const plates = (t: number): Values => ({ t1: t, t2: t, tMin: t, tMax: t });
const weld = (values: Values, heading: object = {}): Measurements =>
  measured({ kind: 'butt', form: 'singleV', ...heading }, { ...soundButt, ...values });
const fillet = (values: Values, heading: object = {}): Measurements =>
  measured(heading, { ...flatFillet, sizeEqual: 8, ...values });

/** The limit that a set's row gives, as the document prints it; null when the row doesn't count. */
function limitOf(set: string, id: string, of: Measurements, sheet: JobSheet): number | null {
  const check = judge(of, sheet, limitSet(set)).find((one) => one.id === id);
  return check?.printed?.value ?? null;
}

/** The limit on a measurement, whichever row of a banded table gives it. */
function limitOn(
  set: string,
  subject: string,
  of: Measurements,
  sheet: JobSheet,
  only = '',
): readonly number[] {
  return judge(of, sheet, limitSet(set)).flatMap(({ id, measurement, printed, source }) =>
    measurement === subject && printed !== null && source.status !== 'sheet' && id.includes(only)
      ? [printed.value]
      : [],
  );
}

const sheetIn = (column: 'mm' | 'in', service: Service = {}, more: Partial<JobSheet> = {}) =>
  sheetWith({ column, ...more, service: { ...sheetWith().service, ...service } });
const near = (value: number): number => expect.closeTo(value, 9) as number;

describe('ISO 5817 levels D and B', () => {
  const throatOf = (a: number): JobSheet =>
    sheetWith({ size: { as: 'throat', first: mm(a), second: null } });
  /** row; what differs from a sound weld; throat asked for; limits at D and B */
  const rows: readonly (readonly [string, Measurements, number, number | null, number | null])[] = [
    // 0.2 × 8, at most 2; none
    ['4021:incompletePenetration', weld(plates(8)), 5, 1.6, 0],
    ['4021:incompletePenetration', weld(plates(14)), 5, 2, 0],
    // 0.2 × 3; none
    ['5011-thin:undercut1', fillet(plates(3)), 5, 0.6, 0],
    // 0.2 × 4, at most 1; 0.05 × 4, at most 0.5
    ['5011:undercut1', fillet(plates(4)), 5, 0.8, 0.2],
    ['5011:undercut2', fillet(plates(20)), 5, 1, 0.5],
    ['5011-second-thin:rootUndercut1', weld(plates(3), { form: 'doubleV' }), 5, 0.6, 0],
    ['5011-second:rootUndercut1', weld(plates(4), { form: 'doubleV' }), 5, 0.8, 0.2],
    // 0.2 + 0.1 × 3; none
    ['5013-thin:rootUndercut1', weld(plates(3)), 5, 0.5, 0],
    // 0.2 × 8, at most 2; 0.05 × 8, at most 0.5
    ['5013:rootUndercut1', weld(plates(8)), 5, 1.6, 0.4],
    ['5013:rootUndercut1', weld(plates(20)), 5, 2, 0.5],
    // 1 + 0.25 × 20, at most 10; 1 + 0.1 × 20, at most 5
    ['502:faceReinforcement.higher', weld({ faceWidth: 20 }), 5, 6, 3],
    ['502:faceReinforcement.higher', weld({ faceWidth: 50 }), 5, 10, 5],
    ['502-second:rootReinforcement.higher', weld({ rootWidth: 20 }, { form: 'doubleV' }), 5, 6, 3],
    // 1 + 0.25 × 10, at most 5; 1 + 0.1 × 10, at most 3
    ['503:convexity', fillet({ faceWidth: 10 }), 5, 3.5, 2],
    ['503:convexity', fillet({ faceWidth: 30 }), 5, 5, 3],
    // 1 + 0.6 × 4; 1 + 0.1 × 4
    ['504-thin:rootReinforcement.higher', weld({ ...plates(3), rootWidth: 4 }), 5, 3.4, 1.4],
    // 1 + 3, at most 5; 1 + 0.2 × 3, at most 3
    ['504:rootReinforcement.higher', weld({ rootWidth: 3 }), 5, 4, 1.6],
    ['504:rootReinforcement.higher', weld({ rootWidth: 12 }), 5, 5, 3],
    ['505-butt:toeAngle', weld({}), 5, 90, 150],
    ['505-fillet:toeAngle', fillet({}), 5, 90, 110],
    // 0.2 of the straight distance from toe to toe; none
    ['506:overlap1', fillet({ chordLength: 11 }), 5, 2.2, 0],
    // 0.25 t, at most 2; 0.05 t, at most 0.5
    ['511-thin:underfill', weld(plates(3)), 5, 0.75, 0],
    ['511:underfill', weld(plates(4)), 5, 1, 0.2],
    ['511:underfill', weld(plates(14)), 5, 2, 0.5],
    ['511-second-thin:rootConcavity', weld(plates(3), { form: 'doubleV' }), 5, 0.75, 0],
    ['511-second:rootConcavity', weld(plates(4), { form: 'doubleV' }), 5, 1, 0.2],
    // 2 + 0.2 × 5; 1.5 + 0.15 × 5
    ['512:legDifference', fillet({}), 5, 3, 2.25],
    // 0.2 + 0.1 × 3; none
    ['515-thin:rootConcavity', weld(plates(3)), 5, 0.5, 0],
    ['515:rootConcavity', weld(plates(8)), 5, 1.6, 0.4],
    ['515:rootConcavity', weld(plates(14)), 5, 2, 0.5],
    // 2 − (0.2 + 0.1 × 2); 2
    ['5213-thin:isoscelesThroat', fillet(plates(3)), 2, 1.6, 2],
    // 5 − (0.3 + 0.1 × 5); 18 − 2, since 0.3 + 1.8 is over 2; nothing short at B
    ['5213:isoscelesThroat', fillet({}), 5, 4.2, 5],
    ['5213:isoscelesThroat', fillet({}), 18, 16, 18],
    // no limit at D; 5 + 1 + 0.15 × 5; 20 + 3
    ['5214:isoscelesThroat', fillet({}), 5, null, 6.75],
    ['5214:isoscelesThroat', fillet({}), 20, null, 23],
    // 0.2 + 0.25 × 2; 0.2 + 0.1 × 2
    ['5071-thin:misalignment', weld(plates(2)), 5, 0.7, 0.4],
    // 0.25 t, at most 5; 0.1 t, at most 3
    ['5071:misalignment', weld(plates(10)), 5, 2.5, 1],
    ['5071:misalignment', weld(plates(40)), 5, 5, 3],
    // 0.5 t, at most 4; at most 2
    ['5072:misalignment', weld(plates(3), { product: 'pipe' }), 5, 1.5, 1.5],
    ['5072:misalignment', weld(plates(10), { product: 'pipe' }), 5, 4, 2],
    // 0.5 + 0.1 × 4; 0.2 + 0.1 × 4
    ['617-thin:rootGap', fillet({ ...plates(3), isoscelesThroat: 4 }), 3, 0.9, 0.6],
    // 1 + 0.3 × 6, at most 4; 0.5 + 0.1 × 6, at most 2
    ['617:rootGap', fillet({ isoscelesThroat: 6 }), 5, 2.8, 1.1],
    ['617:rootGap', fillet({ isoscelesThroat: 16 }), 5, 4, 2],
    ['617-fit-up-thin:rootGap', fillet(plates(3), { stage: 'fitUp' }), 3, 0.8, 0.5],
    ['617-fit-up:rootGap', fillet({}, { stage: 'fitUp' }), 5, 2.5, 1],
  ];

  it.each(rows)('%s, case %#', (id, of, a, d, b) => {
    expect(['iso5817-d', 'iso5817-b'].map((set) => limitOf(set, id, of, throatOf(a)))).toEqual(
      [d, b].map((limit) => (limit === null ? null : near(limit))),
    );
  });

  it('leave no row of theirs out', () => {
    const worked = new Set(rows.map(([id]) => id.slice(0, id.indexOf(':'))));
    for (const set of ['iso5817-d', 'iso5817-b']) {
      const judged = limitSet(set).criteria.filter(({ unassessed }) => unassessed === undefined);
      expect(judged.map(({ id }) => id).filter((id) => !worked.has(id))).toEqual([]);
    }
  });
});

describe('AWS D1.1', () => {
  const asked = (leg: number, column: 'mm' | 'in', service: Service = {}): JobSheet =>
    sheetIn(column, service, {
      size: { as: 'leg', first: column === 'mm' ? mm(leg) : inch(leg), second: null },
    });
  const both = ['aws-d11-static', 'aws-d11-cyclic'] as const;

  it('Table 6.1 (6): undersize by the specified leg', () => {
    const most = [
      ['in', 3 / 16, 1 / 16],
      ['in', 1 / 4, 3 / 32],
      ['in', 5 / 16, 1 / 8],
      ['mm', 5, 2],
      ['mm', 6, 2.5],
      ['mm', 8, 3],
    ] as const;
    for (const set of both) {
      for (const [column, leg, under] of most) {
        const limits = ['leg1', 'leg2', 'sizeEqual'].map((subject) =>
          limitOn(set, subject, fillet({}), asked(leg, column), 'd11-6'),
        );
        expect(limits).toEqual([[near(leg - under)], [near(leg - under)], [near(leg - under)]]);
      }
    }
  });

  it('5.22.1: a gap of more than 1/16 in [2 mm] adds to the leg, and 3/16 in [5 mm] is the most', () => {
    for (const set of both) {
      const at = (gap: number) => fillet({ rootGap: gap });
      expect(limitOn(set, 'leg1', at(2), asked(6, 'mm'), 'gap2')).toEqual([]);
      expect(limitOn(set, 'leg1', at(2.1), asked(6, 'mm'), 'gap2')).toEqual([near(8.1)]);
      expect(limitOn(set, 'sizeEqual', at(2.1), asked(6, 'mm'), 'gap2')).toEqual([near(8.1)]);
      expect(limitOn(set, 'rootGap', at(1), asked(6, 'mm'))).toEqual([5]);
      expect(limitOn(set, 'rootGap', at(1), asked(1 / 4, 'in'))).toEqual([3 / 16]);
      // parts of 3 in and over
      const thick = fillet({ ...plates(3 * IN), rootGap: 1 });
      expect(limitOn(set, 'rootGap', thick, asked(1 / 4, 'in'))).toEqual([5 / 16]);
      expect(limitOn(set, 'rootGap', thick, asked(6, 'mm'))).toEqual([8]);
    }
  });

  it('Table 5.8: least leg by the thinner part, 3/16 in in the thinnest band under cyclic load', () => {
    const table = [
      ['in', 1 / 4, 1 / 8, 3 / 16],
      ['in', 1 / 2, 3 / 16, 3 / 16],
      ['in', 3 / 4, 1 / 4, 1 / 4],
      ['in', 1, 5 / 16, 5 / 16],
      ['mm', 6, 3, null],
      ['mm', 12, 5, 5],
      ['mm', 20, 6, 6],
      ['mm', 21, 8, 8],
      // never more than the thinner part
      ['in', 1 / 10, 1 / 10, 1 / 10],
      ['mm', 2.5, 2.5, null],
    ] as const;
    for (const [column, t, ofStatic, ofCyclic] of table) {
      const of = fillet(plates(column === 'in' ? t * IN : t));
      const least = both.map(
        (set) => limitOn(set, 'leg1', of, asked(column === 'in' ? 0.3 : 8, column), 'minfillet')[0],
      );
      expect(least).toEqual([near(ofStatic), ofCyclic === null ? undefined : near(ofCyclic)]);
    }
  });

  it('AISC 360 J2.2b: the leg along a lap’s edge', () => {
    for (const set of both) {
      const at = (t: number) =>
        limitOn(set, 'leg2', fillet(plates(t * IN), { form: 'lap' }), asked(0.3, 'in'), 'aisc');
      expect([at(0.2), at(1 / 4), at(1 / 2)]).toEqual([
        [near(0.2)],
        [near(3 / 16)],
        [near(7 / 16)],
      ]);
    }
  });

  it('profiles: convexity by width, reinforcement, alignment', () => {
    const convexity = [
      ['in', 5 / 16, 1 / 16],
      ['in', 0.9, 1 / 8],
      ['in', 1, 3 / 16],
      ['mm', 8, 2],
      ['mm', 24, 3],
      ['mm', 25, 5],
    ] as const;
    for (const set of both) {
      for (const [column, width, most] of convexity) {
        const of = fillet({ faceWidth: column === 'in' ? width * IN : width });
        expect(limitOn(set, 'convexity', of, asked(8, column))).toEqual([most]);
      }
      const face = 'faceReinforcement.higher';
      expect(limitOn(set, face, weld({}), sheetIn('in'))).toEqual([1 / 8]);
      expect(limitOn(set, face, weld({}), sheetIn('mm'))).toEqual([3]);
      expect(limitOn(set, face, weld(plates(30)), sheetIn('in'))).toEqual([]);
      // a tenth of the thinner part, at most 1/8 in [3 mm]
      expect(limitOn(set, 'misalignment', weld(plates(12.7)), sheetIn('in'))).toEqual([near(0.05)]);
      expect(limitOn(set, 'misalignment', weld(plates(60)), sheetIn('in'))).toEqual([1 / 8]);
      expect(limitOn(set, 'misalignment', weld(plates(60)), sheetIn('mm'))).toEqual([3]);
    }
  });

  it('Table 6.1 (7): undercut', () => {
    const undercut = (set: string, t: number, column: 'mm' | 'in', service: Service = {}) =>
      limitOn(set, 'undercut1', fillet(plates(t)), sheetIn(column, service));
    expect(undercut('aws-d11-static', 12, 'in')).toEqual([1 / 16]);
    expect(undercut('aws-d11-static', 12, 'mm')).toEqual([2]);
    expect(undercut('aws-d11-static', 26, 'in')).toEqual([1 / 16]);
    expect(undercut('aws-d11-static', 26, 'mm')).toEqual([2]);
    expect(undercut('aws-d11-cyclic', 12, 'in', { stress: 'acrossWeld' })).toEqual([0.01]);
    expect(undercut('aws-d11-cyclic', 12, 'mm', { stress: 'acrossWeld' })).toEqual([0.25]);
    expect(undercut('aws-d11-cyclic', 12, 'in', { stress: 'other' })).toEqual([1 / 32]);
    expect(undercut('aws-d11-cyclic', 12, 'mm', { stress: 'other' })).toEqual([1]);
  });

  it('Figure 5.3 and the tubular table: fit-up either side of what the sheet asks', () => {
    const groove = {
      ...sheetWith().groove,
      rootOpening: { nominal: inch(1 / 4), minus: inch(0), plus: inch(0) },
      rootFace: { nominal: inch(1 / 8), minus: inch(0), plus: inch(0) },
      grooveAngle: { nominal: 60, minus: 0, plus: 0 },
    };
    const prepared = { rootOpening: 6, rootFace: 3, grooveAngle: 60 };
    const ends = (heading: object) =>
      ['rootOpening', 'rootFace', 'grooveAngle'].map((subject) =>
        limitOn(
          'aws-d11-static',
          subject,
          weld(prepared, { stage: 'fitUp', ...heading }),
          sheetIn('in', {}, { groove }),
        ),
      );
    const face = [near(1 / 16), near(3 / 16)];
    expect(ends({})).toEqual([[near(3 / 16), near(5 / 16)], face, [55, 70]]);
    expect(ends({ backing: [] })).toEqual([[near(3 / 16), near(1 / 2)], face, [55, 70]]);
    // gouged: the root face is not limited
    expect(ends({ form: 'doubleV' })).toEqual([[near(1 / 8), near(5 / 16)], [], [55, 70]]);
    expect(ends({ product: 'pipe' })).toEqual([[near(3 / 16), near(5 / 16)], face, [55, 65]]);
    expect(ends({ product: 'pipe', backing: [] })).toEqual([[], [], []]);
  });
});

describe('ASME B31.3', () => {
  const sets = ['b313-normal', 'b313-severe', 'b313-category-d'] as const;

  it('undercut by service: H, none and I in a girth weld, none in a longitudinal one, H in a fillet', () => {
    // Tw = 3: H min(1, 0.75), I min(1.5, max(0.75, 1)); Tw = 12: H 1, I min(1.5, 3)
    const girth = (t: number) =>
      sets.map((set) =>
        limitOn(set, 'undercut1', weld(plates(t)), sheetIn('mm', { seam: 'girth' })),
      );
    expect(girth(3)).toEqual([[0.75], [0], [1]]);
    expect(girth(12)).toEqual([[1], [0], [1.5]]);
    const inches = sheetIn('in', { seam: 'girth' });
    expect(sets.map((set) => limitOn(set, 'rootUndercut2', weld({}), inches))).toEqual([
      [1 / 32],
      [0],
      [1 / 16],
    ]);
    const long = sheetIn('mm', { seam: 'longitudinal' });
    expect(sets.map((set) => limitOn(set, 'undercut1', weld({}), long))).toEqual([[0], [0], [0]]);
    const plain = sheetIn('mm');
    expect(sets.map((set) => limitOn(set, 'undercut1', fillet({}), plain))).toEqual([
      [1],
      [0],
      [1],
    ]);
  });

  it('reinforcement by wall: L, and twice L in category D', () => {
    const table = [
      [6, 1.5, 1 / 4, 1 / 16],
      [13, 3, 1 / 2, 1 / 8],
      [25, 4, 1, 5 / 32],
      [26, 5, 1.1, 3 / 16],
    ] as const;
    for (const [t, most, tIn, mostIn] of table) {
      for (const subject of ['faceReinforcement.higher', 'rootReinforcement.higher'] as const) {
        const metric = sets.map((set) => limitOn(set, subject, weld(plates(t)), sheetIn('mm')));
        const inches = sets.map((set) =>
          limitOn(set, subject, weld(plates(tIn * IN)), sheetIn('in')),
        );
        expect(metric).toEqual([[most], [most], [2 * most]]);
        expect(inches).toEqual([[mostIn], [mostIn], [2 * mostIn]]);
      }
      const face = sets.map((set) => limitOn(set, 'convexity', fillet(plates(t)), sheetIn('mm')));
      expect(face).toEqual([[most], [most], [2 * most]]);
    }
  });

  it('K: a hollow root keeps the wall, reinforcement counted', () => {
    const of = (rootConcavity: number) => weld({ ...plates(9), rootConcavity });
    for (const set of sets) {
      expect(limitOn(set, 'jointThickness', of(0.5), sheetIn('mm'))).toEqual([9]);
      expect(limitOn(set, 'jointThickness', of(0), sheetIn('mm'))).toEqual([]);
    }
  });
});

describe('reinforcement by temperature, ASME B31.1 Table 127.4.2 and 46 CFR 56.70-15', () => {
  /** thickness; over 750 °F, 350 to 750 °F, under 350 °F; in, weld 2.4 in wide */
  const table = [
    [1 / 8, 1 / 16, 3 / 32, 3 / 16],
    [3 / 16, 1 / 16, 1 / 8, 3 / 16],
    [1 / 2, 1 / 16, 5 / 32, 3 / 16],
    [1, 3 / 32, 3 / 16, 3 / 16],
    [2, 1 / 8, 1 / 4, 1 / 4],
    [2.5, 5 / 32, 0.3, 0.3],
  ] as const;
  const at = (set: string, t: number, temperature: JobSheet['service']['temperature']) =>
    limitOn(
      set,
      'faceReinforcement.higher',
      weld({ ...plates(t * IN), faceWidth: 2.4 * IN }),
      sheetIn('in', { temperature }),
    );

  it.each(table)('t = %s in', (t, hot, warm, cool) => {
    for (const set of ['b311', 'cfr46-5670']) {
      expect(at(set, t, 'over750F')).toEqual([near(hot)]);
      expect(at(set, t, 'to750F')).toEqual([near(warm)]);
      expect(at(set, t, 'to350F')).toEqual([near(cool)]);
    }
    // below 0 °F the federal rule goes back to its strictest column
    expect(at('b311', t, 'below0F')).toEqual([near(cool)]);
    expect(at('cfr46-5670', t, 'below0F')).toEqual([near(hot)]);
  });

  it('counts both faces of a weld made from both sides, the outside only of another', () => {
    const sheet = sheetIn('in', { temperature: 'over750F' });
    for (const set of ['b311', 'cfr46-5670']) {
      const root = (form: string) =>
        limitOn(set, 'rootReinforcement.higher', weld({}, { form }), sheet);
      expect([root('singleV'), root('doubleV')]).toEqual([[], [1 / 16]]);
    }
  });

  it('B31.1 136.4.2: undercut 1/32 in, printed 1.0 mm', () => {
    expect(limitOn('b311', 'undercut1', weld({}), sheetIn('in'))).toEqual([1 / 32]);
    expect(limitOn('b311', 'undercut1', fillet({}), sheetIn('mm'))).toEqual([1]);
  });
});

describe('ASME VIII-1 and I', () => {
  const face = 'faceReinforcement.higher';
  /** t; categories B and C; other welds, in */
  const uw35 = [
    [0.08, 3 / 32, 1 / 32],
    [3 / 32, 1 / 8, 1 / 16],
    [3 / 16, 1 / 8, 1 / 16],
    [1 / 2, 5 / 32, 3 / 32],
    [1, 3 / 16, 3 / 32],
    [2, 1 / 4, 1 / 8],
    [3, 1 / 4, 5 / 32],
    [4, 1 / 4, 7 / 32],
    [5, 1 / 4, 1 / 4],
    [5.1, 5 / 16, 5 / 16],
  ] as const;

  it.each(uw35)('UW-35(d), t = %s in', (t, girth, other) => {
    const at = (subject: string, category: JobSheet['service']['category']) =>
      limitOn('viii-1', subject, weld(plates(t * IN)), sheetIn('in', { category }));
    for (const subject of [face, 'rootReinforcement.higher']) {
      expect([at(subject, 'B'), at(subject, 'C')]).toEqual([[girth], [girth]]);
      expect([at(subject, 'A'), at(subject, 'D')]).toEqual([[other], [other]]);
    }
  });

  /** t; category A; B, C and D, in */
  const uw33 = [
    [1 / 2, 1 / 8, 1 / 8],
    [0.4, 0.1, 0.1],
    [3 / 4, 1 / 8, 3 / 16],
    [0.6, 1 / 8, 0.15],
    [1.5, 1 / 8, 3 / 16],
    [2, 1 / 8, 1 / 4],
    [4, 1 / 4, 1 / 2],
    [8, 3 / 8, 3 / 4],
  ] as const;

  it.each(uw33)('Table UW-33, t = %s in', (t, ofA, ofOthers) => {
    const at = (category: JobSheet['service']['category']) =>
      limitOn('viii-1', 'misalignment', weld(plates(t * IN)), sheetIn('in', { category }));
    expect(at('A')).toEqual([near(ofA)]);
    for (const category of ['B', 'C', 'D'] as const) expect(at(category)).toEqual([near(ofOthers)]);
  });

  it('UW-35(b): undercut 1/32 in, in the older print 0.8 mm, or a tenth of the thickness', () => {
    const at = (t: number, column: 'mm' | 'in') =>
      limitOn('viii-1', 'undercut2', weld(plates(t)), sheetIn(column));
    expect(at(12, 'in')).toEqual([1 / 32]);
    expect(at(12, 'mm')).toEqual([0.8]);
    expect(at(5, 'mm')).toEqual([0.5]);
  });

  it('PW-35, girth welds only (from memory)', () => {
    const sheet = sheetIn('in', { seam: 'girth' });
    const at = (t: number) => limitOn('pw-35', face, weld(plates(t * IN)), sheet);
    const table = [
      [1 / 8, 3 / 32],
      [3 / 16, 1 / 8],
      [1 / 2, 5 / 32],
      [1, 3 / 16],
      [2, 1 / 4],
    ] as const;
    for (const [t, most] of table) expect(at(t)).toEqual([most]);
    expect(at(2.1)).toEqual([]);
    expect(limitOn('pw-35', 'undercut1', weld(plates(20)), sheet)).toEqual([1 / 32]);
    expect(limitOn('pw-35', 'undercut1', weld(plates(5.08)), sheet)).toEqual([near(0.02)]);
    const calls = judge(weld({}), sheetIn('in', { seam: 'longitudinal' }), limitSet('pw-35'));
    expect(calls.find(({ measurement }) => measurement === face)?.call).toBe('notAssessed');
  });
});

describe('API 1104', () => {
  it('9.7: undercut in three steps of depth', () => {
    const at = (depth: number, extent: JobSheet['extent']) =>
      judge(
        weld({ ...plates(0.5 * IN), undercut1: depth * IN }),
        sheetIn('in', {}, { extent }),
        limitSet('api-1104'),
      ).find(({ measurement }) => measurement === 'undercut1')?.call;
    // over min(1/32, 0.0625): never; up to min(1/64, 0.03): always; between: over a length
    expect(at(0.033, 'isolatedShort')).toBe('reject');
    expect(at(0.03, 'isolatedShort')).toBe('accept');
    expect(at(0.03, 'unknown')).toBe('refer');
    expect(at(0.03, 'typical')).toBe('reject');
    expect(at(0.015, 'typical')).toBe('accept');
    // in a thin wall the shares of it count: 0.125 × 0.16 = 0.02
    const thin = weld(plates(0.16 * IN));
    expect(limitOn('api-1104', 'undercut1', thin, sheetIn('in'))).toEqual([near(0.02)]);
  });

  it('7.8.2 and 7.2: no cap below the surface; what is only recommended stays open when exceeded', () => {
    const callOn = (subject: string, of: Measurements) =>
      judge(of, sheetIn('in'), limitSet('api-1104')).find(({ id }) => id.endsWith(`:${subject}`))
        ?.call;
    expect(callOn('underfill', weld({ underfill: 0 }))).toBe('accept');
    expect(callOn('underfill', weld({ underfill: 0.1 }))).toBe('reject');
    const cap = (height: number) => weld({ 'faceReinforcement.higher': height * IN });
    expect(callOn('faceReinforcement.higher', cap(1 / 16))).toBeUndefined();
    expect(callOn('faceReinforcement.higher', cap(0.1))).toBe('notAssessed');
    const step = (rootStep: number) => weld({ rootStep: rootStep * IN }, { stage: 'fitUp' });
    expect(callOn('misalignment', step(1 / 8))).toBeUndefined();
    expect(callOn('misalignment', step(-0.13))).toBe('notAssessed');
  });
});

describe('other documents of the United States', () => {
  const inches = sheetIn('in');

  it('MIL-STD-2035A classes 2 and 3: up to 1/32 in, open up to 1/16 in from 1/2 in plate on', () => {
    const at = (t: number, depth: number) =>
      judge(fillet({ ...plates(t * IN), undercut1: depth * IN }), inches, limitSet('mil-2035a-23'))
        .filter(({ measurement }) => measurement === 'undercut1')
        .map(({ call }) => call);
    expect(at(0.4, 0.03)).toEqual(['accept']);
    expect(at(0.4, 0.04)).toEqual(['reject']);
    // a tenth of 0.2 in
    expect(at(0.2, 0.021)).toEqual(['reject']);
    expect(at(0.5, 1 / 32)).toEqual(['accept']);
    expect(at(0.5, 0.05)).toEqual(['accept', 'notAssessed']);
    expect(at(0.5, 0.07)).toEqual(['reject']);
  });

  /** thickness; size where both sides are welded, and where one is, in */
  const table4 = [
    [0.025, 0.02, 0.04],
    [0.05, 0.04, 0.075],
    [0.078, 0.06, 0.12],
    [0.09, 0.07, 0.14],
    [0.125, 0.09, 0.19],
    [0.156, 0.12, 0.23],
    [0.188, 0.14, 0.28],
    [0.25, 0.19, 0.38],
    [0.5, 0.38, 0.75],
  ] as const;

  it('MIL-W-47091A(MI), 3.6: fillet penetration in section, by the thickness', () => {
    const of = (t: number): Measurements => fillet({ ...plates(t * IN), rootPenetration: 1 });
    const on = (t: number): readonly number[] =>
      limitOn('mil-w-47091a', 'rootPenetration', of(t), inches);
    // over 1/4 in at least 1/16 in
    expect(on(0.3)).toEqual([0.0625]);
    // up to 1/4 in 15 to 25 per cent of the thickness
    expect(on(0.25)).toEqual([near(0.0375), near(0.0625)]);
    expect(on(0.2)).toEqual([near(0.03), near(0.05)]);
  });

  it.each(table4)('MIL-STD-2219A Table IV, T = %s in', (t, both, one) => {
    const at = (size: number) =>
      judge(fillet({ ...plates(t * IN), sizeEqual: size * IN }), inches, limitSet('mil-std-2219a'))
        .filter(({ measurement }) => measurement === 'sizeEqual')
        .map(({ call }) => call);
    expect(at(both - 0.005)).toEqual(['reject']);
    expect(at(both)).toEqual(['accept', 'notAssessed']);
    expect(at(one - 0.005)).toEqual(['accept', 'notAssessed']);
    expect(at(one)).toEqual(['accept']);
  });

  it('UFGS 15216N: undercut, convexity, a leg up to a quarter over, reinforcement', () => {
    const set = 'ufgs-15216n';
    const metric = sheetIn('mm');
    expect(limitOn(set, 'undercut1', fillet({}), inches)).toEqual([1 / 32]);
    expect(limitOn(set, 'undercut1', fillet({}), metric)).toEqual([1]);
    // a tenth of the longer leg of 10 mm, and 1 mm; of 1/2 in, and 0.03 in
    expect(limitOn(set, 'convexity', fillet({ leg2: 10 }), metric)).toEqual([near(2)]);
    expect(limitOn(set, 'convexity', fillet({ leg2: 12.7 }), inches)).toEqual([near(0.08)]);
    expect(limitOn(set, 'leg1', fillet({}), metric)).toEqual([7, 8.75]);
    expect(limitOn(set, 'faceReinforcement.higher', weld({}), inches)).toEqual([3 / 16]);
    expect(limitOn(set, 'faceReinforcement.higher', weld({}), metric)).toEqual([4.8]);
  });

  it('gaps of fillets: MIL-M-53008 and the Austin text 3/16 in, a lap there 1/16 in', () => {
    expect(limitOn('mil-m-53008', 'rootGap', fillet({}), inches)).toEqual([3 / 16]);
    expect(limitOn('austin-723s', 'rootGap', fillet({}), inches)).toEqual([3 / 16]);
    const lap = fillet({}, { form: 'lap' });
    expect(limitOn('austin-723s', 'rootGap', lap, inches)).toEqual([1 / 16]);
  });

  it('LANL: undercut, and a hollow root that keeps the wall', () => {
    expect(limitOn('lanl', 'undercut1', weld({}), inches)).toEqual([1 / 32]);
    const hollow = weld({ ...plates(12.7), rootConcavity: 0.4 });
    expect(limitOn('lanl', 'jointThickness', hollow, inches)).toEqual([near(0.5)]);
  });
});
