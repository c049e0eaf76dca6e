import type { Point } from '../../geometry/index.ts';
import { contourLength } from '../../geometry/index.ts';
import {
  angleRequest,
  type DimensionContext,
  onScreen,
  pressing,
  wanted,
} from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { small } from './small-dimension.ts';
import { toPx } from './view-transform.ts';

/** Order of placing; the last are the first to be dropped. */
const RANK = { opening: 10, angle: 15, rootFace: 20, bevel: 25, width: 40, radius: 45 } as const;
const SAME = 5e-3;
/** Room between the groove edges and the arc of the groove angle, px. */
const OFF_EDGES = 26;

/** The dimensions of a prepared groove before it is welded. */
export function grooveDimensions(context: DimensionContext): readonly DimensionRequest[] {
  return [
    ...rootOpening(context),
    ...grooveAngles(context),
    ...rootFaces(context),
    ...bevelAngles(context),
    ...grooveWidth(context),
    ...rootRadius(context),
  ];
}

/** The opening is written under the root, in the air. */
function rootOpening(context: DimensionContext): readonly DimensionRequest[] {
  const { section, view } = context;
  const want = wanted(context, 'rootOpening', 'distance', RANK.opening);
  if (want === null || section.root === null) return [];
  const from = toPx(view, want.witness.from);
  const bottom = toPx(view, section.root.grooveEdges?.[0] ?? want.witness.from).y;
  const backing = section.backing?.map(({ a }) => toPx(view, a).y) ?? [];
  const clear = Math.max(bottom, ...backing) - from.y;
  return [
    {
      ...small(context, want, { x: 0, y: 1 }, [clear + 30, clear + 44, clear + 20], 'to'),
      label: 'on',
    },
  ];
}

/** How far out the groove angle's arc stands: its vertex and the farther groove edge, px. */
function arcReach({ view }: DimensionContext, vertex: Point, edges: readonly Point[]) {
  const at = toPx(view, vertex);
  const placed = edges.map((edge) => toPx(view, edge));
  const far = Math.max(...placed.map((edge) => distance(edge, at))) + OFF_EDGES;
  const high = Math.min(...placed.map((edge) => edge.y));
  return { far, aboveEdges: far - (at.y - high) };
}

/** The groove angle spans the groove above its edges, whose bevels are carried out to it. */
function grooveAngles(context: DimensionContext): readonly DimensionRequest[] {
  const { section } = context;
  const requests: DimensionRequest[] = [];
  for (const [id, side] of [
    ['grooveAngle', section.face],
    ['rootGrooveAngle', section.root],
  ] as const) {
    const want = wanted(context, id, 'angle', RANK.angle);
    if (want === null || side?.grooveEdges == null) continue;
    const { far } = arcReach(context, want.witness.vertex, side.grooveEdges);
    requests.push(angleRequest(context, want, [far, far + 14, far - 10, far + 34]));
  }
  return requests;
}

/** Equal root faces are written once, unequal ones each in its own plate. */
function rootFaces(context: DimensionContext): readonly DimensionRequest[] {
  const { section, measurements } = context;
  const { groove } = section;
  const [first, second] = [measurements.values.rootFace1, measurements.values.rootFace2];
  const equal = Math.abs((first?.value ?? 0) - (second?.value ?? 0)) < SAME;
  // Of two that are equal to the eye either may be the lesser by a hair, and is measured on its plate.
  const lesser = (first?.value ?? 0) <= (second?.value ?? 0) ? 0 : 1;
  const bevelled2 = groove?.faceBevels[1] !== null || groove.rootBevels[1] !== null;
  // A square edge has no root face: nothing of it is bevelled.
  const shown =
    equal || !bevelled2
      ? ([['rootFace', lesser]] as const)
      : ([
          ['rootFace1', 0],
          ['rootFace2', 1],
        ] as const);
  return shown.flatMap(([id, plate]) => {
    const want = wanted(context, id, 'distance', RANK.rootFace);
    if (want === null) return [];
    const { from, to } = want.witness;
    const outer = from.y < to.y ? 'from' : 'to';
    const off = onScreen(section.face.surfaces[plate].along);
    return [small(context, want, off, [26, 42, 60], outer)];
  });
}

/** Each bevel to the normal of its own surface, inside the groove. */
function bevelAngles(context: DimensionContext): readonly DimensionRequest[] {
  const { section, measurements, view } = context;
  const { bevelAngle1, bevelAngle2 } = measurements.values;
  const equal = Math.abs((bevelAngle1?.value ?? 0) - (bevelAngle2?.value ?? Infinity)) < SAME;
  return (['bevelAngle1', 'bevelAngle2'] as const).flatMap((id, plate) => {
    // Equal bevels are half of the groove angle each; one of them says it.
    if (equal && plate === 1 && !pressing(context, id)) return [];
    const want = wanted(context, id, 'angle', RANK.bevel);
    if (want === null) return [];
    const bevel = section.groove?.faceBevels[plate] ?? [];
    const run = contourLength(bevel) * view.scale;
    return [
      angleRequest(
        context,
        want,
        [0.62, 0.78, 0.48, 0.9].map((share) => share * run),
      ),
    ];
  });
}

/** The width at the face stands above the groove angle. */
function grooveWidth(context: DimensionContext): readonly DimensionRequest[] {
  const want = wanted(context, 'grooveWidth', 'distance', RANK.width);
  if (want === null) return [];
  const { normal } = context.section.face.surfaces[0];
  const angle = context.measurements.values.grooveAngle?.witness;
  const { from, to } = want.witness;
  const above =
    angle?.kind === 'angle' ? arcReach(context, angle.vertex, [from, to]).aboveEdges : 0;
  const levels = [above + 36, above + 54, above + 72, 30];
  return [small(context, want, onScreen(normal), levels, 'to', 'on')];
}

function rootRadius(context: DimensionContext): readonly DimensionRequest[] {
  const want = wanted(context, 'rootRadius', 'distance', RANK.radius);
  if (want === null) return [];
  const { from, to } = want.witness;
  const [start, end] = [toPx(context.view, from), toPx(context.view, to)];
  return [{ asked: want.asked, kind: 'running', from: start, to: end, label: 'on' }];
}

function distance(p: Point, q: Point): number {
  return Math.hypot(p.x - q.x, p.y - q.y);
}
