import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** Runs a script in a Node of its own, with nothing of vitest or Vite around it. */
function bareNode(script: string): unknown {
  const text = execFileSync(process.execPath, ['--input-type=module', '--eval', script], {
    cwd: root,
    encoding: 'utf8',
    // Vitest's own settings must not leak into the plain Node that is being proved.
    env: { ...process.env, NODE_OPTIONS: '', VITEST: '' },
  });
  return JSON.parse(text);
}

describe('the core built as plain modules', () => {
  beforeAll(() => {
    execFileSync('npm', ['run', 'build:core', '--silent'], {
      cwd: root,
      shell: true,
      env: { ...process.env, NODE_ENV: 'production', VITEST: '' },
    });
  }, 60_000);

  it('gives its public names to an importing program', () => {
    const names = bareNode(
      "console.log(JSON.stringify(Object.keys(await import('./dist-core/core.js'))))",
    );
    const promised = [
      ...['build', 'measure', 'sizeForRatio', 'measurementCatalogue'],
      ...['limitSets', 'compileLimits', 'judge', 'parseLength', 'formatLength'],
    ];
    expect(names).toEqual(expect.arrayContaining(promised));
  });

  it('builds, measures and judges a fillet in bare Node', () => {
    const found = bareNode(`
      import { build, defaultJoint, judge, limitSets, measure, defaultJobSheet }
        from './dist-core/core.js';
      const joint = { ...defaultJoint('fillet'), leg1: 8, leg2: 8, convexity: 0, rootGap: 0 };
      const measurements = measure(build(joint));
      const sheet = defaultJobSheet();
      const limits = limitSets.find(({ id }) => id === sheet.limitSet);
      const throat = measurements.values.theoreticalThroat.value;
      const checks = judge(measurements, sheet, limits);
      console.log(JSON.stringify({ throat, calls: checks.map(({ call }) => call) }));
    `) as { throat: number; calls: string[] };
    // Flat, equal legs at 90 degrees: the throat is 8 / √2 = 5.656854…
    expect(found.throat).toBeCloseTo(5.656854249, 9);
    expect(found.calls.length).toBeGreaterThan(5);
    const calls = ['accept', 'reject', 'refer', 'notAssessed'];
    expect(found.calls.filter((call) => !calls.includes(call))).toEqual([]);
  });
});
