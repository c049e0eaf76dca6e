import { readFileSync } from 'node:fs';
import { openBench } from './bench-page.ts';
import { axeFindings, expect, LOOKS, test, type Page } from './harness.ts';

const press = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();
const fieldOf = (page: Page, name: string) =>
  page.getByRole('group', { name: 'Most allowed' }).getByRole('combobox', { name, exact: true });

async function openLimits(page: Page): Promise<void> {
  await page.getByRole('link', { name: /Limit sets$/ }).click();
  await expect(page.getByRole('heading', { name: 'Limit sets', level: 1 })).toBeVisible();
}

/** A set of one's own from the house set, its row for convexity opened. */
async function writeFromHouse(page: Page): Promise<void> {
  await page
    .getByRole('button', { name: /^House/ })
    .first()
    .click();
  await press(page, 'Write your own from this');
  await expect(page.getByText('Nothing is wrong. It judges as it stands.')).toBeVisible();
  await page
    .getByRole('button', { name: /^Convexity/ })
    .first()
    .click();
}

test('a set of one’s own is written, mended, judged by and kept', async ({ page }) => {
  await openBench(page);
  await openLimits(page);
  await writeFromHouse(page);
  await page.getByRole('textbox', { name: 'Name of the set' }).fill('Sluice 5');
  const metric = fieldOf(page, 'Metric');
  await metric.fill('0.001 mm + ');
  await expect(metric).toHaveAttribute('aria-invalid', 'true');
  await expect(metric).toHaveAccessibleDescription(/breaks off/);
  await expect(page.getByText(/the last right state goes on judging/)).toBeVisible();
  await metric.fill('0.001 mm');
  await expect(metric).toHaveAttribute('aria-invalid', 'false');
  await page.getByRole('link', { name: /Bench$/ }).click();
  const convexity = page.locator('.checks li', { hasText: 'Convexity' }).locator('.call');
  await expect(convexity).toHaveText('Accept');
  await openLimits(page);
  await press(page, 'Sluice 5');
  await press(page, 'Judge by this');
  await page.getByRole('link', { name: /Bench$/ }).click();
  // 0.001 mm is less than any weld's own convexity
  await expect(convexity).toHaveText('Reject');
  await page.reload();
  await expect(convexity).toHaveText('Reject');
  await openLimits(page);
  await page
    .getByRole('button', { name: /^Convexity/ })
    .first()
    .click();
  await expect(fieldOf(page, 'Metric')).toHaveValue('0.001 mm');
  await press(page, 'Remove');
  await press(page, 'Yes, remove it');
  const listed = page.getByRole('button', { name: 'Sluice 5', exact: true });
  await expect(listed).toHaveCount(0);
  // the set that the bench was judged by comes back as that
  await press(page, 'Put it back');
  await expect(listed).toBeFocused();
  await expect(page.getByRole('button', { name: 'The bench is judged by this' })).toBeVisible();
  await page.getByRole('link', { name: /Bench$/ }).click();
  await expect(convexity).toHaveText('Reject');
});

test('a set just written is in sight and in focus; what is taken out of it comes back', async ({
  page,
}) => {
  await openBench(page);
  await openLimits(page);
  await writeFromHouse(page);
  await press(page, 'Remove row');
  await press(page, 'Put it back');
  await expect(fieldOf(page, 'Metric')).toBeVisible();
  await page.reload();
  await openLimits(page);
  await page
    .getByRole('button', { name: /^ISO 5817.* B/ })
    .first()
    .click();
  await press(page, 'Write your own from this');
  const mine = page.getByRole('button', { name: /^ISO 5817.*, own$/ });
  await expect(mine).toBeFocused();
  await expect(mine).toBeInViewport();
});

test('a condition that is emptied is none, also where one formula stands for both columns', async ({
  page,
}) => {
  await openBench(page);
  await openLimits(page);
  await writeFromHouse(page);
  const only = page.getByRole('group', { name: 'Only where' }).first();
  await only.getByRole('checkbox').check();
  const both = only.getByRole('combobox', { name: 'Both columns' });
  await both.fill('leg1 > leg2');
  await expect(page.getByText('Nothing is wrong. It judges as it stands.')).toBeVisible();
  await both.fill('');
  await expect(both).toBeVisible();
  await expect(page.getByText('Nothing is wrong. It judges as it stands.')).toBeVisible();
  const kept = await page.evaluate(() => localStorage.getItem('toeline.limits') ?? '');
  expect(kept).not.toContain('"any":""');
});

test('what a row is for, and how the set reads its document, is written too', async ({ page }) => {
  await openBench(page);
  await openLimits(page);
  await writeFromHouse(page);
  await page.getByRole('combobox', { name: 'Seam' }).first().selectOption('girth');
  await page.getByRole('combobox', { name: 'Backing' }).first().selectOption('strip');
  await page.getByText('What holds for all its rows').click();
  await page.getByRole('combobox', { name: 'Reinforcement' }).selectOption('toes');
  const place = page.getByRole('textbox', { name: 'Last place, millimetres' });
  await place.fill('none');
  await place.press('Enter');
  await expect(page.getByText(/A number over 0 and up to 1000/)).toBeVisible();
  await place.fill('0.5');
  await place.press('Enter');
  await expect(page.getByText('Nothing is wrong. It judges as it stands.')).toBeVisible();
  const kept = await page.evaluate(() => localStorage.getItem('toeline.limits') ?? '');
  expect(kept).toContain('"given":{"seam":["girth"]}');
  expect(kept).toContain('"backing":"strip"');
  expect(kept).toContain('"reinforcementDatum":"toes"');
  expect(kept).toContain('"mm":0.5');
});

test('a file that can’t be taken is refused with its line and the reason', async ({ page }) => {
  await openBench(page);
  await openLimits(page);
  const source = readFileSync('src/limits/sets/lock-gate-house.json', 'utf8');
  const bad = source.replace('"status": "invented"', '"status": "guessed"');
  const line = 1 + bad.split('\n').findIndex((one) => one.includes('guessed'));
  const bring = async (text: string): Promise<void> => {
    const file = { name: 'set.json', mimeType: 'application/json', buffer: Buffer.from(text) };
    await page.getByLabel('Import a file').setInputFiles(file);
  };
  await bring(bad);
  const alert = page.getByRole('alert');
  await expect(alert).toContainText('The file was not taken');
  await expect(alert).toContainText(
    `Line ${line}, criteria[0].status: This must be one of: seen, memory, invented.`,
  );
  await expect(page.getByText('None yet.')).toBeVisible();
  await bring(source);
  await expect(alert).toHaveCount(0);
  await expect(page.getByText('None yet.')).toHaveCount(0);
  await expect(page.getByText('Nothing is wrong. It judges as it stands.')).toBeVisible();
});

for (const { screen, scheme } of LOOKS) {
  test(`axe finds nothing on the limit sets, ${screen.name}, ${scheme}`, async ({ page }) => {
    await page.setViewportSize({ width: screen.width, height: screen.height });
    await page.emulateMedia({ colorScheme: scheme });
    await openBench(page);
    await openLimits(page);
    expect(await axeFindings(page)).toEqual([]);
    await writeFromHouse(page);
    expect(await axeFindings(page), 'one row open').toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide, 'nothing sticks out at the side').toBeLessThanOrEqual(screen.width);
  });
}
