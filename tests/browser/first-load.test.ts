import { gzipSync } from 'node:zlib';
import type { Response } from '@playwright/test';
import { expect, test } from './harness.ts';

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
