import type { Contour, Point } from './shape.ts';
import { isLine, radius, splitSegment } from './segment.ts';
import { isClosed } from './contour.ts';

/** Something a contour can be written to: a path string, a canvas, a test. */
export interface PathSink {
  moveTo(to: Point): void;
  lineTo(to: Point): void;
  /** an arc of at most half a circle; `left` when it turns counter-clockwise, y up */
  arcTo(to: Point, radius: number, left: boolean): void;
  closePath(): void;
}

/** Where the section plane lies on paper: scaled, turned over if y runs down there, then moved. */
export interface PaperMap {
  readonly scale: number;
  readonly dx: number;
  readonly dy: number;
  readonly flipY: boolean;
}

/** A sink that writes the path data of an SVG `d` attribute. */
export interface SvgPathSink extends PathSink {
  toString(): string;
}

/**
 * Writes a contour to a sink, closing the path when the contour closes. An
 * empty contour writes nothing. Arcs over half a circle are written as two, so
 * that a sink never has to tell the larger arc from the smaller.
 */
export function writeContour(contour: Contour, sink: PathSink): void {
  const first = contour[0];
  if (first === undefined) return;
  sink.moveTo(first.a);
  for (const segment of contour) {
    if (isLine(segment)) {
      sink.lineTo(segment.b);
      continue;
    }
    const parts = Math.abs(segment.bulge) > 1 ? splitSegment(segment, 0.5) : [segment];
    for (const part of parts) sink.arcTo(part.b, radius(segment), segment.bulge > 0);
  }
  if (isClosed(contour)) sink.closePath();
}

/**
 * A sink for SVG path data, rounded to `digits` decimals after mapping to the
 * paper. Rounding happens here and nowhere before.
 */
export function svgPathSink(
  digits = 3,
  map: PaperMap = { scale: 1, dx: 0, dy: 0, flipY: false },
): SvgPathSink {
  const parts: string[] = [];
  const factor = 10 ** digits;
  const number = (value: number): string => String(Math.round(value * factor) / factor);
  const place = ({ x, y }: Point): string =>
    `${number(map.scale * x + map.dx)} ${number((map.flipY ? -1 : 1) * map.scale * y + map.dy)}`;
  return {
    moveTo: (to) => void parts.push(`M${place(to)}`),
    lineTo: (to) => void parts.push(`L${place(to)}`),
    arcTo: (to, size, left) => {
      const r = number(size * Math.abs(map.scale));
      // SVG's sweep flag 1 runs from +x to +y as they lie on paper
      const flag = left === map.flipY ? 0 : 1;
      parts.push(`A${r} ${r} 0 0 ${flag} ${place(to)}`);
    },
    closePath: () => void parts.push('Z'),
    toString: () => parts.join(''),
  };
}

/** A contour as SVG path data. */
export function svgPath(contour: Contour, digits?: number, map?: PaperMap): string {
  const sink = svgPathSink(digits, map);
  writeContour(contour, sink);
  return sink.toString();
}
