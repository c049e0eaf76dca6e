import { describe, expect, it } from 'vitest';
import { columnConflicts } from '../../src/limits/index.ts';
import { flatFillet, house, iso, measured, sheetWith } from './hand-made.ts';

describe('a document’s two columns on one joint', () => {
  it('are said to disagree where one accepts what the other rejects', () => {
    // house 2.2: 1.4 mm in one column, 0.055 in = 1.397 mm in the other
    const fitUp = measured({ stage: 'fitUp' }, { rootGap: 1.399, dihedralAngle: 90 });
    const [conflict, ...others] = columnConflicts(fitUp, sheetWith(), house);
    expect(others).toEqual([]);
    expect(conflict?.mm).toMatchObject({ measurement: 'rootGap', call: 'accept' });
    expect(conflict?.in).toMatchObject({ measurement: 'rootGap', call: 'reject' });
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
