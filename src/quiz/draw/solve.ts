/** How near the asked value a solution comes, mm or degrees: well within the millionth that is promised. */
const NEAR = 1e-8;
const MOST_STEPS = 24;

interface Point<Found> {
  readonly x: number;
  /** measured less asked */
  readonly off: number;
  readonly found: Found;
}

/**
 * The x between `low` and `high` at which `off` is nothing: along the chord of the last two points
 * while that closes in, halfway between the nearest on either side when it doesn't. `at` gives null
 * where there is nothing to measure. Null when no x was found.
 */
export function solve<Found>(
  at: (x: number) => { readonly off: number; readonly found: Found } | null,
  from: number,
  slope: number,
  [low, high]: readonly [number, number],
): Found | null {
  const inside = (x: number): number => Math.min(high, Math.max(low, x));
  const point = (x: number): Point<Found> | null => {
    const made = at(x);
    return made === null || Number.isNaN(made.off) ? null : { x, ...made };
  };
  let last = point(inside(from));
  if (last === null) return null;
  let [under, over]: [Point<Found> | null, Point<Found> | null] = [null, null];
  const keep = (one: Point<Found>): void => {
    if (one.off < 0) under = one;
    else over = one;
  };
  keep(last);
  let next = inside(last.x - last.off / slope);
  for (let step = 0; step < MOST_STEPS; step++) {
    if (Math.abs(last.off) <= NEAR) return last.found;
    if (next === last.x) return null;
    const made = point(next);
    if (made === null) {
      // nothing there: half the way back
      next = (next + last.x) / 2;
      continue;
    }
    keep(made);
    next = inside(chord(last, made) ?? made.x - made.off / slope);
    const [a, b] = [under as Point<Found> | null, over as Point<Found> | null];
    if (a !== null && b !== null && (next - a.x) * (next - b.x) >= 0) next = (a.x + b.x) / 2;
    last = made;
  }
  return Math.abs(last.off) <= NEAR ? last.found : null;
}

function chord<Found>(a: Point<Found>, b: Point<Found>): number | null {
  const rise = b.off - a.off;
  return rise === 0 ? null : b.x - (b.off * (b.x - a.x)) / rise;
}
