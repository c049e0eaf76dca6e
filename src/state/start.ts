import { defaultJoint } from '../joint/index.ts';
import { defaultJobSheet } from '../limits/index.ts';
import { startingConstruction, type BenchDocument } from './bench-document.ts';

/** What a new bench opens with: a fillet that is sound but for one undercut, so that every call shows. */
export const startingBench = (): BenchDocument => ({
  version: 1,
  joint: { ...defaultJoint('fillet'), convexity: 1, undercut2Depth: 0.6 },
  sheet: defaultJobSheet(),
  held: null,
  construction: startingConstruction,
});
