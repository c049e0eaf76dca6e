import { contourEnd, contourLength, contourStart } from '../geometry/index.ts';
import type { FilletLandmarks } from './fillet-landmarks.ts';
import type { Measurement } from './measurement.ts';
import type { Note } from './witness.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * Length of a lap joint's end face left unmelted above toe 2, mm; 0 when the
 * whole edge is melted away. Nothing for any other joint. Derived.
 */
export function edgeRemaining({ filletRoot }: FilletLandmarks): Measurement[] {
  const { edge } = filletRoot;
  // no end face carries the weld
  if (edge === null) return [];
  // melted away
  if (edge.length === 0) return [measuredLength('edgeRemaining', 0, noWitness)];
  const witness = span(contourStart(edge), contourEnd(edge));
  return [measuredLength('edgeRemaining', contourLength(edge), witness)];
}

const edgeGone: Note = { key: 'measure_note_edge_gone', refer: true };

/**
 * Why leg 2 and whatever is taken from it can't be settled: no edge is left to
 * show where plate 2's corner was. null while some edge stands.
 */
export function edgeNote({ filletRoot }: FilletLandmarks): Note | null {
  return filletRoot.edge !== null && filletRoot.edge.length === 0 ? edgeGone : null;
}
