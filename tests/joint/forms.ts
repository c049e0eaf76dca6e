import type { ButtJoint, FilletJoint } from '../../src/joint/index.ts';

/** Every arrangement of a fillet and every preparation of a butt. */
export const arrangements: readonly FilletJoint['arrangement'][] = ['tee', 'lap', 'corner'];
export const preparations: readonly ButtJoint['preparation'][] = [
  'square',
  'singleV',
  'doubleV',
  'singleBevel',
  'doubleBevel',
  'singleU',
  'singleJ',
];
