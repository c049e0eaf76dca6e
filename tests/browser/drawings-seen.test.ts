import { fieldOf, openBench, openReady } from './bench-page.ts';
import { faintTexts } from './faint-texts.ts';
import { expect, LOOKS, test } from './harness.ts';

for (const { screen, scheme } of LOOKS) {
  test.describe(`${screen.name}, ${scheme}: every text stands out 4.5 : 1 from what lies under it`, () => {
    test.use({ viewport: { width: screen.width, height: screen.height }, colorScheme: scheme });

    test('on the drawing of a call, asked and answered', async ({ page }) => {
      await page.goto('./#calls', { waitUntil: 'networkidle' });
      await page.evaluate(() => document.fonts.ready);
      await page.getByRole('radio', { name: /^Practice/ }).check();
      await page.getByLabel('One skill').selectOption('butt.welded.undercut.max');
      await page.getByRole('button', { name: 'Begin' }).click();
      const drawing = page.locator('svg.call-drawing');
      await drawing.scrollIntoViewIfNeeded();
      const faint = [...(await faintTexts(page, 'asked', 'svg.call-drawing'))];
      await page.keyboard.press('a');
      await page.keyboard.press('Enter');
      await expect(page.getByText('you said')).toBeVisible();
      await drawing.scrollIntoViewIfNeeded();
      faint.push(...(await faintTexts(page, 'answered', 'svg.call-drawing')));
      expect(faint).toEqual([]);
    });

    test('on the welding symbol of the sheet', async ({ page }) => {
      await openBench(page, '#sheet');
      const symbol = page.locator('.symbol svg').first();
      await symbol.scrollIntoViewIfNeeded();
      expect(await faintTexts(page, 'symbol', '.symbol svg')).toEqual([]);
    });

    test('on the figures of the lesson', async ({ page }) => {
      await openBench(page, '#lessons');
      const figures = page.locator('figure svg.section');
      await expect(figures.first()).toBeVisible();
      const faint: string[] = [];
      for (const figure of await figures.all()) {
        await figure.scrollIntoViewIfNeeded();
        faint.push(...(await faintTexts(page, 'figure', 'figure svg.section')));
      }
      expect(faint).toEqual([]);
    });
  });
}

test('on the wall two sections of one scale have one bar, and leave out no dimension', async ({
  page,
}) => {
  await openBench(page);
  await fieldOf(page, 'Convexity').fill('1.5');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Hold outline' }).click();
  await fieldOf(page, 'Convexity').fill('-1.5');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Present' }).click();
  const wall = page.getByRole('dialog', { name: 'Present' });
  await expect(wall.locator('svg.section')).toHaveCount(2);
  await expect(wall.locator('.not-shown')).toHaveText(['', '']);
  const scales = await wall.getByText(/ mm, drawn /).allTextContents();
  expect(scales).toHaveLength(2);
  expect(new Set(scales).size).toBe(1);
  // 8 / √2 to the chord of the convex one
  await expect(wall.getByText('5.66')).toHaveCount(1);
});

test('a drawing with no room for all its dimensions says how many it leaves out', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 568 });
  await openBench(page);
  const count = page.locator('svg.section .not-shown');
  await openReady(page, 'The same, offset');
  await expect(count).toHaveText(/^(1 dimension|\d+ dimensions) not shown$/);
  const inFrame = await count.evaluate((text) => {
    const [own, frame] = [text, text.closest('svg')].map((one) => one?.getBoundingClientRect());
    return (
      own !== undefined &&
      frame !== undefined &&
      own.left >= frame.left &&
      own.bottom <= frame.bottom
    );
  });
  expect(inFrame).toBe(true);
  await page.setViewportSize({ width: 1280, height: 800 });
  await expect(count).toHaveText('');
});
