import { measurementCatalogue } from '../measure/index.ts';
import { circumstanceNames, circumstances, type Given } from './circumstance.ts';
import type { ChecklistItem, Criterion, Formulas, LimitSet } from './limit-set.ts';
import {
  backings,
  checklistFields,
  columns,
  confidences,
  criterionFields,
  datums,
  formulaColumns,
  kinds,
  lastPlaceFields,
  leastLastPlace,
  mostLastPlace,
  products,
  readingFields,
  setFields,
  stages,
  standIns,
  statuses,
  symbolName,
} from './limit-set-terms.ts';
import { LimitsError } from './limits-error.ts';
import {
  choiceOf,
  fieldsOf,
  filledText,
  joined,
  listOf,
  numberOf,
  refuseOthers,
  versionOf,
  type Fields,
} from './read-value.ts';
import { isMeasured, subjects, type Subject } from './subject.ts';
import { unitOfSubject } from './symbol.ts';

/**
 * A limit set from outside, taken whole or refused with a LimitsError that
 * names the field and the reason. Formulas are checked later, by compiling.
 */
export function parseLimitSet(value: unknown): LimitSet {
  const set = fieldsOf(value, 'set');
  refuseOthers(set, setFields, '');
  const lastPlace = fieldsOf(set['lastPlace'], 'lastPlace');
  const readings = fieldsOf(set['readings'], 'readings');
  refuseOthers(lastPlace, lastPlaceFields, 'lastPlace');
  refuseOthers(readings, readingFields, 'readings');
  const place = (unit: string): number =>
    numberOf(lastPlace[unit], `lastPlace.${unit}`, leastLastPlace, mostLastPlace);
  const criteria = listOf(set['criteria'], 'criteria', parseCriterion);
  const checklist = listOf(set['checklist'], 'checklist', parseChecklistItem);
  refuseTwins(ids(criteria), (index) => `criteria[${index}].id`);
  refuseTwins(ids(checklist), (index) => `checklist[${index}].id`);
  return {
    version: versionOf(set['version']),
    id: filledText(set['id'], 'id'),
    name: filledText(set['name'], 'name'),
    about: filledText(set['about'], 'about'),
    columns: listOf(set['columns'], 'columns', (column, path) => choiceOf(column, columns, path)),
    readings: {
      reinforcementDatum: choiceOf(
        readings['reinforcementDatum'],
        datums,
        'readings.reinforcementDatum',
      ),
      note: filledText(readings['note'], 'readings.note'),
    },
    symbols: parseSymbols(set['symbols'], 'symbols'),
    lastPlace: { mm: place('mm'), in: place('in'), deg: place('deg') },
    criteria,
    checklist,
  };
}

function parseCriterion(value: unknown, path: string): Criterion {
  const fields = fieldsOf(value, path);
  refuseOthers(fields, criterionFields, path);
  const at = (name: string): string => joined(path, name);
  const measurements = listOf(fields['measurements'], at('measurements'), (subject, where) =>
    choiceOf(subject, subjects, where),
  );
  refuseTwins(measurements, (index) => `${at('measurements')}[${index}]`);
  refuseMixed(measurements, at('measurements'));
  refuseNeverJudged(measurements, at('measurements'));
  refuseNoLimit(fields, path);
  return {
    ...citation(fields, path),
    measurements,
    ...optional(fields, path, {
      kind: (of, where) => choiceOf(of, kinds, where),
      stage: (of, where) => choiceOf(of, stages, where),
      product: (of, where) => choiceOf(of, products, where),
      forms: (of, where) => listOf(of, where, filledText),
      backing: (of, where) => choiceOf(of, backings, where),
      given: parseGiven,
      when: parseFormulas,
      max: parseFormulas,
      min: parseFormulas,
      unassessed: filledText,
      short: isTrue,
      nominal: parseFormulas,
      lengthAllowed: filledText,
      standsFor: (of, where) => choiceOf(of, standIns, where),
      deepThroatCounts: isTrue,
      symbols: parseSymbols,
      note: filledText,
    }),
  };
}

