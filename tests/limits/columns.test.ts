import { describe, expect, it } from 'vitest';
import { columnConflicts } from '../../src/limits/index.ts';
import {
  butt,
  flatFillet,
  house,
  iso,
  limitSet,
  measured,
  sheetWith,
  soundButt,
} from './hand-made.ts';
import { compiledSet, row } from './own-rows.ts';

describe('a document’s two columns on one joint', () => {
  it('are said to disagree where one accepts what the other rejects', () => {
    // house 2.2: 1.4 mm in one column, 0.055 in = 1.397 mm in the other
    const fitUp = measured({ stage: 'fitUp' }, { rootGap: 1.399, dihedralAngle: 90 });
    const [conflict, ...others] = columnConflicts(fitUp, sheetWith(), house);
    expect(others).toEqual([]);
    expect(conflict?.mm).toMatchObject({ measurement: 'rootGap', call: 'accept' });
    expect(conflict?.in).toMatchObject({ measurement: 'rootGap', call: 'reject' });
  });

  it('are said to disagree where a thickness falls into another band of each', () => {
    // ASME B31.3 Table 341.3.2, public extract: t to 6 mm 1.5 mm and over it 3 mm; to 1/4 in
    // (6.35 mm) 1/16 in (1.59 mm). At 6.2 mm a cap of 2 mm is within the one and over the other.
    const weld = measured(butt, {
      ...soundButt,
      t1: 6.2,
      t2: 6.2,
      tMin: 6.2,
      tMax: 6.2,
      'faceReinforcement.higher': 2,
    });
    const conflicts = columnConflicts(weld, sheetWith(), limitSet('b313-normal'));
    expect(conflicts.map(({ mm }) => mm.measurement)).toEqual(['faceReinforcement.higher']);
    const [conflict] = conflicts;
    expect(conflict?.mm).toMatchObject({ call: 'accept', printed: { value: 3, unit: 'mm' } });
    expect(conflict?.in).toMatchObject({ call: 'reject', printed: { value: 1 / 16, unit: 'in' } });
  });

  it('agree where another row of the same measurement rejects in both', async () => {
    const fitUp = measured({ stage: 'fitUp' }, { rootGap: 2, dihedralAngle: 90 });
    const set = await compiledSet(
      row('one', 'rootGap', { max: { mm: '3 mm', in: '0.05 in' } }),
      row('other', 'rootGap', { max: { mm: '1 mm', in: '0.04 in' } }),
    );
    expect(columnConflicts(fitUp, sheetWith(), set)).toEqual([]);
  });

  it('are told by the row that leaves least room, wherever it stands', async () => {
    const fitUp = measured({ stage: 'fitUp' }, { rootGap: 2, dihedralAngle: 90 });
    const wide = row('wide', 'rootGap', { max: { mm: '4 mm', in: '0.2 in' } });
    const close = row('close', 'rootGap', { max: { mm: '2.5 mm', in: '0.05 in' } });
    const closer = row('closer', 'rootGap', { max: { mm: '3 mm', in: '0.04 in' } });
    for (const rows of [
      [wide, close, closer],
      [closer, close, wide],
      [close, wide, closer],
    ]) {
      const [conflict] = columnConflicts(fitUp, sheetWith(), await compiledSet(...rows));
      expect(conflict?.mm.limit).toBe(2.5);
      expect(conflict?.in.limit).toBeCloseTo(0.04 * 25.4, 12);
    }
  });

  it('are compared by the document’s own rows, not by what the sheet asks', () => {
    const short = measured({}, { ...flatFillet, leg1: 2, leg2: 2 });
    expect(
      columnConflicts(short, sheetWith(), house).map(({ mm }) => mm.source.status),
    ).not.toContain('sheet');
  });

  it('agree elsewhere', () => {
    const fitUp = measured({ stage: 'fitUp' }, { rootGap: 1, dihedralAngle: 90 });
    expect(columnConflicts(fitUp, sheetWith(), house)).toEqual([]);
  });

  it('can’t disagree where a document has one column only', () => {
    const weld = measured({}, { ...flatFillet, undercut1: 0.7 });
    expect(columnConflicts(weld, sheetWith(), iso)).toEqual([]);
  });
});
