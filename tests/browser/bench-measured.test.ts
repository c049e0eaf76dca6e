import { openBench, openReady } from './bench-page.ts';
import { expect, test, type Page } from './harness.ts';

const list = (page: Page) => page.getByRole('list', { name: 'All that is measured' });
const open = (page: Page) => page.getByRole('button', { name: 'Measured', exact: true }).click();
const row = (page: Page, name: string) =>
  list(page).getByRole('button', { name: new RegExp(`^${name}`) });

test('all that is measured is listed, what no check judges too', async ({ page }) => {
  await openBench(page);
  await open(page);
  // 8 × 8 / 2 and a crown of 1 over a chord of 11.31: 32 + 7.6 mm²; 7850 kg/m³ of it.
  await expect(row(page, 'weld metal area')).toContainText('39.6 mm²');
  await expect(row(page, 'weld metal per length')).toContainText('0.311 kg/m');
  await expect(row(page, 'toe to toe')).toContainText('11.31');
  await openReady(page, 'Sound cap and root');
  await expect(row(page, 'weld metal area')).toBeVisible();
  await expect(list(page).getByRole('button')).not.toHaveCount(0);
});

test('pointing at one lights it on the drawing, by pointer and by keyboard', async ({ page }) => {
  await openBench(page);
  await open(page);
  const drawing = page.locator('svg.section');
  await expect(drawing).not.toContainText('weld area');
  await row(page, 'weld metal area').hover();
  await expect(drawing).toContainText('weld area');
  await page.mouse.move(5, 5);
  await expect(drawing).not.toContainText('weld area');
  await row(page, 'weld metal per length').focus();
  await page.keyboard.press('Shift+Tab');
  await expect(drawing).toContainText('weld area');
  await row(page, 'leg, plate 1').focus();
  await expect(drawing).not.toContainText('weld area');
  await page.keyboard.press('Enter');
  await expect(row(page, 'leg, plate 1')).toHaveAttribute('aria-expanded', 'true');
  await expect(list(page)).toContainText('Source:');
  await open(page);
  await expect(list(page)).toHaveCount(0);
});

test('values and names are the reader’s', async ({ page }) => {
  await openBench(page);
  await open(page);
  await page.getByRole('radio', { name: 'inches' }).check();
  // 39.6 ÷ 25.4² = 0.0614 in²; 0.311 kg/m is 0.209 lb/ft.
  await expect(row(page, 'weld metal area')).toContainText('0.0614 in²');
  await expect(row(page, 'weld metal per length')).toContainText('0.209 lb/ft');
  await expect(row(page, 'throat of the equal-leg triangle')).toBeVisible();
  await page.getByRole('radio', { name: 'ISO terms' }).check();
  await expect(row(page, 'throat of the equal-leg triangle')).toHaveCount(0);
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

  test('the drawing stays in sight while the list is gone through', async ({ page }) => {
    await openBench(page);
    await open(page);
    await row(page, 'weld metal area').tap();
    const drawing = page.locator('svg.section');
    await expect(drawing).toContainText('area 39.6 mm²');
    await expect(drawing).toBeInViewport({ ratio: 0.9 });
    await expect(list(page)).toContainText('Melted base metal');
  });

  test('a slider low in its group moves a drawing in sight, and nothing that has the focus lies under it', async ({
    page,
  }) => {
    await openBench(page);
    await page.getByRole('button', { name: 'Flaws', exact: true }).tap();
    const drawing = page.locator('svg.section');
    const scale = page.locator('.list input[type=range][aria-label="Overlap, toe 1"]');
    const less = page.locator('.held, .list').getByRole('button', { name: /, less$/ });
    const tabs = page.locator('.tabs').getByRole('button');
    await scale.focus();
    const outline = drawing.locator('.drawn-outline').first();
    const before = await outline.getAttribute('d');
    await page.keyboard.press('PageUp');
    await expect(outline).not.toHaveAttribute('d', before ?? '');
    await expect(drawing).toBeInViewport({ ratio: 0.9 });
    // the tabs bear the call
    await expect(tabs.first()).toBeInViewport({ ratio: 1 });
    // from the lowest up, as Shift+Tab goes
    for (const one of [scale, ...(await less.all()).reverse(), ...(await tabs.all())]) {
      await one.focus();
      const [high, low] = [await one.boundingBox(), await drawing.boundingBox()];
      expect(high?.y).toBeGreaterThanOrEqual((low?.y ?? NaN) + (low?.height ?? NaN) - 1);
      await expect(one).toBeInViewport({ ratio: 1 });
    }
  });
});
