/** One tile of a hatch: a straight 45° line that meets itself across every side. */
export interface HatchTile {
  readonly size: number;
  readonly d: string;
}

/**
 * A tile of 45° hatch lines about `pitch` px apart, square to them, for a
 * pattern in screen space; the side is a whole number of px so that every line
 * falls on the grid alike. `rising` lines climb to the right. Two corner
 * strokes carry the line's width over the tile's edges.
 */
export function hatchTile(pitch: number, rising: boolean): HatchTile {
  const size = Math.round(pitch * Math.SQRT2);
  const d = rising
    ? `M-1 1L1 -1M0 ${size}L${size} 0M${size - 1} ${size + 1}L${size + 1} ${size - 1}`
    : `M-1 ${size - 1}L1 ${size + 1}M0 0L${size} ${size}M${size - 1} -1L${size + 1} 1`;
  return { size, d };
}
