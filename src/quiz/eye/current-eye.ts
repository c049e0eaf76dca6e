import type { CallRecord } from '../call-record.ts';
import type { EyeScale } from '../question.ts';
import { chanceOfReject, distanceOfReject, type Curve } from './curve.ts';
import { spaced } from './eye-posterior.ts';
import { isInCurve, placed } from './kept-calls.ts';
import {
  marginsOf,
  meanOf,
  posteriorOf,
  type EyeGrid,
  type Posterior,
  type Prior,
} from './posterior.ts';
import { mostTelling, questPlus, type QuestPlus } from './quest-plus.ts';
import { usualLapse, usualScatter } from './support.ts';

/** Calls that count for what an eye is now, the latest: it learns. Our choice. */
const RECENT = 60;

/** Every eye that questions are placed by, in usual scatters. */
const grid: EyeGrid = {
  biases: spaced(-5, 5, 41),
  scatters: spaced(Math.log(1 / 4), Math.log(5), 11).map(Math.exp),
  // One share of blind calls: more of them would explain away what shows the scatter.
  lapses: [usualLapse],
};

/** Before the first call: a bias of about 10 per cent either way, a scatter within half and twice the usual. Our choice. */
const prior: Prior = (bias, scatter) =>
  -0.5 * ((bias / 1.25) ** 2 + (Math.log(scatter) / 0.7) ** 2);

function posterior(calls: readonly CallRecord[], scale: EyeScale): Posterior {
  const recent = calls.filter((call) => isInCurve(call) && call.scale === scale).slice(-RECENT);
  const unit = usualScatter[scale];
  const inUnits = recent.map((call) => ({ ...placed(call), distance: call.distance / unit }));
  return posteriorOf(inUnits, grid, prior);
}

/**
 * The one curve that predicts the next call best, from the latest of an eye's kept calls, few or none
 * of them too; to place questions by, never to be shown. Its scatter holds what isn't known of the
 * bias: the square of the middling σ and the variance of the biases still possible, so that it starts
 * wide, the first sections stand well off the limit, and it closes in as calls come. On the scale of
 * the distances.
 */
export function currentEye(calls: readonly CallRecord[], scale: EyeScale): Curve {
  const margins = marginsOf(posterior(calls, scale));
  const unit = usualScatter[scale];
  const bias = meanOf(grid.biases, margins.bias);
  const variance = meanOf(
    grid.biases.map((one) => (one - bias) ** 2),
    margins.bias,
  );
  const scatter = Math.exp(meanOf(grid.scatters.map(Math.log), margins.scatter));
  return {
    bias: bias * unit,
    scatter: Math.hypot(scatter, Math.sqrt(variance)) * unit,
    lapse: meanOf(grid.lapses, margins.lapse),
  };
}

/** The two sides that a section may stand on. */
export type Side = 'accept' | 'reject';

/** Nearest and farthest that practice places a section, in scatters from the limit. */
const NEAREST = 0.5;
const FARTHEST = 4;

/**
 * The distance from the limit, below 0 on the accept side, at which an eye makes the right call with
 * this chance, its bias included; at least half a scatter and at most 4 from the limit.
 */
export function distanceFor(chance: number, eye: Curve, side: Side): number {
  const wanted = distanceOfReject(side === 'reject' ? chance : 1 - chance, eye);
  const away = side === 'reject' ? wanted : -wanted;
  const size = Math.min(FARTHEST, Math.max(NEAREST, away / eye.scatter)) * eye.scatter;
  return side === 'reject' ? size : -size;
}

/** The chance that an eye makes the right call at a distance, below 0 on the accept side. */
export const chanceOfRight = (distance: number, eye: Curve): number =>
  distance > 0 ? chanceOfReject(distance, eye) : 1 - chanceOfReject(distance, eye);

/** The share of right calls that practice aims at. Wilson, Shenhav, Straccia and Cohen 2019: about 85 %. */
const PRACTICE_CHANCE = 0.85;

/**
 * The distance that practice asks on a side: each side's chance of a right call is 0.85, and where a
 * bias leaves one side too easy even half a scatter from the limit, the other is made as much harder,
 * so that both together stay at 0.85.
 */
export function practiceDistance(eye: Curve, side: Side): number {
  const other = side === 'reject' ? 'accept' : 'reject';
  const chance = chanceOfRight(distanceFor(PRACTICE_CHANCE, eye, other), eye);
  return distanceFor(PRACTICE_CHANCE - Math.max(0, chance - PRACTICE_CHANCE), eye, side);
}

/** Sections that may be shown, in usual scatters past the limit: none just at it, where there is no right call. */
const STEP = 0.25;
const stimuli = spaced(-6 + STEP / 2, 6 - STEP / 2, 48);

/** Worked out when the first limit is looked for: some ten thousand chances. */
let table: QuestPlus | null = null;

/**
 * Where the next section tells most about an eye's bias and scatter (QUEST+), on the scale of the
 * distances, within `reach` of the limit; the nearest that there is where the reach is shorter.
 */
export function tellingDistance(
  calls: readonly CallRecord[],
  scale: EyeScale,
  reach: number,
): number {
  table ??= questPlus(stimuli, eyes(), (distance, eye) => chanceOfReject(distance, eye));
  const unit = usualScatter[scale];
  const { weights } = posterior(calls, scale);
  const farthest = Math.max(reach / unit, STEP / 2) + 1e-9;
  const index = mostTelling(table, weights, (distance) => Math.abs(distance) <= farthest);
  return (stimuli[index] ?? STEP / 2) * unit;
}

const eyes = (): readonly Curve[] =>
  grid.biases.flatMap((bias) =>
    grid.scatters.flatMap((scatter) => grid.lapses.map((lapse) => ({ bias, scatter, lapse }))),
  );
