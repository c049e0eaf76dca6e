import type { ElementKind } from '../../limits/index.ts';
import { rounded } from './written.ts';

// All in sizes of the type.
/** Height of capitals and figures. */
export const CAP = 0.7;
/** Between a mark and what is written beyond it or beside it. */
export const GAP = 0.3;
export const HEIGHT = 2.1;
export const FILLET = 1.5;
export const SQUARE = 1.6;
const STRIP = 0.9;

/** How far each mark reaches from its line, in sizes of the type. */
export const heights: Readonly<Record<ElementKind, number>> = {
  fillet: FILLET,
  square: SQUARE,
  V: HEIGHT,
  bevel: HEIGHT,
  U: HEIGHT,
  J: HEIGHT,
  backRun: 0.7,
  strip: STRIP,
};

/** Where a weld mark stands: its centre, the line that it stands on, and which way out of it is. */
export interface MarkPlace {
  readonly x: number;
  /** half its width, in sizes of the type: twins on both sides are as wide as the wider */
  readonly half: number;
  readonly line: number;
  /** −1 above the line, 1 below it */
  readonly out: -1 | 1;
}

/** Writes places given in sizes of the type, along the line and out of it, as px on the drawing. */
export interface Pen {
  readonly to: (along: number, out: number) => string;
  readonly baseline: (along: number, middle: number, scale: number) => { x: number; y: number };
  /** an arc that turns left to right over the outer side, or over the line's side */
  readonly arc: (rx: number, ry: number, over: 'out' | 'in') => string;
}

/** The pen of a mark in its place, at type of `size` px. */
export function penAt({ x, line, out }: MarkPlace, size: number): Pen {
  return {
    to: (along, far) => `${rounded(x + along * size)} ${rounded(line + out * far * size)}`,
    baseline: (along, middle, scale) => ({
      x: rounded(x + along * size),
      y: rounded(line + out * middle * size + (CAP / 2) * scale * size),
    }),
    arc: (rx, ry, over) => {
      const clockwise = (over === 'out') === (out === -1);
      return `A${rounded(rx * size)} ${rounded(ry * size)} 0 0 ${clockwise ? 1 : 0} `;
    },
  };
}

/** The outline of a mark; the reference line closes the ones that stand open on it. */
export function shape(kind: ElementKind, half: number, { to, arc }: Pen): string {
  const foot = HEIGHT / 3;
  switch (kind) {
    case 'fillet':
      return `M${to(-half, 0)}L${to(-half, FILLET)}L${to(half, 0)}Z`;
    case 'square':
      return `M${to(-half, 0)}L${to(-half, SQUARE)}M${to(half, 0)}L${to(half, SQUARE)}`;
    case 'V':
      return `M${to(-half, HEIGHT)}L${to(0, 0)}L${to(half, HEIGHT)}`;
    case 'bevel':
      return `M${to(-half, HEIGHT)}L${to(-half, 0)}L${to(half, HEIGHT)}`;
    case 'U':
      return (
        `M${to(0, 0)}L${to(0, foot)}` +
        `M${to(-half, HEIGHT)}${arc(half, HEIGHT - foot, 'in')}${to(0, foot)}` +
        `${arc(half, HEIGHT - foot, 'in')}${to(half, HEIGHT)}`
      );
    case 'J':
      return (
        `M${to(-half, HEIGHT)}L${to(-half, 0)}` +
        `M${to(-half, foot)}${arc(2 * half, HEIGHT - foot, 'in')}${to(half, HEIGHT)}`
      );
    case 'backRun':
      return `M${to(-half, 0)}${arc(half, half, 'out')}${to(half, 0)}`;
    case 'strip':
      return `M${to(-half, 0)}L${to(-half, STRIP)}L${to(half, STRIP)}L${to(half, 0)}Z`;
  }
}

/** A contour along a fillet mark's long side, `bulge` out of the weld. */
export function alongFillet(bulge: number, { to }: Pen): string {
  const apart = GAP / Math.SQRT2 + Math.max(0, -bulge) / 2;
  const [from, until] = [0.12, 0.88].map((share): [number, number] => [
    FILLET * (share - 0.5) + apart,
    FILLET * (1 - share) + apart,
  ]) as [[number, number], [number, number]];
  if (bulge === 0) return `M${to(...from)}L${to(...until)}`;
  const middle = bulge / Math.SQRT2;
  const control: [number, number] = [
    (from[0] + until[0]) / 2 + 2 * middle,
    (from[1] + until[1]) / 2 + 2 * middle,
  ];
  return `M${to(...from)}Q${to(...control)} ${to(...until)}`;
}

/** A contour across a groove mark's mouth. */
export function across(half: number, level: number, bulge: number, { to }: Pen): string {
  if (bulge === 0) return `M${to(-half, level)}L${to(half, level)}`;
  return `M${to(-half, level)}Q${to(0, level + 2 * bulge)} ${to(half, level)}`;
}
