import { circumstanceNames } from '../../src/limits/circumstance.ts';
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { measurementCatalogue, measurementIds } from '../../src/measure/index.ts';
import {
  defaultJobSheet,
  limitSets,
  parseJobSheet,
  parseLimitSet,
} from '../../src/limits/index.ts';
import { house, iso } from './hand-made.ts';

const folder = new URL('../../src/limits/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const sources: readonly unknown[] = limitSets.map(({ id }): unknown =>
  JSON.parse(read(`sets/${id}.json`)),
);
const published = limitSets.filter(({ id }) => id !== house.id);

describe('the built-in limit sets', () => {
  it('are all there is in their folder, each under its own id', () => {
    const files = readdirSync(new URL('sets/', folder)).filter(
      (name) => !name.includes('compiled'),
    );
    expect(limitSets.map(({ id }) => `${id}.json`).sort()).toEqual(files.sort());
  });

  it('are valid, and each compiled file carries its source unchanged', () => {
    for (const [at, set] of limitSets.entries()) {
      const { trees, ...source } = set;
      expect(source).toEqual(sources[at]);
      expect(parseLimitSet(source)).toEqual(source);
      expect(new Set(Object.keys(trees))).toEqual(new Set(set.criteria.map(({ id }) => id)));
    }
  });

  it('have no row without document, edition, clause, status and confidence', () => {
    for (const { criteria, checklist } of limitSets) {
      for (const row of [...criteria, ...checklist]) {
        for (const text of [row.document, row.edition, row.clause]) expect(text).not.toBe('');
        expect(['seen', 'memory', 'invented']).toContain(row.status);
        expect(['high', 'medium']).toContain(row.confidence);
      }
    }
  });

  it('carry no row of low confidence, and mark what is invented', () => {
    for (const { criteria, checklist } of published) {
      for (const { id, status } of [...criteria, ...checklist]) {
        expect([id, status === 'seen' || status === 'memory']).toEqual([id, true]);
      }
    }
    expect(house.criteria.every(({ status }) => status === 'invented')).toBe(true);
    expect(house.checklist.every(({ status }) => status === 'invented')).toBe(true);
    expect(iso.criteria.every(({ document }) => document === 'ISO 5817')).toBe(true);
  });

  it('call from memory whatever was not seen, and only such figures less than well known', () => {
    // a figure that was read is never of medium confidence for itself, save where its column was guessed
    const guessed = published.flatMap(({ id, criteria }) =>
      criteria
        .filter(({ status, confidence }) => status === 'seen' && confidence === 'medium')
        .map((row) => `${id} ${row.id}`),
    );
    expect(guessed.every((name) => /^iso5817-[bcd] 4021$/u.test(name))).toBe(true);
  });

  it('judge reinforcement above the surface that they say', () => {
    for (const { criteria, readings } of limitSets) {
      const subjects = criteria.flatMap(({ measurements }) => measurements);
      const heights = subjects.filter((subject) => subject.includes('Reinforcement.'));
      for (const subject of heights)
        expect(subject.endsWith(readings.reinforcementDatum)).toBe(true);
    }
  });

  it('have a formula in a column of theirs, and none in a column they lack', () => {
    for (const { criteria, columns } of limitSets) {
      const used = new Set<string>();
      for (const { id, max, min, when, nominal, unassessed } of criteria) {
        const limit = min ?? max;
        if (limit === undefined) expect([id, unassessed]).toEqual([id, expect.any(String)]);
        for (const formulas of [limit, when, nominal]) {
          for (const column of Object.keys(formulas ?? {})) {
            used.add(column);
            expect([id, ['any', ...columns].includes(column)]).toEqual([id, true]);
          }
        }
        // where the limit has its own figure, so has what stands beside it
        for (const column of ['mm', 'in'] as const) {
          if (limit?.[column] === undefined || nominal === undefined) continue;
          expect([id, nominal[column] ?? nominal.any]).toEqual([id, expect.any(String)]);
        }
      }
      expect(columns.filter((column) => !used.has(column))).toEqual([]);
    }
    for (const { criteria, columns } of [iso, house]) {
      for (const { id, max, min, when } of criteria) {
        for (const formulas of [min ?? max, when]) {
          if (formulas === undefined || formulas.any !== undefined) continue;
          expect([id, Object.keys(formulas).sort()]).toEqual([id, [...columns].sort()]);
        }
      }
    }
  });

  it('judge only what is a length or an angle, and what the catalogue lets stand in a requirement', () => {
    for (const { criteria } of limitSets) {
      for (const subject of criteria.flatMap(({ measurements }) => measurements)) {
        if (subject === 'misalignment' || subject === 'angleDeparture') continue;
        const { judged, unit } = measurementCatalogue[subject];
        expect(['mm', 'deg']).toContain(unit);
        expect([subject, judged]).toEqual([subject, true]);
      }
    }
  });

  it('between house specification and job sheet every judged measurement has a limit', () => {
    // which of these stands in a requirement is chosen by the sheet: equal or unequal legs, proven
    // penetration, the set's datum; all come down to the throat, the legs or the higher surface
    const chosen = [
      'sizeEqual',
      'sizePair.1',
      'sizePair.2',
      'theoreticalThroat',
      'actualThroat',
      'deepThroat',
      'faceReinforcement.lower',
      'faceReinforcement.toes',
      'rootReinforcement.lower',
      'rootReinforcement.toes',
    ];
    // not seen from outside, and no requirement of this specification
    const unseen = ['rootPenetration'];
    const bySheet = ['bevelAngle1', 'bevelAngle2', 'grooveAngle', 'rootOpening', 'rootFace'];
    const bySet: readonly string[] = house.criteria.flatMap(({ measurements }) => measurements);
    const judged = measurementIds.filter((id) => measurementCatalogue[id].judged);
    const left = judged.filter((id) => ![...chosen, ...unseen, ...bySheet, ...bySet].includes(id));
    expect(left).toEqual([]);
  });

  it('of the house are two columns of round numbers, neither converted from the other', () => {
    const numbers = (text: string): readonly number[] =>
      [...text.matchAll(/(\d+(?:\.\d+)?)(?:\/(\d+))? (?:mm|in)\b/gu)].map(
        ([, top, bottom]) => Number(top) / Number(bottom ?? 1),
      );
    for (const { id, max, min } of house.criteria) {
      const limit = min ?? max;
      if (limit?.mm === undefined || limit.in === undefined) continue;
      const [metric, inches] = [numbers(limit.mm), numbers(limit.in)];
      expect(metric.length).toBe(inches.length);
      for (const [at, value] of metric.entries()) {
        const converted = (inches[at] ?? 0) * 25.4;
        // close enough to be the same requirement, and not the same number
        expect([id, Math.abs(converted / value - 1) < 0.12]).toEqual([id, true]);
        expect([id, converted === value]).toEqual([id, false]);
        expect([id, Number.isInteger(Math.round(value * 1e6) / 5e4)]).toEqual([id, true]);
      }
    }
  });
});

