import type { Page } from '@playwright/test';
import { axeFindings, expect, LOOKS, test } from './harness.ts';

/** Opens the page of calls and waits for what can be practised. */
async function openCalls(page: Page, tail = ''): Promise<void> {
  await page.goto(`./#calls${tail}`, { waitUntil: 'networkidle' });
  await page.evaluate(() => document.fonts.ready);
}

/** Begins a run of one skill, so that every test knows what it is about. */
async function begin(page: Page, way = /^Practice/): Promise<void> {
  await openCalls(page);
  await page.getByRole('radio', { name: way }).check();
  await page.getByLabel('One skill').selectOption('fillet.welded.leg.min');
  await page.getByLabel('Calls in a run').selectOption('10');
  await page.getByRole('button', { name: 'Begin' }).click();
  await expect(page.locator('svg.call-drawing')).toBeVisible();
}

const heading = (page: Page) => page.getByRole('heading', { level: 1 });
/** All lines of the drawing. */
const drawn = (page: Page): Promise<string> =>
  page
    .locator('svg.call-drawing path')
    .evaluateAll((paths) => paths.map((path) => path.getAttribute('d')).join('|'));

/** How many records the database holds. */
const kept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, reject) => {
        const opening = indexedDB.open('toeline-calls');
        opening.onerror = () => reject(new Error('no database'));
        opening.onsuccess = () => {
          const count = opening.result.transaction('records').objectStore('records').count();
          count.onsuccess = () => {
            opening.result.close();
            resolve(count.result);
          };
        };
      }),
  );

test('a round is played by keyboard alone, and each call is kept before it is answered', async ({
  page,
}) => {
  await begin(page);
  await expect(heading(page)).toHaveText('Call 1 of 10');
  for (let call = 1; call <= 3; call++) {
    await expect(heading(page)).toHaveText(`Call ${call} of 10`);
    const accepts = call % 2 === 0;
    await page.keyboard.press(accepts ? 'a' : 'r');
    if (!accepts) await page.keyboard.press('1');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Enter');
    await expect(page.getByText('you said')).toBeVisible();
    expect(await kept(page)).toBe(call);
    // a key held from the answer asks for nothing yet
    await page.keyboard.press('Enter');
    await expect(page.getByText('you said')).toBeVisible();
    // feedback first, then its quiet moment
    await expect(page.locator('.feedback')).toBeVisible();
    await expect(page.locator('.primary.quiet')).toHaveCount(0);
    await page.keyboard.press('Enter');
  }
  await page.getByRole('button', { name: 'Stop' }).press('Enter');
  await expect(heading(page)).toHaveText('This run');
  await expect(page.getByText(/^\d of 3 right$/)).toBeVisible();
});

test('Escape takes back what is highlighted, and nothing is kept of it', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('a');
  await expect(page.getByRole('button', { name: 'Make the call' })).toBeEnabled();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('button', { name: 'Make the call' })).toBeDisabled();
  expect(await kept(page)).toBe(0);
});

test('a reject that names nothing yet says what it waits for', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('r');
  await expect(page.getByRole('button', { name: 'Say what is wrong' })).toBeDisabled();
  await page.locator('fieldset label').first().click();
  await expect(page.getByRole('button', { name: 'Make the call' })).toBeEnabled();
});

test('what is suggested has as many calls as were chosen', async ({ page }) => {
  await openCalls(page);
  await page.getByLabel('Calls in a run').selectOption('10');
  await page.locator('.suggested .primary').click();
  await expect(page.getByText(/^Call 1 of 10/)).toBeVisible();
});

test('a second press on the same call makes it', async ({ page }) => {
  await begin(page);
  const accept = page.getByRole('button', { name: /^Accept/ });
  await accept.click();
  await accept.click();
  await expect(page.getByText('you said')).toBeVisible();
});

test('a double press makes the call and leaves its feedback to be read', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.locator('.primary').dblclick({ delay: 20 });
  await expect(page.locator('.feedback')).toBeVisible();
  await expect(heading(page)).toHaveText('Call 1 of 10');
  expect(await kept(page)).toBe(1);
});

