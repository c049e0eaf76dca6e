import { describe, expect, it } from 'vitest';
import type { FilletJoint } from '../../src/joint/index.ts';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { openReady, readySections } from '../../src/state/ready-sections.ts';
import { startingBench } from '../../src/state/start.ts';

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
  it('are opened beside the outline that is held, so that the two can be compared', async () => {
    const bench = new BenchSession(startingBench());
    bench.hold();
    const mine = bench.held;
    const other = readySections.find(({ id }) => id === 'unequal-legs');
    if (other === undefined) throw new Error('no such section');
    await openReady(bench, other);
    expect((bench.joint as FilletJoint).leg1).toBe(12);
    expect(bench.held).toBe(mine);
  });

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

  const opened = async (id: string): Promise<BenchSession> => {
    const ready = readySections.find((one) => one.id === id);
    if (ready === undefined) throw new Error(`no ready section ${id}`);
    return new BenchSession(await ready.open());
  };

  it('hold the two halves of the comparison with the same legs', async () => {
    const [convex, concave] = [
      (await opened('same-legs-convex')).measurements.values,
      (await opened('same-legs-concave')).measurements.values,
    ];
    expect(convex.leg1?.value).toBe(concave.leg1?.value);
    expect(convex.leg2?.value).toBe(concave.leg2?.value);
  });

  it('have a smooth cap on offset plates that is no underfill', async () => {
    const { values } = (await opened('smooth-cap-offset')).measurements;
    expect(values.centrelineOffset?.value).toBeCloseTo(0.8, 9);
    expect(values.underfill?.value).toBe(0);
  });
});
