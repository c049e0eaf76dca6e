import { fieldOf, handleOf, openBench, overallOf, rowOf, scaleOf } from './bench-page.ts';
import { expect, test, type Page } from './harness.ts';

async function middle(page: Page, field: string): Promise<{ x: number; y: number }> {
  const box = await handleOf(page, field).boundingBox();
  if (box === null) throw new Error(`no handle ${field}`);
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

test.describe('by keyboard alone', () => {
  test('a scale steps by one, by ten with Shift, by a tenth with Alt, and runs to its ends', async ({
    page,
  }) => {
    await openBench(page);
    const leg = scaleOf(page, 'Leg 1');
    await leg.focus();
    await page.keyboard.press('ArrowRight');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.1');
    await page.keyboard.press('Shift+ArrowLeft');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('7.1');
    await page.keyboard.press('Alt+ArrowRight');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('7.11');
    await page.keyboard.press('Home');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('2.0');
    await expect(leg).toHaveAttribute('aria-valuetext', '2.0 mm');
  });

  test('a handle on the drawing steps as its scale does, and both stay together', async ({
    page,
  }) => {
    await openBench(page);
    await handleOf(page, 'leg1').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.2');
    await expect(scaleOf(page, 'Leg 1')).toHaveValue('8.2');
    await expect(handleOf(page, 'leg1')).toHaveAttribute('aria-valuenow', '8.2');
  });

  for (const [what, hold] of [
    ['scale', (page: Page) => scaleOf(page, 'Leg 1').focus()],
    ['field', (page: Page) => fieldOf(page, 'Leg 1').focus()],
    ['handle', (page: Page) => handleOf(page, 'leg1').focus()],
  ] as const) {
    test(`a key held on a ${what} is one step for undo`, async ({ page }) => {
      await openBench(page);
      await hold(page);
      for (let repeat = 0; repeat < 6; repeat += 1) await page.keyboard.down('ArrowUp');
      await page.keyboard.up('ArrowUp');
      await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.6');
      await page.getByRole('button', { name: 'Undo' }).click();
      await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
      await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
    });
  }

  test('every row of the checks and every tool can be reached with Tab', async ({ page }) => {
    await openBench(page);
    const reached = new Set<string>();
    for (let press = 0; press < 90; press += 1) {
      await page.keyboard.press('Tab');
      const name = await page.evaluate(() => {
        const at = document.activeElement;
        return at?.getAttribute('aria-label') ?? at?.textContent.trim().replace(/\s+/g, ' ') ?? '';
      });
      reached.add(name);
    }
    const rows = await page.locator('.checks li > button').allTextContents();
    for (const row of rows) expect([...reached]).toContain(row.trim().replace(/\s+/g, ' '));
    for (const tool of ['Reset', 'Hold outline', 'Present', 'Share', 'Weld', 'Job sheet']) {
      expect([...reached]).toContain(tool);
    }
  });

  test('undo, redo, hold and stage answer their keys, but not while text is typed', async ({
    page,
  }) => {
    await openBench(page);
    await scaleOf(page, 'Leg 1').focus();
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Control+z');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
    await page.keyboard.press('Control+y');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.1');
    await page.keyboard.press('h');
    await expect(page.getByRole('button', { name: 'Hold outline' })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await page.keyboard.press('f');
    await expect(page.getByRole('radio', { name: 'fit-up' })).toBeChecked();
    await page.keyboard.press('f');
    await fieldOf(page, 'Leg 1').focus();
    await page.keyboard.type('h');
    await expect(page.getByRole('button', { name: 'Hold outline' })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
  });
});

test.describe('by hand', () => {
  test('dragging a toe moves the leg, the checks follow, and one undo takes it back', async ({
    page,
  }) => {
    await openBench(page);
    await expect(rowOf(page, 'Leg 1')).toContainText('Accept');
    const from = await middle(page, 'leg1');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x - 30, from.y, { steps: 5 });
    await page.mouse.move(from.x - 60, from.y, { steps: 5 });
    const live = Number(await fieldOf(page, 'Leg 1').inputValue());
    expect(live).toBeLessThan(7);
    await expect(rowOf(page, 'Leg 1')).toContainText('Reject');
    await page.mouse.up();
    await page.keyboard.press('Control+z');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  test('a drag that a narrower window takes the drawing from stands as it was shown', async ({
    page,
  }) => {
    await openBench(page);
    const from = await middle(page, 'leg1');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 60, from.y, { steps: 5 });
    const live = await fieldOf(page, 'Leg 1').inputValue();
    expect(Number(live)).toBeGreaterThan(9);
    await page.setViewportSize({ width: 360, height: 740 });
    await expect(page.locator('html')).toHaveAttribute('data-phone', '');
    await page.mouse.up();
    await page.setViewportSize({ width: 1280, height: 800 });
    await expect(fieldOf(page, 'Leg 1')).toHaveValue(live);
    await page.reload({ waitUntil: 'networkidle' });
    await expect(fieldOf(page, 'Leg 1')).toHaveValue(live);
  });

  test('Escape gives up a drag', async ({ page }) => {
    await openBench(page);
    const from = await middle(page, 'leg2');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x, from.y - 40, { steps: 4 });
    await page.keyboard.press('Escape');
    await page.mouse.up();
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Tee fillet 8.0 × 8.0');
  });

  test('Escape gives up a drag that has taken its ring off the sheet', async ({ page }) => {
    await openBench(page);
    const from = await middle(page, 'leg1');
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move(from.x + 450, from.y, { steps: 8 });
    await page.keyboard.press('Escape');
    await page.mouse.move(from.x + 200, from.y, { steps: 2 });
    await page.mouse.up();
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
    await expect(page.getByRole('button', { name: 'Undo' })).toBeDisabled();
  });

  test('a scale follows the pointer and stops where the joint cannot be built, with the reason', async ({
    page,
  }) => {
    await openBench(page);
    const scale = scaleOf(page, 'Convexity');
    const box = await scale.boundingBox();
    if (box === null) throw new Error('no scale');
    await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.move(box.x + 2, box.y + box.height / 2, { steps: 6 });
    await page.mouse.up();
    // A hollow deeper than the weld is refused somewhere between 0 and −10 mm.
    const stopped = (await fieldOf(page, 'Convexity').inputValue()).replace('−', '-');
    expect(Number(stopped)).toBeLessThan(-2);
    expect(Number(stopped)).toBeGreaterThan(-10);
    await expect(page.locator('.stop')).toBeVisible();
    await expect(page.locator('.stop')).not.toHaveText('');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
  });

  test('reset goes back to the opening section and can itself be undone', async ({ page }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('12');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Reset' }).click();
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('12.0');
    await expect(overallOf(page)).toHaveText('Reject');
  });
});

test('a ring keeps the focus when the drawing is fitted anew', async ({ page }) => {
  await openBench(page);
  const ring = handleOf(page, 'leg1');
  await ring.focus();
  for (const key of ['End', 'Home']) {
    await page.keyboard.press(key);
    await expect(ring).toBeFocused();
  }
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('2.0');
  await page.keyboard.press('End');
  await page.setViewportSize({ width: 1000, height: 700 });
  await expect(ring).toBeFocused();
  await expect(page.locator('svg.section .tag')).toContainText('30.0');
});

test('focus is kept on the page when the parameter that had it goes', async ({ page }) => {
  await openBench(page);
  await scaleOf(page, 'Leg 1').focus();
  // before welding there is no leg
  await page.keyboard.press('f');
  await expect(page.getByRole('main')).toBeFocused();
});
