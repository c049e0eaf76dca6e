/**
 * `npm test`: every check of the house, each with its time and result, and
 * at the end how many tests passed and failed. All steps run even when one fails, so that one run
 * shows everything; a failed check that counts no tests counts as one failure.
 *
 * `node tests/config/run-all.js types lint` runs the named steps only.
 */
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const UNIT_REPORT = '.cache/unit-tests.json';
const BROWSER_REPORT = '.cache/browser-tests.json';

const STEPS = [
  { name: 'messages', command: 'npm run messages --silent' },
  // The longest first: of these, two run at a time.
  { name: 'lint', command: 'npm run lint --silent', beside: true },
  { name: 'svelte', command: 'npm run svelte --silent', beside: true },
  { name: 'types', command: 'npm run types --silent', beside: true },
  { name: 'format', command: 'npm run format --silent', beside: true },
  { name: 'unused', command: 'npm run unused --silent', beside: true },
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

/** Runs a command: with the terminal to itself, or heard out first where another runs beside it. */
function finished(command, beside) {
  const stdio = beside ? ['ignore', 'pipe', 'pipe'] : 'inherit';
  const child = spawn(command, { cwd: root, shell: true, stdio });
  let said = '';
  for (const stream of [child.stdout, child.stderr])
    stream?.setEncoding('utf8').on('data', (part) => (said += part));
  return new Promise((resolve) => {
    child.on('error', ({ message }) => resolve({ end: message, said }));
    child.on('close', (status, signal) => resolve({ end: signal ?? status, said }));
  });
}

/** Runs one step and gives its counts. */
async function run({ name, command, report, count, beside }) {
  if (report) rmSync(root + report, { force: true });
  console.log(`\n── ${name} ── ${command}${beside ? ' … begun' : ''}`);
  const start = process.hrtime.bigint();
  const { end, said } = await finished(command, beside);
  const seconds = Number(process.hrtime.bigint() - start) / 1e9;
  const ok = end === 0;
  const counted =
    report && existsSync(root + report)
      ? count(JSON.parse(readFileSync(root + report, 'utf8')))
      : { passed: 0, failed: 0 };
  if (!ok && counted.failed === 0) counted.failed = 1;
  if (beside) console.log(`\n── ${name} ── ${command}\n${said.trimEnd()}`);
  console.log(`── ${name}: ${ok ? 'ok' : `FAILED (${end})`}, ${seconds.toFixed(1)} s`);
  return { name, ok, seconds, ...counted };
}

/** Runs steps in their order; those that may run beside others, as many at a time as there are hands. */
async function runAll(steps, hands = 2) {
  const results = [];
  const waiting = [...steps];
  while (waiting.length > 0) {
    const alone = waiting.findIndex(({ beside }) => !beside);
    const together = waiting.splice(0, alone === -1 ? waiting.length : Math.max(1, alone));
    const hand = async () => {
      for (let step = together.shift(); step !== undefined; step = together.shift())
        results.push(await run(step));
    };
    await Promise.all(Array.from({ length: hands }, hand));
  }
  return results;
}

const asked = process.argv.slice(2);
const steps = STEPS.filter(
  ({ name }) => asked.length === 0 || asked.some((word) => name.includes(word)),
);
if (steps.length === 0) {
  console.error(
    `No step is called ${asked.join(' or ')}: ${STEPS.map(({ name }) => name).join('; ')}.`,
  );
  process.exit(2);
}
const start = process.hrtime.bigint();
const results = await runAll(steps);
const total = Number(process.hrtime.bigint() - start) / 1e9;

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
console.log(`total ${total.toFixed(0)} s\n`);
console.log(`${sum((r) => r.passed)} passed, ${sum((r) => r.failed)} failed`);
process.exitCode = results.every(({ ok }) => ok) ? 0 : 1;
