import type { ComparedCheck } from '../../../src/quiz/draw/comfort.ts';

/** A check with nothing to it but what a test says: a greatest length, measured well inside. */
export const madeCheck = (changed: Partial<ComparedCheck>): ComparedCheck => ({
  id: `made.${changed.measurement ?? 'undercut1'}.${changed.sense ?? 'max'}`,
  measurement: 'undercut1',
  name: { key: 'made' },
  sense: 'max',
  unit: 'mm',
  limit: 1,
  printed: null,
  measured: 0.2,
  margin: null,
  guard: 0,
  uncertainty: 0,
  conformance: null,
  call: 'accept',
  reasons: [],
  working: null,
  source: { document: 'made', edition: '', clause: '', status: 'invented' },
  ...changed,
});
