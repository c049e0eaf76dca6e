import { expect, it } from 'vitest';
import { defaultJoint } from '../../../../src/joint/index.ts';
import { feedbackRows } from '../../../../src/view/page/calls/feedback-rows.ts';
import { questionAbout } from '../../../quiz/made-question.ts';
import { sheetUnder } from '../../../quiz/question-sheets.ts';

it('shows what decides, what was named, and of the rest whatever rejects before what does not', () => {
  const one = sheetUnder('iso5817-c', { extent: 'typical' });
  // metal rolled over toe 2 leaves it steep: the toe angle rejects too, and stands far down the sheet
  const joint = { ...defaultJoint('fillet'), leg1: 8, leg2: 8, overlap2: 1 };
  const question = questionAbout(joint, one, '506:overlap2');
  const ids = (named: Parameters<typeof feedbackRows>[1]) =>
    feedbackRows(question, named).map(({ id }) => id);
  expect(question.checks.find(({ id }) => id === '505-fillet:toeAngle')?.call).toBe('reject');
  expect(ids(null).slice(0, 2)).toEqual(['506:overlap2', '505-fillet:toeAngle']);
  expect(ids('undercut.max').slice(0, 4)).toEqual([
    '506:overlap2',
    '5011:undercut1',
    '5011:undercut2',
    '505-fillet:toeAngle',
  ]);
  expect(ids(null)).toHaveLength(5);
});
