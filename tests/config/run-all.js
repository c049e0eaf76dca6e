/**
 * `npm test`: every check of the house, one after the other, each with its time and result, and
 * at the end how many tests passed and failed. All steps run even when one fails, so that one run
 * shows everything; a failed check that counts no tests counts as one failure.
 *
 * `node tests/config/run-all.js types lint` runs the named steps only.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const UNIT_REPORT = '.cache/unit-tests.json';
const BROWSER_REPORT = '.cache/browser-tests.json';

const STEPS = [
  { name: 'messages', command: 'npm run messages --silent' },
  { name: 'types', command: 'npm run types --silent' },
  { name: 'svelte', command: 'npm run svelte --silent' },
  { name: 'lint', command: 'npm run lint --silent' },
  { name: 'format', command: 'npm run format --silent' },
  { name: 'unused', command: 'npm run unused --silent' },
  {
    name: 'unit, published, oracle, property',
    command: `npx vitest run --coverage --reporter=default --reporter=json --outputFile.json=${UNIT_REPORT}`,
    report: UNIT_REPORT,
    count: (r) => ({ passed: r.numPassedTests, failed: r.numFailedTests }),
  },
  { name: 'build', command: 'npx vite build --logLevel warn' },
  {
    name: 'browser',
    command: 'npx playwright test --config tests/browser/playwright.config.ts --project tests',
    report: BROWSER_REPORT,
    count: (r) => ({ passed: r.stats.expected + r.stats.flaky, failed: r.stats.unexpected }),
  },
];

/** Runs one step and gives its counts; its output goes straight to the terminal. */
function run({ name, command, report, count }) {
  if (report) rmSync(root + report, { force: true });
  console.log(`\n── ${name} ── ${command}`);
  const start = process.hrtime.bigint();
  const { status } = spawnSync(command, { cwd: root, shell: true, stdio: 'inherit' });
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const ok = status === 0;
  const counted =
    report && existsSync(root + report)
      ? count(JSON.parse(readFileSync(root + report, 'utf8')))
      : { passed: 0, failed: 0 };
  if (!ok && counted.failed === 0) counted.failed = 1;
  console.log(`── ${name}: ${ok ? 'ok' : 'FAILED'}, ${seconds.toFixed(1)} s`);
  return { name, ok, seconds, ...counted };
}

const asked = process.argv.slice(2);
const steps = STEPS.filter(
  ({ name }) => asked.length === 0 || asked.some((word) => name.includes(word)),
);
const results = steps.map(run);

const sum = (pick) => results.reduce((total, result) => total + pick(result), 0);
console.log('\nstep                                   result   seconds  passed  failed');
for (const { name, ok, seconds, passed, failed } of results)
  console.log(
    [
      name.padEnd(38),
      (ok ? 'ok' : 'FAILED').padEnd(8),
      seconds.toFixed(1).padStart(7),
      String(passed).padStart(7),
      String(failed).padStart(7),
    ].join(' '),
  );
console.log(`total ${sum((r) => r.seconds).toFixed(0)} s\n`);
console.log(`${sum((r) => r.passed)} passed, ${sum((r) => r.failed)} failed`);
process.exitCode = results.every(({ ok }) => ok) ? 0 : 1;
