import type { Point } from '../../geometry/index.ts';
import { type View, xToPx, yToPx } from './view-transform.ts';
import { rounded, written } from './written.ts';

/** Length of one wave and how far its control points stand off the straight, px. */
const WAVE = 48;
const SWINGS = [3.2, -4, 2.2, -3.8, 3.4, -2.4] as const;

/** Breaks drawn before: under the hand the metal moves and its breaks mostly stand where they stood. */
const drawn = new Map<string, string>();
const MOST_KEPT = 64;

/**
 * A freehand line to `b` from where the pen stands, for where a view breaks off
 * (ISO 128): waves whose swings come from a short fixed list, so that the same
 * break is drawn the same way every time.
 */
export function freehandTo(view: View, a: Point, b: Point): string {
  const ends = [xToPx(view, a.x), yToPx(view, a.y), xToPx(view, b.x), yToPx(view, b.y)].map(
    rounded,
  );
  const name = ends.join(' ');
  let d = drawn.get(name);
  if (d === undefined) {
    // From the rounded ends, so that what was drawn before makes no difference.
    const [ax = 0, ay = 0, bx = 0, by = 0] = ends;
    d = wavesTo(ax, ay, bx - ax, by - ay);
    if (drawn.size >= MOST_KEPT) drawn.clear();
    drawn.set(name, d);
  }
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
