import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import { rejudge } from '../../src/quiz/rejudge.ts';
import { questionAbout } from './made-question.ts';
import { sheetUnder } from './question-sheets.ts';

/** Legs of 7 mm asked for: a leg of 6 is short, and so is the throat between 6 and 8. */
const one = sheetUnder('austin-723s');
const tee = (leg1: number, leg2: number, changed = {}) => ({
  ...defaultJoint('fillet'),
  leg1,
  leg2,
  ...changed,
});
const about = (joint: ReturnType<typeof tee>) => questionAbout(joint, one, 'sheet_leg:leg1');

describe('a question judged again', () => {
  it('comes to its truth where nothing is misread', () => {
    expect(rejudge(about(tee(6, 8)), one.limits, {})).toEqual({
      call: 'reject',
      faults: ['leg.min'],
    });
    expect(rejudge(about(tee(8, 8)), one.limits, {})).toEqual({ call: 'accept', faults: [] });
  });

  it('leaves out what says the same again: the short throat of a leg that is read as full', () => {
    const question = about(tee(6, 8));
    const throat = question.checks.find(({ id }) => id === 'sheet_throat:isoscelesThroat');
    expect(throat?.call).toBe('reject');
    expect(rejudge(question, one.limits, { values: { leg1: 8 } })).toEqual({
      call: 'accept',
      faults: [],
    });
  });

  it('still hears the same fault elsewhere: the other leg, as short', () => {
    expect(rejudge(about(tee(6, 6)), one.limits, { values: { leg1: 8 } })).toEqual({
      call: 'reject',
      faults: ['leg.min'],
    });
  });

  it('names every other fault once', () => {
    const iso = sheetUnder('iso5817-c', { extent: 'typical' });
    const undercut = { undercut1Depth: 1, undercut2Depth: 1, undercut1Width: 3, undercut2Width: 3 };
    const question = questionAbout(tee(6, 6, undercut), iso, 'sheet_leg:leg1');
    const verdict = rejudge(question, iso.limits, {});
    expect(verdict?.call).toBe('reject');
    expect([...(verdict?.faults ?? [])].sort()).toEqual(['leg.min', 'undercut.max']);
  });

  it('takes a value for another only where the section has it, and changes the section in nothing', () => {
    const house = sheetUnder('lock-gate-house');
    const square = { ...defaultJoint('butt', 'singleV'), stage: 'fitUp', offset: 0 } as const;
    const question = questionAbout(square, house, 'misalignment-plate:misalignment');
    // a single V has no root side to bevel, though the set limits one
    expect(question.measurements.values.rootBevelAngle1).toBeUndefined();
    const asIs = rejudge(question, house.limits, {});
    expect(rejudge(question, house.limits, { values: { rootBevelAngle1: 80 } })).toEqual(asIs);
    const full = about(tee(8, 8));
    expect(rejudge(full, one.limits, { values: { leg1: 5 } })?.call).toBe('reject');
    expect(full.measurements.values.leg1?.value).toBeCloseTo(8, 9);
    expect(rejudge(full, one.limits, {})?.call).toBe('accept');
  });

  it('is judged by another sheet where that is what was misread', () => {
    const question = about(tee(8, 8));
    const larger = { ...one.sheet.size, first: { unit: 'mm', value: 9 } } as const;
    const misread = { sheet: { ...one.sheet, size: larger } };
    expect(rejudge(question, one.limits, misread)?.call).toBe('reject');
  });

  it('says nothing where the decisive check has nothing to say', () => {
    const iso = sheetUnder('iso5817-c', { extent: 'typical' });
    const undercut = { undercut1Depth: 1, undercut1Width: 3 };
    const question = questionAbout(tee(8, 8, undercut), iso, '5011:undercut1');
    expect(rejudge(question, iso.limits, {})?.call).toBe('reject');
    const none = { ...iso.limits, criteria: [] };
    expect(rejudge(question, iso.limits, { limits: none })).toBeNull();
    // a least limit of the same measurement is another check
    const least = { ...question, decisive: { ...question.decisive, sense: 'min' } } as const;
    expect(rejudge(least, iso.limits, {})).toBeNull();
  });

  it('is open where the sheet leaves it so, and nothing rejects', () => {
    const open = sheetUnder('iso5817-c', { extent: 'unknown' });
    const cap = { ...defaultJoint('butt'), capHeight: -0.4 };
    const question = questionAbout(cap, open, '511:underfill');
    expect(question.truth).toBe('refer');
    expect(rejudge(question, open.limits, {})).toEqual({ call: 'refer', faults: [] });
  });
});
