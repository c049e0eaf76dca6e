import { distance } from '../geometry/index.ts';
import type { Side } from '../joint/index.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, span } from './witness.ts';

/**
 * chordLength: straight from toe to toe; faceWidth: straight from lip to lip,
 * mm, equal where nothing overhangs (from memory, verify).
 */
export function faceWidths({ toes, lips }: Side): Measurement[] {
  // not yet welded
  if (toes === null || lips === null) return [];
  return [
    measuredLength('chordLength', distance(...toes), span(...toes)),
    measuredLength('faceWidth', distance(...lips), span(...lips)),
  ];
}

/** Width of the root bead, straight from lip to lip, mm: the ISO `b` of 504 (from memory, verify). */
export function rootWidth({ toes, lips }: Side): Measurement[] {
  // no root bead
  if (toes === null || lips === null) return [];
  return [measuredLength('rootWidth', distance(...lips), span(...lips))];
}
