import { fileURLToPath } from 'node:url';
import { ESLint } from 'eslint';
import ts from 'typescript-eslint';
import { describe, expect, it } from 'vitest';

// Rules that need types are left out: these snippets stand in files that don't exist.
const eslint = new ESLint({
  cwd: fileURLToPath(new URL('../..', import.meta.url)),
  overrideConfigFile: 'tests/config/eslint.config.js',
  overrideConfig: [ts.configs.disableTypeChecked],
});

/** The rules that a line breaks when it stands in the given file. */
async function rulesBroken(file: string, line: string): Promise<string[]> {
  const [result] = await eslint.lintText(`${line}\n`, { filePath: file });
  return result?.messages.map(({ ruleId, message }) => ruleId ?? message) ?? [];
}

const IMPORTS = 'no-restricted-imports';

describe('the floors rule', () => {
  it.each([
    ['src/units/length.ts', "export { area } from '../geometry/index.ts';"],
    ['src/geometry/area.ts', "export { build } from '../joint/index.ts';"],
    ['src/joint/build.ts', "export { measure } from '../measure/index.ts';"],
    ['src/measure/leg.ts', "export { judge } from '../limits/index.ts';"],
    ['src/limits/sets/house.ts', "export { session } from '../../state/session.ts';"],
    ['src/gauge/depth.ts', "export { judge } from '../limits/index.ts';"],
    ['src/lesson/loader.ts', "export { draw } from '../quiz/index.ts';"],
    ['src/measure/leg.ts', "export { messages } from '../view/messages/compiled/messages.js';"],
    ['src/state/session.svelte.ts', "export { draw } from '../view/scene/draw.ts';"],
    ['src/joint/build.ts', "export { measure } from '../core.ts';"],
  ])('refuses an import that points up: %s, %s', async (file, line) => {
    expect(await rulesBroken(file, line)).toContain(IMPORTS);
  });

  it.each([
    ['src/joint/build.ts', "export { area } from '../geometry/area.ts';"],
    ['src/limits/sets/house.ts', "export { leg } from '../../measure/catalogue/leg.ts';"],
    ['src/state/session.svelte.ts', "export { judge } from '../limits/judge.ts';"],
    ['src/view/scene/draw.ts', "export { area } from '../../geometry/area.ts';"],
    ['src/core.ts', "export { area } from './geometry/area.ts';"],
  ])('refuses a way round the index of another floor: %s, %s', async (file, line) => {
    expect(await rulesBroken(file, line)).toContain(IMPORTS);
  });

  it.each([
    ['src/geometry/area.ts', "export { readFileSync } from 'node:fs';"],
    ['src/geometry/area.ts', "export { scaleLinear } from 'd3';"],
    ['src/measure/leg.ts', "export { onMount } from 'svelte';"],
    ['src/state/session.svelte.ts', "export { scaleLinear } from 'd3-scale';"],
    ['src/limits/judge.ts', "export { parse } from 'mathjs';"],
    ['src/view/scene/draw.ts', "export { parse } from 'mathjs';"],
    ['src/geometry/area.ts', "export { near } from './tolerance';"],
  ])('refuses what does not belong on the floor: %s, %s', async (file, line) => {
    expect(await rulesBroken(file, line)).toContain(IMPORTS);
  });

  it.each([
    ['src/joint/build.ts', "export { area } from '../geometry/index.ts';"],
    ['src/geometry/area.ts', "export { near } from './tolerance.ts';"],
    ['src/limits/compile/formula.ts', "export { parse } from 'mathjs';"],
    ['src/limits/compile/formula.ts', "export { mm } from '../../units/index.ts';"],
    ['src/view/scene/draw.ts', "export { scaleLinear } from 'd3';"],
    ['src/state/session.svelte.ts', "export { judge } from '../limits/index.ts';"],
    ['src/core.ts', "export { judge } from './limits/index.ts';"],
  ])('lets an import that points down pass: %s, %s', async (file, line) => {
    expect(await rulesBroken(file, line)).not.toContain(IMPORTS);
  });
});

describe('below state', () => {
  it.each([
    ['no-restricted-globals', 'export const width = window.innerWidth;'],
    ['no-restricted-globals', "export const kept = localStorage.getItem('joint');"],
    ['no-restricted-properties', 'export const chance = Math.random();'],
    ['no-restricted-properties', 'export const now = Date.now();'],
    ['no-restricted-syntax', 'export const now = new Date();'],
    ['no-restricted-exports', 'export default 3;'],
  ])('%s refuses %s', async (rule, line) => {
    expect(await rulesBroken('src/measure/leg.ts', line)).toContain(rule);
  });

  it('a page global is allowed in view, where there is a page', async () => {
    const line = 'export const width = window.innerWidth;';
    expect(await rulesBroken('src/view/scene/draw.ts', line)).toEqual([]);
  });
});

describe('in every file', () => {
  it('a suppressed rule without its reason is refused', async () => {
    const line = '// eslint-disable-next-line eqeqeq\nexport const same = 1 == 1;';
    expect(await rulesBroken('src/measure/leg.ts', line)).toContain('house/explained-suppressions');
  });

  it('a suppressed rule with its reason beside it passes', async () => {
    const line = '// eslint-disable-next-line eqeqeq -- null and undefined are one here\n';
    expect(await rulesBroken('src/measure/leg.ts', `${line}export const same = 1 == 1;`)).toEqual(
      [],
    );
  });

  it('markup is never made from data', async () => {
    const line = "document.body.innerHTML = 'x';";
    expect(await rulesBroken('src/view/scene/draw.ts', line)).toContain('no-restricted-syntax');
  });

  it('a static style attribute in a template is refused, a style directive is not', async () => {
    const file = 'src/view/scene/Drawing.svelte';
    expect(await rulesBroken(file, '<p style="color: red">x</p>')).toContain(
      'no-restricted-syntax',
    );
    expect(await rulesBroken(file, '<p style:color="red">x</p>')).toEqual([]);
  });
});
