import type { Point } from '../../geometry/index.ts';
import { add, dot, scale, subtract } from '../../geometry/index.ts';
import type { Side } from '../../joint/index.ts';
import type { MeasurementId } from '../../measure/index.ts';
import {
  angleRequest,
  type DimensionContext,
  NOTHING,
  onScreen,
  pressing,
  wanted,
} from './dimension-context.ts';
import type { DimensionRequest, LinearRequest } from './dimension-request.ts';
import { grooveDimensions } from './groove-dimensions.ts';
import { misalignmentDimensions } from './misalignment-dimensions.ts';
import { small } from './small-dimension.ts';
import { toPx } from './view-transform.ts';

/** Order of placing; the last are the first to be dropped. */
const RANK = { reinforcement: 10, depth: 20, flaw: 30, width: 40, angle: 50 } as const;

/** The dimensions of a butt joint, in the manner that each is drawn. */
export function buttDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const { section } = context;
  const plates = [...misalignmentDimensions(context)];
  if (section.stage === 'fitUp') return [...grooveDimensions(context), ...plates];
  const onSides = [section.face, section.root].flatMap((side, index) =>
    side === null ? [] : sideDimensions(context, side, index === 0 ? 'face' : 'root'),
  );
  return [...onSides, ...notFused(context), ...plates, ...toeAngles(context)];
}

const IDS = {
  face: {
    reinforcement: 'faceReinforcement',
    below: 'underfill',
    width: 'faceWidth',
    undercuts: ['undercut1', 'undercut2'],
    overlaps: ['overlap1', 'overlap2'],
  },
  root: {
    reinforcement: 'rootReinforcement',
    below: 'rootConcavity',
    width: 'rootWidth',
    undercuts: ['rootUndercut1', 'rootUndercut2'],
    overlaps: [null, null],
  },
} as const;

const READINGS = ['higher', 'lower', 'toes', 'toPlate1', 'toPlate2'] as const;

function sideDimensions(
  context: DimensionContext,
  side: Side,
  name: 'face' | 'root',
): readonly DimensionRequest[] {
  const ids = IDS[name];
  const requests: DimensionRequest[] = [];
  // What the sheet judges is drawn; without a sheet, the height above the higher plate.
  const judged = READINGS.filter((reading) => {
    const id: MeasurementId = `${ids.reinforcement}.${reading}`;
    return context.judges(id) || context.lit === id;
  });
  for (const reading of judged.length === 0 ? (['higher'] as const) : judged) {
    const id: MeasurementId = `${ids.reinforcement}.${reading}`;
    const request = reinforcement(context, side, id);
    if (request !== null) requests.push(request);
  }
  const below = wanted(context, ids.below, 'distance', RANK.depth);
  if (below !== null) {
    const off = onScreen(side.surfaces[1].along);
    requests.push(small(context, below, off, [0, 24, -24, 44], 'from', 'end', 'both'));
  }
  for (const plate of [0, 1] as const) {
    const surface = side.surfaces[plate];
    const undercut = wanted(context, ids.undercuts[plate], 'distance', RANK.flaw);
    if (undercut !== null) {
      const end = side.undercuts[plate].at(-1)?.b ?? undercut.witness.from;
      const past = dot(subtract(end, undercut.witness.from), surface.along) * context.view.scale;
      const levels = [past + 13, past + 26, past + 44];
      requests.push(small(context, undercut, onScreen(surface.along), levels, 'from'));
    }
    const id = ids.overlaps[plate];
    const overlap = id === null ? null : wanted(context, id, 'distance', RANK.flaw);
    if (overlap !== null) {
      const into = onScreen(scale(surface.normal, -1));
      requests.push(small(context, overlap, into, [24, 38, 52], 'to'));
    }
  }
  const width = widthOf(context, side, ids.width);
  return width === null ? requests : [...requests, width];
}

/** How far the outermost mark of a plate's side lies along its surface from a point, px. */
function pastWeld({ view }: DimensionContext, side: Side, plate: 0 | 1, from: Point): number {
  const { along } = side.surfaces[plate];
  const marks = [
    side.toes?.[plate],
    side.lips?.[plate],
    side.undercuts[plate].at(-1)?.b,
    side.grooveEdges?.[plate],
  ];
  const reaches = marks.flatMap((mark) =>
    mark === undefined ? [] : [dot(subtract(mark, from), along) * view.scale],
  );
  return Math.max(0, ...reaches);
}

/** A reinforcement is carried out past the toe of the plate that it is measured from, whose surface serves as extension line. */
function reinforcement(
  context: DimensionContext,
  side: Side,
  id: MeasurementId,
): LinearRequest | null {
  const want = wanted(context, id, 'distance', RANK.reinforcement);
  if (want === null) return null;
  const { from, extensions } = want.witness;
  const [toe] = extensions[0] ?? [];
  const plate = toe !== undefined && onPlate(side, 0, toe) ? 0 : 1;
  const past = pastWeld(context, side, plate, from);
  const levels = [past + 34, past + 52, past + 78, past + 24];
  const off = onScreen(side.surfaces[plate].along);
  return small(context, want, off, levels, 'to', 'end', 'from');
}

function onPlate(side: Side, plate: 0 | 1, toe: Point): boolean {
  const own = side.toes?.[plate];
  return own !== undefined && Math.hypot(own.x - toe.x, own.y - toe.y) < 1e-6;
}

/** The width of a bead stands clear above its crown. */
function widthOf(context: DimensionContext, side: Side, id: MeasurementId): LinearRequest | null {
  const want = wanted(context, id, 'distance', RANK.width);
  if (want === null) return null;
  const { asked, witness } = want;
  const { normal } = side.surfaces[0];
  const rises = (side.bead ?? []).map(
    ({ a, b, bulge }) =>
      Math.max(dot(subtract(a, witness.from), normal), dot(subtract(b, witness.from), normal)) +
      (Math.abs(bulge) * Math.hypot(a.x - b.x, a.y - b.y)) / 2,
  );
  const crown = Math.max(0, ...rises) * context.view.scale;
  return {
    asked,
    kind: 'linear',
    from: toPx(context.view, witness.from),
    to: toPx(context.view, witness.to),
    off: onScreen(normal),
    levels: [crown + 62, crown + 44, crown + 80, crown + 30],
    label: 'on',
    outer: 'to',
  };
}

/** Unfused height stands in the base metal beside it, its text towards the root. */
function notFused(context: DimensionContext): readonly DimensionRequest[] {
  const want = wanted(context, 'incompletePenetration', 'distance', RANK.depth);
  if (want === null) return [];
  const { from, to } = want.witness;
  const middle = scale(add(from, to), 0.5);
  const plate = dot(middle, context.section.face.surfaces[0].along) > 0 ? 0 : 1;
  const { along, normal } = context.section.face.surfaces[plate];
  const outer = dot(subtract(to, from), normal) > 0 ? 'from' : 'to';
  return [small(context, want, onScreen(along), [24, 40, 60], outer)];
}

function toeAngles(context: DimensionContext): readonly DimensionRequest[] {
  return (['toeAngle1', 'toeAngle2'] as const).flatMap((id) => {
    if (!context.show.toeAngles && !pressing(context, id)) return [];
    const want = wanted(context, id, 'angle', RANK.angle);
    if (want === null || Math.abs((want.measurement.value ?? 180) - 180) < NOTHING) return [];
    return [angleRequest(context, want, [36, 48, 28, 62])];
  });
}
