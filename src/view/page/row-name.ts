import type { Check } from '../../limits/index.ts';
import type { Message } from '../../units/index.ts';

/** Whether another check of the list goes by the same name, a least beside a most of one dimension. */
export const hasTwin = ({ name, sense }: Check, checks: readonly Check[]): boolean =>
  checks.some(
    (other) =>
      // of unequal plates the two are put to one plate each
      other.sense !== sense &&
      other.name.key === name.key &&
      other.name.values?.['side'] === name.values?.['side'],
  );

/** What a check is called in a list of them: of twins each says which it is. */
export const rowName = ({ name, sense }: Check, twin: boolean): Message =>
  twin ? { key: sense === 'min' ? 'bench_row_least' : 'bench_row_most', values: { name } } : name;
