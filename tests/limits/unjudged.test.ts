import { describe, expect, it } from 'vitest';
import { build, defaultJoint, type ButtJoint, type FilletJoint } from '../../src/joint/index.ts';
import {
  defaultJobSheet,
  judge,
  judgeAll,
  limitSets,
  overallCall,
  type Check,
} from '../../src/limits/index.ts';
import { measure, type Measurements } from '../../src/measure/index.ts';
import { limitSet } from './hand-made.ts';

const sheet = defaultJobSheet();
const fillet = (changes: Partial<FilletJoint> = {}): Measurements =>
  measure(build({ ...defaultJoint('fillet'), ...changes }));
const butt = (changes: Partial<ButtJoint>): Measurements =>
  measure(build({ ...defaultJoint('butt'), ...changes }));
const all = (measurements: Measurements, id: string): readonly Check[] =>
  judgeAll(measurements, sheet, limitSet(id));
const unjudged = (checks: readonly Check[]) => checks.filter(({ id }) => id.startsWith('unjudged'));

describe('an imperfection that a set has no row for', () => {
  it('is a row of its own that is not assessed, so that the joint is referred', () => {
    const weld = fillet({ undercut2Depth: 1, overlap1: 2 });
    expect(overallCall(judge(weld, sheet, limitSet('api-1104'))).call).toBe('accept');
    const checks = all(weld, 'api-1104');
    expect(overallCall(checks).call).toBe('refer');
    expect(unjudged(checks).map(({ measurement }) => measurement)).toEqual([
      'undercut2',
      'overlap1',
    ]);
    const [undercut] = unjudged(checks);
    expect(undercut).toMatchObject({ call: 'notAssessed', limit: null });
    expect(undercut?.measured).toBe(weld.values.undercut2?.value);
    expect(undercut?.reasons).toEqual([{ key: 'limits_reason_no_row' }]);
    expect(undercut?.name).toEqual({ key: 'limits_name_undercut', values: { side: '2' } });
  });

  it('is incomplete penetration of a groove too', () => {
    const weld = butt({ incompletePenetration: 1 });
    expect(unjudged(all(weld, 'aws-d11-static')).map(({ name }) => name.key)).toEqual([
      'limits_name_incomplete_penetration',
    ]);
  });

  it('changes nothing where it isn’t there, whatever the set', () => {
    for (const set of limitSets) {
      const weld = fillet();
      expect(judgeAll(weld, sheet, set)).toEqual(judge(weld, sheet, set));
    }
  });

  it('is none under a set that has a row on each', () => {
    const weld = fillet({ undercut1Depth: 0.5, overlap2: 1 });
    const groove = butt({ undercut1Depth: 0.5, overlap2: 1, rootUndercut1Depth: 0.4 });
    for (const id of ['iso5817-b', 'iso5817-c', 'iso5817-d', 'lock-gate-house'])
      for (const one of [weld, groove, butt({ incompletePenetration: 1 })])
        expect(unjudged(all(one, id))).toEqual([]);
  });
});
