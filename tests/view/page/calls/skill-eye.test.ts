import { describe, expect, it } from 'vitest';
import { shownAt, skillEyes } from '../../../../src/view/page/calls/progress/skill-eye.ts';
import { callWith } from '../../../quiz/any-call.ts';

describe('the magnification that is told of a skill', () => {
  it('is that of its calls even where none of them makes a figure', () => {
    const [skill] = skillEyes([
      callWith({ id: 'a', way: 'rareFaults', pxPerMm: 20 }),
      callWith({ id: 'b', way: 'rareFaults', pxPerMm: 24 }),
    ]);
    expect(skill?.eye).toBeNull();
    expect(skill && shownAt(skill)).toBe(22);
  });

  it('is that of the calls that figures are made of, where there are any', () => {
    const [skill] = skillEyes([
      callWith({ id: 'a', pxPerMm: 30 }),
      callWith({ id: 'b', way: 'rareFaults', pxPerMm: 10 }),
    ]);
    expect(skill && shownAt(skill)).toBe(30);
  });
});
