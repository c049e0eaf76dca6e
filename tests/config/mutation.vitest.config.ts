/** The tests that one floor's mutants must survive: its own, and the published values. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';

const floor = process.env['TOELINE_FLOOR'] ?? 'geometry';

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  test: {
    environment: 'node',
    setupFiles: ['tests/config/same-draws.ts'],
    include: [`tests/${floor}/**/*.test.ts`, 'tests/published/**/*.test.ts'],
    // thousands of cases drawn from the data, each through all of the code: they would take days
    exclude: ['tests/limits/{boundary,switching,limit-tables}.test.ts'],
  },
});
