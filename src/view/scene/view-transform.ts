import type { Point } from '../../geometry/index.ts';
import { inchToMm } from '../../units/index.ts';

/** CSS px per mm at true size: a CSS inch is 96 px; a real screen differs until it is calibrated. */
export const TRUE_SCALE = 96 / inchToMm(1);

/** How the section plane (mm, y up) lies on the drawing (px, y down). */
export interface View {
  /** px per mm */
  readonly scale: number;
  /** where the plane's origin lies, px */
  readonly originX: number;
  readonly originY: number;
  readonly width: number;
  readonly height: number;
  /** what sort of joint it was chosen for */
  readonly subject: string;
}

export function xToPx(view: View, x: number): number {
  return view.originX + x * view.scale;
}

export function yToPx(view: View, y: number): number {
  return view.originY - y * view.scale;
}

export function toPx(view: View, point: Point): Point {
  return { x: xToPx(view, point.x), y: yToPx(view, point.y) };
}

export function toMm(view: View, point: Point): Point {
  return {
    x: (point.x - view.originX) / view.scale,
    y: (view.originY - point.y) / view.scale,
  };
}

/** How many times life size the section is drawn, at `trueScale` px per mm. */
export function drawnScale(view: View, trueScale: number = TRUE_SCALE): number {
  return view.scale / trueScale;
}
