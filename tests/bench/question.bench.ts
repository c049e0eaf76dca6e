/**
 * What the next question costs, from the press that asks for it to a laid-out drawing: the joint is
 * drawn from its seed, judged, and its section laid out. Printed, never asserted.
 */
import { expect, test } from '../browser/harness.ts';
import { median, percentile } from './statistics.js';

const ROUNDS = 40;

test.setTimeout(300_000);

test('the next question, from the press to a laid-out drawing', async ({ page }) => {
  await page.goto('./#calls', { waitUntil: 'networkidle' });
  await page.getByRole('radio', { name: /^Mixed test/u }).check();
  await page.getByRole('combobox', { name: 'Calls in a run' }).selectOption('80');
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.locator('svg.call-drawing')).toBeVisible();
  const times: number[] = [];
  for (let round = 0; round < ROUNDS; round++) {
    times.push(
      await page.evaluate(async () => {
        const skip = [...document.querySelectorAll('button')].find(
          ({ textContent }) => textContent === 'Skip',
        );
        const start = performance.now();
        skip?.click();
        // what the framework does for it is done in microtasks
        for (let i = 0; i < 8; i++) await Promise.resolve();
        const laidOut = document.documentElement.offsetHeight;
        return performance.now() - start + 0 * laidOut;
      }),
    );
  }
  console.log(
    `\nnext question, press to drawing    median ${median(times).toFixed(1)} ms, p95 ${percentile(times, 0.95).toFixed(1)} ms\n`,
  );
});
