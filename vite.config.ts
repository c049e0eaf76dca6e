/**
 * One file for the dev server, the build and vitest. The page's root is src; tests run from the
 * project folder, or vitest would look for them under src.
 */
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig } from 'vitest/config';
import { contentSecurityPolicy } from './tests/config/content-security-policy.ts';
import { lessons } from './tests/config/lessons-plugin.ts';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** Tests of runes and components: `$effect` runs only with a DOM and Svelte's browser build. */
const WITH_DOM = ['tests/state/**/*.test.ts', 'tests/view/**/*.test.ts'];

/** Modules that only pages fetched later use, however they are reached. */
const LATER = /dom\/elements\/(attachments|bindings\/(select|input))\.js/;

/** Every component, in one order whatever is built. */
const components = readdirSync(here('./src/view'), { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.svelte'))
  .map((path) => `view/${path.replaceAll('\\', '/')}`)
  .sort();

/** The opening page is to be small: nothing of Svelte 4 in it, and a component's styles go by its number. */
const COMPILER = {
  runes: true,
  discloseVersion: false,
  cssHash: ({ filename, hash }: { filename: string; hash: (text: string) => string }): string => {
    const place = components.findIndex((path) => filename.endsWith(path));
    // one that was added while the dev server ran
    return `s-${place === -1 ? hash(filename) : place.toString(36)}`;
  },
};

export default defineConfig({
  root: here('./src'),
  base: './',
  publicDir: here('./src/view/public'),
  cacheDir: here('./node_modules/.vite'),
  plugins: [
    svelte({ configFile: false, compilerOptions: COMPILER }),
    lessons(),
    contentSecurityPolicy(),
  ],
  build: {
    outDir: here('./dist'),
    emptyOutDir: true,
    target: 'es2022',
    modulePreload: false,
    cssCodeSplit: false,
    // A font or picture inlined as data: would be refused by the content security policy.
    assetsInlineLimit: 0,
    rolldownOptions: {
      // A floor's index and Svelte's own only hand names on: what is not used of them stays out.
      treeshake: {
        moduleSideEffects: [
          {
            test: /\.css|src\/main\.ts|svelte\/src\/internal\/flags/,
            sideEffects: true,
          },
          { test: /node_modules\/svelte\/|\/src\//, sideEffects: false },
        ],
      },
      // All that the page opens with in one file: it packs better, and asks once. What no part of
      // the opening page uses stays out of it, though the same modules reach it.
      output: {
        codeSplitting: {
          groups: [
            { name: 'later', test: LATER, priority: 1, includeDependenciesRecursively: false },
            { name: 'toeline', test: /src\/main\.ts$/ },
          ],
        },
      },
    },
  },
  test: {
    root: here('.'),
    coverage: {
      provider: 'v8',
      reporter: ['text-summary', 'json-summary'],
      reportsDirectory: here('./coverage'),
      include: ['src/{units,geometry,joint,measure,limits,quiz,lesson}/**/*.ts'],
      thresholds: { branches: 95 },
    },
    setupFiles: [here('./tests/config/same-draws.ts')],
    // Left to itself it keeps one core free: of two, half.
    maxWorkers: '100%',
    // A guard against a hang, not a measure: a property on a busy machine takes its time.
    testTimeout: 60_000,
    projects: [
      {
        extends: true,
        test: {
          name: 'floors',
          root: here('.'),
          environment: 'node',
          // Pure code holds nothing between files, so the files share their workers.
          isolate: false,
          include: ['tests/**/*.test.ts'],
          exclude: [...WITH_DOM, 'tests/browser/**', 'node_modules/**'],
        },
      },
      {
        extends: true,
        resolve: { conditions: ['browser'] },
        test: {
          name: 'state',
          root: here('.'),
          environment: 'happy-dom',
          include: WITH_DOM,
        },
      },
    ],
  },
});
