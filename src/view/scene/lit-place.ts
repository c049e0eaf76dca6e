import type { Point } from '../../geometry/index.ts';
import type { Section, Side } from '../../joint/index.ts';
import type { MeasurementId } from '../../measure/index.ts';
import { drawnAs, NOTHING } from './dimension-context.ts';
import { ringPath } from './drawn-dimension.ts';
import type { SceneInput } from './scene.ts';
import { toPx, type View } from './view-transform.ts';

/** Round a handle's ring, with air between, px. */
const RADIUS = 13;

/**
 * Rings where a quantity that is nothing was looked for: nothing has no length to draw a dimension
 * along, and who points at its row is shown the place. '' for what is there, or has no place.
 */
export function litPlace({ lit, measurements, misalignedStep }: Pointed, view: View): string {
  if (lit === null) return '';
  const { section, values } = measurements;
  const [id] = drawnAs(lit, measurements, misalignedStep);
  const value = id === undefined ? null : (values[id]?.value ?? null);
  if (id === undefined || value === null || Math.abs(value) >= NOTHING) return '';
  let rings = '';
  for (const point of placesOf(section, id)) rings += ringPath(toPx(view, point), RADIUS);
  return rings;
}

type Pointed = Pick<SceneInput, 'lit' | 'measurements' | 'misalignedStep'>;

/** The toe that the quantity is of, both where it is of the whole face or root, and a fillet's root. */
function placesOf({ kind, face, root }: Section, id: MeasurementId): readonly Point[] {
  const isOfRoot = id.startsWith('root') || id === 'incompletePenetration';
  if (kind === 'fillet' && isOfRoot) return [face.surfaces[0].origin];
  const [one, two] = endsOf(isOfRoot ? (root ?? face) : face);
  return id.endsWith('1') ? [one] : id.endsWith('2') ? [two] : [one, two];
}

const endsOf = ({ toes, grooveEdges, surfaces }: Side): readonly [Point, Point] =>
  toes ?? grooveEdges ?? [surfaces[0].origin, surfaces[1].origin];
