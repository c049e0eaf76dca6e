import type { Check } from '../../limits/index.ts';
import { isNamesake } from '../../state/namesake.ts';
import { steadyList } from '../../state/steady.ts';
import type { Message } from '../../units/index.ts';

const isOfSheet = ({ source }: Check): boolean => source.status === 'sheet';

/**
 * What a check is called among these: a least beside a most says which it is, and so does what the
 * job sheet asks for beside what the limit set asks for of the same.
 */
export function rowName(check: Check, checks: readonly Check[]): Message {
  const namesakes = checks.filter((other) => isNamesake(check, other));
  const isOneSided = namesakes.every(({ sense }) => sense === check.sense);
  const name = isOneSided
    ? check.name
    : told(check.sense === 'min' ? 'bench_row_least' : 'bench_row_most', check.name);
  const isOfBoth = namesakes.some(
    (other) => other.sense === check.sense && isOfSheet(other) !== isOfSheet(check),
  );
  if (!isOfBoth) return name;
  return told(isOfSheet(check) ? 'bench_row_by_sheet' : 'bench_row_by_set', name);
}

const told = (key: string, name: Message): Message => ({ key, values: { name } });

/** A check of a list with what it is called there. */
export interface NamedCheck {
  readonly check: Check;
  readonly name: Message;
}

/** The checks of a list by name; a row that is as it was before is the very one, and needs no writing. */
export function namedChecks(
  checks: readonly Check[],
  before: readonly NamedCheck[] = [],
): readonly NamedCheck[] {
  // While a hand moves it is one list of requirements, whose figures change and not their names.
  const areNamed =
    before.length === checks.length &&
    before.every(({ check }, place) => isNamedAlike(check, checks[place]));
  if (!areNamed) return checks.map((check) => ({ check, name: rowName(check, checks) }));
  return steadyList(
    before,
    before.map((earlier, place) => {
      const check = checks[place] ?? earlier.check;
      return check === earlier.check ? earlier : { check, name: earlier.name };
    }),
  );
}

const isNamedAlike = (one: Check, other: Check | undefined): boolean =>
  other?.id === one.id &&
  other.sense === one.sense &&
  isOfSheet(one) === isOfSheet(other) &&
  isNamesake(one, other);
