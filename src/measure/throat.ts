import type { Point } from '../geometry/index.ts';
import {
  add,
  dot,
  intersectLine,
  line,
  nearestOnContour,
  nearestOnSegment,
  scale,
} from '../geometry/index.ts';
import { edgeNote } from './edge.ts';
import type { FilletLandmarks, FilletWeld } from './fillet-landmarks.ts';
import type { Measurement } from './measurement.ts';
import { throatPenetration } from './penetration.ts';
import { measuredLength, span } from './witness.ts';

/**
 * The throats that are distances from a root, mm.
 * chordThroat: from O to the straight line through the toes, carried on if the
 * foot falls outside (construction only).
 * actualThroat: shortest distance from any weld root to the face, penetration
 * included; on a very convex bead it ends at a toe (public welding glossary).
 * effectiveThroat: the lesser of root to chord (between the toes) and root to
 * face, the root being O or, over a gap, plate 2's corner; neither convexity nor
 * penetration counts (public welding glossary, and a reading decided here).
 * deepThroat: throat penetration, plus O along the bisector to chord or face,
 * whichever is nearer (ISO usage, from memory, verify).
 */
export function throats(landmarks: FilletLandmarks, weld: FilletWeld): Measurement[] {
  return [
    chordThroat(landmarks, weld),
    actualThroat(landmarks, weld),
    effectiveThroat(landmarks, weld),
    deepThroat(landmarks, weld),
  ];
}

function chordThroat(landmarks: FilletLandmarks, weld: FilletWeld): Measurement {
  const { o } = landmarks;
  const foot = add(o, scale(weld.outward, weld.chordThroat));
  return measuredLength(
    'chordThroat',
    weld.chordThroat,
    span(o, foot, [], [weld.toes]),
    edgeNote(landmarks),
  );
}

function actualThroat({ filletRoot, o }: FilletLandmarks, { bead }: FilletWeld): Measurement {
  const roots = filletRoot.weldRoots.length > 0 ? filletRoot.weldRoots : [o];
  let [from, to, least]: [Point, Point, number] = [o, o, Infinity];
  for (const root of roots) {
    const near = nearestOnContour(root, bead);
    if (near.distance < least) [from, to, least] = [root, near.point, near.distance];
  }
  return measuredLength('actualThroat', least, span(from, to));
}

function effectiveThroat(landmarks: FilletLandmarks, { bead, toes }: FilletWeld): Measurement {
  const root = landmarks.filletRoot.plate2Corner;
  const toChord = nearestOnSegment(root, line(...toes));
  const toFace = nearestOnContour(root, bead);
  const nearer = toFace.distance < toChord.distance ? toFace : toChord;
  return measuredLength(
    'effectiveThroat',
    nearer.distance,
    span(root, nearer.point, [], [toes]),
    edgeNote(landmarks),
  );
}

function deepThroat(landmarks: FilletLandmarks, weld: FilletWeld): Measurement {
  const { o, bisector } = landmarks;
  const toChord = weld.chordThroat / dot(weld.outward, bisector);
  const toFace = intersectLine(o, bisector, weld.bead).map(({ along }) => along);
  const reach = Math.min(toChord, ...toFace);
  const depth = throatPenetration(landmarks);
  const bottom = add(o, scale(bisector, -depth));
  const top = add(o, scale(bisector, reach));
  return measuredLength(
    'deepThroat',
    depth + reach,
    span(bottom, top, [], [weld.toes]),
    edgeNote(landmarks),
  );
}
