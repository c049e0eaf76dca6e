/** Browser tests against the built page, served on localhost by `vite preview`. */
import { defineConfig } from '@playwright/test';
import { findBrowser } from './browser-path.ts';

const PORT = Number(process.env['TOELINE_PORT'] ?? '4321');
const browser = await findBrowser();

/** Keeps Chromium off the network. Playwright itself starts it headless and without a sandbox. */
const FLAGS = [
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export default defineConfig({
  testDir: '..',
  projects: [
    { name: 'tests', testMatch: 'browser/**/*.test.ts' },
    // Draws the README's picture; run by name only.
    { name: 'picture', testMatch: 'browser/**/*.picture.ts' },
    // Times a slider event; run by name only.
    { name: 'bench', testMatch: 'bench/**/*.bench.ts' },
  ],
  outputDir: '../../test-results',
  fullyParallel: true,
  forbidOnly: true,
  workers: 2,
  timeout: 60_000,
  reporter: [['list'], ['json', { outputFile: '../../.cache/browser-tests.json' }]],
  use: {
    baseURL: `http://localhost:${String(PORT)}/`,
    viewport: { width: 1280, height: 800 },
    colorScheme: 'light',
    launchOptions: { executablePath: browser.path, args: FLAGS },
  },
  webServer: {
    command: `npx vite preview --strictPort --port ${String(PORT)}`,
    cwd: '../..',
    url: `http://localhost:${String(PORT)}/`,
    reuseExistingServer: false,
  },
});
