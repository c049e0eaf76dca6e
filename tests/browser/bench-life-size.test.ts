import { handleOf, openBench } from './bench-page.ts';
import { expect, test, type Page } from './harness.ts';

const view = (page: Page) => page.getByRole('button', { name: 'View' });
/** Pixels from one end of leg 2 to the other: 8 mm of the opening section. */
async function legOnScreen(page: Page): Promise<number> {
  const [toe, root] = [
    await handleOf(page, 'leg2').boundingBox(),
    await handleOf(page, 'rootGap').boundingBox(),
  ];
  if (toe === null || root === null) throw new Error('no handles');
  return Math.abs(toe.y + toe.height / 2 - root.y - root.height / 2);
}

test('a screen is calibrated against a card, and the drawing stands at life size on it', async ({
  page,
}) => {
  await openBench(page);
  await view(page).click();
  await expect(page.getByText('Life size is a guess')).toBeVisible();
  await page.getByRole('button', { name: 'Calibrate' }).click();
  await page.getByRole('radio', { name: 'a bank card' }).check();
  await expect(page.getByRole('dialog')).toContainText('85.60 mm');
  await page.getByRole('slider', { name: 'Size on this screen' }).fill('5');
  // 85.60 mm at 5 px to the millimetre.
  await expect(page.getByRole('dialog').locator('.drawn svg')).toHaveAttribute('width', '428');
  await page.getByRole('button', { name: 'Keep' }).click();
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.locator('svg.section')).toContainText('true size 1 : 1');
  const enlarged = await legOnScreen(page);
  await view(page).click();
  await expect(page.getByText('This screen is calibrated.')).toBeVisible();
  await page.getByRole('radio', { name: 'life size' }).check();
  await page.keyboard.press('Escape');
  await expect(page.locator('svg.section')).toContainText('drawn 1 : 1');
  // 8 mm at 5 px.
  expect(await legOnScreen(page)).toBeCloseTo(40, 0);
  await view(page).click();
  await page.getByRole('radio', { name: 'fits' }).check();
  await page.keyboard.press('Escape');
  expect(await legOnScreen(page)).toBeCloseTo(enlarged, 0);
});

test('a calibration that is given up changes nothing', async ({ page }) => {
  await openBench(page);
  await view(page).click();
  await page.getByRole('button', { name: 'Calibrate' }).click();
  await page.getByRole('button', { name: 'One pixel longer' }).click();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.locator('svg.section')).toContainText('about true size');
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

  test('the section is presented large, and closed again', async ({ page }) => {
    await openBench(page);
    await page.getByRole('toolbar').getByRole('button').last().click();
    await page.getByRole('button', { name: 'Show it large' }).click();
    const wall = page.getByRole('dialog', { name: 'Present' });
    await expect(wall.locator('svg.section')).toBeVisible();
    await expect(wall.getByText('Reject').first()).toBeVisible();
    const wide = await wall.evaluate((element) => element.scrollWidth <= element.clientWidth);
    expect(wide).toBe(true);
    await wall.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('dialog', { name: 'Present' })).toHaveCount(0);
  });
});
