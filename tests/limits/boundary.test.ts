/**
 * For every criterion of every set, in each of its columns: whether it counts on the edge of its
 * bands, just under and just over; and the call at the limit, just under and just over.
 */
import { describe, expect, it } from 'vitest';
import {
  circumstances,
  judge,
  limitSets,
  type Check,
  type Circumstance,
  type CompiledLimitSet,
  type Criterion,
} from '../../src/limits/index.ts';
import { casesOf, type RowCase } from './row-cases.ts';

type Subject = Criterion['measurements'][number];

const checkOf = (
  set: CompiledLimitSet,
  id: string,
  { of, sheet }: RowCase,
  value?: number,
): Check | undefined => judge(of(value), sheet, set).find((check) => check.id === id);

/** Every row put to each of its measurements, in each column of its set. */
function eachRow(
  set: CompiledLimitSet,
  column: 'mm' | 'in',
  look: (criterion: Criterion, subject: Subject, cases: readonly RowCase[]) => void,
): void {
  for (const criterion of set.criteria) {
    for (const subject of criterion.measurements) {
      look(criterion, subject, casesOf(set, criterion, subject, column));
    }
  }
}

describe.each(limitSets.map((set) => [set.id, set] as const))('%s', (_, set) => {
  it.each(['mm', 'in'] as const)('counts each row inside its bands only, %s column', (column) => {
    eachRow(set, column, (criterion, subject, cases) => {
      const id = `${criterion.id}:${subject}`;
      for (const one of cases) {
        expect(`${one.name} ${id} ${checkOf(set, id, one) !== undefined}`).toBe(
          `${one.name} ${id} ${one.counts}`,
        );
      }
      // a row with a band has an inside and an outside
      expect([id, cases.some(({ counts }) => counts)]).toEqual([id, true]);
      if (criterion.when !== undefined) {
        expect([id, cases.some(({ counts }) => !counts)]).toEqual([id, true]);
      }
    });
  });

  it.each(['mm', 'in'] as const)('accepts at a limit and rejects past it, %s column', (column) => {
    eachRow(set, column, (criterion, subject, cases) => {
      const { min, max, unassessed } = criterion;
      const limit = min ?? max;
      const inColumn = limit?.[column] ?? limit?.any;
      for (const one of cases.filter(({ counts }) => counts)) {
        const id = `${criterion.id}:${subject}`;
        const at = (value?: number): Check | undefined => checkOf(set, id, one, value);
        const check = at();
        if (inColumn === undefined) {
          const lacks = set.columns.includes(column) ? 'figure' : 'column';
          const why = unassessed ?? `limits_reason_no_${column}_${lacks}`;
          expect([id, check?.call, check?.reasons[0]?.key]).toEqual([id, 'notAssessed', why]);
          continue;
        }
        const figure = check?.limit ?? Number.NaN;
        const call = (value: number): string => `${one.name} ${id} ${at(value)?.call}`;
        // 1e-9 of the document's unit is inside, twice that is not
        const document = check?.unit === 'mm' && column === 'in' ? 25.4 : 1;
        const out = max === undefined ? -document : document;
        expect(call(figure)).toBe(`${one.name} ${id} accept`);
        expect(call(figure + 0.8e-9 * out)).toBe(`${one.name} ${id} accept`);
        expect(call(figure - 1e-6 * out)).toBe(`${one.name} ${id} accept`);
        expect(call(figure + 3e-9 * out)).toBe(`${one.name} ${id} reject`);
      }
    });
  });

  it('counts a row in the circumstances that it names, and asks for them when the sheet is silent', () => {
    eachRow(set, set.columns[0] ?? 'mm', (criterion, subject, cases) => {
      const id = `${criterion.id}:${subject}`;
      const one = cases.find(({ counts }) => counts);
      if (one === undefined) throw new Error(id);
      for (const [name, wanted] of Object.entries(criterion.given ?? {})) {
        for (const choice of [...circumstances[name as Circumstance], 'unknown']) {
          const service = { ...one.sheet.service, [name]: choice };
          const checks = judge(one.of(), { ...one.sheet, service }, set);
          const own = checks.find((check) => check.id === id);
          if (choice === 'unknown') {
            // one row of those that wait for it asks
            const asks = checks.filter(({ reasons: [reason], measurement }) => {
              return measurement === subject && reason?.key === `limits_reason_needs_${name}`;
            });
            expect([id, asks.length, own?.call ?? 'notAssessed']).toEqual([id, 1, 'notAssessed']);
          } else {
            const isNamed = (wanted as readonly string[]).includes(choice);
            expect([id, choice, own !== undefined]).toEqual([id, choice, isNamed]);
          }
        }
      }
    });
  });
});
