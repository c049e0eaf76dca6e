import { normalDensity, normalShare } from '../../limits/index.ts';
import { isParted, type PlacedCall } from './curve.ts';

/** Calls at one level: how many, and how many of them rejected (or right). */
export interface Level {
  readonly x: number;
  readonly calls: number;
  readonly rejected: number;
}

/** Which curve is fitted, and the shares of blind calls below and above it. */
export interface CurveShape {
  readonly link: 'probit' | 'logit';
  /** share that is reached with nothing to see: ½ where one of two is named */
  readonly guess: number;
  readonly lapse: number;
}

/** A curve of greatest likelihood, g + (1 − g − λ) F(intercept + slope x), with standard errors. */
export interface FittedCurve {
  readonly intercept: number;
  readonly slope: number;
  /** where F is a half: the level half rejected */
  readonly half: number;
  /** 1 / slope: for the probit the standard deviation of the eye's noise */
  readonly scatter: number;
  readonly standardErrors: {
    readonly intercept: number;
    readonly slope: number;
    readonly half: number;
    readonly scatter: number;
  };
  /** twice the log likelihood short of a perfect fit */
  readonly deviance: number;
}

const MOST_STEPS = 100;
const MOST_HALVINGS = 30;
const NEAR = 1e-12;
/** Deviances nearer than this are one: what is left is rounding. */
const ALIKE = 1e-10;

/**
 * Fits a curve by greatest likelihood (Fisher's scoring; standard errors from the expected
 * information, those of half and scatter by the delta method). Null where no finite rising slope is
 * the likeliest.
 */
export function fitCurve(
  levels: readonly Level[],
  shape: CurveShape = { link: 'probit', guess: 0, lapse: 0 },
): FittedCurve | null {
  if (isParted(levels.flatMap(callsAt))) return null;
  const calls = levels.reduce((sum, level) => sum + level.calls, 0);
  const mean = levels.reduce((sum, level) => sum + level.x * level.calls, 0) / calls;
  const square = levels.reduce((sum, { x, calls: n }) => sum + n * (x - mean) ** 2, 0);
  const unit = Math.sqrt(square / calls);
  if (unit === 0) return null;
  // Centred and in units of the spread, so that the two parameters hardly pull at each other.
  const scaled = levels.map((level) => ({ ...level, x: (level.x - mean) / unit }));
  let line: Line = [0, 1];
  let deviance = devianceOf(scaled, line, shape);
  for (let step = 0; step < MOST_STEPS; step++) {
    const { score, information } = scoring(scaled, line, shape);
    const [a, b] = solved(information, score);
    let next: Line = line;
    let reached = deviance;
    for (let part = 1, i = 0; i < MOST_HALVINGS; i++, part /= 2) {
      next = [line[0] + part * a, line[1] + part * b];
      reached = devianceOf(scaled, next, shape);
      if (reached <= deviance + ALIKE) break;
    }
    const moved = Math.abs(next[0] - line[0]) + Math.abs(next[1] - line[1]);
    if (reached > deviance + ALIKE) break;
    [line, deviance] = [next, reached];
    if (moved < NEAR) break;
  }
  return line[1] > 0 ? described(scaled, line, shape, deviance, mean, unit) : null;
}

/** One call of each kind that was made at a level: enough to see whether they part. */
const callsAt = ({ x, calls, rejected }: Level): readonly PlacedCall[] => [
  ...(rejected < calls ? [{ distance: x, rejected: false }] : []),
  ...(rejected > 0 ? [{ distance: x, rejected: true }] : []),
];

type Line = readonly [number, number];
type Information = readonly [number, number, number];

function described(
  scaled: readonly Level[],
  line: Line,
  shape: CurveShape,
  deviance: number,
  mean: number,
  unit: number,
): FittedCurve {
  const { information } = scoring(scaled, line, shape);
  const [aa, ab, bb] = inverse(information);
  const [a, b] = line;
  const ratio = mean / unit;
  const half = -a / b;
  const error = (variance: number): number => Math.sqrt(Math.max(0, variance));
  return {
    intercept: a - b * ratio,
    slope: b / unit,
    half: mean + unit * half,
    scatter: unit / b,
    standardErrors: {
      intercept: error(aa - 2 * ratio * ab + ratio * ratio * bb),
      slope: error(bb) / unit,
      half: (unit / b) * error(aa + 2 * half * ab + half * half * bb),
      scatter: (unit / (b * b)) * error(bb),
    },
    deviance,
  };
}

function chanceAt(x: number, [a, b]: Line, { link, guess, lapse }: CurveShape) {
  const z = a + b * x;
  const share = link === 'probit' ? normalShare(z) : 1 / (1 + Math.exp(-z));
  const density = link === 'probit' ? normalDensity(z) : share * (1 - share);
  const rise = 1 - guess - lapse;
  return { chance: guess + rise * share, slope: rise * density };
}

function scoring(levels: readonly Level[], line: Line, shape: CurveShape) {
  let [scoreA, scoreB, aa, ab, bb] = [0, 0, 0, 0, 0];
  for (const { x, calls, rejected } of levels) {
    const { chance, slope } = chanceAt(x, line, shape);
    const variance = Math.max(chance * (1 - chance), Number.MIN_VALUE);
    const pull = ((rejected - calls * chance) * slope) / variance;
    const weight = (calls * slope * slope) / variance;
    scoreA += pull;
    scoreB += pull * x;
    aa += weight;
    ab += weight * x;
    bb += weight * x * x;
  }
  return { score: [scoreA, scoreB] as Line, information: [aa, ab, bb] as Information };
}

function inverse([aa, ab, bb]: Information): Information {
  const all = aa * bb - ab * ab;
  return [bb / all, -ab / all, aa / all];
}

function solved(information: Information, [a, b]: Line): Line {
  const [aa, ab, bb] = inverse(information);
  return [aa * a + ab * b, ab * a + bb * b];
}

function devianceOf(levels: readonly Level[], line: Line, shape: CurveShape): number {
  return levels.reduce((sum, { x, calls, rejected }) => {
    const { chance } = chanceAt(x, line, shape);
    const accepted = calls - rejected;
    return sum + 2 * part(rejected, calls * chance) + 2 * part(accepted, calls * (1 - chance));
  }, 0);
}

const part = (seen: number, expected: number): number =>
  seen === 0 ? 0 : seen * Math.log(seen / expected);
