/**
 * ISO 5817 level C, each limit worked by hand from the row as it was read in
 * public extracts of the 2003 (EN ISO 5817:2007), 2014 and 2023 editions; the
 * rows marked "from memory" in the data are from memory here too, verify.
 */
import { describe, expect, it } from 'vitest';
import { judge, type Check, type JobSheet } from '../../src/limits/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import { butt, flatFillet, iso, measured, mm, sheetWith, soundButt } from './hand-made.ts';

type Values = Partial<Record<MeasurementId, number>>;

const throat = (a: number): JobSheet =>
  sheetWith({ size: { as: 'throat', first: mm(a), second: null } });
function checkOf(id: string, of: Measurements, sheet: JobSheet): Check {
  const check = judge(of, sheet, iso).find((one) => one.id === id);
  if (check === undefined) throw new Error(`no check ${id}`);
  return check;
}
const fillet = (values: Values): Measurements => measured({}, { ...flatFillet, ...values });
const weld = (values: Values, heading: object = {}): Measurements =>
  measured({ ...butt, ...heading }, { ...soundButt, ...values });
const plates = (t: number): Values => ({ t1: t, t2: t, tMin: t, tMax: t });

describe('every row of ISO 5817 level C gives the limit worked by hand', () => {
  /** row, measurements that differ from the sound weld, sheet, limit, working */
  const filletRows: readonly (readonly [string, Values, JobSheet, number, string])[] = [
    ['5011:undercut1', plates(4), throat(5), 0.4, '0.1 × 4'],
    ['5011:undercut2', plates(20), throat(5), 0.5, '0.1 × 20 = 2, at most 0.5'],
    ['5011-thin:undercut2', plates(2), throat(5), 0.2, '0.1 × 2'],
    ['503:convexity', { faceWidth: 10 }, throat(5), 2.5, '1 + 0.15 × 10'],
    ['503:convexity', { faceWidth: 30 }, throat(5), 4, '1 + 0.15 × 30 = 5.5, at most 4'],
    ['505-fillet:toeAngle', {}, throat(5), 100, 'as printed'],
    ['506:overlap1', {}, throat(5), 0, 'not permitted'],
    ['512:legDifference', {}, throat(5), 2.75, '2 + 0.15 × 5'],
    ['5213:isoscelesThroat', {}, throat(5), 4.2, '5 − (0.3 + 0.1 × 5)'],
    ['5213:isoscelesThroat', {}, throat(9), 8, '9 − 1, since 0.3 + 0.9 = 1.2 is over 1'],
    ['5213-thin:isoscelesThroat', plates(3), throat(2), 1.8, '2 − 0.2 (from memory)'],
    ['5214:isoscelesThroat', {}, throat(5), 7, '5 + 1 + 0.2 × 5'],
    ['5214:isoscelesThroat', {}, throat(20), 24, '20 + 4, since 1 + 0.2 × 20 = 5 is over 4'],
    ['617:rootGap', { isoscelesThroat: 6 }, throat(5), 1.7, '0.5 + 0.2 × 6, the actual throat'],
    ['617:rootGap', { isoscelesThroat: 15 }, throat(5), 3, '0.5 + 0.2 × 15 = 3.5, at most 3'],
    ['617-thin:rootGap', { ...plates(3), isoscelesThroat: 4 }, throat(3), 0.7, '0.3 + 0.1 × 4'],
  ];
  const buttRows: readonly (readonly [string, Values, object, number, string])[] = [
    ['4021:incompletePenetration', {}, {}, 0, 'not permitted'],
    [
      '5011-second:rootUndercut1',
      plates(10),
      { form: 'doubleV' },
      0.5,
      '0.1 × 10 = 1, at most 0.5',
    ],
    ['5011-second-thin:rootUndercut1', plates(3), { form: 'doubleBevel' }, 0.3, '0.1 × 3'],
    ['5013:rootUndercut1', plates(8), {}, 0.8, '0.1 × 8'],
    ['5013:rootUndercut2', plates(20), {}, 1, '0.1 × 20 = 2, at most 1'],
    ['5013-thin:rootUndercut2', plates(2), {}, 0.2, '0.1 × 2'],
    ['502:faceReinforcement.higher', { faceWidth: 20 }, {}, 4, '1 + 0.15 × 20'],
    ['502:faceReinforcement.higher', { faceWidth: 50 }, {}, 7, '1 + 0.15 × 50 = 8.5, at most 7'],
    [
      '502-second:rootReinforcement.higher',
      { rootWidth: 10 },
      { form: 'doubleV' },
      2.5,
      '1 + 0.15 × 10',
    ],
    ['504:rootReinforcement.higher', { rootWidth: 4 }, {}, 3.4, '1 + 0.6 × 4'],
    ['504:rootReinforcement.higher', { rootWidth: 6 }, {}, 4, '1 + 0.6 × 6 = 4.6, at most 4'],
    ['504-thin:rootReinforcement.higher', { ...plates(3), rootWidth: 4 }, {}, 2.2, '1 + 0.3 × 4'],
    ['505-butt:toeAngle', {}, {}, 110, 'as printed'],
    ['506:overlap2', {}, {}, 0, 'not permitted'],
    ['511:underfill', plates(8), {}, 0.8, '0.1 × 8'],
    ['511:underfill', plates(14), {}, 1, '0.1 × 14 = 1.4, at most 1'],
    ['511-thin:underfill', plates(3), {}, 0.3, '0.1 × 3'],
    ['511-second:rootConcavity', plates(14), { form: 'doubleV' }, 1, 'at most 1'],
    ['511-second-thin:rootConcavity', plates(2), { form: 'doubleV' }, 0.2, '0.1 × 2'],
    ['515:rootConcavity', plates(8), {}, 0.8, '0.1 × 8'],
    ['515:rootConcavity', plates(14), {}, 1, 'at most 1'],
    ['515-thin:rootConcavity', plates(3), {}, 0.3, '0.1 × 3'],
    ['5071:misalignment', plates(10), {}, 1.5, '0.15 × 10'],
    ['5071:misalignment', plates(40), {}, 4, '0.15 × 40 = 6, at most 4'],
    ['5071-thin:misalignment', plates(2), {}, 0.5, '0.2 + 0.15 × 2'],
    ['5072:misalignment', plates(5), { product: 'pipe' }, 2.5, '0.5 × 5'],
    ['5072:misalignment', plates(10), { product: 'pipe' }, 3, '0.5 × 10 = 5, at most 3'],
  ];
  const fitUpRows: readonly (readonly [string, Values, JobSheet, number, string])[] = [
    ['617-fit-up:rootGap', plates(12), throat(5), 1.5, '0.5 + 0.2 × 5, nominal (from memory)'],
    ['617-fit-up:rootGap', plates(12), throat(14), 3, 'at most 3'],
    ['617-fit-up-thin:rootGap', plates(3), throat(2), 0.5, '0.3 + 0.1 × 2'],
  ];

  it.each(filletRows)('fillet %s, case %#: %s', (id, values, sheet, limit) => {
    expect(checkOf(id, fillet(values), sheet).limit).toBeCloseTo(limit, 12);
  });
  it.each(buttRows)('butt %s, case %#', (id, values, heading, limit) => {
    expect(
      checkOf(id, weld({ incompletePenetration: 0, ...values }, heading), sheetWith()).limit,
    ).toBeCloseTo(limit, 12);
  });
  it.each(fitUpRows)('fit-up %s, case %#', (id, values, sheet, limit) => {
    const of = measured({ stage: 'fitUp' }, { ...values, rootGap: 0.5, dihedralAngle: 90 });
    expect(checkOf(id, of, sheet).limit).toBeCloseTo(limit, 12);
  });

  it('and none is left out', () => {
    const worked = new Set(
      [...filletRows, ...buttRows, ...fitUpRows].map(([id]) => id.slice(0, id.indexOf(':'))),
    );
    const rows = iso.criteria.filter(({ unassessed }) => unassessed === undefined);
    expect(rows.map(({ id }) => id).filter((id) => !worked.has(id))).toEqual([]);
  });
});
