import { describe, expect, it } from 'vitest';
import { wrongRules } from '../../src/quiz/index.ts';
import calls from '../../src/view/messages/en/calls.json' with { type: 'json' };

describe('what the quiz has to say', () => {
  it('has a sentence for each mistake, and no sentence for a mistake that there is not', () => {
    const wanted = wrongRules.map((rule) => `calls_mistake_${rule.toLowerCase()}`);
    const written = Object.keys(calls).filter((key) => key.startsWith('calls_mistake_'));
    expect(written.filter((key) => !/_(intro|oneof)$/u.test(key)).sort()).toEqual(
      [...wanted].sort(),
    );
  });

  it('has a sentence for each reason that nothing can be asked', () => {
    const reasons = ['no_such_skill', 'not_seen', 'not_on_this_sheet'];
    expect(Object.keys(calls)).toEqual(
      expect.arrayContaining(reasons.map((reason) => `calls_error_${reason}`)),
    );
  });
});
