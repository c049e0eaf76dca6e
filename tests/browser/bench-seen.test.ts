import type { Locator } from '@playwright/test';
import { fieldOf, hashOf, openBench, openReady, rowOf } from './bench-page.ts';
import { faintTexts } from './faint-texts.ts';
import { axeFindings, expect, LOOKS, type Page, test } from './harness.ts';

for (const { screen, scheme } of LOOKS) {
  test.describe(`${screen.name}, ${scheme}`, () => {
    test.use({ viewport: { width: screen.width, height: screen.height }, colorScheme: scheme });

    test('axe finds nothing on the bench at work: a row, a group and a panel opened', async ({
      page,
    }) => {
      await openBench(page);
      await rowOf(page, 'Undercut, toe 2').click();
      await expect(page.locator('.working')).toBeVisible();
      expect(await axeFindings(page)).toEqual([]);
      for (const group of ['Joint', /^(Discontinuities|Flaws)$/, 'Measured', /^(Job s|S)heet$/]) {
        await page.getByRole('button', { name: group, exact: typeof group === 'string' }).click();
        await expect(page.locator('.group').first()).toBeVisible();
        expect(await axeFindings(page), String(group)).toEqual([]);
      }
      await page.getByRole('button', { name: 'View' }).click();
      await expect(page.getByRole('dialog')).toBeVisible();
      expect(await axeFindings(page), 'View').toEqual([]);
    });

    test('every call stands whole in its row, the longest too', async ({ page }) => {
      // API 1104 has no row for overlap: not assessed
      await openBench(
        page,
        hashOf('09-fillet-overlap', (sheet) => ({ ...sheet, limitSet: 'api-1104', column: 'in' })),
      );
      const calls = page.locator('.checks li .call');
      await expect(calls.filter({ hasText: 'Not assessed' })).not.toHaveCount(0);
      const clipped = await calls.evaluateAll((all) =>
        all
          .filter((call) => {
            const words = document.createRange();
            words.selectNodeContents(call);
            const [inner, row] = [words.getBoundingClientRect(), call.closest('li')];
            return row === null || inner.right > row.getBoundingClientRect().right;
          })
          .map((call) => call.textContent),
      );
      expect(clipped).toEqual([]);
    });

    test('every text of the drawing stands out 4.5 : 1 from what lies under it', async ({
      page,
    }) => {
      await openBench(page);
      const faint = [...(await faintTexts(page, 'opening'))];
      if (screen.name !== 'phone') await page.getByRole('button', { name: 'Hold outline' }).click();
      for (const ready of ['The same legs, concave', 'Heavy cap', 'The same, offset']) {
        await openReady(page, ready);
        faint.push(...(await faintTexts(page, ready)));
      }
      expect(faint).toEqual([]);
    });
  });
}

test('every handle has a role, a name, a value, its bounds and the value in words', async ({
  page,
}) => {
  await openBench(page);
  for (const group of ['Weld', 'Discontinuities', 'Joint']) {
    await page.getByRole('button', { name: group, exact: true }).click();
    const handles = page.locator('svg.section [role=slider]');
    expect(await handles.count(), group).toBeGreaterThan(0);
    expect(await handles.count(), group).toBeLessThanOrEqual(6);
    for (const handle of await handles.all()) {
      for (const name of ['aria-label', 'aria-valuetext']) {
        expect(await handle.getAttribute(name), `${group} ${name}`).toMatch(/\S/);
      }
      for (const name of ['aria-valuenow', 'aria-valuemin', 'aria-valuemax']) {
        expect(Number(await handle.getAttribute(name)), `${group} ${name}`).not.toBeNaN();
      }
      await expect(handle).toHaveAttribute('tabindex', '0');
    }
  }
});

test('the section and its calls are told in words once the hand rests', async ({ page }) => {
  await openBench(page);
  const words = page.locator('#section-description');
  await expect(words).toHaveAttribute('aria-live', 'polite');
  await expect(words).toContainText('Tee fillet 8.0 mm × 8.0 mm. Plates 12.0 mm and 12.0 mm.');
  await expect(words).toContainText('Reject');
  await fieldOf(page, 'Leg 1').fill('9');
  await page.keyboard.press('Enter');
  await expect(words).toContainText('9.0 mm × 8.0 mm');
});

test('light and dark can be chosen against the system, and stay', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: 'View' }).click();
  await page.getByRole('radio', { name: 'dark', exact: true }).check();
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.locator('html')).toHaveAttribute('data-theme', 'dark');
});

test('large targets are 44 px, with − and + beside every scale', async ({ page }) => {
  await openBench(page);
  await page.getByRole('button', { name: 'View' }).click();
  await page.getByRole('radio', { name: /large/ }).check();
  await page.keyboard.press('Escape');
  const more = page.getByRole('button', { name: 'Leg 1, more' });
  await more.click();
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.1');
  for (const target of await page.locator('.controls button, .checks li > button').all()) {
    expect((await target.boundingBox())?.height ?? 0).toBeGreaterThanOrEqual(44);
  }
});

/** The opening section on the wall, its first leg in hand. */
async function openWall(page: Page): Promise<Locator> {
  await openBench(page);
  await page.keyboard.press('p');
  const wall = page.getByRole('dialog', { name: 'Present' });
  await expect(wall.getByRole('button', { name: 'Leg 1 8.0' })).toBeFocused();
  return wall;
}

