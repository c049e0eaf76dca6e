import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import { recordOf } from '../../src/quiz/index.ts';
import { questionAbout } from './made-question.ts';
import { sheetUnder } from './question-sheets.ts';

describe('a call as it is kept', () => {
  const question = {
    ...questionAbout(
      { ...defaultJoint('fillet'), leg1: 6 },
      sheetUnder('austin-723s'),
      'sheet_leg:leg1',
    ),
    distance: 0.154,
    exceedance: 1,
  };
  const answer = { call: 'accept', fault: null, sure: 70 } as const;
  const circumstances = {
    id: 'c1',
    at: '2026-03-02T08:15:00.000Z',
    way: 'pairs',
    run: 'r1',
    pxPerMm: 24.5,
    took: 1234.6,
  } as const;

  it('has everything that a figure is made of, times in whole ms', () => {
    const { spec, sheet, decisive } = question;
    expect(recordOf(question, answer, circumstances)).toEqual({
      version: 1,
      kind: 'call',
      id: 'c1',
      at: '2026-03-02T08:15:00.000Z',
      way: 'pairs',
      run: 'r1',
      spec,
      skill: spec.skill,
      limitSet: sheet.limitSet,
      limit: 7,
      unit: 'mm',
      scale: 'ratio',
      distance: 0.154,
      exceedance: 1,
      truth: 'reject',
      fault: 'leg.min',
      answer,
      pxPerMm: 24.5,
      took: 1235,
    });
    expect(decisive.limit).toBe(7);
  });

  it('has a limit of none where nothing is permitted in words', () => {
    const bare = { ...question, decisive: { ...question.decisive, limit: null } };
    expect(recordOf(bare, answer, circumstances).limit).toBe(0);
  });
});
