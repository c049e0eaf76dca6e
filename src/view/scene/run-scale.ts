import type { Section } from '../../joint/index.ts';
import { callSheet, type Paper } from './call-sheet.ts';
import { fitScale } from './fit-closely.ts';
import { LEAST_ROOM } from './fit-view.ts';

/** A section that a run may ask about, turned as it would be shown, and the plate whose size is told. */
export interface PossibleSection {
  readonly section: Section;
  readonly known: { readonly plate: 0 | 1 };
}

/** How many sections tell what a run may ask: of a dozen, one later joint in thirty is too large. */
export const RUN_SAMPLE = 48;
/** Room left for a joint that is larger than any of the sample. */
const LARGER_TO_COME = 0.92;
/** How far the drawn size of one run may wander from its first. */
const WANDER = 0.1;

/**
 * The scale at which all the sections of a run can be drawn on its paper, px per mm: the largest of a
 * sample of them still fits, with little room round it. null for no sample.
 */
export function runScale(sections: readonly PossibleSection[], paper: Paper): number | null {
  // nothing to go by
  if (sections.length === 0) return null;
  const least = Math.min(
    ...sections.map(({ section, known }) =>
      fitScale(section, callSheet(section, known, paper), LEAST_ROOM),
    ),
  );
  return least * LARGER_TO_COME;
}

/**
 * The drawn size of a section within a run, px per mm: as large as it fits within a tenth of the scale
 * before. One that doesn't fit is drawn at the least of that, with less room round it and plates
 * broken off at the paper's edge; only where weld or known size would be cut is it smaller.
 */
export function heldScale(fit: number, closest: number, held: number): number {
  const near = Math.min(held * (1 + WANDER), Math.max(held * (1 - WANDER), fit * LARGER_TO_COME));
  return Math.min(near, closest);
}
