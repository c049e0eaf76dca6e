import type { Section } from '../joint/index.ts';
import { rad, toDeg } from '../units/index.ts';
import { convexity } from './convexity.ts';
import { edgeRemaining } from './edge.ts';
import type { FilletLandmarks } from './fillet-landmarks.ts';
import { filletLandmarks } from './fillet-landmarks.ts';
import { legs } from './leg.ts';
import type { Measurement } from './measurement.ts';
import { penetrations, rootGap } from './penetration.ts';
import { sizes } from './size.ts';
import { throats } from './throat.ts';
import { measuredAngle } from './witness.ts';
import { add, cross, dot } from '../geometry/index.ts';

/** What only a fillet joint has. */
export function filletMeasurements(section: Section): Measurement[] {
  const landmarks = filletLandmarks(section);
  // surfaces that never cross: no root to measure from
  if (landmarks === null) return [];
  const fitUp = [dihedralAngle(landmarks), rootGap(landmarks)];
  const { weld } = landmarks;
  // not yet welded
  if (weld === null) return fitUp;
  return [
    ...fitUp,
    ...legs(landmarks, weld),
    ...sizes(landmarks, weld),
    ...throats(landmarks, weld),
    ...penetrations(landmarks),
    ...convexity(weld),
    ...edgeRemaining(landmarks),
  ];
}

/** Angle between the two surfaces that carry the weld, through the weld, degrees. Derived. */
function dihedralAngle({ o, surfaces }: FilletLandmarks): Measurement {
  const [along1, along2] = [surfaces[0].along, surfaces[1].along];
  const turn = cross(along1, along2);
  const on1 = add(o, along1);
  const on2 = add(o, along2);
  return measuredAngle(
    'dihedralAngle',
    toDeg(rad(Math.atan2(Math.abs(turn), dot(along1, along2)))),
    {
      kind: 'angle',
      vertex: o,
      from: turn > 0 ? on1 : on2,
      to: turn > 0 ? on2 : on1,
    },
  );
}
