import { describe, expect, it } from 'vitest';
import { LimitsError, parseLimitSet } from '../../src/limits/index.ts';

const row = {
  id: 'one',
  name: 'n',
  measurements: ['underfill'],
  max: { mm: '1 mm' },
  document: 'd',
  edition: 'e',
  clause: 'c',
  status: 'seen',
  confidence: 'high',
};
const item = {
  id: 'crack',
  name: 'n',
  asks: 'a',
  document: 'd',
  edition: 'e',
  clause: 'c',
  status: 'memory',
  confidence: 'medium',
};
const whole = {
  version: 1,
  id: 'x',
  name: 'n',
  about: 'a',
  columns: ['mm'],
  readings: { reinforcementDatum: 'toes', note: 'r' },
  symbols: { t: 'tMin' },
  lastPlace: { mm: 0.1, in: 0.01, deg: 1 },
  criteria: [row],
  checklist: [item],
};

function refusal(value: unknown): string {
  try {
    parseLimitSet(value);
    return 'taken';
  } catch (error) {
    if (error instanceof LimitsError) return `${error.field}: ${error.reason.key}`;
    throw error;
  }
}
const withSet = (changes: object): string => refusal({ ...whole, ...changes });
const withRow = (changes: object): string => withSet({ criteria: [{ ...row, ...changes }] });
const withItem = (changes: object): string => withSet({ checklist: [{ ...item, ...changes }] });

