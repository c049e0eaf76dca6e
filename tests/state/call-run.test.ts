import { describe, expect, it } from 'vitest';
import { callName, type Run } from '../../src/state/call-run.ts';
import { callWith } from '../quiz/any-call.ts';

const run: Run = { id: 'run', way: 'pairs', skill: null, length: 20 };
const { spec } = callWith();

describe('the name of a call', () => {
  it('is that of its question in its run, in whatever tab it is made', () => {
    expect(callName({ ...run }, structuredClone(spec))).toBe(callName(run, spec));
  });

  it('is another for another run, seed, skill, view or distance: pairs share a seed', () => {
    const names = [
      callName(run, spec),
      callName({ ...run, id: 'other' }, spec),
      callName(run, { ...spec, seed: spec.seed + 1 }),
      callName(run, { ...spec, skill: 'butt.welded.underfill.max' }),
      callName(run, { ...spec, view: spec.view === 'cut' ? 'outside' : 'cut' }),
      callName(run, { ...spec, asked: 'refer' }),
      callName(run, { ...spec, asked: 0.25 }),
      callName(run, { ...spec, asked: -0.25 }),
    ];
    expect(new Set(names).size).toBe(names.length);
  });
});
