import { fieldOf, openBench, scaleOf } from './bench-page.ts';
import { expect, test } from './harness.ts';

test('a typed field takes millimetres, decimal inches and fractions', async ({ page }) => {
  await openBench(page);
  const field = fieldOf(page, 'Leg 1');
  for (const [typed, shown] of [
    ['9.4', '9.4'],
    ['9,25', '9.25'],
    ['5/16', '7.94'],
    ['0.5 in', '12.7'],
    ['1/2"', '12.7'],
  ] as const) {
    await field.fill(typed);
    await field.press('Enter');
    await expect(field, typed).toHaveValue(shown);
  }
});

for (const bad of [
  'abc',
  '1/0',
  '5/7',
  '--3',
  '',
  '9'.repeat(60),
  '<img src=x onerror=alert(1)>',
]) {
  test(`“${bad.slice(0, 20)}” is refused beside the field and the value is kept`, async ({
    page,
  }) => {
    await openBench(page);
    const field = fieldOf(page, 'Leg 1');
    await field.fill(bad);
    await field.press('Enter');
    await expect(field).toHaveAttribute('aria-invalid', 'true');
    await expect(page.getByRole('alert').first()).toBeVisible();
    // Chosen from words that are fetched at the first touch: they have to have come.
    await expect(page.getByRole('alert').first()).not.toHaveText(/^…?$/);
    await expect(field).toHaveValue(bad);
    await expect(scaleOf(page, 'Leg 1')).toHaveValue('8');
    await field.press('Escape');
    await expect(field).toHaveValue('8.0');
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
}

test('Ctrl+Z undoes a value that was typed, and the text while it is being typed', async ({
  page,
}) => {
  await openBench(page);
  const field = fieldOf(page, 'Leg 1');
  await field.fill('10');
  await page.keyboard.press('Enter');
  await field.press('Control+z');
  await expect(field).toHaveValue('8.0');
  await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  await field.press('Control+y');
  await expect(field).toHaveValue('10.0');
  // half a figure is a text yet: what was settled before it stays
  await field.pressSequentially('1');
  await field.press('Control+z');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 10.0 × 8.0');
});

test('a number past the end of the scale stops at the end and says so', async ({ page }) => {
  await openBench(page);
  await fieldOf(page, 'Leg 1').fill('500');
  await page.keyboard.press('Enter');
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('30.0');
  await expect(page.locator('.stop')).toHaveText('30.0 mm is the most here.');
});

test('units and terms switch everywhere at once', async ({ page }) => {
  await openBench(page);
  await page.getByRole('radio', { name: 'inches' }).check();
  // 8 mm ÷ 25.4 = 0.31496 in.
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('0.315');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 0.315 × 0.315');
  await page.getByRole('button', { name: 'View' }).click();
  await page.getByRole('radio', { name: 'fraction' }).check();
  await page.keyboard.press('Escape');
  // 0.31496 in is 20.16 sixty-fourths: 5/16.
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('5/16');
  await expect(page.locator('.controls')).toContainText('Root opening');
  await page.getByRole('radio', { name: 'ISO terms' }).check();
  await expect(page.locator('.controls')).toContainText('Root gap');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(fieldOf(page, 'Leg z1')).toHaveValue('5/16');
});

test('the job sheet takes a size, shows its twin, and judges by it', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: 'Job sheet' }).click();
  const size = page.getByRole('textbox', { name: 'Size', exact: true });
  await size.fill('9');
  await size.press('Enter');
  // Equal legs of 9 mm at 90°: throat 9 ÷ √2 = 6.36 mm.
  await expect(page.locator('.unfolded')).toContainText('throat 6.36 mm');
  await expect(page.locator('.checks li').first()).toContainText('9.0 min');
  await expect(page.locator('.checks li').first()).toContainText('Reject');
  await size.fill('-2');
  await size.press('Enter');
  await expect(page.getByRole('alert').first()).toHaveText('It cannot be less than nothing.');
});

test('another limit set is fetched and judged by', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: 'Job sheet' }).click();
  await page.getByRole('combobox', { name: 'Limits' }).selectOption('lock-gate-house');
  await expect(page.locator('.checks header .set')).toHaveText(/House weld specification/);
  await expect(page.locator('.checks li').first()).toBeVisible();
});

test('the kind of joint changes with everything that goes with it', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: 'Joint', exact: true }).click();
  await page.getByRole('combobox', { name: 'Kind' }).selectOption('butt');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Single-V butt 12.0 × 12.0');
  for (const form of ['square', 'doubleV', 'singleBevel', 'doubleBevel', 'singleU', 'singleJ']) {
    await page.getByRole('combobox', { name: 'Preparation' }).selectOption(form);
    await expect(page.locator('svg.section path.drawn-outline').first()).toHaveAttribute('d', /^M/);
  }
  await page.keyboard.press('Escape');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Single-U butt');
});
