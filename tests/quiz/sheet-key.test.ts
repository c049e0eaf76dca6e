import { describe, expect, it } from 'vitest';
import { defaultJobSheet, plainMarks } from '../../src/limits/index.ts';
import { sheetKey } from '../../src/quiz/sheet-key.ts';

const sheet = defaultJobSheet();

describe('what tells sheets apart', () => {
  it('is not what a job, its papers or its steel are called, nor the marks of its symbol', () => {
    const renamed = {
      ...sheet,
      job: 'gate 4',
      weld: 'W 12',
      wps: 'P 3',
      drawing: 'D 7',
      code: 'as ordered',
      material: 'S355',
      process: '135',
      symbol: { ...plainMarks },
    };
    expect(sheetKey(renamed)).toBe(sheetKey(sheet));
  });

  it('is all that has a say in a call', () => {
    const others = [
      { ...sheet, extent: 'typical' },
      { ...sheet, column: 'in' },
      { ...sheet, dihedralAngle: 100 },
      { ...sheet, rootAccessible: !sheet.rootAccessible },
      { ...sheet, size: { ...sheet.size, first: { unit: 'mm', value: 9 } } },
      { ...sheet, guard: { ...sheet.guard, factor: 2 } },
    ] as const;
    const keys = [sheet, ...others].map(sheetKey);
    expect(new Set(keys).size).toBe(keys.length);
  });
});
