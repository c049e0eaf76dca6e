import { parametersFor } from '../../joint/index.ts';
import type { Joint } from '../../joint/index.ts';

/** Values for some of a joint's fields. */
export type Fields = Readonly<Record<string, number | string>>;

/** The joint with these fields in place of its own. */
export const withFields = (joint: Joint, fields: Fields): Joint => ({ ...joint, ...fields });

/** A numeric field of a joint, 0 where its kind has none such. */
export function numberIn(joint: Joint, field: string): number {
  const value: unknown = Reflect.get(joint, field);
  return typeof value === 'number' ? value : 0;
}

const bounds = {
  fillet: new Map(parametersFor('fillet').map((row) => [row.field, row])),
  butt: new Map(parametersFor('butt').map((row) => [row.field, row])),
} as const;

/** The least and the most that a field may be. */
export function boundsOf(kind: Joint['kind'], field: string): readonly [number, number] {
  const row = bounds[kind].get(field);
  return row === undefined ? [0, 0] : [row.min, row.max];
}

/** The value brought within what its field may be. */
export function within(kind: Joint['kind'], field: string, value: number): number {
  const [low, high] = boundsOf(kind, field);
  return Math.min(high, Math.max(low, value));
}

/** Features are drawn to this place, mm, degrees or share, and what is solved to a finer one. */
const PLACE = 1e6;
const FINE = 1e8;

/** To a place that engines agree on: the last digit of a power or a sine is their own. */
export const finely = (value: number): number => Math.round(value * FINE) / FINE;

/** The joint with every number to a place that engines agree on. */
export const tidy = (joint: Joint): Joint => ({
  ...joint,
  ...Object.fromEntries(
    Object.entries(joint)
      .filter(([, value]) => typeof value === 'number')
      .map(([name, value]) => [name, Math.round(Number(value) * PLACE) / PLACE]),
  ),
});
