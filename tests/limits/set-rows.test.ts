import { describe, expect, it } from 'vitest';
import { judge } from '../../src/limits/index.ts';
import { butt, flatFillet, limitSet, measured, sheetWith, soundButt } from './hand-made.ts';
import { compiledSet, row } from './own-rows.ts';

const fitUp = { stage: 'fitUp', kind: 'butt', form: 'singleV' } as const;

describe('the rows of a set', () => {
  it('stand as the document has them, behind what stands for the sheet’s throat and how plates lie', async () => {
    const set = await compiledSet(
      row('undercut', 'undercut1', { max: { mm: '0.5 mm' } }),
      row('bent', 'angularMisalignment', { max: { any: '2 deg' } }),
      row('underfill', 'underfill', { max: { mm: '1 mm' } }),
      row('apart', 'misalignment', { max: { mm: '1 mm' } }),
      row('throat', 'isoscelesThroat', { min: { mm: '3 mm' }, standsFor: 'throat' }),
      row('last', 'undercut2', { max: { mm: '0.5 mm' } }),
    );
    const values = {
      ...soundButt,
      angularMisalignment: 0,
      undercut1: 0,
      undercut2: 0,
      isoscelesThroat: 4,
    };
    const ids = judge(measured(butt, values), sheetWith(), set)
      .filter(({ source }) => source.document === 'd')
      .map(({ id }) => id);
    expect(ids).toEqual([
      'throat:isoscelesThroat',
      'apart:misalignment',
      'bent:angularMisalignment',
      'undercut:undercut1',
      'underfill:underfill',
      'last:undercut2',
    ]);
  });

  it('name the plate that they are applied to, and keep the remark of their source', async () => {
    const set = await compiledSet(
      {
        ...row('groove', 'undercut1', { max: { mm: '0.5 mm' } }),
        measurements: ['undercut1', 'undercut2'],
      },
      row('plain', 'concavity', { max: { mm: '0.5 mm' }, note: 'of the body' }),
      row('datum', 'faceReinforcement.higher', { max: { mm: '3 mm' } }),
    );
    const own = judge(measured({}, { ...flatFillet, undercut2: 0 }), sheetWith(), set).filter(
      ({ source }) => source.document === 'd',
    );
    const key = 'limits_name_underfill';
    expect(own.map(({ name }) => name)).toEqual([
      { key, values: { side: 1 } },
      { key, values: { side: 2 } },
      { key },
    ]);
    expect(own.map(({ source }) => source.note)).toEqual([undefined, undefined, 'of the body']);
    expect(own.map(({ sense, unit }) => [sense, unit])).toEqual([
      ['max', 'mm'],
      ['max', 'mm'],
      ['max', 'mm'],
    ]);
  });

  it('count with a strip under the root, without one, or either way', async () => {
    const set = await compiledSet(
      row('bare', 'underfill', { max: { mm: '1 mm' }, backing: 'none' }),
      row('backed', 'underfill', { max: { mm: '2 mm' }, backing: 'strip' }),
      row('either', 'underfill', { max: { mm: '3 mm' } }),
    );
    const on = (backing: unknown) =>
      judge(measured({ ...butt, backing: backing as null }, soundButt), sheetWith(), set)
        .filter(({ source }) => source.document === 'd')
        .map(({ limit }) => limit);
    expect(on(null)).toEqual([1, 3]);
    expect(on([])).toEqual([2, 3]);
  });

  it('round an angle by the last place of angles, a length by its column’s', async () => {
    const set = await compiledSet(
      row('angle', 'grooveAngle', { max: { any: '60 deg' } }),
      row('gap', 'rootOpening', { max: { mm: '2 mm', in: '0.08 in' } }),
    );
    const rounded = (grooveAngle: number, rootOpening: number, column: 'mm' | 'in') => {
      const sheet = sheetWith({ rounding: 'lastPlace', column });
      return judge(measured(fitUp, { grooveAngle, rootOpening }), sheet, set)
        .filter(({ source }) => source.document === 'd')
        .map(({ call }) => call);
    };
    // a degree, a tenth of a millimetre, a hundredth of an inch
    expect(rounded(60.4, 2.04, 'mm')).toEqual(['accept', 'accept']);
    expect(rounded(60.6, 2.06, 'mm')).toEqual(['reject', 'reject']);
    expect(rounded(60.4, 0.084 * 25.4, 'in')).toEqual(['accept', 'accept']);
    expect(rounded(60.6, 0.086 * 25.4, 'in')).toEqual(['reject', 'reject']);
  });

  it('say whose root face is the lesser and whose the greater', () => {
    const faces = measured(fitUp, { rootFace: 1, rootFace1: 1, rootFace2: 3, rootOpening: 2 });
    const { groove } = sheetWith();
    const asked = sheetWith({
      groove: {
        ...groove,
        rootFace: {
          nominal: { unit: 'mm', value: 2 },
          minus: { unit: 'mm', value: 0.5 },
          plus: { unit: 'mm', value: 0.5 },
        },
      },
    });
    const found = judge(faces, asked, limitSet('iso5817-b')).filter(({ measurement }) =>
      measurement.startsWith('rootFace'),
    );
    const told = found.map(({ sense, measured: value, call, reasons }) => [
      sense,
      value,
      call,
      reasons.find(({ key }) => key.includes('root_face'))?.key,
    ]);
    expect(told).toContainEqual(['min', 1, 'reject', 'limits_reason_lesser_root_face']);
    expect(told).toContainEqual(['max', 3, 'reject', 'limits_reason_greater_root_face']);
  });
});
