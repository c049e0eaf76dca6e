import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { measurementIds } from '../../../src/measure/index.ts';
import { prose } from '../../../src/view/page/lesson/prose.ts';
import { fetchRest, type Reading } from '../../../src/view/text.ts';

const mm: Reading = { units: 'mm', inches: 'decimal', terms: 'US' };
const sentence = 'An 8.0 mm fillet holds 0.7071 × 8.0 = 5.66 mm of throat at 90 degrees.';

describe('lesson text in the reader’s unit', () => {
  it('stays as it is written for a reader of millimetres', () => {
    expect(prose(sentence, mm)).toBe(sentence);
  });

  it('says after each length what it is in inches: 8 ÷ 25.4 = 0.315, 5.66 ÷ 25.4 = 0.223', () => {
    expect(prose(sentence, { ...mm, units: 'in' })).toMatch(
      /^An 8\.0 mm \(0\.315 in\) fillet holds 0\.7071 × 8\.0 = 5\.66 mm \(0\.223 in\) of throat/,
    );
  });
});

describe('lesson text in the reader’s terms', () => {
  beforeAll(fetchRest);

  it('names a measurement as the figure beside it does, with a capital where it is written with one', () => {
    const text = '{TheoreticalThroat} and {actualThroat}; {nothing} stays.';
    expect(prose(text, mm)).toBe('Theoretical throat and actual throat; {nothing} stays.');
    expect(prose(text, { ...mm, terms: 'ISO' })).toBe(
      'Design throat and shortest throat, root to face; {nothing} stays.',
    );
  });

  const texts = readdirSync('lessons').map((name) => ({
    name,
    text: readFileSync(`lessons/${name}/index.md`, 'utf8'),
    targets: readFileSync(`lessons/${name}/target.json`, 'utf8'),
  }));

  it.each(texts)('in $name names measurements that there are', ({ text, targets }) => {
    const labels = [...targets.matchAll(/"label": "([^"]*)"/gu)].map(([, label]) => label ?? '');
    for (const [, name] of [text, ...labels].join('\n').matchAll(/\{(\w+)\}/gu)) {
      const id = (name ?? '').charAt(0).toLowerCase() + (name ?? '').slice(1);
      expect(measurementIds).toContain(id);
    }
  });

  it.each(texts)(
    'in $name leaves no length without its unit, which no inch would follow',
    ({ text }) => {
      const [, body = ''] = text.split(/^---$/mu).slice(1);
      // numbers with decimals: lengths carry mm, the rest are the ratio of leg to throat
      const bare = [...body.matchAll(/(?<![\w.])\d+\.\d+(?! mm)(?![\w.])/gu)].map(
        ([figure]) => figure,
      );
      expect(bare.filter((figure) => figure !== '0.7071')).toEqual([]);
    },
  );
});
