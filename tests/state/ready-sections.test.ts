import { describe, expect, it } from 'vitest';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { readySections } from '../../src/state/ready-sections.ts';

/** What each section shows: the call, and the measurement that decides it. Trade sense, no source. */
const shows: Readonly<Record<string, readonly [call: string, decides: string | null]>> = {
  'equal-flat-fillet': ['accept', null],
  'same-legs-convex': ['accept', null],
  'same-legs-concave': ['reject', 'concavity'],
  'unequal-legs': ['accept', null],
  'five-sixteenths-undersize': ['reject', 'leg1'],
  'skewed-120': ['accept', null],
  'gap-under-fillet': ['reject', 'rootGap'],
  'lap-melted-edge': ['accept', null],
  overlap: ['reject', 'overlap1'],
  'steep-toe': ['reject', 'convexity'],
  'undercut-fillet': ['reject', 'undercut2'],
  'outside-corner': ['accept', null],
  'single-v-fit-up': ['accept', null],
  'single-v-fit-up-offset': ['reject', 'misalignment'],
  'sound-cap': ['accept', null],
  'heavy-cap': ['reject', 'faceReinforcement.higher'],
  'underfilled-groove': ['reject', 'underfill'],
  'smooth-cap-offset': ['accept', null],
  'undercut-good-cap': ['reject', 'undercut2'],
  'root-concavity': ['reject', 'rootConcavity'],
  'double-v-unfused': ['reject', 'incompletePenetration'],
};

describe('ready sections', () => {
  it('are at least sixteen, each with an entry of what it shows', () => {
    expect(readySections.length).toBeGreaterThanOrEqual(16);
    expect(readySections.map((ready) => ready.id)).toEqual(Object.keys(shows));
  });

  it.each(readySections)('$id shows what it is named for', async (ready) => {
    const bench = new BenchSession(await ready.open());
    const [call, decides] = shows[ready.id] ?? [];
    expect(bench.section.kind).toBe(ready.kind);
    expect(bench.overall.call).toBe(call);
    expect(bench.overall.decides?.measurement ?? null).toBe(decides);
  });

  it('hold the two halves of the comparison with the same legs', async () => {
    const legs = await Promise.all(
      ['same-legs-convex', 'same-legs-concave'].map(async (id) => {
        const bench = new BenchSession(
          await (readySections.find((ready) => ready.id === id) ?? readySections[0]!).open(),
        );
        return [bench.measurements.values.leg1?.value, bench.measurements.values.leg2?.value];
      }),
    );
    expect(legs[0]).toEqual(legs[1]);
  });

  it('have a smooth cap on offset plates that is no underfill', async () => {
    const ready = readySections.find((one) => one.id === 'smooth-cap-offset');
    const bench = new BenchSession(await ready!.open());
    expect(bench.measurements.values.centrelineOffset?.value).toBeCloseTo(0.8, 9);
    expect(bench.measurements.values.underfill?.value).toBe(0);
  });
});
