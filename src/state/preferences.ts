/** How a person wants numbers, names and the page shown. Never part of a permalink. */
export interface Preferences {
  readonly units: 'mm' | 'in';
  /** How inches are written. */
  readonly inches: 'decimal' | 'fraction';
  readonly terms: 'US' | 'ISO';
  readonly theme: 'light' | 'dark' | 'system';
  readonly targets: 'normal' | 'large';
  /** Pixels of the page to a millimetre of this screen, once somebody measured; null before. */
  readonly pxPerMm: number | null;
}

export const startingPreferences: Preferences = {
  units: 'mm',
  inches: 'decimal',
  terms: 'US',
  theme: 'system',
  targets: 'normal',
  pxPerMm: null,
};

/** A screen coarser or finer than this is a slip of the hand. */
export const pxPerMmBounds = { min: 2, max: 9 } as const;

type Chosen = Omit<Preferences, 'pxPerMm'>;
const allowed: { readonly [Name in keyof Chosen]: readonly Chosen[Name][] } = {
  units: ['mm', 'in'],
  inches: ['decimal', 'fraction'],
  terms: ['US', 'ISO'],
  theme: ['light', 'dark', 'system'],
  targets: ['normal', 'large'],
};

/** Preferences as kept before; anything missing or unknown falls back to the start, one by one. */
export function readPreferences(text: string | null): Preferences {
  let kept: unknown;
  try {
    kept = JSON.parse(text ?? '{}');
  } catch {
    return startingPreferences;
  }
  if (typeof kept !== 'object' || kept === null) return startingPreferences;
  const record = kept as Readonly<Record<string, unknown>>;
  const pick = <Name extends keyof Chosen>(name: Name): Chosen[Name] =>
    allowed[name].find((value) => value === record[name]) ?? startingPreferences[name];
  const { pxPerMm } = record;
  const isScale =
    typeof pxPerMm === 'number' && pxPerMm >= pxPerMmBounds.min && pxPerMm <= pxPerMmBounds.max;
  return {
    units: pick('units'),
    inches: pick('inches'),
    terms: pick('terms'),
    theme: pick('theme'),
    targets: pick('targets'),
    pxPerMm: isScale ? pxPerMm : null,
  };
}
