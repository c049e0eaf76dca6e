import type { Point } from '../../geometry/index.ts';
import { dot, subtract } from '../../geometry/index.ts';
import type { Side } from '../../joint/index.ts';
import {
  angleRequest,
  type DimensionContext,
  onScreen,
  pressing,
  sameStep,
  wanted,
  type Wanted,
} from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { reachOnSheet } from './sheet-reach.ts';
import { small } from './small-dimension.ts';
import { toPx } from './view-transform.ts';

const RANK = { step: 25, angle: 26, thickness: 70 } as const;
/** Thicknesses that differ by less than this are one, mm. */
const SAME = 5e-3;

/** How the two plates of a butt joint lie to each other: steps, turn, and thickness where it differs. */
export function misalignmentDimensions(context: DimensionContext): readonly DimensionRequest[] {
  return [...steps(context), ...turn(context), ...thicknesses(context)];
}

/** A step stands over the plate that lies back, whose own surface serves as extension line. */
function steps(context: DimensionContext): readonly DimensionRequest[] {
  const { section, measurements } = context;
  const requests: DimensionRequest[] = [];
  for (const [id, side] of [
    ['faceStep', section.face],
    ['rootStep', section.root],
    ['centrelineOffset', section.face],
  ] as const) {
    if (side === null) continue;
    // Plates of one thickness have the same step on both sides; it is written once.
    if (id !== 'faceStep' && sameStep(measurements.values, id) && context.lit !== id) continue;
    // Nobody sees a mid-plane: its step is drawn only where it is what is judged.
    if (id === 'centrelineOffset' && !context.judges(id) && context.lit !== id) continue;
    const want = wanted(context, id, 'distance', RANK.step);
    if (want === null) continue;
    const rises = (want.measurement.value ?? 0) > 0 === (id !== 'rootStep');
    const back = rises ? 0 : 1;
    const past = pastSide(context, side, back, want.witness.from);
    const levels = [past + 56, past + 34, past + 84, past + 112];
    const along = onScreen(side.surfaces[back].along);
    const [outer, bare] = back === 0 ? (['to', 'from'] as const) : (['from', 'to'] as const);
    requests.push(small(context, asJudged(context, want), along, levels, outer, 'end', bare));
  }
  return requests;
}

/** The step that misalignment is read from goes by that name, as its row does; one judged by its own name keeps it. */
function asJudged(context: DimensionContext, want: Wanted<'distance'>): Wanted<'distance'> {
  const { id } = want.measurement;
  const { checks, judges } = context;
  if (!judges(id) || checks.some(({ measurement }) => measurement === id)) return want;
  const names = [context.words.name('misalignment'), context.words.short(id)];
  return { ...want, asked: { ...want.asked, names } };
}

function pastSide({ view }: DimensionContext, side: Side, plate: 0 | 1, from: Point): number {
  const { along } = side.surfaces[plate];
  const marks = [side.toes?.[plate], side.undercuts[plate].at(-1)?.b, side.grooveEdges?.[plate]];
  const reaches = marks.flatMap((mark) =>
    mark === undefined ? [] : [dot(subtract(mark, from), along) * view.scale],
  );
  return Math.max(0, ...reaches);
}

function turn(context: DimensionContext): readonly DimensionRequest[] {
  const want = wanted(context, 'angularMisalignment', 'angle', RANK.angle);
  if (want === null) return [];
  const vertex = toPx(context.view, want.witness.vertex);
  const { sheet, section } = context;
  // The arc stands between plate 2 and plate 1 carried on beneath it.
  const room =
    section.face.surfaces[1].along.x > 0 ? sheet.right - vertex.x : vertex.x - sheet.left;
  return [
    angleRequest(
      context,
      want,
      [0.8, 0.65, 0.5].map((share) => room * share),
    ),
  ];
}

/** Thicknesses are written before welding, and after it where the plates differ. */
function thicknesses(context: DimensionContext): readonly DimensionRequest[] {
  const { section, measurements, view, sheet } = context;
  const { t1, t2 } = measurements.values;
  const differ = Math.abs((t1?.value ?? 0) - (t2?.value ?? 0)) > SAME;
  const requests: DimensionRequest[] = [];
  for (const [plate, id] of [
    [0, 't1'],
    [1, 't2'],
  ] as const) {
    if (section.stage === 'welded' && !differ && !pressing(context, id)) continue;
    const want = wanted(context, id, 'distance', RANK.thickness);
    if (want === null) continue;
    const off = onScreen(section.plateSurfaces[plate].face.along);
    const from = toPx(view, want.witness.from);
    const most = reachOnSheet(sheet, from, off);
    requests.push({
      asked: want.asked,
      kind: 'linear',
      from,
      to: toPx(view, want.witness.to),
      off,
      levels: [most - 26, most - 50, most - 74],
      label: 'on',
      outer: 'to',
    });
  }
  return requests;
}
