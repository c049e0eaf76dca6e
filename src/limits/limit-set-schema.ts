import { circumstanceNames, circumstances } from './circumstance.ts';
import {
  backings,
  checklistFields,
  columns,
  confidences,
  criterionFields,
  datums,
  formulaColumns,
  judgedSubjects,
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
import { longestText } from './read-value.ts';
import { unitOfSubject } from './symbol.ts';

type Schema = Readonly<Record<string, unknown>>;

const text: Schema = { type: 'string', maxLength: longestText, pattern: '\\S' };
const lastPlace: Schema = { type: 'number', minimum: leastLastPlace, maximum: mostLastPlace };
const symbols: Schema = {
  type: 'object',
  // the flag that lets capitals in has no place in a schema
  propertyNames: { pattern: symbolName.source.replaceAll('a-z', 'A-Za-z') },
  additionalProperties: text,
};
const listOf = (items: Schema): Schema => ({ type: 'array', items });

/** A record of these fields and no other; a field without a schema of its own is a text. */
function record<Name extends string>(
  names: readonly Name[],
  schemas: Readonly<Partial<Record<Name, Schema>>>,
  optional: readonly Name[] = [],
): Schema {
  return {
    type: 'object',
    properties: Object.fromEntries(names.map((name) => [name, schemas[name] ?? text])),
    required: names.filter((name) => !optional.includes(name)),
    additionalProperties: false,
  };
}

/** A formula for both columns, or one for each or either. */
const formulas: Schema = {
  ...record(formulaColumns, {}, formulaColumns),
  oneOf: [
    { required: ['any'], maxProperties: 1 },
    { not: { required: ['any'] }, minProperties: 1 },
  ],
};

/** What a row is put to: lengths or angles, never both. */
const measurements: Schema = {
  oneOf: (['mm', 'deg'] as const).map((unit) => ({
    type: 'array',
    minItems: 1,
    items: { enum: judgedSubjects.filter((subject) => unitOfSubject(subject) === unit) },
  })),
};

const citation = { status: { enum: statuses }, confidence: { enum: confidences } } as const;
const cited = [
  'id',
  'name',
  'measurements',
  'document',
  'edition',
  'clause',
  'status',
  'confidence',
] as const;
const isCited = (name: string): boolean => (cited as readonly string[]).includes(name);

const criterion: Schema = {
  ...record(
    criterionFields,
    {
      ...citation,
      measurements,
      kind: { enum: kinds },
      stage: { enum: stages },
      product: { enum: products },
      forms: listOf(text),
      backing: { enum: backings },
      given: record(
        circumstanceNames,
        Object.fromEntries(
          circumstanceNames.map((name) => [name, listOf({ enum: circumstances[name] })]),
        ),
        circumstanceNames,
      ),
      when: formulas,
      max: formulas,
      min: formulas,
      nominal: formulas,
      short: { const: true },
      standsFor: { enum: standIns },
      deepThroatCounts: { const: true },
      symbols,
    },
    criterionFields.filter((name) => !isCited(name)),
  ),
  oneOf: ['max', 'min', 'unassessed'].map((limit) => ({ required: [limit] })),
};

/**
 * JSON Schema (draft 2020-12) of a limit set's file, from the lists that the reader reads by. What
 * a schema can't say, the reader adds: no two rows of one id, and formulas that compile.
 */
export const limitSetSchema: Schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  title: 'Limit set',
  description:
    'Acceptance limits of one document, edition and class. Formulas carry their units; names are plain text.',
  ...record(setFields, {
    version: { const: 1 },
    columns: listOf({ enum: columns }),
    readings: record(readingFields, { reinforcementDatum: { enum: datums } }),
    symbols,
    lastPlace: record(lastPlaceFields, { mm: lastPlace, in: lastPlace, deg: lastPlace }),
    criteria: listOf(criterion),
    checklist: listOf(record(checklistFields, citation)),
  }),
};
