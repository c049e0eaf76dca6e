import { readFileSync } from 'node:fs';
import { fieldOf, hashOf, openBench, openReady, overallOf } from './bench-page.ts';
import { expect, test, type Page } from './harness.ts';

test.describe('a permalink', () => {
  test.use({ permissions: ['clipboard-read', 'clipboard-write'] });

  test('carries the whole bench to another person', async ({ page, browser, baseURL }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('11.5');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Hold outline' }).click();
    await page.getByRole('checkbox', { name: 'toe angles' }).check();
    await page.getByRole('button', { name: 'Share' }).click();
    await page.getByRole('button', { name: 'Copy link' }).click();
    await expect(page.getByRole('status').first()).toBeVisible();
    const link = await page.evaluate(() => navigator.clipboard.readText());
    expect(link).toContain('#bench=');

    const other = await (await browser.newContext({ baseURL: baseURL ?? '' })).newPage();
    await other.goto(link, { waitUntil: 'networkidle' });
    await expect(fieldOf(other, 'Leg 1')).toHaveValue('11.5');
    await expect(other.getByRole('button', { name: 'Hold outline' })).toHaveAttribute(
      'aria-pressed',
      'true',
    );
    await expect(other.getByRole('checkbox', { name: 'toe angles' })).toBeChecked();
    await other.context().close();
  });
});

/** What a link may hold that is no bench: each has to be told, and to change nothing. */
const badLinks = {
  'cut short': '#bench=eyJ2ZXJzaW9uIjoxLCJqb2ludCI6ey',
  'not base64': '#bench=%%%%',
  empty: '#bench=',
  'another thing': `#bench=${Buffer.from('[1,2,3]').toString('base64url')}`,
  'from the future': `#bench=${Buffer.from('{"version":99}').toString('base64url')}`,
  hostile: `#bench=${Buffer.from(
    '{"version":1,"__proto__":{"polluted":1},"joint":{"kind":"<img src=x onerror=alert(1)>"}}',
  ).toString('base64url')}`,
  oversized: `#bench=${'A'.repeat(60_000)}`,
};

for (const [what, hash] of Object.entries(badLinks)) {
  test(`a link that is ${what} is told plainly and leaves the bench as it was`, async ({
    page,
  }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('10');
    await page.keyboard.press('Enter');
    await page.goto('about:blank');
    await page.goto(`./${hash}`, { waitUntil: 'networkidle' });
    await expect(page.getByRole('alert')).toContainText('The link could not be opened');
    await expect(page.getByRole('alert')).not.toContainText('bench_');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
    expect(await page.evaluate(() => 'polluted' in Object.prototype)).toBe(false);
    await page.getByRole('button', { name: 'Close' }).click();
    await expect(page.getByRole('alert')).toHaveCount(0);
  });
}

test('a link opened over work of one’s own is a step that undo takes back', async ({ page }) => {
  await openBench(page);
  await fieldOf(page, 'Leg 1').fill('10');
  await page.keyboard.press('Enter');
  await page.goto('about:blank');
  await page.goto(`./${hashOf('04-fillet-unequal-legs')}`, { waitUntil: 'networkidle' });
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('12.0');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
});

test('going back to where another bench was opened brings nothing back over later work', async ({
  page,
}) => {
  await openBench(page);
  await page.goto(`./${hashOf('04-fillet-unequal-legs')}`);
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('12.0');
  await page.goto(`./${hashOf('01-fillet-equal-flat-fillet')}`);
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
  await fieldOf(page, 'Leg 1').fill('20');
  await page.keyboard.press('Enter');
  await page.goBack();
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('20.0');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('20.0');
});

test('a saved file opens again as the same bench', async ({ page }) => {
  await openBench(page);
  await fieldOf(page, 'Leg 1').fill('9.7');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Share' }).click();
  const coming = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as a file' }).click();
  const saved = await coming;
  expect(saved.suggestedFilename()).toBe('tee-fillet-9.7-8.0.json');
  const path = await saved.path();
  await page.getByRole('button', { name: 'Reset' }).click();
  await page.getByRole('button', { name: 'Share' }).click();
  await page.locator('input[type=file]').setInputFiles(path);
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('9.7');
});

for (const [what, content] of Object.entries({
  'a picture': Buffer.from([0x89, 0x50, 0x4e, 0x47, 0, 1, 2, 3]),
  'another program’s JSON': Buffer.from('{"name":"x","version":"1.0.0"}'),
  'nothing at all': Buffer.from(''),
  'a joint that cannot exist': Buffer.from(
    readFileSync('src/state/ready-sections/01-fillet-equal-flat-fillet.json', 'utf8').replace(
      '"convexity": 0',
      '"convexity": -9.9',
    ),
  ),
})) {
  test(`a file that is ${what} is told plainly and loses nothing`, async ({ page }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('10');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Share' }).click();
    await page
      .locator('input[type=file]')
      .setInputFiles({ name: 'wrong.json', mimeType: 'application/json', buffer: content });
    await expect(page.getByRole('alert')).toContainText('wrong.json could not be opened');
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
  });
}

