import { openBench, openReady } from './bench-page.ts';
import { axeFindings, expect, LOOKS, test, type Page } from './harness.ts';

const fieldOf = (page: Page, name: string) => page.getByRole('textbox', { name, exact: true });
const callOf = (page: Page, what: string) =>
  page.locator('.checks li', { hasText: what }).locator('.call');

async function openSheet(page: Page): Promise<void> {
  await page.getByRole('link', { name: /Job sheet$/ }).click();
  await expect(page.getByRole('heading', { name: 'Job sheet', level: 1 })).toBeVisible();
}

/** Pages of a PDF, counted by their objects. */
const pagesIn = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

test('what is written on the job sheet is judged by, kept and carried by a link', async ({
  page,
  context,
}) => {
  await openBench(page);
  await openSheet(page);
  await fieldOf(page, 'WPS number').fill('WPS 12');
  await fieldOf(page, 'WPS number').press('Tab');
  await fieldOf(page, 'Size').first().fill('9');
  await fieldOf(page, 'Size').first().press('Enter');
  await expect(callOf(page, 'Leg 1')).toHaveText('Reject');
  await page.reload();
  await expect(fieldOf(page, 'WPS number')).toHaveValue('WPS 12');
  await expect(callOf(page, 'Leg 1')).toHaveText('Reject');
  // the address of a bench carries the sheet to another browser
  const kept = await page.evaluate(() => localStorage.getItem('toeline.bench') ?? '');
  const hash = `#bench=${Buffer.from(kept).toString('base64url')}`;
  const other = await context.newPage();
  await other.addInitScript(() => localStorage.clear());
  await other.goto(new URL(hash, page.url()).href);
  await openSheet(other);
  await expect(fieldOf(other, 'WPS number')).toHaveValue('WPS 12');
});

test('a row that depends on the service asks for it, and is judged once it is given', async ({
  page,
}) => {
  await openBench(page);
  await openReady(page, 'Heavy cap');
  await openSheet(page);
  await page.getByRole('combobox', { name: 'Limits' }).selectOption('b311');
  await page.getByRole('combobox', { name: 'Column' }).selectOption('in');
  const cap = callOf(page, 'Reinforcement').first();
  await expect(cap).toHaveText('Not assessed');
  await page.getByRole('combobox', { name: 'Design temperature' }).selectOption('over750F');
  await expect(cap).toHaveText('Reject');
});

test('a slip is refused at its field and changes nothing', async ({ page }) => {
  await openBench(page);
  await openSheet(page);
  const size = fieldOf(page, 'Size').first();
  await size.fill('0');
  await size.press('Enter');
  await expect(page.getByRole('alert').first()).toBeVisible();
  await expect(callOf(page, 'Leg 1')).toHaveText('Accept');
});

for (const { screen, scheme } of LOOKS) {
  test(`axe finds nothing on the job sheet, ${screen.name}, ${scheme}`, async ({ page }) => {
    await page.setViewportSize({ width: screen.width, height: screen.height });
    await page.emulateMedia({ colorScheme: scheme });
    await openBench(page);
    await openSheet(page);
    expect(await axeFindings(page)).toEqual([]);
    await page.goto('./#bench');
    await openReady(page, 'The same, offset');
    await openSheet(page);
    expect(await axeFindings(page), 'butt, fit-up').toEqual([]);
  });
}

for (const format of ['A4', 'Letter']) {
  test(`prints on one page of ${format}`, async ({ page }) => {
    await openBench(page);
    await openSheet(page);
    expect(pagesIn(await page.pdf({ format, printBackground: true }))).toBe(1);
    await page.goto('./#bench');
    await openReady(page, 'The same, offset');
    await openSheet(page);
    expect(pagesIn(await page.pdf({ format, printBackground: true })), 'butt, fit-up').toBe(1);
    // the fullest sheet: the longest checklist, each dimension drawn outside what the WPS lets it be
    await page.goto('./#bench');
    await openReady(page, 'Heavy cap');
    await openSheet(page);
    await page.getByRole('combobox', { name: 'Limits' }).selectOption('iso5817-b');
    for (const [name, drawn] of [
      ['bevel angle', '50'],
      ['groove angle', '40'],
      ['root opening', '6'],
      ['root face', '4'],
    ] as const) {
      await fieldOf(page, `${name}, the drawing may be under by`).fill('0.5');
      await fieldOf(page, `${name}, the drawing may be under by`).press('Tab');
      await fieldOf(page, `${name}, as drawn`).fill(drawn);
      await fieldOf(page, `${name}, as drawn`).press('Tab');
      await expect(page.getByRole('status').filter({ hasText: name })).toContainText('is drawn as');
    }
    expect(pagesIn(await page.pdf({ format, printBackground: true })), 'detailed').toBe(1);
  });
}

test('where a document’s two columns call this joint differently, the sheet says so', async ({
  page,
}) => {
  await openBench(page);
  // AWS D1.1, undercut under 25 mm (1 in) of thickness: to 1 mm over any length, 2 mm over a short
  // one; the inch column has 1/32 in, which is 0.794 mm, and 1/16 in.
  await fieldOf(page, 'Undercut 2, depth').fill('0.9');
  await fieldOf(page, 'Undercut 2, depth').press('Enter');
  await openSheet(page);
  const warning = page.getByRole('status').filter({ hasText: 'two columns differ' });
  await expect(warning).toHaveCount(0);
  await page.getByRole('combobox', { name: 'Limits' }).selectOption('aws-d11-static');
  await page.getByRole('combobox', { name: /^Extent/ }).selectOption('typical');
  await expect(warning).toContainText('Undercut, toe 2');
  await expect(warning).toContainText('Metric: 2 mm max: Accept.');
  await expect(warning).toContainText(
    'Inch: 0.0625 in max: Reject (Allowed over a short length only',
  );
  await page.goBack();
  await fieldOf(page, 'Undercut 2, depth').fill('0.7');
  await fieldOf(page, 'Undercut 2, depth').press('Enter');
  await openSheet(page);
  await expect(warning).toHaveCount(0);
});
