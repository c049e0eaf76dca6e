import type { Point } from '../geometry/index.ts';
import { add, scale } from '../geometry/index.ts';
import type { FilletLandmarks } from './fillet-landmarks.ts';
import type { Measurement } from './measurement.ts';
import { footOn, heightAbove, stationOn } from './surface-line.ts';
import { measuredLength, noWitness, span } from './witness.ts';

/**
 * The weld root on plate 1: of the ends of the unfused faying surfaces the one
 * nearest plate 1's surface line.
 */
function rootOnPlate1({ filletRoot, o, surfaces }: FilletLandmarks): Point {
  let nearest = o;
  let least = Infinity;
  for (const root of filletRoot.weldRoots) {
    const height = Math.abs(heightAbove(surfaces[0], root));
    if (height < least) [nearest, least] = [root, height];
  }
  return nearest;
}

/** Root penetration q: how far fusion runs beyond O along plate 1's surface line, mm, never negative. Derived. */
function penetrationBeyondO(landmarks: FilletLandmarks): { q: number; root: Point } {
  const { o, surfaces } = landmarks;
  const root = rootOnPlate1(landmarks);
  return { q: Math.max(0, stationOn(surfaces[0], o) - stationOn(surfaces[0], root)), root };
}

/** Throat penetration p = q cos(ψ/2): what root penetration adds to a throat on the bisector, mm. Derived. */
export function throatPenetration(landmarks: FilletLandmarks): number {
  return penetrationBeyondO(landmarks).q * landmarks.cosHalf;
}

/** Both penetrations of a fillet weld, with their witnesses. */
export function penetrations(landmarks: FilletLandmarks): Measurement[] {
  const { o, bisector, cosHalf } = landmarks;
  const { q, root } = penetrationBeyondO(landmarks);
  // fusion stops at the theoretical root
  if (q === 0) {
    return [
      measuredLength('rootPenetration', 0, noWitness),
      measuredLength('throatPenetration', 0, noWitness),
    ];
  }
  const onBisector = add(o, scale(bisector, -q * cosHalf));
  return [
    measuredLength('rootPenetration', q, span(o, root)),
    measuredLength('throatPenetration', q * cosHalf, span(o, onBisector, [[root, onBisector]])),
  ];
}

/** Gap under a fillet: plate 2's corner above plate 1's surface line, normal to it, mm (ISO 6520-1, 617). */
export function rootGap({ filletRoot, surfaces }: FilletLandmarks): Measurement {
  const corner = filletRoot.plate2Corner;
  const gap = Math.max(0, heightAbove(surfaces[0], corner));
  return measuredLength(
    'rootGap',
    gap,
    gap === 0 ? noWitness : span(footOn(surfaces[0], corner), corner),
  );
}
