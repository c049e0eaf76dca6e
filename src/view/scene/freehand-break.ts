import type { Point } from '../../geometry/index.ts';
import { type View, xToPx, yToPx } from './view-transform.ts';
import { rounded, written } from './written.ts';

/** Length of one wave and how far its control points stand off the straight, px. */
const WAVE = 48;
const SWINGS = [3.2, -4, 2.2, -3.8, 3.4, -2.4] as const;

/** A break from (ax, ay) to (bx, by), px. */
interface Break {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly d: string;
}

/** Breaks drawn before: under the hand the metal moves and its breaks mostly stand where they stood. */
const drawn = new Map<number, Break>();
const MOST_KEPT = 64;

/**
 * A freehand line to `b` from where the pen stands, for where a view breaks off
 * (ISO 128): waves whose swings come from a short fixed list, so that the same
 * break is drawn the same way every time.
 */
export function freehandTo(view: View, a: Point, b: Point): string {
  // From the rounded ends, so that what was drawn before makes no difference.
  const ax = rounded(xToPx(view, a.x));
  const ay = rounded(yToPx(view, a.y));
  const bx = rounded(xToPx(view, b.x));
  const by = rounded(yToPx(view, b.y));
  // Two breaks may fall on one number: the one found is asked whether it is this one.
  const number = ax + 31 * ay + 977 * bx + 30011 * by;
  const before = drawn.get(number);
  if (before?.ax === ax && before.ay === ay && before.bx === bx && before.by === by)
    return before.d;
  const d = wavesTo(ax, ay, bx - ax, by - ay);
  if (drawn.size >= MOST_KEPT) drawn.clear();
  drawn.set(number, { ax, ay, bx, by, d });
  return d;
}

function wavesTo(ax: number, ay: number, dx: number, dy: number): string {
  const length = Math.hypot(dx, dy);
  // nothing between the ends to wave
  if (length === 0) return '';
  const waves = Math.max(1, Math.round(length / WAVE));
  // A short break swings less, or it would look like damage.
  const calm = Math.min(1, length / waves / WAVE);
  let d = '';
  for (let wave = 0; wave < waves; wave++) {
    const swing = (SWINGS[wave % SWINGS.length] ?? 0) * calm;
    const at = (share: number, aside: number): string => {
      const along = (wave + share) / waves;
      const x = ax + dx * along - (dy / length) * aside;
      const y = ay + dy * along + (dx / length) * aside;
      return `${written(x)} ${written(y)}`;
    };
    d += `C${at(0.35, swing)} ${at(0.65, swing)} ${at(1, 0)}`;
  }
  return d;
}
