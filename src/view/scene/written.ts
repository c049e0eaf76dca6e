/** A coordinate to hundredths of a px, below what a screen shows. */
export const rounded = (value: number): number => Math.round(value * 100) / 100;

/** Whole px and hundredths as text, made once: a drawing writes some hundreds of coordinates at every move. */
const WHOLE = Array.from({ length: 4096 }, (_, px) => String(px));
const HUNDREDTHS = Array.from({ length: 100 }, (_, part) => String(part / 100).slice(1));

/** A coordinate as it stands in a path. */
export function written(value: number): string {
  const parts = Math.round(value * 100);
  const px = Math.trunc(parts / 100);
  const whole = parts < 0 ? undefined : WHOLE[px];
  return whole === undefined ? String(parts / 100) : whole + (HUNDREDTHS[parts - px * 100] ?? '');
}
