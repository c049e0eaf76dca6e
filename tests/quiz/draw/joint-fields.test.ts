import { describe, expect, it } from 'vitest';
import { defaultJoint } from '../../../src/joint/index.ts';
import {
  boundsOf,
  finely,
  numberIn,
  tidy,
  within,
  withFields,
} from '../../../src/quiz/draw/joint-fields.ts';

const tee = defaultJoint('fillet');

describe('the fields of a joint', () => {
  it('are put in place of its own, the rest left as it was', () => {
    expect(withFields(tee, { leg1: 9 })).toEqual({ ...tee, leg1: 9 });
    expect(withFields(tee, {})).toEqual(tee);
  });

  it('read as numbers, 0 where its kind has none such', () => {
    expect(numberIn({ ...tee, leg1: 9 }, 'leg1')).toBe(9);
    expect([numberIn(tee, 'capHeight'), numberIn(tee, 'arrangement')]).toEqual([0, 0]);
  });

  it('stay within what the joint of that kind allows', () => {
    expect(boundsOf('fillet', 'leg1')).toEqual([2, 30]);
    expect(boundsOf('butt', 'angularMisalignment')).toEqual([-10, 10]);
    expect(boundsOf('fillet', 'capHeight')).toEqual([0, 0]);
    expect([1, 17, 31].map((leg) => within('fillet', 'leg1', leg))).toEqual([2, 17, 30]);
  });

  it('are rounded to a millionth, what is solved to a hundredth of that', () => {
    const joint = tidy({ ...tee, leg1: 6.123456789, rootGap: 0.1 + 0.2 });
    expect(joint).toMatchObject({ leg1: 6.123457, rootGap: 0.3, arrangement: 'tee' });
    expect(finely(6.12345678912)).toBe(6.12345679);
    expect(tidy(tee)).toEqual(tee);
  });
});
