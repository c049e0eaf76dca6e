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
    env: { PATH: process.env['PATH'] },
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
    expect(names).toEqual(expect.arrayContaining(['JointError']));
  });
});
