import type { Joint } from '../joint/index.ts';
import type { JobSheet } from '../limits/index.ts';
import type { BenchDocument } from './bench-document.ts';

/** What undo goes back over. The construction shown is not work to be undone. */
export interface Work {
  readonly joint: Joint;
  readonly sheet: JobSheet;
  /** the outline held to compare with */
  readonly held: Joint | null;
}

export const workOf = ({ joint, sheet, held }: BenchDocument): Work => ({ joint, sheet, held });
