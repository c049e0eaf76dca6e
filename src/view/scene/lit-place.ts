import type { Contour, Point } from '../../geometry/index.ts';
import { line, nearPoint } from '../../geometry/index.ts';
import type { Section, Side } from '../../joint/index.ts';
import type { Measurement } from '../../measure/index.ts';
import { drawnAs, NOTHING } from './dimension-context.ts';
import { ringPath } from './drawn-dimension.ts';
import { pathOf } from './outline-path.ts';
import type { SceneInput } from './scene.ts';
import { toPx, type View } from './view-transform.ts';

/** Round a handle's ring, with air between, px. */
const RADIUS = 13;

/**
 * A ring where a quantity that is nothing was looked for: nothing has no length to draw a dimension
 * along, and who points at its row is shown the place, or both ends of it. '' for what is there, or has no place.
 */
export function litPlace({ lit, measurements, misalignedStep }: Pointed, view: View): string {
  if (lit === null) return '';
  const [id] = drawnAs(lit, measurements, misalignedStep);
  const measurement = id === undefined ? undefined : measurements.values[id];
  if (measurement?.value == null || Math.abs(measurement.value) >= NOTHING) return '';
  const [one, two = one] = placesOf(measurements.section, measurement);
  if (one === undefined || two === undefined) return '';
  const ring = (point: Point): string => ringPath(toPx(view, point), RADIUS);
  // of a whole face the line between its ends too: it lies there, not at the toes
  return nearPoint(one, two) ? ring(one) : ring(one) + ring(two) + pathOf(view, [line(one, two)]);
}

export type LitPlace = typeof litPlace;
type Pointed = Pick<SceneInput, 'lit' | 'measurements' | 'misalignedStep'>;

/**
 * The point that a length of nothing was measured at. Where there was nothing to measure, the toe or
 * the side that the quantity is named for, or the root; at most two points.
 */
function placesOf(
  { kind, face, root, groove }: Section,
  { id, witness }: Measurement,
): readonly Point[] {
  if (witness.kind === 'distance') return [witness.from];
  if (witness.kind === 'area') return [];
  if (id === 'incompletePenetration' && groove !== null)
    return startsOf([...groove.rootFaces, ...groove.preparedEdges]);
  if (kind === 'fillet' && /^root|^throatP/.test(id)) return [face.surfaces[0].origin];
  const [one, two] = endsOf(id.startsWith('root') ? (root ?? face) : face);
  return id.endsWith('1') ? [one] : id.endsWith('2') ? [two] : [one, two];
}

const endsOf = ({ toes, grooveEdges, surfaces }: Side): readonly [Point, Point] =>
  toes ?? grooveEdges ?? [surfaces[0].origin, surfaces[1].origin];

/** Where the first of these begin, what is empty left out. */
const startsOf = (contours: readonly Contour[]): readonly Point[] =>
  contours.map((contour) => contour[0]?.a).filter((start) => start !== undefined);
