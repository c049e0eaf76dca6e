import { arc, distance, line } from '../geometry/index.ts';
import type { Contour, Point, Segment } from '../geometry/index.ts';
import { isNone } from './least-size.ts';

/**
 * The exposed face of a bead between two end points, as tangent arcs.
 * Every swell or hollow is an extreme whose tangent is parallel to the chord:
 * the arc from an end to its nearest extreme has twice the sweep that its own
 * chord makes with the face chord; two neighbouring extremes are joined by two
 * arcs that meet on the straight line between them. One centred extreme is a
 * single arc.
 */
export interface BeadShape {
  /** height of the crown off the chord, mm, outward positive */
  readonly rise: number;
  /** -1..1 share of the half chord, positive towards `to` */
  readonly shift: number;
  /** S-shape: height of a second swell the other way; near `to` when positive, near `from` when negative; 0 for none */
  readonly reverse: number;
  /** depth of a central dip between two crests of height `rise`; 0 for none */
  readonly dip: number;
}

/** The rounded nose of a bead that rolls over its toe; the face leaves it tangent. */
export interface Nose {
  readonly centre: Point;
  readonly radius: number;
}

/** A swell or hollow in the chord's own frame: `u` along the chord from `from`, `v` outward. */
interface Extreme {
  readonly u: number;
  readonly v: number;
}

interface Swell extends Extreme {
  /** the second swell of an S-shaped face */
  readonly second: boolean;
}

/** A second swell or a dip is at most this share of the chord wide. */
const WIDEST_SHARE = 0.5;
/** Width over height of a second swell, and of a dip from crest to crest: both fade out as they get lower. */
const SWELL_WIDTH = 10;
const DIP_WIDTH = 6;

/**
 * The face from `from` to `to`; with `noses`, from the one nose's tangent point to the other's.
 * @param outward the side of the chord that `rise` counts towards: 'left' or 'right' of the way from `from` to `to`
 */
export function beadProfile(
  from: Point,
  to: Point,
  outward: 'left' | 'right',
  shape: BeadShape,
  noses: readonly [Nose | null, Nose | null] = [null, null],
): Contour {
  const chord = distance(from, to);
  const ux = (to.x - from.x) / chord;
  const uy = (to.y - from.y) / chord;
  const side = outward === 'left' ? 1 : -1;
  const place = (e: Extreme): Point => ({
    x: from.x + e.u * ux - side * e.v * uy,
    y: from.y + e.u * uy + side * e.v * ux,
  });
  const inFrame = (p: Point): Extreme => ({
    u: (p.x - from.x) * ux + (p.y - from.y) * uy,
    v: side * ((p.y - from.y) * ux - (p.x - from.x) * uy),
  });

  const extremes = swells(chord, shape);
  const [nose1, nose2] = noses;
  const first = extremes[0] as Swell;
  const last = extremes[extremes.length - 1] as Swell;
  const single = extremes.length === 1 && nose1 === null && nose2 === null;
  // flat: no swell at all
  if (single && first.v === 0) return [line(from, to)];
  // one centred crown is one arc: its bulge is the rise over the half chord
  if (single && shape.shift === 0) return [arc(from, to, (-side * 2 * first.v) / chord)];

  const start = nose1 ? leaveNose(inFrame(nose1.centre), nose1.radius, first) : { u: 0, v: 0 };
  const end = nose2 ? leaveNose(inFrame(nose2.centre), nose2.radius, last) : { u: chord, v: 0 };

  const pieces: Segment[] = [];
  // an arc with its tangent along the chord at one end turns by twice its own chord's slope
  const rising = (a: Extreme, b: Extreme): void => {
    pieces.push(arc(nose1 || a !== start ? place(a) : from, place(b), -side * halfSlope(a, b)));
  };
  const falling = (a: Extreme, b: Extreme): void => {
    pieces.push(arc(place(a), nose2 || b !== end ? place(b) : to, side * halfSlope(a, b)));
  };

  rising(start, first);
  for (let i = 1; i < extremes.length; i++) {
    const a = extremes[i - 1] as Swell;
    const b = extremes[i] as Swell;
    const share = meetingShare(a, b);
    const meet = { u: a.u + (b.u - a.u) * share, v: a.v + (b.v - a.v) * share };
    falling(a, meet);
    rising(meet, b);
  }
  falling(last, end);
  return pieces;
}

