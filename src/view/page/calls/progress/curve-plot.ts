import { line } from 'd3';
import { chanceOfReject, type Curve, type EyeScale } from '../../../../quiz/index.ts';
import { roundFigures, straightScale } from './straight-scale.ts';

/** A call as the curve takes it: how far past the limit the section stood, and whether it was rejected. */
export interface CurveCall {
  /** on the eye's scale, positive on the reject side */
  readonly distance: number;
  readonly rejected: boolean;
}

/** Calls at about the same distance, as one mark. */
export interface CurveMark {
  readonly distance: number;
  readonly calls: number;
  readonly rejected: number;
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

export interface CurveTick {
  readonly at: number;
  /** past the limit, in per cent of it, degrees or mm; 0 is the limit */
  readonly past: number;
}

/** The curve as path data and marks, in px of a plot with its origin at the upper left. */
export interface CurvePlot {
  readonly marks: readonly CurveMark[];
  readonly curve: string;
  /** where the limit stands, and where half is rejected */
  readonly limit: number;
  readonly half: number | null;
  readonly ticks: readonly CurveTick[];
  /** heights of no, half and all rejected */
  readonly rows: readonly { readonly share: number; readonly y: number }[];
}

/** Marks at most; fewer where there are few calls. */
const MOST_MARKS = 9;
const FEWEST_IN_A_MARK = 4;
const POINTS = 80;
/** Room for one figure under the plot, px. */
const TICK_ROOM = 62;

/** Lays out a person's curve for one skill: inside the limit on the left, past it on the right. */
export function curvePlot(
  calls: readonly CurveCall[],
  fitted: Curve | null,
  scale: EyeScale,
  { width, height }: { readonly width: number; readonly height: number },
): CurvePlot {
  const reach = reachOf(calls, fitted);
  const across = straightScale([-reach, reach], [0, width]);
  const up = straightScale([0, 1], [height, 0]);
  return {
    marks: groupsOf(calls).map((group) => {
      const rejected = group.filter((call) => call.rejected).length;
      const distance = group.reduce((sum, call) => sum + call.distance, 0) / group.length;
      return {
        distance,
        calls: group.length,
        rejected,
        x: across(distance),
        y: up(rejected / group.length),
        radius: 2 + Math.sqrt(group.length),
      };
    }),
    curve: fitted === null ? '' : curvePath(fitted, reach, across, up),
    limit: across(0),
    half: fitted === null ? null : across(fitted.bias),
    ticks: ticksOf(reach, scale, width / TICK_ROOM).map(({ distance, past }) => ({
      at: across(distance),
      past,
    })),
    rows: [0, 0.5, 1].map((share) => ({ share, y: up(share) })),
  };
}

/** How far the plot goes to either side: all calls, and the curve until it is nearly flat. */
function reachOf(calls: readonly CurveCall[], fitted: Curve | null): number {
  const furthest = Math.max(0, ...calls.map(({ distance }) => Math.abs(distance)));
  const curve = fitted === null ? 0 : Math.abs(fitted.bias) + 2.5 * fitted.scatter;
  return 1.08 * Math.max(furthest, curve, 1e-3);
}

/** Calls side by side in groups of about the same number, nearest distances together. */
function groupsOf(calls: readonly CurveCall[]): readonly (readonly CurveCall[])[] {
  const sorted = [...calls].sort((a, b) => a.distance - b.distance);
  const count = Math.max(1, Math.min(MOST_MARKS, Math.floor(sorted.length / FEWEST_IN_A_MARK)));
  return Array.from({ length: count }, (_, index) =>
    sorted.slice(
      Math.round((index * sorted.length) / count),
      Math.round(((index + 1) * sorted.length) / count),
    ),
  ).filter((group) => group.length > 0);
}

function curvePath(
  fitted: Curve,
  reach: number,
  across: (distance: number) => number,
  up: (share: number) => number,
): string {
  const points = Array.from({ length: POINTS + 1 }, (_, index): [number, number] => {
    const distance = -reach + (2 * reach * index) / POINTS;
    return [across(distance), up(chanceOfReject(distance, fitted))];
  });
  return line().digits(2)(points) ?? '';
}

/** Round figures past the limit: per cent of it where distances are ratios, else degrees or mm. */
function ticksOf(
  reach: number,
  scale: EyeScale,
  at: number,
): readonly { readonly distance: number; readonly past: number }[] {
  const most = scale === 'ratio' ? 100 * (Math.exp(reach) - 1) : reach;
  const figures = roundFigures(-most, most, Math.min(7, Math.max(3, Math.floor(at))));
  return figures
    .map((past) => ({ past, distance: scale === 'ratio' ? Math.log(1 + past / 100) : past }))
    .filter(({ distance }) => Number.isFinite(distance) && Math.abs(distance) <= reach);
}