describe('the default job sheet', () => {
  it('is valid and names a set that exists', () => {
    const sheet = defaultJobSheet();
    expect(parseJobSheet(sheet)).toEqual(sheet);
    expect(limitSets.map(({ id }) => id)).toContain(sheet.limitSet);
    expect(sheet.guard.factor).toBe(0);
  });
});

describe('every message of these floors', () => {
  const fileOf = (name: string) =>
    JSON.parse(
      readFileSync(new URL(`../../src/view/messages/en/${name}.json`, import.meta.url), 'utf8'),
    ) as Readonly<Record<string, string>>;
  const sentences = { ...fileOf('limits'), ...fileOf('limit-sets') };

  it('that the data names has its sentence, names as a US and ISO pair', () => {
    for (const set of limitSets) {
      const keys = [set.name, set.about, set.readings.note];
      for (const { name, note, unassessed, lengthAllowed } of set.criteria) {
        keys.push(`${name}_us`, `${name}_iso`);
        for (const key of [note, unassessed, lengthAllowed]) if (key !== undefined) keys.push(key);
      }
      for (const { name, asks } of set.checklist) keys.push(name, asks);
      for (const key of keys) expect([key, sentences[key]]).toEqual([key, expect.any(String)]);
    }
  });

  it('that the code names has its sentence, and no sentence is left over', () => {
    const files = ['limits', 'units'].flatMap((floor) => {
      const of = new URL(`../../src/${floor}/`, import.meta.url);
      return readdirSync(of, { recursive: true, encoding: 'utf8' })
        .filter((name) => /\.(?:ts|json)$/u.test(name))
        .map((name) => readFileSync(new URL(name, of), 'utf8'));
    });
    const text = files.join('\n');
    const named = new Set(
      [...text.matchAll(/\b(?:limits?|units)_[a-z0-9_]+/gu)].map(([key]) => key),
    );
    // put together from parts: a limit's side and sense, a column's name
    for (const side of ['inside', 'on', 'outside']) {
      for (const sense of ['max', 'min']) named.add(`limits_reason_${side}_${sense}`);
    }
    for (const name of circumstanceNames) named.add(`limits_reason_needs_${name}`);
    for (const column of ['mm', 'in']) {
      for (const lacks of ['column', 'figure']) named.add(`limits_reason_no_${column}_${lacks}`);
    }
    const base = (key: string): string => key.replace(/_(?:us|iso)$/u, '');
    const sentenceKeys = Object.keys(sentences);
    const missing = [...named].filter(
      (key) => !key.endsWith('_') && !sentenceKeys.some((one) => one === key || base(one) === key),
    );
    expect(missing).toEqual([]);
    expect(sentenceKeys.filter((key) => !named.has(key) && !named.has(base(key)))).toEqual([]);
  });
});