test('work is there again after a reload', async ({ page }) => {
  await openBench(page);
  await fieldOf(page, 'Leg 1').fill('10');
  await page.keyboard.press('Enter');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
});

test('what was kept and cannot be read is put aside, told, and the bench opens', async ({
  page,
}) => {
  await page.addInitScript(() => {
    if (localStorage.getItem('toeline.bench') === null) {
      localStorage.setItem('toeline.bench', '{"version":1,"joint":"gone"}');
    }
  });
  await openBench(page);
  await expect(page.getByRole('alert')).toContainText('could not be read');
  await expect(overallOf(page)).toHaveText('Reject');
  expect(await page.evaluate(() => localStorage.getItem('toeline.bench.unreadable'))).toContain(
    'gone',
  );
  // Offered back as it was: at once, and from Share however much is done in between.
  const offered = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save it as a file' }).click();
  expect(readFileSync(await (await offered).path(), 'utf8')).toContain('"gone"');
  await fieldOf(page, 'Leg 1').fill('10');
  await page.keyboard.press('Enter');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
  await page.getByRole('button', { name: 'Share' }).click();
  const again = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save bench 1 that was put aside' }).click();
  expect(readFileSync(await (await again).path(), 'utf8')).toContain('"gone"');
  await page.getByRole('button', { name: 'Throw away bench 1 that was put aside' }).click();
  await expect(page.getByRole('button', { name: 'Save bench 1 that was put aside' })).toHaveCount(
    0,
  );
});

test('a slip on the job sheet is refused at its field and costs nothing at the next reload', async ({
  page,
}) => {
  await openBench(page);
  await fieldOf(page, 'Leg 1').fill('10');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'Job sheet' }).click();
  const size = page.getByRole('textbox', { name: 'Size', exact: true });
  for (const [slip, why] of [
    ['0', 'A fillet must have a size above 0.'],
    ['150', 'It may be 100.0 mm at most on this sheet.'],
  ] as const) {
    await size.fill(slip);
    await size.press('Enter');
    await expect(page.getByRole('alert').first()).toContainText(why);
    await size.press('Escape');
  }
  await expect(size).toHaveValue('7');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(page.getByRole('alert')).toHaveCount(0);
  await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
});

test.describe('offline', () => {
  test.use({ expectedErrors: [/status of 404/] });
  test('a kept bench is safe while what reads it cannot be fetched', async ({ page }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('10');
    await page.keyboard.press('Enter');
    await page.route(/read-document/, (route) => route.fulfill({ status: 404, body: '' }));
    await page.reload({ waitUntil: 'networkidle' });
    await expect(page.getByRole('alert')).toContainText('is safe');
    await fieldOf(page, 'Leg 1').fill('11');
    await page.keyboard.press('Enter');
    await page.unroute(/read-document/);
    await page.reload({ waitUntil: 'networkidle' });
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('11.0');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
  });
});

test.describe('with the network gone', () => {
  // what the browser itself says of each file; an exception that nobody catches fails the test
  test.use({ expectedErrors: [/Failed to load resource/] });
  const parts = /assets\/.*\.js/;
  const goOffline = (page: Page) => page.route(parts, (route) => route.abort());

  test('what can’t be chosen says to reload the page, and then the work is there and the choice is made', async ({
    page,
  }) => {
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('10');
    await page.keyboard.press('Enter');
    await page.getByRole('button', { name: 'Job sheet' }).click();
    const limits = page.getByRole('combobox', { name: 'Limits' });
    await expect(limits).toBeVisible();
    await page.getByRole('button', { name: /choose a ready section/ }).click();
    const ready = page.getByRole('button', { name: 'Sound cap and root' });
    await expect(ready).toBeVisible();
    await goOffline(page);
    await ready.click();
    await expect(page.getByRole('alert')).toContainText('That section could not be fetched');
    await expect(page.getByRole('alert')).toContainText('reload the page');
    await page.keyboard.press('Escape');
    await limits.selectOption('iso5817-b');
    await expect(page.getByRole('alert')).toContainText('That limit set could not be fetched');
    await expect(page.getByRole('alert')).toContainText('reload the page');
    await page.unroute(parts);
    await page.reload({ waitUntil: 'networkidle' });
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
    await openReady(page, 'Sound cap and root');
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Single-V butt 12.0 × 12.0');
  });

  test('what butt joints need says to reload the page too', async ({ page }) => {
    await openBench(page);
    await page.getByRole('button', { name: 'Joint', exact: true }).click();
    const kind = page.getByRole('combobox', { name: 'Kind' });
    await expect(kind).toBeVisible();
    await goOffline(page);
    await kind.selectOption('butt');
    await expect(page.getByRole('alert')).toContainText('What butt joints need');
    await expect(page.getByRole('alert')).toContainText('reload the page');
  });

  test('a page that was never touched says in words what is missing', async ({ page }) => {
    await openBench(page);
    await goOffline(page);
    const missing = page.getByRole('alert').filter({ hasText: 'This part could not be fetched' });
    await page.mouse.move(300, 300);
    await page.mouse.move(320, 300);
    for (const menu of ['Share', 'View']) {
      await page.getByRole('button', { name: menu, exact: true }).click();
      await expect(page.getByRole('dialog').locator(missing)).toBeVisible();
      await page.keyboard.press('Escape');
    }
    await page.keyboard.press('Control+s');
    await expect(missing).toBeVisible();
    for (const name of ['Lessons', 'Calls', 'Job sheet', 'Limit sets']) {
      await page.getByRole('link', { name: new RegExp(`${name}$`) }).click();
      await expect(page.getByRole('main').locator(missing)).toBeVisible();
      await expect(page.locator('body')).not.toContainText('…');
    }
  });

  test('a part that is here without its words says so, in place of no words', async ({ page }) => {
    await page.route(/en-rest/, (route) => route.abort());
    await openBench(page);
    await page.getByRole('button', { name: 'Share' }).click();
    await expect(page.getByRole('dialog').getByRole('alert')).toContainText('reload the page');
    await expect(page.getByRole('dialog')).not.toContainText('…');
  });

  test('a butt file that is opened is told of, and what to do', async ({ page }) => {
    await openBench(page);
    await page.getByRole('button', { name: 'Share' }).click();
    await expect(page.getByRole('button', { name: 'Open a file' })).toBeVisible();
    await goOffline(page);
    await page.locator('input[type=file]').setInputFiles({
      name: 'mine.json',
      mimeType: 'application/json',
      buffer: readFileSync('src/state/ready-sections/15-butt-sound-cap.json'),
    });
    await expect(page.getByRole('alert')).toContainText('mine.json could not be opened');
    await expect(page.getByRole('alert')).toContainText('reload the page');
    await expect(page.getByRole('dialog')).toHaveCount(0);
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('8.0');
  });
});

