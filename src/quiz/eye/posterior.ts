import type { PlacedCall } from './curve.ts';
import type { Estimate } from './estimate.ts';
import { quickShare } from './share-table.ts';

/** The eyes that are held possible: every bias with every scatter and every share of lapses. */
export interface EyeGrid {
  /** evenly spaced, rising */
  readonly biases: readonly number[];
  /** each the same ratio above the one before */
  readonly scatters: readonly number[];
  readonly lapses: readonly number[];
}

/** How likely a bias and a scatter are before any call, as a logarithm up to a constant. */
export type Prior = (bias: number, scatter: number) => number;

/** How likely each eye of a grid is, by scatter within bias and lapse within scatter; adds up to 1. */
export interface Posterior {
  readonly grid: EyeGrid;
  readonly weights: Float64Array;
}

/** Products below this are put away as logarithms before they vanish. */
const SMALL = 1e-200;

/** Bayes' rule on a grid: how likely each eye is after these calls. */
export function posteriorOf(calls: readonly PlacedCall[], grid: EyeGrid, prior: Prior): Posterior {
  const { biases, scatters, lapses } = grid;
  const logs = new Float64Array(biases.length * scatters.length * lapses.length);
  const products = new Float64Array(lapses.length);
  let at = 0;
  for (const bias of biases) {
    for (const scatter of scatters) {
      products.fill(1);
      logs.fill(prior(bias, scatter), at, at + lapses.length);
      for (const { distance, rejected } of calls) {
        const z = (distance - bias) / scatter;
        const share = quickShare(rejected ? z : -z);
        for (let k = 0; k < lapses.length; k++) {
          const lapse = lapses[k] as number;
          const product = (products[k] as number) * (lapse + (1 - 2 * lapse) * share);
          products[k] = product < SMALL ? 1 : product;
          if (product < SMALL) logs[at + k] = (logs[at + k] as number) + Math.log(product);
        }
      }
      for (let k = 0; k < lapses.length; k++, at++) {
        logs[at] = (logs[at] as number) + Math.log(products[k] as number);
      }
    }
  }
  return { grid, weights: normalised(logs) };
}

function normalised(logs: Float64Array): Float64Array {
  const most = logs.reduce((a, b) => Math.max(a, b), -Infinity);
  const weights = logs.map((log) => Math.exp(log - most));
  const all = weights.reduce((sum, weight) => sum + weight, 0);
  return weights.map((weight) => weight / all);
}

/** What each bias, scatter and share of lapses is likely by itself. */
export function marginsOf({ grid: { biases, scatters, lapses }, weights }: Posterior) {
  const margins = {
    bias: new Float64Array(biases.length),
    scatter: new Float64Array(scatters.length),
    lapse: new Float64Array(lapses.length),
  };
  const add = (margin: Float64Array, index: number, weight: number): void => {
    margin[index] = (margin[index] as number) + weight;
  };
  weights.forEach((weight, at) => {
    const cell = Math.floor(at / lapses.length);
    add(margins.lapse, at % lapses.length, weight);
    add(margins.scatter, cell % scatters.length, weight);
    add(margins.bias, Math.floor(cell / scatters.length), weight);
  });
  return margins;
}

/** The mean of a margin over its nodes. */
export const meanOf = (nodes: readonly number[], margin: Float64Array): number =>
  nodes.reduce((sum, node, i) => sum + node * (margin[i] as number), 0);

/** The middle of a margin over evenly spaced nodes, half on either side, and the limits that leave out a fortieth at either end. */
export const spreadOf = (nodes: readonly number[], margin: Float64Array): Estimate => ({
  value: quantileOf(nodes, margin, 0.5),
  low: quantileOf(nodes, margin, 0.025),
  high: quantileOf(nodes, margin, 0.975),
});

/** Each node stands for the cell halfway to its neighbours, evenly filled. */
function quantileOf(nodes: readonly number[], margin: Float64Array, share: number): number {
  const [first = 0, second = first] = nodes;
  const step = second - first;
  let below = 0;
  for (const [i, node] of nodes.entries()) {
    const weight = margin[i] as number;
    if (below + weight >= share && weight > 0) {
      return node - step / 2 + (step * (share - below)) / weight;
    }
    below += weight;
  }
  return (nodes.at(-1) ?? first) + step / 2;
}
