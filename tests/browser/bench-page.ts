import { readFileSync } from 'node:fs';
import { expect, type Page } from './harness.ts';

/** What a link to a ready section puts behind the page's address, on its own job sheet or a changed one. */
export function hashOf(ready: string, change = (sheet: object): object => sheet): string {
  const text = readFileSync(`src/state/ready-sections/${ready}.json`, 'utf8');
  const file = JSON.parse(text) as { readonly sheet: object };
  const linked = { ...file, sheet: change(file.sheet) };
  return `#bench=${Buffer.from(JSON.stringify(linked)).toString('base64url')}`;
}

/** Opens the bench and waits until everything drawn is in its place. */
export async function openBench(page: Page, hash = ''): Promise<void> {
  await page.goto(`./${hash}`, { waitUntil: 'networkidle' });
  await page.evaluate(() => document.fonts.ready);
  await expect(page.getByRole('list').first()).toBeVisible();
}

/** The scale of a parameter (a native range), not the handle of the same name on the drawing. */
export const scaleOf = (page: Page, name: string) =>
  page.locator(`input[type=range][aria-label="${name}"]`).first();

/** The typed field of a parameter. */
export const fieldOf = (page: Page, name: string) =>
  page.locator(`input[type=text][aria-label="${name}"]`).first();

/** The handle of a parameter on the drawing. */
export const handleOf = (page: Page, field: string) =>
  page.locator(`svg.section [role=slider][data-field="${field}"]`);

/** The row of one check. */
export const rowOf = (page: Page, name: string) =>
  page.locator('.checks').getByRole('button', { name: new RegExp(`^${name}`) });

/** The call on the whole joint. */
export const overallOf = (page: Page) => page.locator('.checks header .call');

/** A ready section, chosen from the title's list. */
export async function openReady(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: /choose a ready section/ }).click();
  await page.getByRole('button', { name, exact: true }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
}
