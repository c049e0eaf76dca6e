/** `npm run picture`: draws again the picture that the README shows. */
import { fileURLToPath } from 'node:url';
import { test } from './harness.ts';

const PICTURE = fileURLToPath(new URL('../../src/view/picture/bench.png', import.meta.url));

test('the bench as the README shows it', async ({ page }) => {
  await page.goto('./', { waitUntil: 'networkidle' });
  await page.evaluate(() => document.fonts.ready);
  await page.screenshot({ path: PICTURE });
});
