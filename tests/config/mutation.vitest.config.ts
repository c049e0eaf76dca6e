/** The tests that must not let a mutant of one floor survive: its own, and the published values. */
import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

const floor = process.env['TOELINE_FLOOR'] ?? 'geometry';

/**
 * The tests of one file of the code before those of a whole floor: most mutants fall to the quick ones,
 * and the rest of a run is then left out.
 */
class NearestFirst extends BaseSequencer {
  override sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const depth = ({ moduleId }: TestSpecification): number => moduleId.split('/').length;
    return Promise.resolve([...files].sort((a, b) => depth(b) - depth(a)));
  }
}

export default defineConfig({
  root: fileURLToPath(new URL('../..', import.meta.url)),
  resolve: {
    alias:
      // questions are drawn under many sets, none of which a mutant of `quiz` reads anew
      floor.startsWith('quiz')
        ? []
        : [
            {
              find: /^\.\/built-in\.ts$/,
              replacement: fileURLToPath(new URL('few-limit-sets.ts', import.meta.url)),
            },
          ],
  },
  test: {
    environment: 'node',
    // one world for all files of a run: reading the tables anew for each takes longer than the tests
    isolate: !floor.startsWith('quiz'),
    sequence: { sequencer: NearestFirst },
    // code that counts which test covers what is several times slower
    testTimeout: 30_000,
    setupFiles: ['tests/config/same-draws.ts'],
    include: [`tests/${floor}/**/*.test.ts`, 'tests/published/**/*.test.ts'],
    // what is about the tables, not the code that reads them: thousands of cases
    exclude: [
      'tests/limits/{aws-d11,boundary,built-in,code-numbers,switching}.test.ts',
      'tests/published/{limit-tables,worked-limits}.test.ts',
      // counts thousands of questions to reckon a chance; what it grades by, grade.test.ts holds
      'tests/quiz/grade-at-random.test.ts',
    ],
  },
});
