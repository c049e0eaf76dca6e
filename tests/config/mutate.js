/**
 * `npm run mutate:geometry` and so on: mutation testing of one floor with that floor's own tests
 * and the published ones, properties at a hundredth of their full counts. The report goes to
 * reports/mutation/<floor>. A folder of a floor, `quiz/eye`, is tested with the tests of that folder:
 * sooner done, and never a better score than with all of the floor's.
 */
import { existsSync } from 'node:fs';
import { Stryker } from '@stryker-mutator/core';

const [floor, ...files] = process.argv.slice(2);
if (!floor || !existsSync(`src/${floor}`)) {
  console.error('Name a floor: node tests/config/mutate.js geometry [src/geometry/area.ts …]');
  process.exit(1);
}
process.env['RUNS'] ??= '0.01';
process.env['TOELINE_FLOOR'] = floor;

await new Stryker({
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  mutate: files.length > 0 ? files : [`src/${floor}/**/*.ts`, `!src/${floor}/**/index.ts`],
  // Not the import graph: limit sets, lessons and published tables reach the code as data.
  vitest: { configFile: 'tests/config/mutation.vitest.config.ts', related: false },
  coverageAnalysis: 'perTest',
  // what is worked out while a module loads: each such mutant would need every test in a process of its own
  ignoreStatic: floor.startsWith('quiz'),
  tempDirName: `.stryker-tmp/${floor}`,
  ignorePatterns: ['/.stryker-tmp', '/dist', '/dist-core', '/coverage', '/reports', '/.cache'],
  concurrency: 2,
  timeoutMS: 10_000,
  reporters: ['clear-text', 'progress', 'html', 'json'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false },
  htmlReporter: { fileName: `reports/mutation/${floor}.html` },
  jsonReporter: { fileName: `reports/mutation/${floor}.json` },
  thresholds: { high: 95, low: 85, break: null },
}).runMutationTest();
