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

test('a line of the set’s checklist is on the sheet: what no section shows', async ({ page }) => {
  await openBench(page);
  await openSheet(page);
  await page.getByRole('combobox', { name: 'Limits' }).selectOption('aws-d11-static');
  const list = page.getByRole('region', { name: 'To be looked at on the weld' });
  // AWS D1.1, table of visual acceptance, item 1
  await expect(list.getByRole('listitem').filter({ hasText: /crack/i }).first()).toBeVisible();
});

test('the fields of the welding symbol set the sheet, and the sheet sets them', async ({
  page,
}) => {
  await openBench(page);
  await openSheet(page);
  const symbol = page.getByRole('region', { name: 'Symbol in plain fields' });
  const asked = page.getByRole('region', { name: 'Asked for' });
  const size = (where: typeof symbol) => where.getByRole('textbox', { name: 'Size', exact: true });
  await size(symbol).fill('9');
  await size(symbol).press('Enter');
  await expect(size(asked)).toHaveValue(/^9(\.0)?$/);
  await expect(callOf(page, 'Leg 1')).toHaveText('Reject');
  await size(asked).fill('7');
  await size(asked).press('Enter');
  await expect(size(symbol)).toHaveValue(/^7(\.0)?$/);
  await expect(callOf(page, 'Leg 1')).toHaveText('Accept');
  await page.goto('./#bench');
  await openReady(page, 'The same, offset');
  await openSheet(page);
  const angle = symbol.getByRole('textbox', { name: 'Groove angle', exact: true });
  await angle.fill('50');
  await angle.press('Enter');
  // asked for 50, at least 5 less
  const least = page.locator('.checks li', { hasText: 'Groove angle, least' });
  await expect(least).toContainText('45');
  const nominal = asked.getByRole('textbox', { name: 'groove angle, nominal' });
  await expect(nominal).toHaveValue('50°');
  await nominal.fill('62');
  await nominal.press('Enter');
  await expect(angle).toHaveValue('62°');
});

test('a symbol can be read wrong on purpose, and read right again', async ({ page }) => {
  await openBench(page);
  await openSheet(page);
  const symbol = page.getByRole('region', { name: 'Symbol in plain fields' });
  await symbol.getByRole('combobox', { name: 'Drawn by' }).selectOption('ISO');
  const misread = symbol.getByRole('combobox', { name: 'Read it wrong on purpose' });
  const wrong = symbol.locator('section.wrong');
  await expect(wrong).toHaveCount(0);
  await misread.selectOption({ label: 'take the leg for a throat' });
  await expect(wrong).toContainText('the throat is');
  await misread.selectOption({ label: 'weld the wrong side' });
  await expect(wrong).toContainText('The other side is welded');
  await misread.selectOption({ label: 'read it right' });
  await expect(wrong).toHaveCount(0);
});

test('what counts as none in rows for short imperfections is seen and set', async ({ page }) => {
  await openBench(page);
  await openSheet(page);
  const least = fieldOf(page, 'Counts as none under');
  await expect(least).toHaveValue('0.05');
  await least.fill('0.1');
  await least.press('Enter');
  await page.reload();
  await expect(least).toHaveValue('0.1');
});

test('the finished weld is told at the ends of the fit-up’s tolerances', async ({ page }) => {
  await openBench(page);
  await openReady(page, 'The same, offset');
  await openSheet(page);
  const told = page.getByRole('region', { name: 'What the numbers mean for the weld' });
  await expect(told.getByRole('rowheader', { name: 'groove angle' })).toHaveCount(2);
  await expect(told.getByRole('rowheader', { name: 'Misalignment' })).toHaveCount(1);
  await expect(told).toContainText('face width');
});
