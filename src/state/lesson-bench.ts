import { defaultJobSheet } from '../limits/index.ts';
import type { Figure } from '../lesson/index.ts';
import { BenchSession } from './bench.svelte.ts';

/** A bench of its own for one figure of a lesson. Without a sheet nothing on it is judged. */
export function figureBench(figure: Figure): BenchSession {
  const { joint, sheet } = figure.start;
  return new BenchSession({
    version: 1,
    joint,
    sheet: sheet ?? { ...defaultJobSheet(), limitSet: '' },
    held: null,
    construction: figure.show,
  });
}
