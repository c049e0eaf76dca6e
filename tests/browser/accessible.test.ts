import { axeFindings, expect, LOOKS, test } from './harness.ts';

for (const { screen, scheme } of LOOKS) {
  test.describe(`${screen.name}, ${scheme}`, () => {
    test.use({ viewport: { width: screen.width, height: screen.height }, colorScheme: scheme });

    test('axe finds nothing on the page as it opens', async ({ page }) => {
      await page.goto('./', { waitUntil: 'networkidle' });
      expect(await axeFindings(page)).toEqual([]);
    });

    test('the page is never wider than the screen', async ({ page }) => {
      await page.goto('./', { waitUntil: 'networkidle' });
      const width = await page.evaluate(() => document.documentElement.scrollWidth);
      expect(width).toBeLessThanOrEqual(screen.width);
    });
  });
}
