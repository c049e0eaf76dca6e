import type { Message } from '../units/index.ts';
import { enteredToMm, inchToMm, mmToInch } from '../units/index.ts';
import { conformanceProbability } from './conformance.ts';
import { atMost, documentTolerance, same } from './document-tolerance.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Call, Check, CriterionSource, Working } from './judging.ts';
import { standsAt, toPlace } from './last-place.ts';
import type { Subject } from './subject.ts';
import { roundedFirst, standing, withinGuard } from './reasons.ts';

/** One requirement with its limit worked out, not yet put to a measurement. */
export interface Requirement {
  readonly id: string;
  readonly subject: Subject;
  readonly name: Message;
  readonly sense: 'max' | 'min';
  readonly documentUnit: 'mm' | 'in' | 'deg';
  /** In the document's unit; a message says why there is none. */
  readonly limit: number | Message;
  /** For a short imperfection only: the value at which there is none, in the document's unit. */
  readonly shortFrom: number | null;
  /** Message key: the length that a short imperfection may have. */
  readonly lengthAllowed: string | null;
  /** The place that the measurement is rounded to if the sheet asks for it: the last of the limit. */
  readonly lastPlace: number;
  readonly source: CriterionSource;
  /** The sum with numbers put in; worked out only when somebody looks. */
  readonly working: () => Working | null;
}

/** A measurement as the requirement is put to it. */
export interface Reading {
  /** mm or degrees; null with a remark that says why. */
  readonly value: number | null;
  readonly remarks: readonly Message[];
  /** The value stands, but the section can't settle it. */
  readonly refer: boolean;
}

interface Verdict {
  readonly call: Call;
  readonly reason: Message | null;
}

/** Puts one requirement to one measurement, as the sheet says (guard band, rounding, extent). */
export function assess(requirement: Requirement, reading: Reading, sheet: JobSheet): Check {
  const { limit } = requirement;
  if (typeof limit !== 'number') return notAssessed(requirement, reading.value, [limit]);
  if (reading.value === null) return notAssessed(requirement, null, reading.remarks);
  return new AssessedCheck(requirement, limit, reading, reading.value, sheet);
}

/**
 * A measurement put to a limit. A class, so that reasons and working are found on the prototype and
 * worked out only when somebody looks: a slider event judges a score of rows.
 */
class AssessedCheck implements Check {
  readonly id: string;
  readonly measurement: Subject;
  readonly name: Message;
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'deg';
  readonly limit: number;
  declare readonly ordinary?: number;
  readonly printed: NonNullable<Check['printed']>;
  readonly measured: number;
  readonly margin: number;
  readonly guard: number;
  readonly uncertainty: number;
  readonly call: Call;
  readonly source: CriterionSource;
  readonly #requirement: Requirement;
  readonly #reading: Reading;
  readonly #plain: Call;
  readonly #verdict: Verdict;
  /** measurement in the document's unit, as measured and as compared */
  readonly #found: number;
  readonly #compared: number;

  constructor(
    requirement: Requirement,
    limit: number,
    reading: Reading,
    measured: number,
    sheet: JobSheet,
  ) {
    const { documentUnit, sense } = requirement;
    const found = toDocument(measured, documentUnit);
    const compared = asCompared(found, limit, requirement, sheet);
    const margin = sense === 'max' ? limit - compared : compared - limit;
    const guard = guardOf(sheet, documentUnit);
    const plain = byLimit(margin, guard, sense === 'max' && same(limit, 0) && same(compared, 0));
    const verdict = byLength(plain, requirement, compared, sheet);
    this.id = requirement.id;
    this.measurement = requirement.subject;
    this.name = requirement.name;
    this.sense = sense;
    this.unit = documentUnit === 'deg' ? 'deg' : 'mm';
    this.limit = fromDocument(limit, documentUnit);
    const { shortFrom } = requirement;
    if (shortFrom !== null && !same(shortFrom, limit)) {
      this.ordinary = fromDocument(shortFrom, documentUnit);
    }
    this.printed = { value: limit, unit: documentUnit };
    this.measured = measured;
    this.margin = fromDocument(margin, documentUnit);
    this.guard = fromDocument(guard, documentUnit);
    this.uncertainty =
      documentUnit === 'deg' ? sheet.guard.angleUncertainty : sheet.guard.lengthUncertainty;
    this.call = reading.refer ? 'refer' : verdict.call;
    this.source = requirement.source;
    this.#requirement = requirement;
    this.#reading = reading;
    this.#plain = plain;
    this.#verdict = verdict;
    this.#found = found;
    this.#compared = compared;
  }

