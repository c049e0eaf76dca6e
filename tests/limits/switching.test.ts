/** A learner switches the limit set and sees a call turn: for each two sets that differ there is a weld that shows it. */
import { describe, expect, it } from 'vitest';
import {
  judge,
  limitSets,
  type Call,
  type Check,
  type CompiledLimitSet,
} from '../../src/limits/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import { butt, flatFillet, in64, measured, mm, sheetWith, soundButt } from './hand-made.ts';

type Values = Readonly<Partial<Record<MeasurementId, number>>>;

interface Fixture {
  readonly of: Measurements;
  readonly sheet: ReturnType<typeof sheetWith>;
}

const plates = (t: number): Values => ({ t1: t, t2: t, tMin: t, tMax: t });
/** Flaws of a weld, each from slight to gross. */
const filletFlaws: readonly Values[] = [
  ...[0.2, 0.3, 0.36, 0.45, 0.6, 0.85, 1.2, 1.5].map((undercut1) => ({ undercut1 })),
  ...[0.05, 0.3, 1, 3].map((overlap1) => ({ overlap1 })),
  ...[1.2, 1.6, 1.9, 2.2, 2.6, 3.1, 3.5, 4.5].map((convexity) => ({ convexity })),
  ...[0.5, 0.8, 1.5, 1.6, 2.4, 2.9, 3.8, 4.6, 4.9].map((rootGap) => ({ rootGap })),
  ...[2.2, 2.6, 2.9, 3.2].map((legDifference) => ({ legDifference })),
  ...[3.5, 5, 6, 6.6, 6.9, 7.3, 9.5, 11].map((leg1) => ({ leg1, sizeEqual: leg1 })),
  ...[3.5, 4.3, 4.7, 4.93, 6.6, 7.2, 9].map((isoscelesThroat) => ({ isoscelesThroat })),
  ...[92, 102, 108].map((toeAngle) => ({ toeAngle })),
];
const buttFlaws: readonly Values[] = [
  ...[0.2, 0.3, 0.36, 0.45, 0.6, 0.85, 0.95, 1.2, 1.5].map((undercut1) => ({ undercut1 })),
  ...[0.2, 0.3, 0.45, 0.6, 0.85, 0.95, 1.2, 1.5].map((rootUndercut1) => ({ rootUndercut1 })),
  ...[0.05, 0.3, 1, 3].map((overlap1) => ({ overlap1 })),
  ...[0.7, 1.2, 1.55, 1.7, 2.1, 2.5, 2.8, 3.1, 3.5, 4.2, 4.5, 4.7, 5.5, 7].flatMap((height) => [
    { 'faceReinforcement.higher': height },
    { 'rootReinforcement.higher': height },
  ]),
  ...[0.3, 0.45, 0.7, 1.2].flatMap((depth) => [{ underfill: depth }, { rootConcavity: depth }]),
  { rootConcavity: 0.7, jointThickness: 11.8 },
  ...[0.5, 0.8, 1.25, 1.6, 1.9, 2.5, 3.1, 3.5].map((offset) => ({ centrelineOffset: offset })),
  ...[0.3, 1.5].map((incompletePenetration) => ({ incompletePenetration })),
  ...[100, 120, 145].map((toeAngle) => ({ toeAngle })),
];
const fillet: Values = { ...flatFillet, sizeEqual: 8, chordLength: 11 } as Values;
const weld: Values = { ...soundButt, chordLength: 15 } as Values;
const services = [
  { stress: 'acrossWeld', temperature: 'below0F', category: 'A', seam: 'longitudinal' },
  { stress: 'other', temperature: 'over750F', category: 'B', seam: 'girth' },
  { stress: 'other', temperature: 'to350F', category: 'C', seam: 'girth' },
] as const;

const fixtures: readonly Fixture[] = (['mm', 'in'] as const).flatMap((column) => {
  const size = { as: 'leg', first: column === 'mm' ? mm(7) : in64(18), second: null } as const;
  return services.flatMap((service) => {
    const sheet = sheetWith({ column, size, service, extent: 'isolatedShort' });
    return [3, 12, 25, 80].flatMap((t) => [
      ...['tee', 'lap'].flatMap((form) =>
        filletFlaws.map((flaw) => ({
          of: measured({ form }, { ...fillet, ...plates(t), ...flaw }),
          sheet,
        })),
      ),
      ...['singleV', 'doubleV'].flatMap((form) =>
        buttFlaws.map((flaw) => ({
          of: measured({ ...butt, form }, { ...weld, ...plates(t), ...flaw }),
          sheet,
        })),
      ),
    ]);
  });
});

/** Judged or left open by the row itself; not where it only lacks a figure in this column. */
const isAnswer = ({ call, reasons: [reason] }: Check): boolean =>
  call !== 'notAssessed' || !/_no_(?:mm|in)_/u.test(reason?.key ?? '');

/** What a set says of each measurement of a fixture: the worst of its own rows. */
function callsOf(set: CompiledLimitSet): readonly ReadonlyMap<string, Call>[] {
  const worst: readonly Call[] = ['reject', 'refer', 'notAssessed', 'accept'];
  return fixtures.map(({ of, sheet }) => {
    const calls = new Map<string, Call>();
    // in the sheet's column, or in the only one that the set has
    const [only = 'mm', ...others] = set.columns;
    const asked = others.length === 0 ? { ...sheet, column: only } : sheet;
    for (const { measurement, call, source } of judge(of, asked, set).filter(isAnswer)) {
      const before = calls.get(measurement) ?? 'accept';
      if (source.status === 'sheet') continue;
      calls.set(measurement, worst[Math.min(worst.indexOf(before), worst.indexOf(call))] ?? call);
    }
    return calls;
  });
}

/** What a set asks of each measurement, in its own figures. */
function asks(set: CompiledLimitSet): ReadonlyMap<string, string> {
  const asked = new Map<string, string>();
  for (const { measurements, given, forms, when, max, min, short, unassessed } of set.criteria) {
    for (const subject of measurements) {
      // nothing is nothing in either unit, however thick the plate
      const isNothing = max?.mm === '0 mm' || max?.in === '0 in';
      const row = isNothing
        ? JSON.stringify({ given, forms })
        : JSON.stringify({ given, forms, when, max, min, short, unassessed });
      asked.set(subject, (asked.get(subject) ?? '') + row);
    }
  }
  return asked;
}

const pairs = limitSets.flatMap((one, at) =>
  limitSets.slice(at + 1).map((other) => [one, other] as const),
);
const calls = new Map(limitSets.map((set) => [set, callsOf(set)]));

describe('switching from one set to another', () => {
  it.each(pairs.map(([one, other]) => [one.id, other.id, one, other] as const))(
    '%s to %s turns a call where both judge something differently',
    (_, __, one, other) => {
      const theirs = asks(other);
      const differing = [...asks(one)].filter(([subject, row]) => {
        const their = theirs.get(subject);
        return their !== undefined && their !== row;
      });
      const [before, after] = [calls.get(one) ?? [], calls.get(other) ?? []];
      const turned = before.some((ours, at) =>
        [...ours].some(([subject, call]) => {
          const now = after[at]?.get(subject);
          return now !== undefined && now !== call;
        }),
      );
      expect([differing.map(([subject]) => subject), turned || differing.length === 0]).toEqual([
        differing.map(([subject]) => subject),
        true,
      ]);
    },
  );
});
