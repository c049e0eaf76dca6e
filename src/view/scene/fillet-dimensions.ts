import { dot, length, scale, subtract } from '../../geometry/index.ts';
import type { MeasurementId } from '../../measure/index.ts';
import {
  angleRequest,
  type DimensionContext,
  onScreen,
  pressing,
  wanted,
} from './dimension-context.ts';
import type { DimensionRequest, RunningRequest, Way } from './dimension-request.ts';
import { reachOnSheet } from './sheet-reach.ts';
import { small } from './small-dimension.ts';
import { toPx } from './view-transform.ts';

/** Order of placing; the last are the first to be dropped. */
const RANK = {
  leg: 10,
  governing: 15,
  throat: 20,
  flaw: 30,
  gap: 34,
  edge: 40,
  angle: 50,
  convexity: 60,
} as const;

/** The dimensions of a fillet joint, in the manner that each is drawn. */
export function filletDimensions(context: DimensionContext): readonly DimensionRequest[] {
  return [
    ...legDimensions(context),
    ...throatDimensions(context),
    ...flawDimensions(context),
    ...faceDimensions(context),
    ...angleDimensions(context),
  ];
}

/** Legs stand in the air: each carried out along the other plate's surface, which serves as its extension line. */
function legDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const requests: DimensionRequest[] = [];
  for (const [id, other] of [
    ['leg1', 1],
    ['leg2', 0],
  ] as const) {
    if (!context.show.legs && !pressing(context, id)) continue;
    const want = wanted(context, id, 'distance', RANK.leg);
    if (want === null) continue;
    const { witness, asked } = want;
    const surface = context.section.face.surfaces[other];
    requests.push({
      asked,
      kind: 'linear',
      from: toPx(context.view, witness.from),
      to: toPx(context.view, witness.to),
      off: onScreen(surface.along),
      levels: legLevels(context, other),
      instead: () => underPlate(context, other === 0 ? 1 : 0),
      label: 'on',
      outer: 'to',
    });
  }
  return requests;
}

/** A leg with no room in the air goes into the base metal under its own surface, clear of the fusion line. */
function underPlate({ section, view }: DimensionContext, plate: 0 | 1): Way {
  const { origin, normal } = section.face.surfaces[plate];
  let deepest = 0;
  for (const weld of section.welds)
    for (const { a, b, bulge } of weld) {
      const rise = (Math.abs(bulge) * Math.hypot(a.x - b.x, a.y - b.y)) / 2;
      deepest = Math.max(deepest, rise, -dot(subtract(a, origin), normal));
    }
  const clear = deepest * view.scale;
  return { off: onScreen(scale(normal, -1)), levels: [clear + 24, clear + 44, clear + 70] };
}

/** Room kept between a leg's dimension line and the sheet's edge, for its text, px. */
const EDGE_ROOM = { 0: 14, 1: 26 } as const;

/** How far out a leg's dimension line may lie, px: well clear of the face, never off the sheet. */
function legLevels({ section, view, sheet }: DimensionContext, along: 0 | 1): readonly number[] {
  const surface = section.face.surfaces[along];
  const origin = toPx(view, surface.origin);
  const direction = onScreen(surface.along);
  const most =
    reachOnSheet(sheet, origin, direction) -
    EDGE_ROOM[along] * (sheet.manner === 'presenting' ? 1.8 : 1);
  const { toes, lips, undercuts } = section.face;
  let clear = 0;
  for (const mark of [toes?.[along], lips?.[along], ...undercuts[along].map(({ b }) => b)])
    if (mark !== undefined)
      clear = Math.max(clear, dot(subtract(mark, surface.origin), surface.along) * view.scale);
  const best = Math.min(most, clear + sheet.margins[along === 0 ? 'beside' : 'above']);
  const levels = [best];
  for (let level = best - 24; level > clear + 28; level -= 24) levels.push(level);
  for (let level = best + 24; level <= most; level += 48) levels.push(level);
  return levels;
}

const THROATS = [
  'theoreticalThroat',
  'actualThroat',
  'effectiveThroat',
  'isoscelesThroat',
  'chordThroat',
  'deepThroat',
] as const;

/**
 * Throats run from the root, their common origin, one arrow each. The one that
 * governs and the actual one are always drawn, the theoretical one where
 * neither it nor another governs in its place, the rest only when they are
 * pointed at or out of limit.
 */
function throatDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const { show, words, governing } = context;
  const isThird =
    governing !== null && governing !== 'actualThroat' && governing !== 'theoreticalThroat';
  const requests: (RunningRequest & { next?: number | undefined })[] = [];
  for (const id of THROATS) {
    const always =
      id === governing ||
      id === 'actualThroat' ||
      // A third throat so near to it would only be in its way.
      (id === 'theoreticalThroat' && !isThird);
    if (!(show.throats && always) && !pressing(context, id)) continue;
    const rank = id === governing ? RANK.governing : RANK.throat;
    const want = wanted(context, id, 'distance', rank);
    if (want === null) continue;
    const { asked, witness } = want;
    const governs = [words.governs(words.name(id)), words.governsShort(words.short(id))];
    // One that is drawn only because it governs says so as long as it says anything.
    const names = isThird ? governs : [...governs, words.short(id)];
    const marked = show.throats && id === governing ? { ...asked, names, kept: true } : asked;
    requests.push({
      asked: marked,
      kind: 'running',
      from: toPx(context.view, witness.from),
      to: toPx(context.view, witness.to),
      label: labelOf(id, governing),
    });
  }
  for (const request of requests) request.next = nextPast(request, requests);
  return requests;
}

