import type { Check } from '../../src/limits/index.ts';

/** A check with nothing to it: a greatest length of 1 mm, measured well inside. */
export const plainCheck: Check & { readonly limit: number; readonly measured: number } = {
  id: 'made',
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
  source: { document: '', edition: '', clause: '', status: 'sheet' },
};
