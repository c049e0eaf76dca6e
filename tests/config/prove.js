/** `npm run prove`: the published, oracle and property tests at their full counts (RUNS=1). */
import { spawnSync } from 'node:child_process';

const { status } = spawnSync(
  'npx vitest run tests/published tests/oracle tests/property --reporter=verbose' +
    ' --testTimeout=1800000',
  { shell: true, stdio: 'inherit', env: { ...process.env, RUNS: process.env['RUNS'] ?? '1' } },
);
process.exitCode = status ?? 1;