/** Two throats under this angle seem one line, as a cosine: about 11 degrees. */
const ONE_LINE = 0.98;

/** How far past its arrow the next longer throat ends that lies on what seems the same line, px; undefined where none does. */
function nextPast(
  { from, to }: RunningRequest,
  requests: readonly RunningRequest[],
): number | undefined {
  const way = subtract(to, from);
  const length = Math.hypot(way.x, way.y);
  let next = Infinity;
  for (const other of requests) {
    const otherWay = subtract(other.to, other.from);
    const longer = Math.hypot(otherWay.x, otherWay.y);
    if (longer > length && dot(way, otherWay) > ONE_LINE * length * longer)
      next = Math.min(next, longer - length);
  }
  return next === Infinity ? undefined : next;
}

/**
 * Throats that differ run close to one another, so a text on one is in the way of the next: only the
 * theoretical one carries it on its line, the one that governs where nothing else will do.
 */
function labelOf(id: MeasurementId, governing: MeasurementId | null): RunningRequest['label'] {
  if (id === 'actualThroat') return 'end';
  return id === governing && id !== 'theoreticalThroat' ? 'endOrOn' : 'on';
}

/** Undercut, overlap, gap and penetration: small dimensions set beside what they measure. */
function flawDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const { section, view } = context;
  const requests: DimensionRequest[] = [];
  for (const plate of [0, 1] as const) {
    const { along, normal } = section.face.surfaces[plate];
    const undercut = wanted(context, `undercut${plate === 0 ? 1 : 2}`, 'distance', RANK.flaw);
    if (undercut !== null) {
      const end = section.face.undercuts[plate].at(-1)?.b ?? undercut.witness.from;
      const past = dot(subtract(end, undercut.witness.from), along) * view.scale;
      requests.push(
        small(context, undercut, onScreen(along), [past + 13, past + 26, past + 44], 'from'),
      );
    }
    const overlap = wanted(context, `overlap${plate === 0 ? 1 : 2}`, 'distance', RANK.flaw);
    if (overlap !== null) {
      requests.push(small(context, overlap, onScreen(scale(normal, -1)), [24, 38, 52], 'to'));
    }
  }
  const into1 = onScreen(scale(section.face.surfaces[0].normal, -1));
  const gap = wanted(context, 'rootGap', 'distance', RANK.gap);
  if (gap !== null) {
    const away = onScreen(scale(section.face.surfaces[0].along, -1));
    requests.push(small(context, gap, away, [46, 70, 94, 28], 'from'));
  }
  if (context.show.throats || pressing(context, 'rootPenetration')) {
    const penetration = wanted(context, 'rootPenetration', 'distance', RANK.gap);
    if (penetration !== null) requests.push(small(context, penetration, into1, [24, 38, 52], 'to'));
  }
  const edge = wanted(context, 'edgeRemaining', 'distance', RANK.edge);
  if (edge !== null) {
    const out = onScreen(section.face.surfaces[1].normal);
    requests.push(small(context, edge, out, [34, 50, 70, 26], 'to', 'on'));
  }
  return requests;
}

/** Convexity and concavity stand off the chord, set towards toe 1 as far as the face leaves room. */
function faceDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const { section, show, view } = context;
  const { toes } = section.face;
  // not yet welded
  if (toes === null) return [];
  const chord = subtract(toes[0], toes[1]);
  const size = length(chord) * view.scale;
  const towards = onScreen(scale(chord, 1 / length(chord)));
  const requests: DimensionRequest[] = [];
  for (const id of ['convexity', 'concavity'] as const) {
    if (!show.chord && !pressing(context, id)) continue;
    const want = wanted(context, id, 'distance', RANK.convexity);
    if (want === null) continue;
    const levels = chordLevels(
      dot(subtract(want.witness.to, toes[1]), chord) / dot(chord, chord),
      size,
    );
    const outer = id === 'convexity' ? 'to' : 'from';
    requests.push(small(context, want, towards, levels, outer, 'end', 'from'));
  }
  return requests;
}

/** Shifts along the chord from the extreme, which stands at `share` of it from toe 2, px; none past a toe. */
function chordLevels(share: number, size: number): readonly number[] {
  return [0.3, 0.2, -0.3, -0.2, 0.38, 0.1]
    .filter((shift) => share + shift > 0.06 && share + shift < 0.94)
    .map((shift) => shift * size);
}

function angleDimensions(context: DimensionContext): readonly DimensionRequest[] {
  const { section, show, measurements } = context;
  const requests: DimensionRequest[] = [];
  for (const id of ['toeAngle1', 'toeAngle2'] as const) {
    if (!show.toeAngles && !pressing(context, id)) continue;
    const want = wanted(context, id, 'angle', RANK.angle);
    if (want !== null) requests.push(angleRequest(context, want, [36, 48, 28, 62]));
  }
  const dihedral = measurements.values.dihedralAngle?.value ?? 90;
  const skewed = Math.abs(dihedral - 90) > 0.05 || section.stage === 'fitUp';
  if (skewed || pressing(context, 'dihedralAngle')) {
    const want = wanted(context, 'dihedralAngle', 'angle', RANK.angle);
    if (want !== null) requests.push(angleRequest(context, want, [48, 66, 34, 90]));
  }
  return requests;
}
