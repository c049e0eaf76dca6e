import type { CallRecord, SlipRecord } from '../../src/quiz/index.ts';

/** A call as a log keeps it, with what a test changes. */
export const callWith = (changes: Partial<CallRecord> = {}): CallRecord => ({
  version: 1,
  kind: 'call',
  id: 'call-1',
  at: '2026-03-02T08:15:00.000Z',
  way: 'practice',
  run: 'run-1',
  spec: {
    version: 1,
    seed: 12,
    skill: 'fillet.welded.undercut.max',
    view: 'outside',
    asked: 0.2,
  },
  skill: 'fillet.welded.undercut.max',
  limitSet: 'iso5817-c',
  limit: 0.5,
  unit: 'mm',
  scale: 'ratio',
  distance: 0.2,
  exceedance: 0.11,
  truth: 'reject',
  fault: 'undercut.max',
  answer: { call: 'reject', fault: 'undercut.max', sure: 80 },
  pxPerMm: 30,
  took: 4200,
  ...changes,
});

export const slipOf = (call: string, id = `slip of ${call}`): SlipRecord => ({
  version: 1,
  kind: 'slip',
  id,
  at: '2026-03-02T08:16:00.000Z',
  call,
});
