import { distance } from '../geometry/index.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import type { Measurement } from './measurement.ts';
import { measuredLength, span } from './witness.ts';

/**
 * chordLength: straight from toe to toe; faceWidth: straight from lip to lip,
 * mm, equal where nothing overhangs (from memory, verify).
 */
export function faceWidths({ toes, lips }: ExposedWeld): Measurement[] {
  return [
    measuredLength('chordLength', distance(...toes), span(...toes)),
    measuredLength('faceWidth', distance(...lips), span(...lips)),
  ];
}

/** Width of the root bead, straight from lip to lip, mm: the ISO `b` of 504 (from memory, verify). */
export function rootWidth({ lips }: ExposedWeld): Measurement {
  return measuredLength('rootWidth', distance(...lips), span(...lips));
}