/** No figure without its source, and how well the source is known. */
function citation(fields: Fields, path: string) {
  const text = (name: string): string => filledText(fields[name], joined(path, name));
  return {
    id: text('id'),
    name: text('name'),
    document: text('document'),
    edition: text('edition'),
    clause: text('clause'),
    status: choiceOf(fields['status'], statuses, joined(path, 'status')),
    confidence: choiceOf(fields['confidence'], confidences, joined(path, 'confidence')),
  };
}

function parseChecklistItem(value: unknown, path: string): ChecklistItem {
  const fields = fieldsOf(value, path);
  refuseOthers(fields, checklistFields, path);
  return { ...citation(fields, path), asks: filledText(fields['asks'], joined(path, 'asks')) };
}

/** The fields that are there, each read; a field that isn't there stays away. */
function optional<Readers extends Record<string, (value: unknown, path: string) => unknown>>(
  fields: Fields,
  path: string,
  readers: Readers,
): { readonly [Name in keyof Readers]?: ReturnType<Readers[Name]> } {
  const read = Object.entries(readers)
    .filter(([name]) => fields[name] !== undefined)
    .map(([name, reader]) => [name, reader(fields[name], joined(path, name))]);
  return Object.fromEntries(read) as {
    readonly [Name in keyof Readers]?: ReturnType<Readers[Name]>;
  };
}

function parseFormulas(value: unknown, path: string): Formulas {
  const fields = fieldsOf(value, path);
  refuseOthers(fields, formulaColumns, path);
  const formulas = optional(fields, path, { mm: filledText, in: filledText, any: filledText });
  // a formula for both columns beside one for each: which of them counts?
  if (
    Object.keys(formulas).length === 0 ||
    (formulas.any !== undefined && Object.keys(formulas).length > 1)
  ) {
    throw new LimitsError(path, { key: 'limits_data_columns' });
  }
  return formulas;
}

function parseSymbols(value: unknown, path: string): Readonly<Record<string, string>> {
  const fields = fieldsOf(value, path);
  const entries = Object.entries(fields).map(([name, of]) => {
    if (!symbolName.test(name)) {
      throw new LimitsError(joined(path, name), { key: 'limits_data_symbol_name' });
    }
    return [name, filledText(of, joined(path, name))] as const;
  });
  return Object.fromEntries(entries);
}

function parseGiven(value: unknown, path: string): Given {
  const fields = fieldsOf(value, path);
  refuseOthers(fields, circumstanceNames, path);
  const named = circumstanceNames.filter((name) => fields[name] !== undefined);
  const read = named.map((name) => {
    const choice = (of: unknown, where: string): string => choiceOf(of, circumstances[name], where);
    return [name, listOf(fields[name], joined(path, name), choice)] as const;
  });
  return Object.fromEntries(read);
}

function isTrue(value: unknown, path: string): true {
  if (value === true) return true;
  throw new LimitsError(path, { key: 'limits_data_not_true' });
}

function refuseMixed(measurements: readonly Subject[], path: string): void {
  const units = new Set(measurements.map(unitOfSubject));
  // limits are lengths or angles; areas and masses are shown, not judged
  const [unit] = units;
  if (units.size !== 1 || (unit !== 'mm' && unit !== 'deg')) {
    throw new LimitsError(path, { key: 'limits_data_mixed_measurements' });
  }
}

/** What the catalogue only shows stands in no requirement. */
function refuseNeverJudged(measurements: readonly Subject[], path: string): void {
  const shown = measurements.findIndex(
    (subject) => isMeasured(subject) && !measurementCatalogue[subject].judged,
  );
  if (shown < 0) return;
  throw new LimitsError(`${path}[${shown}]`, { key: 'limits_data_never_judged' });
}

/** One limit a row: a most, a least, or the reason why there is none. */
function refuseNoLimit(fields: Fields, path: string): void {
  const given = ['max', 'min', 'unassessed'].filter((name) => fields[name] !== undefined);
  if (given.length !== 1) throw new LimitsError(path, { key: 'limits_data_one_limit' });
}

/** No two of a list go by one name. */
function refuseTwins(names: readonly string[], pathOf: (index: number) => string): void {
  const twin = names.findIndex((name, at) => names.indexOf(name) !== at);
  if (twin >= 0) throw new LimitsError(pathOf(twin), { key: 'limits_data_twin' });
}

const ids = (rows: readonly { readonly id: string }[]): readonly string[] =>
  rows.map(({ id }) => id);
