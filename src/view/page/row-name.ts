import type { Check } from '../../limits/index.ts';
import type { Message } from '../../units/index.ts';

/** The ids of those checks of a list that go by one name with another, a least beside a most of one dimension. */
export const twinsAmong = (checks: readonly Check[]): readonly string[] =>
  checks
    .filter(({ name, sense }) =>
      checks.some(
        (other) =>
          // of unequal plates the two are put to one plate each
          other.sense !== sense &&
          other.name.key === name.key &&
          other.name.values?.['side'] === name.values?.['side'],
      ),
    )
    .map(({ id }) => id);

/** What a check is called in a list of them: of twins each says which it is. */
export const rowName = ({ name, sense }: Check, twin: boolean): Message =>
  twin ? { key: sense === 'min' ? 'bench_row_least' : 'bench_row_most', values: { name } } : name;
