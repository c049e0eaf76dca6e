import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parametersFor } from '../../src/joint/index.ts';
import { constructionNames } from '../../src/lesson/index.ts';
import { limitSets, mistakes } from '../../src/limits/index.ts';
import { measurementIds } from '../../src/measure/index.ts';
import { choicesOf } from '../../src/state/joint-choice.ts';
import { defaultJoint } from '../../src/joint/index.ts';
import { readySections } from '../../src/state/ready-sections.ts';
import { groupName, groups } from '../../src/view/page/groups.ts';
import { pages } from '../../src/view/page/pages.ts';
import { parameterName } from '../../src/view/parameter-name.ts';
import { fetchRest, known, length, quantity, text, type Reading } from '../../src/view/text.ts';
import { sumText } from '../../src/view/page/sum-text.ts';

const mm: Reading = { units: 'mm', inches: 'decimal', terms: 'US' };
const inch: Reading = { ...mm, units: 'in' };
const fraction: Reading = { ...inch, inches: 'fraction' };
const iso: Reading = { ...mm, terms: 'ISO' };

beforeAll(fetchRest);

const sources = (folder: string): readonly string[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) =>
    entry.name === 'compiled'
      ? []
      : entry.isDirectory()
        ? sources(`${folder}/${entry.name}`)
        : /\.(ts|svelte)$/.test(entry.name)
          ? [readFileSync(`${folder}/${entry.name}`, 'utf8')]
          : [],
  );

/** Keys that code puts together from parts, each spelled out. */
function composed(): readonly string[] {
  const fields = [...parametersFor('fillet'), ...parametersFor('butt')].map(({ field }) => field);
  const shapes = ['undercut1Shape', 'undercut2Shape', 'rootUndercut1Shape', 'rootUndercut2Shape'];
  const choices = [...choicesOf(defaultJoint('fillet')), ...choicesOf(defaultJoint('butt'))];
  const small = (words: string): string => words.toLowerCase();
  return [
    ...[...fields, ...shapes, 'spatter.0.place', 'spatter.0.height'].map(
      (field) => parameterName(field).key,
    ),
    ...choices.flatMap(({ field, options }) => [
      `bench_choice_${small(field)}`,
      ...options.map((value) => `bench_${small(field)}_${small(value)}`),
    ]),
    ...groups.map(groupName),
    ...pages.map((page) => `bench_page_${page}`),
    ...constructionNames.map((name) => `bench_construction_${small(name)}`),
    ...readySections.map(({ name }) => name),
    ...['accept', 'reject', 'refer', 'notAssessed'].map((call) => `bench_call_${call}`),
    ...['seen', 'memory', 'invented', 'sheet'].map((status) => `bench_status_${status}`),
    ...['rounded', 'sharp'].map((shape) => `bench_shape_${shape}`),
    ...['fillet', 'square', 'v', 'bevel', 'u', 'j', 'backrun', 'strip'].map(
      (kind) => `symbol_kind_${kind}`,
    ),
    ...['none', ...mistakes].map((how) => `symbol_misread_${small(how)}`),
    ...['none', 'flush_fillet', 'flush_groove', 'convex', 'concave'].map(
      (contour) => `symbol_field_contour_${contour}`,
    ),
    ...['face', 'root'].flatMap((side) => [
      `symbol_field_side_${side}_fillet`,
      `symbol_field_side_${side}_groove`,
    ]),
    ...['z', 'a', 'none'].map((prefix) => `symbol_field_prefix_${prefix}`),
    ...[
      'tee',
      'lap',
      'corner',
      ...(choices.find((c) => c.field === 'preparation')?.options ?? []),
    ].map((form) => `bench_title_${small(form)}`),
    ...measurementIds.flatMap((id) => [
      `measure_${id.replace('.', '_')}`,
      `measure_${id.replace('.', '_')}_definition`,
      `scene_${id.replace('.', '_')}`,
    ]),
    ...limitSets.flatMap((set) => [
      set.name,
      set.about,
      ...set.criteria.flatMap(({ name, note }) => (note === undefined ? [name] : [name, note])),
      ...set.checklist.flatMap(({ name, asks }) => [name, asks]),
    ]),
  ];
}

describe('lengths by the divisions of a rule', () => {
  const rule = { units: 'in', inches: 'fraction', terms: 'US' } as const;
  const mm = (value: number) => ({ value, unit: 'mm' }) as const;
  beforeAll(fetchRest);

  it('are never nothing where there is something', () => {
    // 0.1 ÷ 25.4 = 0.0039; half of 1/64 in is 0.198 mm
    expect(quantity(0.1, 'mm', rule)).toBe('0.004 in');
    expect(quantity(-0.1, 'mm', rule)).toBe('−0.004 in');
    expect(quantity(0.4, 'mm', rule)).toBe('1/64 in');
    expect(quantity(0, 'mm', rule)).toBe('0 in');
    expect(quantity(0.001, 'mm', rule)).toBe('0 in');
  });

  it('are decimals where they are small and no fraction: 0.6 mm is no 1/32, which is 0.79', () => {
    expect(quantity(0.2, 'mm', rule)).toBe('0.008 in');
    expect(quantity(0.6, 'mm', rule)).toBe('0.024 in');
    expect(quantity(0.79375, 'mm', rule)).toBe('1/32 in');
    expect(quantity(1.5875, 'mm', rule)).toBe('1/16 in');
    // a leg is read off a rule all the same: 7.24 mm is 18.2 sixty-fourths
    expect(quantity(7.24, 'mm', rule)).toBe('9/32 in');
  });

  it('take decimals where their fractions would not add up', () => {
    // 3.7 mm is 9.32 sixty-fourths, 3.0 mm 7.56, 0.7 mm 1.76: 9/64 would be 1/32 over 1/8
    const values = { measured: mm(3.7), limit: mm(3), margin: mm(0.7) };
    expect(sumText({ key: 'limits_reason_outside_max', values }, rule)).toBe(
      '0.146 in is 0.028 in over the 0.118 in allowed.',
    );
    // 10/64 less 8/64 is 2/64
    const added = { measured: mm(3.96875), limit: mm(3.175), margin: mm(0.79375) };
    expect(sumText({ key: 'limits_reason_outside_max', values: added }, rule)).toBe(
      '5/32 in is 1/32 in over the 1/8 in allowed.',
    );
  });
});