/**
 * True when two neighbouring swells stand so steeply beside each other that the
 * face between them would turn back under itself (slope over 45 degrees between
 * their crowns, so over 90 where the arcs meet). Such a face is no bead.
 */
export function profileFolds(chord: number, shape: BeadShape): boolean {
  const extremes = swells(chord, shape);
  return extremes.some((b, i) => {
    const a = extremes[i - 1];
    return a !== undefined && Math.abs(b.v - a.v) > b.u - a.u;
  });
}

/** The swells and hollows in walking order; always at least the crown, even a flat one. */
function swells(chord: number, shape: BeadShape): readonly Swell[] {
  const { shift } = shape;
  const [rise, reverse, dip] = [shape.rise, shape.reverse, shape.dip].map((height) =>
    isNone(height) ? 0 : height,
  ) as [number, number, number];
  const width = Math.min(SWELL_WIDTH * Math.abs(reverse), WIDEST_SHARE * chord);
  const low = reverse < 0 ? width : 0;
  const high = reverse > 0 ? chord - width : chord;
  const crown = low + ((high - low) / 2) * (1 + shift);
  const list: Swell[] = [];
  const push = (u: number, v: number, second = false): void => {
    list.push({ u, v, second });
  };
  // the second swell goes the other way; beside a flat face it is a hollow
  const other = (rise < 0 ? 1 : -1) * Math.abs(reverse);

  if (reverse < 0) push(width / 2, other, true);
  if (dip === 0) {
    push(crown, rise);
  } else {
    // the crests share their spread as the crown shares the width, so none leaves the chord
    const spread = Math.min((DIP_WIDTH * dip) / (high - low), WIDEST_SHARE);
    push(crown - (crown - low) * spread, rise);
    push(crown, rise - dip);
    push(crown + (high - crown) * spread, rise);
  }
  if (reverse > 0) push(chord - width / 2, other, true);
  return list;
}

/**
 * Where on the straight line from `a` to `b` their two arcs meet: half way, but
 * beside a low second swell where that line crosses the chord, so that the
 * swell fades out smoothly.
 */
function meetingShare(a: Swell, b: Swell): number {
  const crown = Math.abs(a.second ? b.v : a.v);
  const second = Math.abs(a.second ? a.v : b.v);
  if (!(a.second || b.second) || crown <= second) return 0.5;
  const share = crown / (crown + second);
  return a.second ? 1 - share : share;
}

/** Tangent of half the slope of the line from `a` to `b`. */
function halfSlope(a: Extreme, b: Extreme): number {
  const du = b.u - a.u;
  const dv = b.v - a.v;
  // equal points have no slope
  if (dv === 0) return 0;
  return dv / (Math.hypot(du, dv) + du);
}

/**
 * The point at which the face arc that is level at `crown` touches the nose circle.
 * With curvature k of that arc (outward convex positive), tangency asks
 * |C - E + v/k| = 1/k - r; multiplied out by k nothing is lost as the arc flattens.
 */
function leaveNose(centre: Extreme, radius: number, crown: Extreme): Extreme {
  const du = centre.u - crown.u;
  const dv = centre.v - crown.v;
  const k = (-2 * (dv + radius)) / (du * du + dv * dv - radius * radius);
  const shrink = 1 - k * radius;
  return {
    u: centre.u + (radius * k * du) / shrink,
    v: centre.v + (radius * (k * dv + 1)) / shrink,
  };
}
