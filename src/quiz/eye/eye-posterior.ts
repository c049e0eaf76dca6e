import type { EyeScale } from '../question.ts';
import type { PlacedCall } from './curve.ts';
import type { Estimate } from './estimate.ts';
import { marginsOf, meanOf, posteriorOf, spreadOf, type EyeGrid, type Prior } from './posterior.ts';
import { usualScatter } from './support.ts';

/** Bias, scatter and lapses of an eye as calls leave them, on the scale of the calls. */
export interface FittedEye {
  readonly bias: Estimate;
  readonly scatter: Estimate;
  readonly lapse: number;
}

/** Shares of blind calls that are held possible, each as likely as the other. Our choice. */
const lapses = [0.01, 0.03] as const;

/** Evenly spaced numbers from one to another. */
export const spaced = (low: number, high: number, count: number): readonly number[] =>
  Array.from({ length: count }, (_, i) => low + ((high - low) * i) / (count - 1));

/** Ends of what is looked at, in usual scatters: of the bias, and of the scatter's logarithm. */
const WIDEST: Box = { bias: [-8, 8], logScatter: [Math.log(1 / 8), Math.log(8)] };
/** Nodes for bias and for scatter: coarse to find where the eye is, fine to read it. */
const passes = [
  [33, 13],
  [33, 17],
  [41, 25],
] as const;
/** Eyes less likely than the likeliest by more than this, as a logarithm, are left out of the next pass. */
const FAINT = -12;

interface Box {
  readonly bias: readonly [number, number];
  readonly logScatter: readonly [number, number];
}

/**
 * Beforehand a bias most likely within a third of the limit, and a scatter the usual one, though at 4
 * times or a quarter of it not much less so: wide enough that 20 calls outweigh it. Our choice, held to
 * the errors and the coverage of simulated eyes.
 */
const openMind: Prior = (bias, scatter) =>
  -0.5 * ((bias / 4) ** 2 + (Math.log(scatter) / 1.5) ** 2);

/**
 * What calls say of an eye: the middles of the posterior, and intervals that leave a fortieth of it out
 * at either end.
 */
export function fittedEye(calls: readonly PlacedCall[], scale: EyeScale): FittedEye {
  const unit = usualScatter[scale];
  const inUnits = calls.map((call) => ({ ...call, distance: call.distance / unit }));
  let box = WIDEST;
  for (const pass of passes.slice(0, -1)) {
    box = likelyPart(posteriorOf(inUnits, gridOf(box, pass), openMind), box);
  }
  const posterior = posteriorOf(inUnits, gridOf(box, passes[2]), openMind);
  const margins = marginsOf(posterior);
  const { biases, scatters } = posterior.grid;
  const logScatter = spreadOf(scatters.map(Math.log), margins.scatter);
  return {
    bias: mapped(spreadOf(biases, margins.bias), (bias) => bias * unit),
    scatter: mapped(logScatter, (log) => Math.exp(log) * unit),
    lapse: meanOf(lapses, margins.lapse),
  };
}

const gridOf = (
  { bias, logScatter }: Box,
  [biases, scatters]: readonly [number, number],
): EyeGrid => ({
  biases: spaced(...bias, biases),
  scatters: spaced(...logScatter, scatters).map(Math.exp),
  lapses,
});

/** The box about all that isn't faint, and a node more on every side. */
function likelyPart({ grid, weights }: ReturnType<typeof posteriorOf>, box: Box): Box {
  const { bias, scatter } = marginsOf({ grid, weights });
  return {
    bias: likely(grid.biases, bias, box.bias),
    logScatter: likely(grid.scatters.map(Math.log), scatter, box.logScatter),
  };
}

function likely(
  nodes: readonly number[],
  margin: Float64Array,
  [low, high]: readonly [number, number],
): readonly [number, number] {
  const least = Math.max(...margin) * Math.exp(FAINT);
  const inside = nodes.flatMap((_, i) => ((margin[i] as number) >= least ? [i] : []));
  const [first, last] = [inside[0] ?? 0, inside.at(-1) ?? nodes.length - 1];
  return [nodes[first - 1] ?? low, nodes[last + 1] ?? high];
}

const mapped = ({ value, low, high }: Estimate, of: (number: number) => number): Estimate => ({
  value: of(value),
  low: of(low),
  high: of(high),
});