describe('a limit set from outside', () => {
  it('is taken as it is when it is whole', () => {
    expect(parseLimitSet(whole)).toEqual(whole);
    const full = {
      ...row,
      kind: 'butt',
      stage: 'fitUp',
      product: 'pipe',
      forms: ['singleV'],
      backing: 'strip',
      when: { any: 'tMin > tMax' },
      short: true,
      nominal: { any: 't' },
      standsFor: 'throat',
      deepThroatCounts: true,
      symbols: { b: 'faceWidth' },
      note: 'note',
    };
    expect(parseLimitSet({ ...whole, criteria: [full] }).criteria).toEqual([full]);
    const { max, ...without } = row;
    expect(withSet({ criteria: [{ ...without, min: max }] })).toBe('taken');
    expect(withSet({ criteria: [{ ...without, unassessed: 'reason' }] })).toBe('taken');
    expect(withRow({ measurements: ['misalignment', 'underfill'] })).toBe('taken');
    expect(withRow({ measurements: ['angleDeparture', 'toeAngle'] })).toBe('taken');
  });

  it('is refused whole with the field and the reason', () => {
    expect(refusal(null)).toBe('set: limits_data_no_record');
    expect(refusal([])).toBe('set: limits_data_no_record');
    expect(withSet({ version: 2 })).toBe('version: limits_data_other_version');
    expect(withSet({ extra: 1 })).toBe('extra: limits_data_unknown_field');
    expect(withSet({ id: '' })).toBe('id: limits_data_empty');
    expect(withSet({ name: 7 })).toBe('name: limits_data_no_text');
    expect(withSet({ about: '' })).toBe('about: limits_data_empty');
    expect(withSet({ columns: 'mm' })).toBe('columns: limits_data_no_list');
    expect(withSet({ columns: ['mm', 'cm'] })).toBe('columns[1]: limits_data_no_choice');
    expect(withSet({ readings: null })).toBe('readings: limits_data_no_record');
    expect(withSet({ readings: { ...whole.readings, other: 1 } })).toBe(
      'readings.other: limits_data_unknown_field',
    );
    expect(withSet({ readings: { reinforcementDatum: 'mean', note: 'r' } })).toBe(
      'readings.reinforcementDatum: limits_data_no_choice',
    );
    expect(withSet({ readings: { reinforcementDatum: 'lower', note: '' } })).toBe(
      'readings.note: limits_data_empty',
    );
    expect(withSet({ symbols: { 't 1': 'tMin' } })).toBe('symbols.t 1: limits_data_symbol_name');
    expect(withSet({ symbols: { '1t': 'tMin' } })).toBe('symbols.1t: limits_data_symbol_name');
    expect(withSet({ symbols: { t: 7 } })).toBe('symbols.t: limits_data_no_text');
    expect(withSet({ lastPlace: { mm: 0, in: 1, deg: 1 } })).toBe(
      'lastPlace.mm: limits_data_out_of_range',
    );
    expect(withSet({ lastPlace: { mm: 1, in: 2000, deg: 1 } })).toBe(
      'lastPlace.in: limits_data_out_of_range',
    );
    expect(withSet({ lastPlace: { mm: 1, in: 1 } })).toBe('lastPlace.deg: limits_data_no_number');
    expect(withSet({ lastPlace: { mm: 1, in: 1, deg: 1, rad: 1 } })).toBe(
      'lastPlace.rad: limits_data_unknown_field',
    );
    expect(withSet({ criteria: {} })).toBe('criteria: limits_data_no_list');
    expect(withSet({ criteria: [row, row] })).toBe('criteria[1].id: limits_data_twin');
    expect(withSet({ criteria: [row, { ...row, id: 'two' }] })).toBe('taken');
    expect(withSet({ checklist: 7 })).toBe('checklist: limits_data_no_list');
  });

  it('refuses a row without its source, its status or a measurement of the catalogue', () => {
    for (const field of ['id', 'name', 'document', 'edition', 'clause']) {
      expect(withRow({ [field]: undefined })).toBe(`criteria[0].${field}: limits_data_no_text`);
      expect(withRow({ [field]: ' ' })).toBe(`criteria[0].${field}: limits_data_empty`);
    }
    expect(withRow({ status: 'guessed' })).toBe('criteria[0].status: limits_data_no_choice');
    expect(withRow({ confidence: 'low' })).toBe('criteria[0].confidence: limits_data_no_choice');
    expect(withRow({ measurements: ['crack'] })).toBe(
      'criteria[0].measurements[0]: limits_data_no_choice',
    );
    expect(withRow({ measurements: [] })).toBe(
      'criteria[0].measurements: limits_data_mixed_measurements',
    );
    expect(withRow({ measurements: ['underfill', 'toeAngle'] })).toBe(
      'criteria[0].measurements: limits_data_mixed_measurements',
    );
    expect(withRow({ measurements: ['weldArea'] })).toBe(
      'criteria[0].measurements: limits_data_mixed_measurements',
    );
    expect(withRow({ mx: { mm: '1 mm' } })).toBe('criteria[0].mx: limits_data_unknown_field');
  });

  it('refuses a row that judges a measurement which is only ever shown', () => {
    // the vocabulary: chordThroat is a construction, underfillHigh and each plate's step are shown
    for (const shown of ['chordThroat', 'underfillHigh', 'faceStep', 'toeAngle1', 'visibleLeg2']) {
      expect(withRow({ measurements: [shown] })).toBe(
        'criteria[0].measurements[0]: limits_data_never_judged',
      );
    }
    expect(withRow({ measurements: ['leg2', 'visibleLeg2'] })).toBe(
      'criteria[0].measurements[1]: limits_data_never_judged',
    );
    expect(withRow({ measurements: ['leg2', 'contactLeg2'] })).toBe('taken');
  });

  it('refuses a row without one limit, or with two', () => {
    expect(withRow({ max: undefined })).toBe('criteria[0]: limits_data_one_limit');
    expect(withRow({ min: { mm: '1 mm' } })).toBe('criteria[0]: limits_data_one_limit');
    expect(withRow({ unassessed: 'why' })).toBe('criteria[0]: limits_data_one_limit');
  });

  it('refuses columns that say two things, or nothing', () => {
    expect(withRow({ max: {} })).toBe('criteria[0].max: limits_data_columns');
    expect(withRow({ max: { mm: '1 mm', any: 't' } })).toBe('criteria[0].max: limits_data_columns');
    expect(withRow({ max: { cm: '1 cm' } })).toBe('criteria[0].max.cm: limits_data_unknown_field');
    expect(withRow({ max: { mm: '' } })).toBe('criteria[0].max.mm: limits_data_empty');
    expect(withRow({ max: '1 mm' })).toBe('criteria[0].max: limits_data_no_record');
    expect(withRow({ when: { in: 7 } })).toBe('criteria[0].when.in: limits_data_no_text');
    expect(withRow({ nominal: { any: 7 } })).toBe('criteria[0].nominal.any: limits_data_no_text');
  });

  it('refuses every other field of a row that is not what it should be', () => {
    const cases = {
      kind: 'lap',
      stage: 'after',
      product: 'bar',
      backing: 'both',
      standsFor: 'toe',
    };
    for (const [field, value] of Object.entries(cases)) {
      expect(withRow({ [field]: value })).toBe(`criteria[0].${field}: limits_data_no_choice`);
    }
    expect(withRow({ short: false })).toBe('criteria[0].short: limits_data_not_true');
    expect(withRow({ deepThroatCounts: 1 })).toBe(
      'criteria[0].deepThroatCounts: limits_data_not_true',
    );
    expect(withRow({ forms: 'tee' })).toBe('criteria[0].forms: limits_data_no_list');
    expect(withRow({ forms: [''] })).toBe('criteria[0].forms[0]: limits_data_empty');
    expect(withRow({ note: '' })).toBe('criteria[0].note: limits_data_empty');
    expect(withRow({ symbols: [] })).toBe('criteria[0].symbols: limits_data_no_record');
    expect(withSet({ criteria: [7] })).toBe('criteria[0]: limits_data_no_record');
  });

  it('refuses a checklist item that lacks something', () => {
    expect(withItem({ asks: undefined })).toBe('checklist[0].asks: limits_data_no_text');
    expect(withItem({ status: '' })).toBe('checklist[0].status: limits_data_no_choice');
    expect(withItem({ limit: 1 })).toBe('checklist[0].limit: limits_data_unknown_field');
    expect(withSet({ checklist: [7] })).toBe('checklist[0]: limits_data_no_record');
  });

  it('names each row, each measurement of a row and each line of its checklist once', () => {
    expect(withSet({ criteria: [row, row] })).toBe('criteria[1].id: limits_data_twin');
    expect(withSet({ checklist: [item, item] })).toBe('checklist[1].id: limits_data_twin');
    expect(withRow({ measurements: ['underfill', 'underfill'] })).toBe(
      'criteria[0].measurements[1]: limits_data_twin',
    );
  });
});
