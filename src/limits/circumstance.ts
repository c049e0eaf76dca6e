import type { Message } from '../units/index.ts';

/**
 * What some limits depend on and no section shows: which way the stress runs to
 * the weld, the design temperature, the joint category of a vessel, the seam of
 * a pipe. The choices are the bands that documents draw.
 */
export const circumstances = {
  /** primary member with tensile stress across the weld, or anything else */
  stress: ['acrossWeld', 'other'],
  temperature: ['below0F', 'to350F', 'to750F', 'over750F'],
  category: ['A', 'B', 'C', 'D'],
  seam: ['girth', 'longitudinal'],
} as const;

export type Circumstance = keyof typeof circumstances;

/** The circumstances as the job sheet knows them. */
export type Service = {
  readonly [Name in Circumstance]: 'unknown' | (typeof circumstances)[Name][number];
};

/** The circumstances that a row is for; any where it names none. */
export type Given = {
  readonly [Name in Circumstance]?: readonly (typeof circumstances)[Name][number][];
};

export const circumstanceNames = Object.keys(circumstances) as readonly Circumstance[];

export const unknownService: Service = {
  stress: 'unknown',
  temperature: 'unknown',
  category: 'unknown',
  seam: 'unknown',
};

/** Whether a row is for this service; the name of what has to be known first when the sheet doesn't say. */
export function isGiven(given: Given | undefined, service: Service): boolean | Circumstance {
  if (given === undefined) return true;
  let missing: Circumstance | null = null;
  for (const name of circumstanceNames) {
    const wanted: readonly string[] | undefined = given[name];
    if (wanted === undefined || wanted.includes(service[name])) continue;
    if (service[name] !== 'unknown') return false;
    missing ??= name;
  }
  return missing ?? true;
}

/** What the sheet has to say before such a row can be judged. */
export const needs = (name: Circumstance): Message => ({ key: `limits_reason_needs_${name}` });