test('presenting shows the held section beside the present one, and Escape ends it', async ({
  page,
}) => {
  await openBench(page);
  await page.getByRole('button', { name: 'Hold outline' }).click();
  await fieldOf(page, 'Convexity').fill('-1');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Present' }).click();
  const wall = page.getByRole('dialog', { name: 'Present' });
  await expect(wall.locator('svg.section')).toHaveCount(2);
  await expect(wall).toContainText('Face concave 1.0.');
  await expect(wall).toContainText('Face convex 1.0.');
  expect(await axeFindings(page)).toEqual([]);
  await page.keyboard.press('Escape');
  await expect(wall).toHaveCount(0);
});

test('on the wall arrow keys drive the section, and calls that are kept back stand nowhere', async ({
  page,
}) => {
  const wall = await openWall(page);
  for (let i = 0; i < 12; i++) await page.keyboard.press('ArrowLeft');
  await expect(wall.getByRole('button', { name: 'Leg 1 6.8' })).toBeVisible();
  await expect(wall.locator('li', { hasText: 'Leg 1' })).toContainText('Reject');
  await expect(wall.locator('.drawn-dimension.reject')).not.toHaveCount(0);
  expect(await axeFindings(page)).toEqual([]);

  await page.keyboard.press('c');
  await expect(wall).toContainText('The room calls it first');
  await expect(wall).not.toContainText(/Reject\b|Refer\b|Accept\b(?! or)/);
  await page.keyboard.press('ArrowDown');
  await expect(wall.getByRole('button', { name: 'Convexity 1.0' })).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(wall).toContainText('Face convex 1.1.');
  expect(await axeFindings(page)).toEqual([]);

  await page.keyboard.press('Control+z');
  await expect(wall).toContainText('Face convex 1.0.');
  await page.keyboard.press('Escape');
  // what was driven on the wall is what the bench goes on with
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('6.8');
});

test('on the wall every key goes on being heard when what had the focus goes with the stage', async ({
  page,
}) => {
  const wall = await openWall(page);
  await page.keyboard.press('f');
  await expect(wall.getByRole('button', { name: 'Angle 90.0°' })).toBeFocused();
  await page.keyboard.press('ArrowRight');
  await expect(wall.getByRole('button', { name: 'Angle 91.0°' })).toBeVisible();
  await page.keyboard.press('Control+z');
  await page.keyboard.press('Control+z');
  await expect(wall.getByRole('button', { name: 'Leg 1 8.0' })).toBeFocused();
  // from the list, which goes when a held section comes
  await wall.getByRole('list').focus();
  await page.keyboard.press('h');
  await page.keyboard.press('ArrowRight');
  await expect(wall.getByRole('button', { name: 'Leg 1 8.1' })).toBeFocused();
  // two that are compared are drawn at one scale
  const scales = await wall.locator('svg.section .drawn-foot').allTextContents();
  expect(new Set(scales.filter((text) => text.includes('drawn'))).size).toBe(1);
});

test('a call kept back takes no dimension off the wall and names none otherwise', async ({
  page,
}) => {
  await openBench(page);
  for (const section of ['Gap under the fillet', 'Smooth cap on offset plates', 'Heavy cap']) {
    await openReady(page, section);
    await page.keyboard.press('p');
    const wall = page.getByRole('dialog', { name: 'Present' });
    const drawn = wall.locator('svg.section .drawn-dimension');
    await expect(drawn).not.toHaveCount(0);
    const told = await drawn.allTextContents();
    await page.keyboard.press('c');
    await expect(wall).toContainText('The room calls it first');
    expect(await drawn.allTextContents(), section).toEqual(told);
    const colours = await drawn.evaluateAll((all) => [
      ...new Set(
        all.flatMap((one) =>
          [...one.querySelectorAll('.drawn-value, .drawn-heads')].map(
            (part) => getComputedStyle(part).fill,
          ),
        ),
      ),
    ]);
    expect(colours, section).toHaveLength(1);
    await page.keyboard.press('c');
    await page.keyboard.press('Escape');
  }
});

test('on paper there are no controls, the greys are greys, and the check bar measures 100 mm', async ({
  page,
}) => {
  await openBench(page);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.controls')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Share' })).toBeHidden();
  const bar = await page.locator('footer.print-only svg').boundingBox();
  // 100 mm at 96 px to the inch.
  expect(bar?.width).toBeCloseTo((100 / 25.4) * 96, 0);
  const weld = await page
    .locator('svg.section .drawn-weld')
    .first()
    .evaluate((shape) => getComputedStyle(shape).fill.match(/\d+/g)?.map(Number) ?? []);
  expect(new Set(weld.slice(0, 3)).size).toBe(1);
});

test('at twice the size of text nothing is cut off sideways', async ({ page }) => {
  // 200 % of 1280 × 800 leaves 640 × 400.
  await page.setViewportSize({ width: 640, height: 400 });
  await openBench(page);
  const width = await page.evaluate(() => document.documentElement.scrollWidth);
  expect(width).toBeLessThanOrEqual(640);
  await page.getByRole('button', { name: 'Flaws' }).scrollIntoViewIfNeeded();
  await expect(page.getByRole('button', { name: 'Flaws' })).toBeInViewport();
});
