import { expect, test } from 'vitest';
import { build, defaultJoint, type Joint } from '../../../src/joint/index.ts';
import { handlesOf } from './any-scene.ts';

test('an undercut at either toe of a butt weld has its ring before one that is not there', () => {
  const fields = (changes: object): readonly string[] => {
    const joint = { ...defaultJoint('butt'), undercut1Depth: 0, ...changes } as Joint;
    return handlesOf(joint, build(joint), null).map(({ field }) => field);
  };
  expect(fields({ undercut2Depth: 0.7 })).toContain('undercut2Depth');
  expect(fields({ undercut2Depth: 0.7 })).not.toContain('undercut1Depth');
  expect(fields({ undercut1Depth: 0.7, undercut2Depth: 0 })).toContain('undercut1Depth');
});

test('rings keep their order when a flaw comes or goes, or the one in hand would lose the focus', () => {
  const fields = (changes: object): readonly string[] => {
    const joint = { ...defaultJoint('fillet', 'tee'), convexity: 1, ...changes } as Joint;
    return handlesOf(joint, build(joint), null).map(({ field }) => field);
  };
  const with2 = fields({ undercut2Depth: 0.6 });
  expect(with2).toContain('undercut2Depth');
  expect(fields({ undercut2Depth: 0 })).toEqual(with2);
});
