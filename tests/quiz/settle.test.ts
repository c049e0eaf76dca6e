import { describe, expect, it } from 'vitest';
import { defaultJobSheet } from '../../src/limits/index.ts';
import { openSheet, settledSheet } from '../../src/quiz/index.ts';

describe('a sheet with what it leaves open said', () => {
  it('keeps what is said', () => {
    const said = { ...defaultJobSheet(), extent: 'typical' } as const;
    expect(settledSheet(said).extent).toBe('typical');
    const { guard } = said;
    const doubtful = { ...said, guard: { ...guard, factor: 2 }, rounding: 'lastPlace' } as const;
    expect(settledSheet(doubtful).guard.factor).toBe(0);
    expect(openSheet(doubtful).guard.factor).toBe(2);
    expect([settledSheet(doubtful).rounding, openSheet(doubtful).rounding]).toEqual([
      'absolute',
      'absolute',
    ]);
    const { service } = settledSheet({
      ...said,
      service: { ...said.service, seam: 'longitudinal' },
    });
    expect(service).toMatchObject({ seam: 'longitudinal', category: 'A' });
  });
});
