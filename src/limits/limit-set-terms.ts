import { measurementCatalogue } from '../measure/index.ts';
import { isMeasured, subjects, type Subject } from './subject.ts';

/** The words that a limit set may use, field by field: one list for the reader, the schema and the form. */
export const statuses = ['seen', 'memory', 'invented'] as const;
export const confidences = ['high', 'medium'] as const;
export const kinds = ['fillet', 'butt'] as const;
export const stages = ['fitUp', 'welded'] as const;
export const products = ['plate', 'pipe'] as const;
export const backings = ['none', 'strip'] as const;
export const datums = ['higher', 'lower', 'toes'] as const;
export const standIns = ['throat', 'leg'] as const;
export const columns = ['mm', 'in'] as const;
export const formulaColumns = ['mm', 'in', 'any'] as const;
/** A last place is a length or an angle in its own unit, from the finest to the coarsest that makes sense. */
export const lastPlaceFields = ['mm', 'in', 'deg'] as const;
export const leastLastPlace = 1e-6;
export const mostLastPlace = 1e3;
export const readingFields = ['reinforcementDatum', 'note'] as const;
/** What the symbols of a set may be called. */
export const symbolName = /^[a-z][a-z0-9]{0,20}$/iu;

/** Everything that a requirement may be put to: what the catalogue judges, and what `judge` works out. */
export const judgedSubjects: readonly Subject[] = subjects.filter(
  (subject) => !isMeasured(subject) || measurementCatalogue[subject].judged,
);

/** The fields of a limit set, of each of its rows and of each line of its checklist, all that there may be. */
export const setFields = [
  'version',
  'id',
  'name',
  'about',
  'columns',
  'readings',
  'symbols',
  'lastPlace',
  'criteria',
  'checklist',
] as const;
export const criterionFields = [
  'id',
  'name',
  'measurements',
  'kind',
  'stage',
  'product',
  'forms',
  'backing',
  'given',
  'when',
  'max',
  'min',
  'unassessed',
  'short',
  'nominal',
  'lengthAllowed',
  'standsFor',
  'deepThroatCounts',
  'symbols',
  'document',
  'edition',
  'clause',
  'status',
  'confidence',
  'note',
] as const;
export const checklistFields = [
  'id',
  'name',
  'asks',
  'document',
  'edition',
  'clause',
  'status',
  'confidence',
] as const;
