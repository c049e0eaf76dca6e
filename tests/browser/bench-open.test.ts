import { overallOf, openBench, openReady, rowOf, fieldOf } from './bench-page.ts';
import { expect, test } from './harness.ts';

test('the bench opens with a section, its checks and the cause of the call', async ({ page }) => {
  await openBench(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 8.0 × 8.0');
  await expect(overallOf(page)).toHaveText('Reject');
  await expect(page.locator('.checks header .cause')).toHaveText('Undercut, toe 2');
  await expect(rowOf(page, 'Undercut, toe 2')).toContainText('Reject');
  await expect(page.getByText('Training aid. The contract, the code edition')).toBeVisible();
});

test('four scales stand first, the rest is folded by group', async ({ page }) => {
  await openBench(page);
  const scales = page.locator('.controls input[type=range]');
  await expect(scales).toHaveCount(4);
  await page.getByRole('button', { name: 'Weld', exact: true }).click();
  await expect(page.locator('.unfolded input[type=range]').first()).toBeVisible();
  expect(await scales.count()).toBeGreaterThan(4);
  await page.getByRole('button', { name: 'Weld', exact: true }).click();
  await expect(scales).toHaveCount(4);
});

test('every ready section opens, is drawn and is judged, and undo brings the first one back', async ({
  page,
}) => {
  await openBench(page);
  await page.getByRole('button', { name: /choose a ready section/ }).click();
  await expect(page.getByRole('dialog').locator('li').first()).toBeVisible();
  const names = await page.getByRole('dialog').locator('li button').allInnerTexts();
  expect(names.length).toBeGreaterThanOrEqual(16);
  await page.keyboard.press('Escape');
  for (const name of names) {
    await openReady(page, name);
    await expect(page.getByRole('dialog'), name).toHaveCount(0);
    await expect(page.locator('svg.section path.drawn-outline').first(), name).toHaveAttribute(
      'd',
      /^M/,
    );
    const rows = await page.locator('.checks .what').allInnerTexts();
    expect(rows.length, name).toBeGreaterThan(5);
    expect(new Set(rows).size, `${name}: rows of one name`).toBe(rows.length);
    await expect(overallOf(page), name).not.toHaveText('Not assessed');
  }
  for (const name of names) await test.step(`undo ${name}`, () => page.keyboard.press('Control+z'));
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 8.0 × 8.0');
  await expect(fieldOf(page, 'Convexity')).toHaveValue('1.0');
});

test('an opened check shows definition, sum with numbers put in, margin, clause and status', async ({
  page,
}) => {
  await openBench(page);
  const row = rowOf(page, 'Undercut, toe 2');
  await row.click();
  await expect(row).toHaveAttribute('aria-expanded', 'true');
  const working = page.locator('.working');
  // ISO 5817 level C, 5011: 0.1 t, 0.5 mm at most; t is 12 mm here, so 0.5 mm governs.
  await expect(working).toContainText('min(0.1 × 12 mm, 0.5 mm) = 0.5 mm');
  await expect(working).toContainText('0.6 mm, 0.1 mm outside');
  await expect(working).toContainText('ISO 5817');
  await expect(working).toContainText('Seen in a public text');
  await row.click();
  await expect(working).toHaveCount(0);
});

test('pointing at a row, or focusing it, lights its witness on the drawing', async ({ page }) => {
  await openBench(page);
  const lit = page.locator('svg.section g.lit');
  await expect(lit).toHaveCount(0);
  await rowOf(page, 'Leg 2').hover();
  await expect(lit.first()).toBeAttached();
  await page.mouse.move(5, 5);
  await expect(lit).toHaveCount(0);
  await rowOf(page, 'Leg 1').focus();
  await expect(lit.first()).toBeAttached();
});

test('rows out of sight are counted anew when one is opened, and those out of limit are told', async ({
  page,
}) => {
  await openBench(page);
  await openReady(page, 'Undercut at toe 2');
  const more = page.getByRole('button', { name: /more below/ });
  // the row that rejects is the sheet’s fourteenth
  await expect(more).toHaveText(/^(\d+) more below, 1 of them out of limit$/);
  const below = async (): Promise<number> => parseInt(await more.innerText(), 10);
  const before = await below();
  await rowOf(page, 'Leg 1 required').click();
  await expect(page.locator('.working')).toBeVisible();
  await expect.poll(below).toBeGreaterThan(before);
});
