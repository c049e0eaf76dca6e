import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

const sources = (folder: string): readonly (readonly [path: string, text: string])[] =>
  readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = `${folder}/${entry.name}`;
    if (entry.isDirectory()) return entry.name === 'compiled' ? [] : sources(path);
    return /\.(ts|svelte)$/.test(entry.name) ? [[path, readFileSync(path, 'utf8')] as const] : [];
  });

describe('a number or a name that has one home', () => {
  it('is taken from there: only units knows the millimetres of an inch, and of a square one', () => {
    const other = sources('src').filter(
      ([path, text]) => !path.startsWith('src/units/') && /\b(25\.4|645\.16)\b/.test(text),
    );
    expect(other.map(([path]) => path)).toEqual([]);
  });

  it('is taken from above: no drawing and no control takes anything from a page', () => {
    const upwards = [...sources('src/view/scene'), ...sources('src/view/control')].filter(
      ([, text]) => text.includes("from '../page/"),
    );
    expect(upwards.map(([path]) => path)).toEqual([]);
  });
});
