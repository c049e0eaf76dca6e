import { gzipSync } from 'node:zlib';
import type { Response } from '@playwright/test';
import { openBench, openReady } from './bench-page.ts';
import { expect, LOOKS, test } from './harness.ts';

/** The most JavaScript that opening the page may fetch, gzipped, in bytes. */
const BUDGET = 90_000;

test('opening the page fetches at most 90 kB of JavaScript, gzipped', async ({ page }) => {
  const scripts: Response[] = [];
  page.on('response', (response) => {
    if (new URL(response.url()).pathname.endsWith('.js')) scripts.push(response);
  });
  await page.goto('./', { waitUntil: 'networkidle' });
  expect(scripts.length, 'scripts seen').toBeGreaterThan(0);
  const bodies = await Promise.all(scripts.map((response) => response.body()));
  const total = bodies.reduce((sum, body) => sum + gzipSync(body).length, 0);
  test.info().annotations.push({ type: 'gzipped', description: `${String(total)} bytes` });
  expect(total).toBeLessThanOrEqual(BUDGET);
});

for (const { screen } of LOOKS.filter(({ scheme }) => scheme === 'light')) {
  test(`a first visit misses no word before it is touched, on a ${screen.name}`, async ({
    page,
  }) => {
    await page.setViewportSize(screen);
    await page.goto('./', { waitUntil: 'networkidle' });
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 8.0 × 8.0');
    const missing = await page.evaluate(() =>
      [...document.querySelectorAll('body *')].flatMap((element) => [
        ...[...element.childNodes].flatMap((node) =>
          node.nodeType === Node.TEXT_NODE && node.nodeValue?.includes('…') ? [node.nodeValue] : [],
        ),
        ...[...element.attributes].flatMap(({ name, value }) =>
          value.includes('…') ? [`${name}: ${value}`] : [],
        ),
      ]),
    );
    expect(missing).toEqual([]);
  });
}

test('a bench that was kept opens with all its words, a butt joint’s too', async ({ page }) => {
  await openBench(page);
  await openReady(page, 'Sound cap and root');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Single-V butt 12.0 × 12.0');
  await expect(page.locator('body')).not.toContainText('…');
});

test('terms that were chosen before open with all their words', async ({ page }) => {
  await openBench(page);
  await page.getByRole('radio', { name: 'ISO terms' }).check();
  await expect(page.locator('.checks')).toContainText('Leg length z1');
  await page.evaluate(() => localStorage.removeItem('toeline.bench'));
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.locator('.checks')).toContainText('Leg length z1');
  await expect(page.locator('body')).not.toContainText('…');
});
