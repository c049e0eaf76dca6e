import type { Check, Overall } from '../limits/index.ts';
import type { Message } from '../units/index.ts';

/** Why the joint is called so: the check that decides it by name, then how many others are open. */
export function causeOf({
  call,
  decides,
  rejected,
  referred,
  notAssessed,
}: Overall): readonly Message[] {
  const count = (key: string, of: readonly Check[], less = 0): readonly Message[] =>
    of.length > less ? [{ key, values: { count: of.length - less } }] : [];
  const named = decides === null ? [] : [decides.name];
  const referredNamed = call === 'refer' && decides?.call === 'refer' ? 1 : 0;
  const openNamed = call === 'refer' && decides?.call === 'notAssessed' ? 1 : 0;
  return [
    ...named,
    ...count('bench_cause_more', rejected, 1),
    ...count('bench_cause_refer', referred, referredNamed),
    ...count('bench_cause_open', notAssessed, openNamed),
  ];
}
