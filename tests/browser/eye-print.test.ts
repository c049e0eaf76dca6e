import type { Page } from '@playwright/test';
import { limitSets } from '../../src/limits/index.ts';
import { logToJson, quantityOf, type CallRecord, type SkillId } from '../../src/quiz/index.ts';
import { callWith } from '../quiz/any-call.ts';
import { expect, test } from './harness.ts';

/** Pages of a PDF, counted by their objects. */
const pagesIn = (pdf: Buffer): number =>
  (pdf.toString('latin1').match(/\/Type\s*\/Page\b/g) ?? []).length;

/** So many skills that rows of the built-in sets ask for. */
const skills = (count: number): readonly SkillId[] =>
  [
    ...new Set(
      limitSets.flatMap(({ criteria }) =>
        criteria.flatMap(({ kind = 'butt', measurements }) =>
          measurements.flatMap((measurement): readonly SkillId[] => [
            `${kind}.welded.${quantityOf(measurement)}.max`,
            `${kind}.welded.${quantityOf(measurement)}.min`,
          ]),
        ),
      ),
    ),
  ].slice(0, count);

/** A full log: every figure has calls enough, the first skills the most. */
function fullLog(count: number): string {
  const calls = skills(count).flatMap((skill, at) =>
    Array.from({ length: at < 3 ? 72 : 24 }, (_, index): CallRecord => {
      const distance = ((index % 12) - 5.5) / 20;
      const truth = index % 11 === 7 ? 'refer' : distance > 0 ? 'reject' : 'accept';
      const isTurned = Math.abs(distance) < 0.1 && index % 3 === 0;
      const call = isTurned === (truth === 'reject') ? 'accept' : 'reject';
      const spec = { ...callWith().spec, skill, seed: index };
      return callWith({
        id: `${skill} ${index}`,
        at: new Date(Date.UTC(2026, 2, 1 + at, 8, index)).toISOString(),
        run: `${skill} ${Math.floor(index / 12)}`,
        way: at > 3 && index % 2 === 0 ? 'rareFaults' : 'practice',
        spec,
        skill,
        distance,
        truth,
        fault: truth === 'reject' ? 'undercut.max' : null,
        answer: {
          call: index % 17 === 3 ? 'refer' : call,
          fault:
            call === 'reject'
              ? (['overlap.max', 'notSure', 'underfill.max', 'toeAngle.min'] as const)[index % 4]
              : null,
          sure: 50 + 10 * (index % 6),
        } as CallRecord['answer'],
        pxPerMm: 30,
      });
    }),
  );
  return logToJson(calls);
}

async function openEye(page: Page, count: number): Promise<void> {
  await page.goto('./#calls/progress', { waitUntil: 'networkidle' });
  await page.getByLabel('Bring in a file').setInputFiles({
    name: 'calls.json',
    mimeType: 'application/json',
    buffer: Buffer.from(fullLog(count)),
  });
  await expect(page.getByText(/^Calls brought in: \d+\. Here already: 0\.$/u)).toBeVisible();
}

for (const format of ['A4', 'Letter']) {
  test(`an eye of 25 skills prints on one page of ${format}, and says how many are not on it`, async ({
    page,
  }) => {
    await openEye(page, 25);
    expect(pagesIn(await page.pdf({ format, printBackground: true }))).toBe(1);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.skills > section:visible')).toHaveCount(2);
    await expect(page.locator('.further tbody tr')).toHaveCount(12);
    await expect(page.getByText(/^And 11 more/u)).toBeVisible();
    await expect(page.getByText('Name', { exact: true })).toBeVisible();
  });

  test(`an eye of 12 skills prints on one page of ${format}, and tells them all`, async ({
    page,
  }) => {
    await openEye(page, 12);
    expect(pagesIn(await page.pdf({ format, printBackground: true }))).toBe(1);
    await page.emulateMedia({ media: 'print' });
    await expect(page.locator('.further tbody tr')).toHaveCount(10);
    await expect(page.getByText(/^And \d+ more/u)).toHaveCount(0);
  });
}