  get reasons(): readonly Message[] {
    const { unit, margin, guard } = this;
    return inOrder(this.#reading, [
      this.#verdict.reason,
      lengthReason(this.#verdict, this.#requirement),
      this.#plain === 'refer' ? withinGuard(margin, guard, unit) : null,
      this.#standing(),
      same(this.#found, this.#compared)
        ? null
        : roundedFirst(fromDocument(this.#compared, this.#requirement.documentUnit), unit),
    ]);
  }

  /**
   * Where it stands to its limit: to the ordinary one, unless it is past what a short length may have,
   * or that is all it may have anywhere.
   */
  #standing(): Message {
    const { sense, unit, printed } = this;
    const { shortFrom, documentUnit } = this.#requirement;
    const isShort = this.#verdict.reason !== null && (this.#plain === 'reject' || shortFrom === 0);
    const limit = isShort ? printed.value : (shortFrom ?? printed.value);
    const compared = this.#compared;
    const margin = sense === 'max' ? limit - compared : compared - limit;
    const inMm = (value: number): number => fromDocument(value, documentUnit);
    const side = same(limit, compared) ? 'on' : margin > 0 ? 'inside' : 'outside';
    return standing(
      { sense, unit, measured: inMm(compared), limit: inMm(limit), margin: inMm(margin) },
      side,
    );
  }

  get conformance(): number {
    return conformanceProbability(this.margin, this.uncertainty);
  }

  get working(): Working | null {
    return this.#requirement.working();
  }
}

/** Most telling first: what leaves the call open, then the comparison, then what else bears on it. */
function inOrder(reading: Reading, reasons: readonly (Message | null)[]): readonly Message[] {
  const compared = reasons.filter((reason) => reason !== null);
  return reading.refer ? [...reading.remarks, ...compared] : [...compared, ...reading.remarks];
}

/** A requirement that stands, without what it takes to put it to anything: never an accept. */
function notAssessed(
  requirement: Requirement,
  measured: number | null,
  reasons: readonly Message[],
): Check {
  return {
    id: requirement.id,
    measurement: requirement.subject,
    name: requirement.name,
    sense: requirement.sense,
    unit: requirement.documentUnit === 'deg' ? 'deg' : 'mm',
    limit: null,
    printed: null,
    measured,
    margin: null,
    guard: 0,
    uncertainty: 0,
    conformance: null,
    call: 'notAssessed',
    reasons,
    working: null,
    source: requirement.source,
  };
}

/** Inside by at least the guard: accept. Outside by more than it: reject. Between: refer (JCGM 106). */
function byLimit(margin: number, guard: number, nothing: boolean): Call {
  // none is permitted and none is there: no distance that an instrument could get wrong
  if (nothing) return 'accept';
  if (atMost(guard, margin)) return 'accept';
  return atMost(-guard, margin) && guard > 0 ? 'refer' : 'reject';
}

/** What the length of an imperfection adds, in a row that allows it over a short length only. */
function byLength(call: Call, requirement: Requirement, found: number, sheet: JobSheet): Verdict {
  const { shortFrom, sense, documentUnit } = requirement;
  if (shortFrom === null) return { call, reason: null };
  const size = sense === 'max' ? found - shortFrom : shortFrom - found;
  const least = toDocument(enteredToMm(sheet.leastImperfection), documentUnit);
  if (atMost(size, 0)) return { call: 'accept', reason: null };
  if (size < least - documentTolerance) {
    return { call: 'accept', reason: { key: 'limits_reason_short_nothing' } };
  }
  if (call === 'reject') return { call, reason: { key: 'limits_reason_short_any_length' } };
  if (sheet.extent === 'typical')
    return { call: 'reject', reason: { key: 'limits_reason_short_typical' } };
  if (sheet.extent === 'unknown')
    return { call: 'refer', reason: { key: 'limits_reason_short_unknown' } };
  return { call, reason: { key: 'limits_reason_short_isolated' } };
}

/** The document's own length, where the length of the imperfection has a say in the call. */
function lengthReason({ reason }: Verdict, { lengthAllowed }: Requirement): Message | null {
  return reason === null || lengthAllowed === null ? null : { key: lengthAllowed };
}

/** Half-width of the guard band: the sheet's factor times the instrument's standard uncertainty. */
function guardOf({ guard }: JobSheet, unit: Requirement['documentUnit']): number {
  return unit === 'deg'
    ? guard.factor * guard.angleUncertainty
    : toDocument(guard.factor * guard.lengthUncertainty, unit);
}

/**
 * The measurement as it is compared: rounded, if the sheet says so, to the last
 * place of a printed limit. The limit stands as it is, or rounding would let
 * through what it keeps out; against a limit that is worked out and falls
 * between two places (0.707 of a leg) nothing is rounded, or a weld that meets
 * it to the hair would be turned away.
 */
function asCompared(
  found: number,
  limit: number,
  { lastPlace }: Requirement,
  { rounding }: JobSheet,
): number {
  return rounding === 'lastPlace' && standsAt(limit, lastPlace) ? toPlace(found, lastPlace) : found;
}

const toDocument = (value: number, unit: Requirement['documentUnit']): number =>
  unit === 'in' ? mmToInch(value) : value;

const fromDocument = (value: number, unit: Requirement['documentUnit']): number =>
  unit === 'in' ? inchToMm(value) : value;
