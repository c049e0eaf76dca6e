import { rounded } from './written.ts';

/** A length that makes a round scale bar, with its words. */
export interface BarLength {
  readonly mm: number;
  readonly text: string;
}

/** The scale bar: four parts, every other one filled, with its end ticks left off. */
export interface ScaleBar {
  readonly length: BarLength;
  readonly width: number;
  /** outline of the bar, and its filled parts, from (0, 0) rightwards */
  readonly frame: string;
  readonly filled: string;
}

const HEIGHT = 5;
const PARTS = 4;

/** The largest round bar that is at most `room` px wide; the smallest one if none is. */
export function scaleBar(
  pxPerMm: number,
  room: number,
  lengths: readonly BarLength[],
): ScaleBar | null {
  const rising = [...lengths].sort((p, q) => p.mm - q.mm);
  const length = rising.findLast(({ mm }) => mm * pxPerMm <= room) ?? rising[0];
  if (length === undefined) return null;
  const width = length.mm * pxPerMm;
  let filled = '';
  for (let part = 0; part < PARTS; part += 2) {
    const x = rounded((width * part) / PARTS);
    filled += `M${x} 0H${rounded((width * (part + 1)) / PARTS)}V${HEIGHT}H${x}Z`;
  }
  return { length, width, frame: `M0 0H${rounded(width)}V${HEIGHT}H0Z`, filled };
}

/** 9.5 : 1 above life size, 1 : 2 below it. */
export function scaleText(times: number): string {
  const shown = (value: number): string =>
    value >= 20 ? value.toFixed(0) : value.toFixed(1).replace(/\.0$/, '');
  return times >= 1 ? `${shown(times)} : 1` : `1 : ${shown(1 / times)}`;
}
