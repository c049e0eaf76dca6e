import { openBench } from './bench-page.ts';
import { expect, test } from './harness.ts';
import { POLICY } from '../config/content-security-policy.ts';

test('the built page carries the content security policy as its first element', async ({
  page,
}) => {
  await page.goto('./');
  const first = page.locator('head > :first-child');
  await expect(first).toHaveAttribute('http-equiv', 'Content-Security-Policy');
  await expect(first).toHaveAttribute('content', POLICY);
});

test.describe('an inline script', () => {
  test.use({ expectedErrors: [/Executing inline script violates/] });

  test('is refused by the policy', async ({ page }) => {
    await page.goto('./');
    const blocked = await page.evaluate(
      () =>
        new Promise<string>((resolve) => {
          document.addEventListener('securitypolicyviolation', (event) =>
            resolve(event.effectiveDirective),
          );
          const script = document.createElement('script');
          script.textContent = 'document.title = "inline script ran"';
          document.head.append(script);
          setTimeout(() => resolve('nothing blocked'), 2000);
        }),
    );
    expect(blocked).toBe('script-src-elem');
    expect(await page.title()).not.toBe('inline script ran');
  });
});

test('the favicon and every other file the page asks for is there', async ({ page }) => {
  const missing: string[] = [];
  page.on('response', (response) => {
    if (response.status() >= 400) missing.push(response.url());
  });
  await page.goto('./', { waitUntil: 'networkidle' });
  const icon = await page.request.get('./favicon.svg');
  expect(icon.headers()['content-type']).toContain('image/svg+xml');
  expect(missing).toEqual([]);
});

test.describe('without the network', () => {
  test.use({ expectedErrors: [/Failed to (load|fetch)/] });

  test('a message that can’t be fetched takes no room from the drawing, and says that it is missing', async ({
    page,
  }) => {
    await page.route(/Notice/, (route) => route.abort());
    await openBench(page, '#bench=garbage');
    await expect(page.getByRole('alert')).toBeVisible();
    const drawing = await page.locator('svg.section').boundingBox();
    expect(drawing?.height).toBeGreaterThan(300);
  });
});
