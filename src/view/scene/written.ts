/** A coordinate as written into a path: hundredths of a px are below what a screen shows. */
export function written(value: number): number {
  return Math.round(value * 100) / 100;
}
