import type { JobSheet } from './job-sheet.ts';

/**
 * Where plate 2 stands, mm of `offset`, when what the drawing lines up is in line: counted between the
 * mid-planes, half of the difference in thickness is a step at each surface (geometry).
 */
export function intendedOffset(
  { t1, t2 }: { readonly t1: number; readonly t2: number },
  alignment: JobSheet['intendedAlignment'],
): number {
  const half = (t2 - t1) / 2;
  return { centrelines: 0, faceFlush: -half, rootFlush: half }[alignment];
}