test('a call that stands highlighted is made by itself where a person wants it so', async ({
  page,
}) => {
  await openCalls(page);
  await page.getByLabel('A call is made by itself after 1.5 s').check();
  await page.getByRole('button', { name: 'Begin' }).click();
  await page.keyboard.press('a');
  await expect(page.getByText('you said')).toBeVisible();
  expect(await kept(page)).toBe(1);
});

test('the drawing stays where it was when its dimensions appear', async ({ page }) => {
  await begin(page);
  const place = async () => {
    const svg = page.locator('svg.call-drawing');
    return { box: await svg.boundingBox(), known: await svg.locator('.head').getAttribute('d') };
  };
  for (let call = 1; call <= 3; call++) {
    await expect(heading(page)).toHaveText(`Call ${call} of 10`);
    const before = await place();
    await page.keyboard.press('a');
    await page.keyboard.press('Enter');
    await expect(page.getByText('you said')).toBeVisible();
    expect(await place()).toEqual(before);
    // feedback first, then its quiet moment
    await expect(page.locator('.feedback')).toBeVisible();
    await expect(page.locator('.primary.quiet')).toHaveCount(0);
    await page.keyboard.press('Enter');
  }
});

test('a question tells no measured value, in words, names or attributes', async ({ page }) => {
  await begin(page);
  const svg = page.locator('svg.call-drawing');
  await expect(svg.locator('text')).toHaveCount(1);
  const label = (await svg.getAttribute('aria-label')) ?? '';
  // one known size and no other figure
  expect(label.match(/\d+(\.\d+)?/gu)).toHaveLength(1);
  const attributes = await svg.evaluate((element) =>
    [...element.querySelectorAll('*')].flatMap((part) =>
      [...part.attributes].map(({ name }) => name).filter((name) => /^(data|aria|id)/u.test(name)),
    ),
  );
  // the hatches have ids to be painted by
  expect(attributes.filter((name) => name !== 'id')).toEqual([]);
});

test('a reload in mid-question goes on with the very same question', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  // feedback first, then its quiet moment
  await expect(page.locator('.feedback')).toBeVisible();
  await expect(page.locator('.primary.quiet')).toHaveCount(0);
  await page.keyboard.press('Enter');
  await expect(heading(page)).toHaveText('Call 2 of 10');
  const before = await drawn(page);
  await page.reload({ waitUntil: 'networkidle' });
  await expect(heading(page)).toHaveText('Call 2 of 10');
  expect(await drawn(page)).toBe(before);
});

test('a skipped question is no call', async ({ page }) => {
  await begin(page);
  const before = await drawn(page);
  await page.getByRole('button', { name: 'Skip' }).click();
  await expect(heading(page)).toHaveText('Call 1 of 10');
  expect(await drawn(page)).not.toBe(before);
  expect(await kept(page)).toBe(0);
});

test('a slip is a record of its own beside the call that it takes out of the curve', async ({
  page,
}) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'That was a slip' }).click();
  await expect(page.getByText(/^Marked as a slip/)).toBeVisible();
  expect(await kept(page)).toBe(2);
});

test('a mixed test answers nothing until its end, and then every call', async ({ page }) => {
  await openCalls(page);
  await page.getByRole('radio', { name: /^Mixed test/ }).check();
  await page.getByLabel('Calls in a run').selectOption('10');
  await page.getByRole('button', { name: 'Begin' }).click();
  for (let call = 1; call <= 10; call++) {
    await expect(heading(page)).toHaveText(`Call ${call} of 10`);
    await page.keyboard.press('a');
    await page.keyboard.press('Enter');
    await expect(page.locator('.feedback')).toHaveCount(0);
  }
  await expect(heading(page)).toHaveText('This run');
  await expect(page.locator('.summary tbody tr')).toHaveCount(10);
  await page.locator('.summary .look').nth(2).click();
  await expect(page.getByText('you said')).toBeVisible();
  await expect(heading(page)).toHaveText('Call 3 of 10');
  await page.getByRole('button', { name: 'To the summary' }).click();
  await expect(heading(page)).toHaveText('This run');
});

test('what was called is shown on the Bench as it was', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: 'See it on the Bench' }).click();
  await expect(page.locator('svg.section')).toBeVisible();
  await expect(page).toHaveURL(/#bench$/);
});

