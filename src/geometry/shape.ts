/** A position in the section plane, millimetres; y is up. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A displacement in the section plane, millimetres; a direction when its length is 1. */
export type Vector = Point;

/**
 * One piece of a contour: a straight line or a circular arc from `a` to `b`.
 * The bulge is the tangent of a quarter of the arc's sweep: 0 is a line, 1 a
 * half circle, positive turns counter-clockwise (the arc lies to the right of
 * the way from `a` to `b`). Storing the bulge rather than centre and radius
 * keeps area, distance and angle exact as the arc flattens.
 */
export interface Segment {
  readonly a: Point;
  readonly b: Point;
  readonly bulge: number;
}

/** Pieces joined end to end, in walking order. Open unless said otherwise. */
export type Contour = readonly Segment[];

/** A closed, simple contour walked counter-clockwise: metal on the left. */
export type Region = readonly Segment[];
