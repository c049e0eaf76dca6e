import type { Criterion, JobSheet, LimitSet } from '../../src/limits/index.ts';
import type { MeasurementId, Measurements } from '../../src/measure/index.ts';
import { enteredToMm } from '../../src/units/index.ts';
import { holds, readCondition, type Term } from './condition.ts';
import { flatFillet, in64, measured, mm, sheetWith, soundButt } from './hand-made.ts';

type Subject = Criterion['measurements'][number];
type Column = 'mm' | 'in';

/** A joint and a sheet that a row is put to, on the edge of its bands or beside it. */
export interface RowCase {
  readonly name: string;
  readonly sheet: JobSheet;
  /** whether the row counts here, by the second reading of its condition */
  readonly counts: boolean;
  /** the joint, its subject measured as so much: mm or degrees; as it is when left out */
  readonly of: (value?: number) => Measurements;
}

/** What has to be there for a row to come up at all. */
const extras: Partial<Record<MeasurementId, number>> = {
  edgeRemaining: 4,
  bevelAngle1: 30,
  bevelAngle2: 30,
  grooveAngle: 60,
  rootBevelAngle1: 30,
  rootBevelAngle2: 30,
  rootGrooveAngle: 60,
  rootOpening: 2,
  rootFace: 1.5,
  sizeEqual: 8,
  chordLength: 11,
  rootPenetration: 1,
};
/** Beside a band's edge, in the unit of the condition; well over what counts as on it. */
const BESIDE = 1e-6;
const thicknesses = [2.5, 3, 8, 12, 25, 60];

/** Every joint that a row has an answer of its own for: each form, thickness and edge of its condition. */
export function casesOf(
  set: LimitSet,
  criterion: Criterion,
  subject: Subject,
  column: Column,
): readonly RowCase[] {
  const { when } = criterion;
  const text = when?.[column] ?? when?.any ?? when?.mm ?? when?.in;
  const unit = text !== undefined && / in\b/u.test(text) ? 'in' : 'mm';
  const condition = text === undefined ? [] : readCondition(text);
  const symbols = { ...set.symbols, ...criterion.symbols };
  const meant = (symbol: string): string => meaning(symbol, symbols, subject);
  const scale = (name: string): number => (unit === 'in' && !name.endsWith('Angle') ? 25.4 : 1);

  // a condition on the legs asked for is put to equal ones and to unequal ones
  const isOfLegs = condition.flat().some(({ right }) => typeof right === 'string');
  const pairs = combinations(condition.flat(), meant).flatMap((chosen) =>
    (isOfLegs ? [0, 2] : [0]).map((longer) => ({ chosen, longer })),
  );
  return headingsOf(criterion).flatMap((heading) =>
    pairs.flatMap(({ chosen, longer }) =>
      (chosen.has('tMin') ? [0] : thicknesses).map((t): RowCase => {
        const inMm = new Map([...chosen].map(([name, value]) => [name, value * scale(name)]));
        const values = valuesOf(heading.kind, t, inMm);
        const sheet = sheetOf(criterion, column, inMm, longer);
        const valueOf = (symbol: string): number => {
          const name = meant(symbol);
          const leg = sheetLeg(sheet) + (name === 'sheetLeg2' ? longer : 0);
          return (inMm.get(name) ?? values[name as MeasurementId] ?? leg) / scale(name);
        };
        const { form, product, stage } = heading;
        return {
          name: `${column} ${form} ${product} ${stage} t ${t} ${[...chosen].join(' ')} + ${longer}`,
          sheet,
          counts: text === undefined || holds(condition, valueOf),
          of: (value) =>
            measured(heading, value === undefined ? values : withSubject(values, subject, value)),
        };
      }),
    ),
  );
}

function headingsOf({ kind, stage, product, forms, backing }: Criterion) {
  const kinds = kind === undefined ? (['fillet', 'butt'] as const) : [kind];
  return kinds.flatMap((of) =>
    (forms ?? (of === 'fillet' ? ['tee'] : ['singleV'])).map((form) => ({
      kind: of,
      form,
      stage: stage ?? 'welded',
      product: product ?? 'plate',
      // a region stands for any strip: nothing here looks at its shape
      backing: backing === 'strip' ? [] : null,
    })),
  );
}

const meaning = (
  symbol: string,
  symbols: Readonly<Record<string, string>>,
  subject: Subject,
): string => {
  const plate = /[12]$/u.exec(subject)?.[0] ?? '';
  return (symbols[symbol] ?? symbol)
    .replace('tHere', 'tMin')
    .replace('sheetLegHere', `sheetLeg${plate}`);
};

/** On each figure that a condition compares with, just under and just over, in all combinations. */
function combinations(
  terms: readonly Term[],
  meant: (symbol: string) => string,
): readonly ReadonlyMap<string, number>[] {
  let all: readonly ReadonlyMap<string, number>[] = [new Map()];
  const names = [...new Set(terms.map(({ symbol }) => meant(symbol)))];
  for (const name of names) {
    const edges = terms.flatMap(({ symbol, right }) =>
      meant(symbol) === name && typeof right === 'number' ? [right] : [],
    );
    const around = [...new Set(edges)].flatMap((edge) => [edge, edge + BESIDE, edge - BESIDE]);
    const values = around.filter((value) => value >= 0);
    if (values.length === 0) continue;
    all = all.flatMap((one) => values.map((value) => new Map([...one, [name, value]])));
  }
  return all;
}

function valuesOf(kind: 'fillet' | 'butt', t: number, chosen: ReadonlyMap<string, number>) {
  const thick = chosen.get('tMin') ?? t;
  const base = kind === 'fillet' ? flatFillet : soundButt;
  const plates = { t1: thick, t2: thick, tMin: thick, tMax: thick };
  return { ...base, ...extras, ...plates, ...Object.fromEntries(chosen) } as Readonly<
    Partial<Record<MeasurementId, number>>
  >;
}

/** The sheet's own figures as the condition wants them, the rest as a job has it. */
function sheetOf(
  { given }: Criterion,
  column: Column,
  chosen: ReadonlyMap<string, number>,
  longer: number,
): JobSheet {
  const leg = [...chosen].find(([name]) => name.startsWith('sheetLeg'))?.[1];
  const ordinary = column === 'mm' ? mm(7) : in64(18);
  const asked = leg === undefined ? ordinary : mm(leg);
  const second = longer === 0 ? null : mm(enteredToMm(asked) + longer);
  const sheet = sheetWith({
    column,
    size: { as: 'leg', first: asked, second },
    extent: 'isolatedShort',
  });
  const nominal = (name: string) => {
    const value = chosen.get(name);
    return value === undefined ? {} : { nominal: mm(value) };
  };
  const first = Object.entries(given ?? {}).map(([name, [choice]]) => [name, choice] as const);
  return {
    ...sheet,
    service: { ...sheet.service, ...Object.fromEntries(first) },
    groove: {
      ...sheet.groove,
      rootOpening: { ...sheet.groove.rootOpening, ...nominal('sheetRootOpening') },
      rootFace: { ...sheet.groove.rootFace, ...nominal('sheetRootFace') },
    },
  };
}

const sheetLeg = ({ size: { first } }: JobSheet): number => enteredToMm(first);

function withSubject(
  values: Readonly<Partial<Record<MeasurementId, number>>>,
  subject: Subject,
  value: number,
) {
  if (subject === 'misalignment') return { ...values, centrelineOffset: value };
  if (subject === 'angleDeparture') return { ...values, dihedralAngle: 90 + value };
  return { ...values, [subject]: value };
}