test('what is typed and not left is there after a reload, what is refused is not', async ({
  page,
}) => {
  await openBench(page);
  const leg = fieldOf(page, 'Leg 1');
  await leg.fill('9');
  await page.keyboard.press('Enter');
  await leg.fill('11');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(leg).toHaveValue('11.0');
  await leg.fill('wide');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(leg).toHaveValue('11.0');
  await page.getByRole('link', { name: /Job sheet$/ }).click();
  const job = page.getByRole('textbox', { name: 'Job', exact: true });
  await job.fill('4711');
  await page.reload({ waitUntil: 'networkidle' });
  await expect(job).toHaveValue('4711');
});

for (const [how, script] of [
  [
    'refused',
    () =>
      Object.defineProperty(window, 'localStorage', {
        get() {
          throw new DOMException('refused', 'SecurityError');
        },
      }),
  ],
  [
    'full',
    () => {
      Storage.prototype.setItem = () => {
        throw new DOMException('full', 'QuotaExceededError');
      };
    },
  ],
] as const) {
  test(`storage that is ${how} is told, and the tab keeps the work over other pages and a reload`, async ({
    page,
  }) => {
    await page.addInitScript(script);
    await openBench(page);
    await fieldOf(page, 'Leg 1').fill('10');
    await page.keyboard.press('Enter');
    await expect(page.getByRole('alert')).toContainText('not kept between visits');
    await page.getByRole('link', { name: /Lessons$/ }).click();
    // the tab is on the other page once the bench has gone
    await expect(page.locator('.checks')).toHaveCount(0);
    await page.reload({ waitUntil: 'networkidle' });
    await page.getByRole('link', { name: /Bench$/ }).click();
    await expect(fieldOf(page, 'Leg 1')).toHaveValue('10.0');
  });
}

test('the section is handed out as SVG and as PNG, looks and typeface inside', async ({ page }) => {
  await openBench(page);
  for (const [choice, end] of [
    ['Picture, SVG', 'svg'],
    ['Picture, PNG', 'png'],
  ] as const) {
    await page.getByRole('button', { name: 'Share' }).click();
    const coming = page.waitForEvent('download');
    await page.getByRole('button', { name: choice }).click();
    const file = await coming;
    expect(file.suggestedFilename()).toBe(`tee-fillet-8.0-8.0.${end}`);
    const bytes = readFileSync(await file.path());
    if (end === 'png') expect(bytes.subarray(1, 4).toString()).toBe('PNG');
    else {
      const text = bytes.toString();
      expect(text).toContain('<title>Tee fillet 8.0 × 8.0</title>');
      expect(text).toContain('font/woff2;base64,');
      expect(text).toMatch(/stroke="rgb\(/);
      expect(text).not.toContain('role="slider"');
      // said of a screen it would be wrong of a slide or a page: the bar alone stays true
      expect(text).not.toMatch(/true size|: 1</);
      expect(text).toMatch(/>\d+ mm<\/text>/);
    }
    expect(bytes.length).toBeGreaterThan(20_000);
  }
});
