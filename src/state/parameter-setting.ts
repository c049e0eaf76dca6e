import type { ParameterRange } from '../joint/index.ts';
import { numberAt } from './parameter.ts';
import { type Allowed, allowedOf, type Judged } from './parameter-limits.ts';
import { steadyList } from './steady.ts';

/** A parameter as it stands on its scale: its bounds, its value, and what the sheet would accept. */
export interface ParameterSetting {
  readonly range: ParameterRange;
  readonly value: number;
  readonly allowed: Allowed;
}

/**
 * How these parameters stand. What stands as it stood before is the very same setting, so that under
 * the hand only the rows of those that move are asked again.
 */
export const settingsOf = (
  ranges: readonly ParameterRange[],
  judged: Judged,
  before: readonly ParameterSetting[] = [],
): readonly ParameterSetting[] =>
  steadyList(
    before,
    ranges.map((range, place) => settingOf(range, judged, before[place])),
  );

/** How one parameter stands. */
export function settingOf(
  range: ParameterRange,
  judged: Judged,
  before?: ParameterSetting,
): ParameterSetting {
  const value = numberAt(judged.joint, range.field) ?? range.min;
  const now = allowedOf(range.field, judged);
  if (before?.range !== range) return { range, value, allowed: now };
  const allowed = steadyList(before.allowed, now);
  return value === before.value && allowed === before.allowed ? before : { range, value, allowed };
}
