import { inchToMm } from '../../units/index.ts';

/** Marks closer than this read as a grey band. */
const LEAST_GAP = 4.4;

/** How a scale is divided: minor and major step, each in mm or degrees, finest first. */
type Division = readonly [minor: number, major: number];

const INCH = inchToMm(1);
const fractions: readonly Division[] = [
  [INCH / 64, INCH / 16],
  [INCH / 32, INCH / 8],
  [INCH / 16, INCH / 4],
  [INCH / 8, INCH / 2],
  [INCH / 4, INCH],
  [INCH / 2, INCH * 2],
  [INCH, INCH * 4],
];
const angles: readonly Division[] = [
  [0.5, 2.5],
  [1, 5],
  [5, 15],
  [15, 45],
];

export type ScaleUnit = 'mm' | 'in' | 'in64' | 'deg' | 'ratio';

export interface Ticks {
  readonly minor: readonly number[];
  readonly major: readonly number[];
}

/**
 * Where a value stands on a straight scale, px; off the scale it stands at the end. (Not
 * `scaleLinear`, which brings the interpolation of colours with it, a tenth of the first load.)
 */
export function placed(
  min: number,
  max: number,
  start: number,
  end: number,
): (value: number) => number {
  return (value) => {
    const share = Math.min(1, Math.max(0, (value - min) / (max - min)));
    return start + share * (end - start);
  };
}

/**
 * The marks of a scale from `min` to `max` (mm, degrees or a ratio) drawn `width` px long, never
 * closer than 4.4 px: coarsened 1-2-5, an inch in halves down to 1/64, an angle in 1, 5 and 15.
 */
export function scaleTicks(min: number, max: number, width: number, unit: ScaleUnit): Ticks {
  // No room or no span: a bare baseline.
  if (!(max > min) || !(width >= LEAST_GAP)) return { minor: [], major: [] };
  const [minor, major] = division(max - min, width, unit);
  return { minor: multiples(minor, min, max), major: multiples(major, min, max) };
}

function division(span: number, width: number, unit: ScaleUnit): Division {
  const least = (span * LEAST_GAP) / width;
  if (unit === 'in64' || unit === 'deg') {
    const listed = (unit === 'deg' ? angles : fractions).find(([minor]) => minor >= least);
    if (listed !== undefined) return listed;
  }
  return decimal(least / (unit === 'in' ? INCH : 1), unit === 'in' ? INCH : 1);
}

/** The first of 1, 2, 5, 10 … that is at least `least`, every fifth of 1 and 2 tall, every second of 5. */
function decimal(least: number, unit: number): Division {
  const power = 10 ** Math.floor(Math.log10(least) + 1e-9);
  const leading = [1, 2, 5, 10].find((digit) => digit * power >= least * (1 - 1e-9)) ?? 10;
  const minor = leading * power;
  const major = minor * (leading === 5 ? 2 : 5);
  return [minor * unit, major * unit];
}

function multiples(step: number, min: number, max: number): number[] {
  const first = Math.ceil(min / step - 1e-9);
  const last = Math.floor(max / step + 1e-9);
  return Array.from(
    { length: Math.max(0, last - first + 1) },
    (_, index) => (first + index) * step,
  );
}
