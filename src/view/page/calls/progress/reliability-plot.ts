import { line } from 'd3';
import type { SurePoint } from '../../../../quiz/index.ts';
import { straightScale } from './straight-scale.ts';

/** A point of the curve, with its interval, in px. */
export interface ReliabilityMark {
  readonly x: number;
  readonly y: number;
  readonly low: number;
  readonly high: number;
  readonly radius: number;
}

/** The reliability curve in px of a plot with its origin at the upper left. */
export interface ReliabilityPlot {
  readonly marks: readonly ReliabilityMark[];
  /** through the marks */
  readonly curve: string;
  /** where what is said and what is right are the same */
  readonly even: string;
  /** shares said, under the plot, and shares right, beside it */
  readonly columns: readonly { readonly share: number; readonly x: number }[];
  readonly rows: readonly { readonly share: number; readonly y: number }[];
}

/** The least share that is offered: a guess. */
const GUESS = 0.5;

/** Lays out how often a person was right over how sure they said they were. */
export function reliabilityPlot(
  points: readonly SurePoint[],
  { width, height }: { readonly width: number; readonly height: number },
): ReliabilityPlot {
  const least = Math.min(GUESS, ...points.map(({ stated }) => stated));
  const across = straightScale([least, 1], [0, width]);
  const up = straightScale([0, 1], [height, 0]);
  const marks = points.map(({ stated, share, calls }) => ({
    x: across(stated),
    y: up(share.value),
    low: up(share.low),
    high: up(share.high),
    radius: Math.min(8, 2 + Math.sqrt(calls) / 2),
  }));
  const path = line().digits(2);
  return {
    marks,
    curve: path(marks.map(({ x, y }) => [x, y])) ?? '',
    even: path([least, 1].map((share) => [across(share), up(share)])) ?? '',
    columns: [least, (least + 1) / 2, 1].map((share) => ({ share, x: across(share) })),
    rows: [0, 0.5, 1].map((share) => ({ share, y: up(share) })),
  };
}
