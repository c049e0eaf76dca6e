import type { Contour, Segment } from '../../geometry/index.ts';
import { add, line, scale } from '../../geometry/index.ts';
import type { Side } from '../../joint/index.ts';
import { allowedRange, type Check } from '../../limits/index.ts';
import type { MeasurementId, Measurements } from '../../measure/index.ts';

/** How far along plate 2 the line of the greatest offset is drawn, mm. */
const REACH = 12;
/** An offset smaller than this goes neither way, mm. */
const NO_WAY = 1e-6;

const UNDERCUTS = [
  ['face', 0, 'undercut1'],
  ['face', 1, 'undercut2'],
  ['root', 0, 'rootUndercut1'],
  ['root', 1, 'rootUndercut2'],
] as const;

/** The steps that misalignment may be judged by, each positive when plate 2 lies towards the face side. */
const STEPS: readonly MeasurementId[] = ['centrelineOffset', 'faceStep', 'rootStep'];

/**
 * How far the flaws that are there may go, as lines in the section plane: of an undercut its
 * greatest depth under the surface, of an offset where plate 2's face may stand at most.
 */
export function flawLimits(checks: readonly Check[], measurements: Measurements): Contour {
  const { section } = measurements;
  const undercuts = UNDERCUTS.map(([name, plate, id]) => {
    const side = section[name];
    const { most } = allowedRange(checks, id);
    return side === null || most === null ? null : deepest(side, plate, most);
  });
  return [...undercuts, offsetAtMost(checks, measurements)].filter((one) => one !== null);
}

function deepest({ undercuts, toes, surfaces }: Side, plate: 0 | 1, depth: number): Segment | null {
  const end = undercuts[plate].at(-1)?.b;
  const toe = toes?.[plate];
  // no undercut to be too deep, or none allowed: the surface itself is the limit
  if (end === undefined || toe === undefined || depth === 0) return null;
  const under = scale(surfaces[plate].normal, -depth);
  return line(add(toe, under), add(end, under));
}

function offsetAtMost(checks: readonly Check[], { section, values }: Measurements): Segment | null {
  const { most } = allowedRange(checks, 'misalignment');
  const judged = checks.find(({ measurement }) => measurement === 'misalignment')?.measured;
  if (most === null || judged == null || section.kind !== 'butt') return null;
  const offset = STEPS.map((id) => values[id]?.value ?? 0).find(
    (value) => Math.abs(Math.abs(value) - judged) < NO_WAY,
  );
  if (offset === undefined || Math.abs(offset) < NO_WAY) return null;
  const { surfaces, toes, grooveEdges } = section.face;
  const start = toes?.[1] ?? grooveEdges?.[1] ?? surfaces[1].origin;
  const shift = scale(surfaces[0].normal, Math.sign(offset) * (most - Math.abs(offset)));
  const from = add(start, shift);
  return line(from, add(from, scale(surfaces[1].along, REACH)));
}
