import type { Point } from '../geometry/index.ts';
import { distance } from '../geometry/index.ts';
import { edgeNote } from './edge.ts';
import type { FilletLandmarks, FilletWeld } from './fillet-landmarks.ts';
import type { Measurement } from './measurement.ts';
import { footOn, heightAbove, stationOn } from './surface-line.ts';
import { measuredLength, span } from './witness.ts';

/**
 * The legs of a fillet weld as they are read in five ways, mm. leg: along the
 * surface line from O to the toe, a gap included (US Army TC 9-237, 6-8b).
 * contactLeg2: leg 2 without the gap. perpendicularLeg: from a toe square to
 * the other plate's surface line, as a right-angle gauge sees it.
 * visibleLeg: to the lip. legDifference: unequal legs (ISO 6520-1, 512). Derived.
 */
export function legs(landmarks: FilletLandmarks, weld: FilletWeld): Measurement[] {
  const { o, surfaces, filletRoot } = landmarks;
  const [surface1, surface2] = surfaces;
  const [toe1, toe2] = weld.toes;
  const [lip1, lip2] = weld.lips;
  const [leg1, leg2] = weld.legs;
  const note = edgeNote(landmarks);
  const corner = filletRoot.plate2Corner;
  const longer: readonly [Point, Point] = leg1 >= leg2 ? [o, toe1] : [o, toe2];
  return [
    measuredLength('leg1', leg1, span(o, toe1)),
    measuredLength('leg2', leg2, span(o, toe2), note),
    measuredLength(
      'contactLeg2',
      stationOn(surface2, toe2) - stationOn(surface2, corner),
      span(corner, toe2),
      note,
    ),
    squareTo('perpendicularLeg1', toe1, surface2, o, null),
    squareTo('perpendicularLeg2', toe2, surface1, o, note),
    measuredLength(
      'visibleLeg1',
      stationOn(surface1, lip1) - stationOn(surface1, o),
      span(o, lip1),
    ),
    measuredLength(
      'visibleLeg2',
      stationOn(surface2, lip2) - stationOn(surface2, o),
      span(o, lip2),
      note,
    ),
    measuredLength(
      'legDifference',
      Math.abs(leg1 - leg2),
      span(...beyondShorter(longer, leg1, leg2)),
      note,
    ),
  ];
}

/** From a toe square to the other plate's surface line, mm. */
function squareTo(
  id: 'perpendicularLeg1' | 'perpendicularLeg2',
  toe: Point,
  surface: FilletLandmarks['surfaces'][number],
  o: Point,
  note: ReturnType<typeof edgeNote>,
): Measurement {
  const foot = footOn(surface, toe);
  return measuredLength(
    id,
    Math.abs(heightAbove(surface, toe)),
    span(foot, toe, [[o, foot]]),
    note,
  );
}

/** The part of the longer leg that goes beyond the shorter one's length. */
function beyondShorter(
  [o, toe]: readonly [Point, Point],
  leg1: number,
  leg2: number,
): readonly [Point, Point] {
  const share = Math.min(leg1, leg2) / distance(o, toe);
  return [{ x: o.x + (toe.x - o.x) * share, y: o.y + (toe.y - o.y) * share }, toe];
}
