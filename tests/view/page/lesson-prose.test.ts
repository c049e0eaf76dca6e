import { describe, expect, it } from 'vitest';
import { prose } from '../../../src/view/page/lesson/prose.ts';
import type { Reading } from '../../../src/view/text.ts';

const mm: Reading = { units: 'mm', inches: 'decimal', terms: 'US' };
const sentence = 'An 8.0 mm fillet holds 0.7071 × 8.0 = 5.66 mm of throat at 90 degrees.';

describe('lesson text in the reader’s unit', () => {
  it('stays as it is written for a reader of millimetres', () => {
    expect(prose(sentence, mm)).toBe(sentence);
  });

  it('says after each length what it is in inches: 8 ÷ 25.4 = 0.315, 5.66 ÷ 25.4 = 0.223', () => {
    expect(prose(sentence, { ...mm, units: 'in' })).toMatch(
      /^An 8\.0 mm \(0\.315 in\) fillet holds 0\.7071 × 8\.0 = 5\.66 mm \(0\.223 in\) of throat/,
    );
  });
});
