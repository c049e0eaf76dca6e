import type { Message } from '../units/index.ts';
import type { Measurements } from '../measure/index.ts';
import type { Reading, Requirement } from './assess.ts';
import { assess } from './assess.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Check, Working } from './judging.ts';
import type {
  PreparedCriterion,
  PreparedFormula,
  PreparedLimits,
  PreparedSymbol,
  Scope,
} from './prepare.ts';
import { isGiven, needs } from './circumstance.ts';
import { asSeen, judgedAt, readingAt, throatReading } from './reading.ts';
import { missingInput } from './reasons.ts';
import type { Subject } from './subject.ts';
import type { SymbolValue } from './substitute.ts';
import { substitute } from './substitute.ts';

/** A check made by a limit set, with the criterion it came from. */
export interface SetCheck {
  readonly check: Check;
  readonly criterion: PreparedCriterion['criterion'];
}

/** What the set requires of this joint at this stage, in the set's order. */
export function setChecks(
  measurements: Measurements,
  sheet: JobSheet,
  { criteria, set }: PreparedLimits,
  scope: Scope,
): readonly SetCheck[] {
  const checks: SetCheck[] = [];
  const asked = new Set<string>();
  for (const prepared of criteria) {
    if (!isFor(prepared, measurements)) continue;
    const { criterion, subject } = prepared;
    const given = isGiven(criterion.given, sheet.service);
    if (given === false) continue;
    const reading = criterion.deepThroatCounts
      ? throatReading(measurements, sheet)
      : readingAt(subject, prepared.sense, measurements, sheet);
    // it makes no sense for this joint
    if (reading === null) continue;
    const seen = asSeen(reading, subject, measurements, sheet);
    const place = prepared.unit === 'deg' ? set.lastPlace.deg : set.lastPlace[sheet.column];
    const missing = given === true ? null : needs(given);
    // one row says what has to be known; the others of its table would only say it again
    const question = missing === null ? null : `${subject} ${prepared.sense} ${missing.key}`;
    if (question !== null && asked.has(question)) continue;
    const at = judgedAt(subject, prepared.sense, measurements);
    const check = criterionCheck(prepared, seen, sheet, scope, { at, place, missing, set });
    if (check === null) continue;
    // only a row that counts for this thickness has said it
    if (question !== null) asked.add(question);
    checks.push({ check, criterion });
  }
  return checks;
}

function isFor({ criterion }: PreparedCriterion, { section }: Measurements): boolean {
  const { kind, stage, product, forms, backing } = criterion;
  return (
    (kind === undefined || kind === section.kind) &&
    (stage === undefined || stage === section.stage) &&
    (product === undefined || product === section.product) &&
    (forms === undefined || forms.includes(section.form)) &&
    (backing === undefined || (backing === 'none') === (section.backing === null))
  );
}

interface Setting {
  /** what the reading was taken of */
  readonly at: Subject;
  readonly set: PreparedLimits['set'];
  /** the last place of its limits, where a limit prints none of its own */
  readonly place: number;
  /** what the sheet has to say before the row can be judged */
  readonly missing: Message | null;
}

/** Null when the criterion's condition says that it is not for this thickness, gap or size. */
function criterionCheck(
  prepared: PreparedCriterion,
  reading: Reading,
  sheet: JobSheet,
  scope: Scope,
  { at, place, missing, set }: Setting,
): Check | null {
  const { column } = sheet;
  const condition = prepared.when;
  // a thickness is what it is in either unit: a band without a column of its own is still a band
  const when = condition?.[column] ?? condition?.[otherColumn[column]] ?? null;
  const holds = when === null ? 1 : when.evaluate(scope);
  // a condition that can't be settled makes the row neither for this joint nor not
  const unmet =
    when === null ? null : (firstMissing(when, scope) ?? (Number.isNaN(holds) ? noNumber : null));
  if (unmet === null && holds === 0) return null;

  const limit = prepared.limit[column];
  const nominal = prepared.nominal?.[column] ?? null;
  const requirement: Requirement = {
    id: prepared.id,
    subject: at,
    name: prepared.name,
    sense: prepared.sense,
    documentUnit: prepared.unit === 'deg' ? 'deg' : column,
    limit: unmet ?? missing ?? limitOf(prepared, limit, sheet, scope, set),
    lengthAllowed: prepared.criterion.lengthAllowed ?? null,
    shortFrom: prepared.criterion.short === true ? (nominal?.evaluate(scope) ?? 0) : null,
    lastPlace: limit?.lastPlace ?? place,
    source: prepared.source,
    working: () => (limit === null ? null : workingOf(limit, scope)),
  };
  return assess(requirement, withDoubts(reading, limit, scope), sheet);
}

const noNumber: Message = { key: 'limits_reason_no_number' };
const otherColumn = { mm: 'in', in: 'mm' } as const;

function limitOf(
  { criterion }: PreparedCriterion,
  limit: PreparedFormula | null,
  { column }: JobSheet,
  scope: Scope,
  { columns }: PreparedLimits['set'],
): number | Message {
  if (criterion.unassessed !== undefined) return { key: criterion.unassessed };
  // a document that has the column, and a row of it that was not read there, are two things
  const lacks = columns.includes(column) ? 'figure' : 'column';
  if (limit === null) return { key: `limits_reason_no_${column}_${lacks}` };
  const value = limit.evaluate(scope);
  if (Number.isFinite(value)) return value;
  return firstMissing(limit, scope) ?? noNumber;
}

function firstMissing({ symbols }: PreparedFormula, scope: Scope): Message | null {
  const missing = symbols.find(({ read }) => Number.isNaN(read(scope)));
  return missing === undefined ? null : missingInput(missing.symbol, missing.source.from);
}

/** A limit that is worked out from a doubtful measurement is as doubtful. */
function withDoubts(reading: Reading, limit: PreparedFormula | null, scope: Scope): Reading {
  if (limit === null || reading.refer) return reading;
  for (const { source } of limit.symbols) {
    const note = source.from === 'measurement' ? scope.values[source.id]?.note : undefined;
    if (note?.refer === true)
      return { ...reading, remarks: [note, ...reading.remarks], refer: true };
  }
  return reading;
}

function workingOf(formula: PreparedFormula, scope: Scope): Working {
  const values = new Map(formula.symbols.map((one) => [one.symbol, valueIn(one, formula, scope)]));
  return {
    formula: formula.text,
    symbols: [...values].map(([symbol, value]) => ({ symbol, ...value })),
    substituted: substitute(
      formula.tree,
      (symbol) => values.get(symbol) ?? { value: Number.NaN, unit: '' },
    ),
  };
}

function valueIn(
  { read, source }: PreparedSymbol,
  { unit }: PreparedFormula,
  scope: Scope,
): SymbolValue {
  const own = source.unit === 'deg' ? 'deg' : source.unit === 'mm' ? unit : '';
  return { value: read(scope), unit: own };
}
