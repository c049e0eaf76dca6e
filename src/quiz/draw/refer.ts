import type { JobSheet } from '../../limits/index.ts';
import { scaleOf } from '../distance.ts';
import type { LimitSet } from '../limit-set.ts';
import { between, happens, type Random } from '../random.ts';
import { quantityOf } from '../quantity.ts';
import type { Skill } from '../skill.ts';
import { drawPlaced, type Patience, type Placed, type Target } from './pair.ts';

/** Inside the limit by so much a short imperfection is looked for, on the scale of its limit. */
const SHORT = { ratio: [-0.7, -0.03], deg: [-12, -1], mm: [0, 0] } as const;
/** An instrument's doubt is asked about within this share of it. */
const OF_GUARD = 0.85;

/**
 * A joint that the sheet can't settle: an imperfection of a length that nobody gave, a measurement
 * nearer its limit than the instrument can be trusted, a root that no eye gets to.
 */
export function referable(
  seed: number,
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
  patience: Patience,
): Placed | null {
  const wanted = {
    skill,
    sheet,
    limits,
    distances: openPlace,
    suits: ({ decisive }: Placed) => decisive.call === 'refer',
  };
  return drawPlaced(seed, wanted, patience)?.[0] ?? null;
}

/** Whether the sheet leaves anything open about such a quantity at all. */
export function mayBeOpen(
  { quantity, kind }: Skill,
  sheet: JobSheet,
  { criteria }: LimitSet,
): boolean {
  if (sheet.guard.factor > 0 || (kind === 'butt' && !sheet.rootAccessible)) return true;
  return (
    sheet.extent === 'unknown' &&
    criteria.some(
      ({ short, measurements }) =>
        short === true && measurements.map(quantityOf).includes(quantity),
    )
  );
}

function openPlace(target: Target, chance: Random): readonly number[] {
  const scale = scaleOf(target);
  const { guard, limit } = target;
  if (guard > 0 && happens(chance, 0.5)) {
    const off = between(chance, -OF_GUARD, OF_GUARD) * guard;
    return [scale === 'ratio' ? Math.log(Math.max(0.05, 1 + off / limit)) : off];
  }
  const [low, high] = SHORT[scale];
  return [between(chance, low, high)];
}
