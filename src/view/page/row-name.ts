import type { Check } from '../../limits/index.ts';
import { steadyList, steadyValue } from '../../state/steady.ts';
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

/** A check of a list with what it is called there. */
export interface NamedCheck {
  readonly check: Check;
  readonly twin: boolean;
  readonly name: Message;
}

/** The checks of a list by name; a row that is as it was before is the very one, and needs no writing. */
export function namedChecks(
  checks: readonly Check[],
  before: readonly NamedCheck[] = [],
): readonly NamedCheck[] {
  const twins = twinsAmong(checks);
  return steadyList(
    before,
    checks.map((check, place) => {
      const earlier = before[place];
      const twin = twins.includes(check.id);
      if (earlier?.check === check && earlier.twin === twin) return earlier;
      return { check, twin, name: steadyValue(earlier?.name ?? null, rowName(check, twin)) };
    }),
  );
}
