/** At the limit, just under and just over, for every criterion of every set in both columns. */
import { describe, expect, it } from 'vitest';
import { judge, limitSets, type Check, type JobSheet } from '../../src/limits/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import { flatFillet, in64, measured, mm, sheetWith, soundButt } from './hand-made.ts';

const forms = ['tee', 'lap', 'square', 'singleV', 'doubleV'];
const thicknesses = [3, 8, 12, 25];
/** What has to be there for a row to come up at all. */
const extras: Partial<Record<MeasurementId, number>> = {
  edgeRemaining: 4,
  rootBevelAngle1: 30,
  rootBevelAngle2: 30,
  rootGrooveAngle: 60,
  contactLeg2: 7,
};

interface Case {
  readonly name: string;
  readonly of: (subject: Check['measurement'], value: number) => Measurements;
  readonly fresh: Measurements;
  readonly sheet: JobSheet;
}

function casesIn(column: 'mm' | 'in'): readonly Case[] {
  const size = { as: 'leg', first: column === 'mm' ? mm(7) : in64(18), second: null } as const;
  const sheet = sheetWith({ column, size, extent: 'isolatedShort' });
  return forms.flatMap((form) =>
    thicknesses.flatMap((t) =>
      (['plate', 'pipe'] as const).flatMap((product) =>
        (['fitUp', 'welded'] as const).map((stage) => {
          const kind = form === 'tee' || form === 'lap' ? 'fillet' : 'butt';
          const base = kind === 'fillet' ? flatFillet : soundButt;
          const values = { ...base, ...extras, t1: t, t2: t, tMin: t, rootGap: 1 };
          const heading = { kind, form, product, stage } as const;
          return {
            name: `${form} ${t} ${product} ${stage}`,
            fresh: measured(heading, values),
            of: (subject: Check['measurement'], value: number) => {
              const id = subject === 'misalignment' ? 'centrelineOffset' : subject;
              if (id === 'angleDeparture') {
                return measured(heading, { ...values, dihedralAngle: 90 + value });
              }
              return measured(heading, { ...values, [id]: value });
            },
            sheet,
          };
        }),
      ),
    ),
  );
}

describe('at, just under and just over every limit', () => {
  for (const set of limitSets) {
    for (const column of ['mm', 'in'] as const) {
      it(`${set.id}, ${column} column`, () => {
        const tried = new Set<string>();
        for (const { name, of, fresh, sheet } of casesIn(column)) {
          for (const check of judge(fresh, sheet, set)) {
            const { id, limit, sense, measurement, unit, source } = check;
            if (source.status === 'sheet' || limit === null || tried.has(id)) continue;
            // a row's limit may lean on what it judges; the row is then worked out again
            const call = (value: number): string => {
              const again = judge(of(measurement, value), sheet, set).find((one) => one.id === id);
              return `${name} ${id} ${again?.call}`;
            };
            // 1e-9 of the document's unit is inside, twice that is not
            const document = unit === 'mm' && column === 'in' ? 25.4 : 1;
            const out = sense === 'max' ? document : -document;
            expect(call(limit)).toBe(`${name} ${id} accept`);
            expect(call(limit + 0.8e-9 * out)).toBe(`${name} ${id} accept`);
            expect(call(limit - 1e-6 * out)).toBe(`${name} ${id} accept`);
            expect(call(limit + 3e-9 * out)).toBe(`${name} ${id} reject`);
            tried.add(id);
          }
        }
        const expected = set.criteria.flatMap(({ id, measurements, min, max, short }) => {
          const limit = min ?? max;
          const inColumn = limit?.[column] ?? limit?.any;
          expect(short === undefined || short).toBe(true);
          return inColumn === undefined ? [] : measurements.map((subject) => `${id}:${subject}`);
        });
        expect(expected.filter((id) => !tried.has(id))).toEqual([]);
        expect(tried.size).toBe(expected.length);
      });
    }
  }
});