describe('words', () => {
  it('are there for every key that is written out anywhere in the program', () => {
    const written = sources('src').flatMap((source) =>
      [
        ...source.matchAll(
          /['"`]((?:bench|measure|limits|joint_error|scene|lesson|units|symbol)_\w*[a-zA-Z0-9])['"`]/g,
        ),
      ].map(([, key]) => key ?? ''),
    );
    expect(written.length).toBeGreaterThan(200);
    expect([...new Set(written)].filter((key) => !known(key))).toEqual([]);
  });

  it.each(composed())('are there for %s, a key put together from parts', (key) => {
    expect(known(key)).toBe(true);
  });

  it('follow the terms where the two trades differ', () => {
    const name = { key: 'bench_parameter_root_gap' };
    expect(text(name, mm)).toBe('Root opening');
    expect(text(name, iso)).toBe('Root gap');
  });

  it('tell what was measured from its limit where both would read alike', () => {
    const over = (measured: number, limit: number, reading: Reading) =>
      text(
        {
          key: 'bench_summary_over',
          values: {
            name: 'Undercut',
            measured: { value: measured, unit: 'mm' },
            limit: { value: limit, unit: 'mm' },
          },
        },
        reading,
        true,
      );
    const fraction: Reading = { units: 'in', inches: 'fraction', terms: 'US' };
    // 1/32 in is 0.79375 mm
    expect(over(0.85, 0.79375, fraction)).toContain('0.033');
    expect(over(0.85, 0.79375, fraction)).toContain('0.031');
    expect(over(1.6, 0.79375, fraction)).toContain('1/16');
    // 0.5 mm is 0.0197 in and no 1/64, which is 0.0156
    expect(over(0.6, 0.5, fraction)).toContain('0.024');
    expect(over(0.6, 0.5, fraction)).toContain('0.020');
    const mm: Reading = { ...fraction, units: 'mm' };
    expect(over(0.5004, 0.5, mm)).toContain('0.5004');
    expect(over(0.5, 0.5, mm)).toBe(over(0.5, 0.5, mm));
  });

  it('put a message inside a message, and a quantity as the reader chose', () => {
    const message = {
      key: 'bench_summary_over',
      values: {
        name: { key: 'bench_parameter_root_gap' },
        measured: { value: 2, unit: 'mm' as const },
        limit: { value: 1.5, unit: 'mm' as const },
      },
    };
    expect(text(message, mm)).toBe('Root opening: 2.0 mm, over the 1.5 mm allowed.');
    expect(text(message, mm, true)).toBe('Root opening: 2.0, over the 1.5 allowed.');
    // 2 ÷ 25.4 = 0.07874, 1.5 ÷ 25.4 = 0.05906.
    expect(text(message, inch)).toBe('Root opening: 0.079 in, over the 0.059 in allowed.');
  });

  it('show the key of a sentence that there is none of', () => {
    expect(text({ key: 'bench_nothing_like_it' }, mm)).toBe('bench_nothing_like_it');
    expect(text({ key: 'constructor' }, mm)).toBe('constructor');
  });
});

describe('quantities', () => {
  it('of length carry one decimal at least in millimetres, three in inches, or 64ths', () => {
    expect(length(8, mm)).toBe('8.0');
    expect(length(5.657, mm)).toBe('5.66');
    expect(length(8, mm, { decimals: 2, unitMark: true })).toBe('8.00 mm');
    expect(length(8, inch)).toBe('0.315');
    // 8 mm is 20.16 sixty-fourths.
    expect(length(8, fraction, { unitMark: true })).toBe('5/16 in');
  });

  it('of other kinds carry their own unit', () => {
    expect(quantity(37.5, 'deg', mm)).toBe('37.5°');
    expect(quantity(100, 'deg', mm)).toBe('100°');
    expect(quantity(32, 'mm2', mm)).toBe('32.0 mm²');
    // 32 ÷ 25.4² = 0.04960.
    expect(quantity(32, 'mm2', inch)).toBe('0.0496 in²');
    expect(quantity(0.251, 'kg/m', mm)).toBe('0.251 kg/m');
    // 1 mm² is 1 cm³/m; 1 in² is 645.16 mm² and 12 in³/ft.
    expect(quantity(24.5, 'cm3/m', mm)).toBe('24.5 cm³/m');
    expect(quantity(645.16, 'cm3/m', inch)).toBe('12.000 in³/ft');
    // 1 kg/m is 0.671969 lb/ft.
    expect(quantity(1, 'kg/m', inch)).toBe('0.672 lb/ft');
    expect(quantity(0.5, 'ratio', mm)).toBe('0.5');
  });
});