test.describe('by touch', () => {
  test.use({ viewport: { width: 360, height: 740 }, hasTouch: true });

  test('a round is played by thumb: every target is large enough, the action always in reach', async ({
    page,
  }) => {
    await begin(page);
    await page.getByRole('button', { name: /^Reject/ }).tap();
    await page.locator('fieldset label').first().tap();
    const action = page.getByRole('button', { name: 'Make the call' });
    await expect(action).toBeInViewport({ ratio: 1 });
    await expect(page.locator('svg.call-drawing')).toBeInViewport();
    const small = await page
      .locator('.question :is(button, .faults label, .steps label)')
      .evaluateAll((targets) =>
        targets
          .map((target) => ({ name: target.textContent, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.height < 44)
          .map(({ name, box }) => `${name}: ${box.height}`),
      );
    expect(small).toEqual([]);
    await action.tap();
    await expect(page.getByText('you said')).toBeVisible();
    await expect(page.locator('.primary.quiet')).toHaveCount(0);
    await page.getByRole('button', { name: 'Next section' }).tap();
    await expect(heading(page)).toHaveText('Call 2 of 10');
  });
});

for (const [failing, how] of [
  [
    'refuses to open',
    () =>
      (indexedDB.open = () => {
        throw new DOMException('no', 'SecurityError');
      }),
  ],
  [
    'is full',
    () =>
      (IDBObjectStore.prototype.put = () => {
        throw new DOMException('full', 'QuotaExceededError');
      }),
  ],
] as const) {
  test(`calls go on and say so where the browser's database ${failing}`, async ({ page }) => {
    await page.addInitScript(how);
    await begin(page);
    await page.keyboard.press('a');
    await page.keyboard.press('Enter');
    await expect(page.getByText('you said')).toBeVisible();
    await expect(page.getByRole('alert')).toBeVisible();
    // feedback first, then its quiet moment
    await expect(page.locator('.feedback')).toBeVisible();
    await expect(page.locator('.primary.quiet')).toHaveCount(0);
    await page.keyboard.press('Enter');
    await expect(heading(page)).toHaveText('Call 2 of 10');
  });
}

test('all calls are deleted when it was asked twice, and the page says that there are none', async ({
  page,
}) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  await expect(page.getByText('you said')).toBeVisible();
  await openCalls(page, '/progress');
  const ask = page.getByRole('button', { name: 'Delete all calls' });
  await ask.click();
  // the harmless answer is at hand, and Escape is that answer
  await expect(page.getByRole('button', { name: 'Keep them' })).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('alertdialog')).toHaveCount(0);
  await expect(ask).toBeFocused();
  await ask.click();
  expect(await kept(page)).toBe(1);
  await page.getByRole('button', { name: 'Yes, delete them all' }).click();
  await expect(page.getByText('All calls are deleted.')).toBeVisible();
  expect(await kept(page)).toBe(0);
});

test('calls saved to a file come back from it once', async ({ page }) => {
  await begin(page);
  await page.keyboard.press('a');
  await page.keyboard.press('Enter');
  await expect(page.getByText('you said')).toBeVisible();
  await openCalls(page, '/progress');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save as JSON' }).click();
  const file = await (await saving).path();
  await page.getByLabel('Bring in a file').setInputFiles(file);
  await expect(page.getByText('Calls brought in: 0. Here already: 1.')).toBeVisible();
  expect(await kept(page)).toBe(1);
});

for (const { screen, scheme } of LOOKS) {
  test(`start, question, answer and progress pass axe on a ${screen.name} in ${scheme}`, async ({
    page,
  }) => {
    await page.setViewportSize(screen);
    await page.emulateMedia({ colorScheme: scheme });
    await openCalls(page);
    await expect(page.getByRole('button', { name: 'Begin' })).toBeVisible();
    expect(await axeFindings(page)).toEqual([]);
    await begin(page);
    await page.keyboard.press('r');
    expect(await axeFindings(page)).toEqual([]);
    await page.keyboard.press('1');
    await page.keyboard.press('Enter');
    await expect(page.getByText('you said')).toBeVisible();
    // feedback first, then its quiet moment
    await expect(page.locator('.feedback')).toBeVisible();
    await expect(page.locator('.primary.quiet')).toHaveCount(0);
    expect(await axeFindings(page)).toEqual([]);
    await openCalls(page, '/progress');
    await expect(heading(page)).toHaveText('Your eye');
    expect(await axeFindings(page)).toEqual([]);
  });
}
