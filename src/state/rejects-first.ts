import type { Call, Check } from '../limits/index.ts';

const order: readonly Call[] = ['reject', 'refer', 'notAssessed', 'accept'];

/** The same checks, rejects first; within a call the order of the sheet stands. */
export const rejectsFirst = (checks: readonly Check[]): readonly Check[] =>
  order.flatMap((call) => checks.filter((check) => check.call === call));
