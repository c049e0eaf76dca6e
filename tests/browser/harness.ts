/**
 * The `test` that every browser test uses. Around each test it watches the page: a console error,
 * an uncaught exception, or a request to another origin fails the test, whatever it was about.
 */
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test as base, type Page } from '@playwright/test';

export { expect, type Page };

/** The screens that the page is looked at on. */
const SCREENS = [
  { name: 'phone', width: 360, height: 740 },
  { name: 'laptop', width: 1280, height: 800 },
  { name: 'projector', width: 1920, height: 1080 },
] as const;

const SCHEMES = ['light', 'dark'] as const;

/** Every screen in every colour scheme, for tests that look at all of them. */
export const LOOKS = SCREENS.flatMap((screen) => SCHEMES.map((scheme) => ({ screen, scheme })));

export interface Quiet {
  /** Console errors that this test provokes on purpose. */
  expectedErrors: RegExp[];
  quiet: undefined;
}

export const test = base.extend<Quiet>({
  expectedErrors: [[], { option: true }],
  quiet: [
    async ({ page, baseURL, expectedErrors }, use) => {
      const troubles: string[] = [];
      const origin = new URL(baseURL ?? 'http://localhost').origin;
      page.on('console', (message) => {
        if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
      });
      page.on('pageerror', (error) => troubles.push(`exception: ${error.message}`));
      page.on('request', (request) => {
        const url = new URL(request.url());
        const own = url.origin === origin || url.protocol === 'blob:' || url.protocol === 'data:';
        if (!own) troubles.push(`request to another origin: ${request.url()}`);
      });
      await use(undefined);
      const unexpected = troubles.filter((text) => !expectedErrors.some((e) => e.test(text)));
      expect(unexpected, 'the page stays quiet and asks nothing of another origin').toEqual([]);
    },
    { auto: true },
  ],
});

/** What axe finds on the page as it stands, in words short enough to read in a failing test. */
export async function axeFindings(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.flatMap((violation) =>
    violation.nodes.map((node) => `${violation.id}: ${violation.help}: ${node.html}`),
  );
}
