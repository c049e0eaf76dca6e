import type { Measurements } from '../measure/index.ts';
import { atMost } from './document-tolerance.ts';
import type { Check } from './judging.ts';

/** The smallest triangle at the root that a fillet weld has to hold, and whether it does. */
export interface LeastTriangle {
  /** sides along plate 1 and plate 2, mm; null where nothing is asked */
  readonly leg1: number | null;
  readonly leg2: number | null;
  /** whether the weld is inside every limit that asks for it */
  readonly holds: boolean;
}

/** Which of the two sides a least size of that kind asks for. */
const asks: Readonly<Partial<Record<Check['measurement'], readonly (1 | 2)[]>>> = {
  leg1: [1],
  leg2: [2],
  'sizePair.1': [1],
  'sizePair.2': [2],
  sizeEqual: [1, 2],
  isoscelesThroat: [1, 2],
  // The throat of unequal legs lies in the triangle that the legs ask for already.
  theoreticalThroat: [],
};

/**
 * Sides of the smallest triangle at the root that the checks require, mm: each leg as it is asked
 * for, both raised to the legs a / cos(ψ/2) of the isosceles triangle where a throat a is asked of
 * that one (geometry of the isosceles triangle, ψ as measured).
 */
export function leastTriangle(checks: readonly Check[], { values }: Measurements): LeastTriangle {
  const { dihedralAngle, isoscelesThroat } = values;
  const toLeg = Math.cos((((dihedralAngle?.value ?? 90) / 2) * Math.PI) / 180);
  const plain = isoscelesThroat?.value ?? 0;
  let [leg1, leg2]: [number | null, number | null] = [null, null];
  let holds = true;
  for (const { measurement, sense, limit, margin, measured } of checks) {
    const sides = asks[measurement];
    if (sides === undefined || sense !== 'min' || limit === null) continue;
    holds &&= margin !== null && atMost(0, margin);
    let leg = limit;
    if (measurement === 'isoscelesThroat') {
      // Penetration that counts towards the throat takes that much off the triangle.
      const counted = Math.max(0, (measured ?? 0) - plain);
      leg = (limit - counted) / toLeg;
    }
    if (sides.includes(1)) leg1 = Math.max(leg1 ?? leg, leg);
    if (sides.includes(2)) leg2 = Math.max(leg2 ?? leg, leg);
  }
  return { leg1, leg2, holds };
}
