/**
 * What a slider event costs, from the input event to a laid-out page: against a bare copy of the
 * page that replays the same writes, rounds interleaved; and in milliseconds at a CPU four times
 * slower. Printed, never asserted.
 */
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { expect, test } from '../browser/harness.ts';
import { median, percentile } from './statistics.js';

const ROUNDS = 40;
/** The same with every event painted before the next takes thirty times as long. */
const PACED_ROUNDS = 16;
/**
 * Sweeps of either page before the clock. What runs once an event is compiled for good only after some
 * thousands of events: from the twelfth sweep to the sixtieth an event still falls by a fifth.
 */
const WARM_UP = 60;
const THROTTLE = 4;

const PAGE_SIDE = fileURLToPath(new URL('page-side.js', import.meta.url));

interface Recording {
  readonly styles: readonly string[];
  readonly events: readonly { readonly writes: readonly unknown[] }[];
  readonly text: string;
}

/** What page-side.js puts on the window. */
interface SweepBench {
  timeSweep: (paced?: boolean) => Promise<number[]>;
  record: () => Promise<Recording>;
  become: (recording: Recording) => void;
  timeReplay: (recording: Recording, paced?: boolean) => Promise<number[]>;
}

declare global {
  interface Window {
    sweepBench: SweepBench;
    recording: Recording;
  }
}

interface Rounds {
  readonly sweeps: number[];
  readonly replays: number[];
  readonly ratios: number[];
}

const sum = (times: readonly number[]): number => times.reduce((total, time) => total + time, 0);

const spread = (ratios: readonly number[]): string =>
  `${median(ratios).toFixed(2)} (${ratios.map((ratio) => ratio.toFixed(2)).join(' ')})`;

/** Brings a tab to the front and waits until it has been painted there: what that costs is no event's. */
async function bringToFront(page: Page): Promise<void> {
  await page.bringToFront();
  await page.evaluate(
    () =>
      new Promise((painted) =>
        requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(painted))),
      ),
  );
}

test.setTimeout(600_000);

test('one slider event, from input to a laid-out page', async ({ page, context }) => {
  await context.addInitScript({ path: PAGE_SIDE });
  await page.goto('./', { waitUntil: 'networkidle' });
  for (let i = 0; i < WARM_UP; i++) await page.evaluate(() => window.sweepBench.timeSweep());
  const recording = await page.evaluate(() => window.sweepBench.record());

  const copy = await context.newPage();
  const links = recording.styles.map((href) => `<link rel="stylesheet" href="${href}">`).join('');
  await copy.route('**/copy', (route) =>
    route.fulfill({ contentType: 'text/html', body: `<!doctype html>${links}<body></body>` }),
  );
  await copy.goto('./copy', { waitUntil: 'networkidle' });
  await copy.evaluate((found) => (window.recording = found), recording);
  const replay = async (paced = false): Promise<number[]> => {
    // The rest of a sweep's writes end where it began, except for nodes made on the way: start anew.
    await copy.evaluate(() => window.sweepBench.become(window.recording));
    await bringToFront(copy);
    return copy.evaluate((pace) => window.sweepBench.timeReplay(window.recording, pace), paced);
  };
  for (let i = 0; i < WARM_UP; i++) await replay();
  expect(await copy.evaluate(() => document.body.innerText), 'the replay ends alike').toBe(
    recording.text,
  );

  const sweep = async (paced: boolean): Promise<number[]> => {
    await bringToFront(page);
    return page.evaluate((pace) => window.sweepBench.timeSweep(pace), paced);
  };
  /** Rounds of a sweep and a replay in turns, each first as often as the other. */
  const interleaved = async (rounds: number, paced: boolean): Promise<Rounds> => {
    const found: Rounds = { sweeps: [], replays: [], ratios: [] };
    for (let round = 0; round < rounds; round++) {
      const early = round % 2 === 0 ? null : await replay(paced);
      const swept = await sweep(paced);
      const replayed = early ?? (await replay(paced));
      found.sweeps.push(...swept);
      found.replays.push(...replayed);
      found.ratios.push(sum(swept) / sum(replayed));
    }
    return found;
  };
  const { sweeps, replays, ratios } = await interleaved(ROUNDS, false);
  const paced = await interleaved(PACED_ROUNDS, true);

  const client = await context.newCDPSession(page);
  await client.send('Emulation.setCPUThrottlingRate', { rate: THROTTLE });
  const slow: number[] = [];
  for (let i = 0; i < 4; i++)
    slow.push(...(await page.evaluate(() => window.sweepBench.timeSweep())));

  const events = recording.events.length;
  const writes = sum(recording.events.map(({ writes: made }) => made.length)) / events;
  const figures = [
    `events in a sweep                 ${String(events)}, ${writes.toFixed(0)} writes each`,
    `event, median of all rounds       ${median(sweeps).toFixed(2)} ms`,
    `replay, median of all rounds      ${median(replays).toFixed(2)} ms`,
    `median paired ratio, ${String(ROUNDS)} rounds    ${spread(ratios)}`,
    `at a hand's pace, each event painted before the next, ${String(PACED_ROUNDS)} rounds:`,
    `  event, replay, median           ${median(paced.sweeps).toFixed(2)}, ${median(paced.replays).toFixed(2)} ms`,
    `  median paired ratio             ${spread(paced.ratios)}`,
    `event at ${String(THROTTLE)}x throttle              median ${median(slow).toFixed(1)} ms, p95 ${percentile(slow, 0.95).toFixed(1)} ms`,
  ];
  console.log(`\n${figures.join('\n')}\n`);
});
