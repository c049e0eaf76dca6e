/**
 * One seed is one joint: the core bundled for the browser draws there what it draws here in Node, to
 * the last digit, whatever either engine makes of a power or a sine.
 */
import { runInThisContext } from 'node:vm';
import { build } from 'vite';
import { expect, test } from './harness.ts';

const SEEDS = 6;

/** In the page and here: joints of every skill of two sets, as one text. */
const drawAll = `(({ defaultJobSheet, drawQuestion, limitSets, skillsOf }) =>
  ['iso5817-c', 'aws-d11-static'].flatMap((id) => {
    const limits = limitSets.find((set) => set.id === id);
    const sheet = { ...defaultJobSheet(), limitSet: id, column: limits.columns[0] };
    return skillsOf(sheet, limits).filter(({ reach }) => reach > 0).flatMap((skill) =>
      Array.from({ length: ${SEEDS} }, (_, seed) => {
        const asked = (seed % 2 === 0 ? 0.5 : -0.5) * skill.reach;
        const spec = { version: 1, seed, skill: skill.id, view: 'cut', asked };
        return JSON.stringify(drawQuestion(spec, sheet, limits).joint);
      }));
  }).join('\\n'))(toelineCore)`;

/** The core as one script that leaves its names in \`toelineCore\`. */
async function bundledCore(): Promise<string> {
  const made = await build({
    configFile: false,
    logLevel: 'error',
    root: 'src',
    build: {
      write: false,
      lib: { entry: 'core.ts', formats: ['iife'], name: 'toelineCore' },
      rolldownOptions: { output: { codeSplitting: false } },
    },
  });
  const [{ output }] = [made].flat() as { output: readonly { code?: string }[] }[] as [
    { output: readonly { code?: string }[] },
  ];
  return output[0]?.code ?? '';
}

test('a seed gives the same joint in Chromium as in Node', async ({ page }) => {
  test.setTimeout(120_000);
  const core = await bundledCore();
  const here = runInThisContext(`${core};${drawAll}`) as string;
  await page.goto('about:blank');
  await page.addScriptTag({ content: `${core};globalThis.toelineCore = toelineCore;` });
  const there = await page.evaluate(drawAll);
  expect(here.split('\n').length).toBeGreaterThan(200);
  expect(there).toBe(here);
});
