import { beforeAll, describe, expect, it } from 'vitest';
import { defaultJoint } from '../../src/joint/index.ts';
import type { Check } from '../../src/limits/index.ts';
import { BenchSession } from '../../src/state/bench.svelte.ts';
import { fetchKind } from '../../src/state/built.ts';
import { causeOf } from '../../src/state/cause.ts';
import { rejectsFirst } from '../../src/state/rejects-first.ts';
import { allowedOf, type Allowed } from '../../src/state/parameter-limits.ts';
import { leadParameters } from '../../src/state/lead-parameters.ts';
import { startingBench } from '../../src/state/start.ts';
import { rejectsInWords, shapeOf, summarise, titleOf } from '../../src/state/summary.ts';

const callOf = (bench: BenchSession, measurement: Check['measurement']) =>
  bench.checks.find((check) => check.measurement === measurement)?.call;

beforeAll(() => fetchKind('butt'));
const fillet = (): BenchSession => new BenchSession(startingBench());
const butt = (change: object = {}): BenchSession =>
  new BenchSession({ ...startingBench(), joint: { ...defaultJoint('butt'), ...change } });

describe('the allowed range of a parameter', () => {
  it('is what the checks that read it leave it', () => {
    // The sheet asks for legs of 7; undercut at 12 mm: 0.1 t, at most 0.5 (ISO 5817 level C, 5011).
    const bench = fillet();
    expect(allowedOf('leg1', bench)).toEqual([7, null]);
    expect(allowedOf('undercut1Depth', bench)[0]).toBeNull();
    expect(allowedOf('undercut1Depth', bench)[1]).toBeCloseTo(0.5, 9);
  });

  it('lies on both sides of nothing where either way is worse', () => {
    const [least, most] = allowedOf('offset', butt());
    expect(most).toBeGreaterThan(0);
    expect(least).toBe(most === null ? null : -most);
  });

  it('of two unequal root faces is the same for both: the sheet asks it of any', () => {
    // 1.5 ± 0.5 on the opening sheet; the smaller is put to the least, the larger to the most
    const bench = butt({ stage: 'fitUp', rootFace1: 1.5, rootFace2: 1.8 });
    for (const field of ['rootFace1', 'rootFace2']) expect(allowedOf(field, bench)).toEqual([1, 2]);
    // one comes to be the larger, then both too much: whichever was put to a limit before
    for (const [field, to] of [
      ['rootFace1', 2.5],
      ['rootFace2', 2.5],
    ] as const) {
      bench.propose(field, to);
      for (const each of ['rootFace1', 'rootFace2']) expect(allowedOf(each, bench)).toEqual([1, 2]);
    }
  });

  it('is open where no check reads the parameter', () => {
    expect(allowedOf('crownShift', fillet())).toEqual([null, null]);
  });

  it('lies where the step is judged when plates of 12 and 10 are to be flush on the face', () => {
    const bench = butt({ t1: 12, t2: 10 });
    bench.setSheet({ ...bench.sheet, intendedAlignment: 'faceFlush' });
    const [least, most] = allowedOf('offset', bench);
    // Mid-planes in line leave the thinner plate's face 12/2 − 10/2 = 1 mm low: flush is an offset of 1.
    expect((Number(least) + Number(most)) / 2).toBeCloseTo(1, 6);
    bench.propose('offset', Number(most) + 0.01);
    expect(callOf(bench, 'misalignment')).toBe('reject');
    bench.propose('offset', Number(least) - 0.01);
    expect(callOf(bench, 'misalignment')).toBe('reject');
    bench.propose('offset', Number(least) + 0.01);
    expect(callOf(bench, 'misalignment')).toBe('accept');
    // The zone is where it was, wherever the parameter stands.
    expect(allowedOf('offset', bench)).toEqual([least, most]);
  });

  it('gives the gap only what a square cut leaves of it: at 100° the end stands off by itself', () => {
    const skewed = { endCut: 'square', dihedralAngle: 100, t2: 4 } as const;
    const joint = { ...defaultJoint('fillet'), ...skewed };
    const bench = new BenchSession({ ...startingBench(), joint });
    const [, most] = allowedOf('rootGap', bench);
    const limit = bench.checks.find((check) => check.measurement === 'rootGap')?.limit ?? 0;
    // The far corner of a 4 mm end cut square stands off 4 × sin 10° = 0.6946 mm.
    expect(most).toBeCloseTo(limit - 0.6946, 4);
    for (const [beside, call] of [
      [-0.01, 'accept'],
      [0.01, 'reject'],
    ] as const) {
      bench.propose('rootGap', Number(most) + beside);
      expect(callOf(bench, 'rootGap')).toBe(call);
    }
  });

  it('is not shown where measurement and parameter part: an underfill of stepped plates', () => {
    // 'higher' is counted from the plate that lies higher, so the same cap measures less on it.
    const bench = butt({ offset: 1 });
    const higher = bench.measurements.values['faceReinforcement.higher']?.value;
    expect(higher).not.toBeCloseTo(1.5, 3);
    const only = bench.checks.filter((check) => check.measurement === 'faceReinforcement.higher');
    expect(only.length).toBeGreaterThan(0);
    const { joint, measurements, sheet } = bench;
    expect(allowedOf('capHeight', { joint, measurements, sheet, checks: only })).toEqual([
      null,
      null,
    ]);
  });

  it('holds the limit of a hollow while the face is convex, and of a cap while it is hollow', () => {
    const hollow = (convexity: number): Allowed => {
      const bench = new BenchSession({
        ...startingBench(),
        joint: { ...defaultJoint('fillet'), convexity },
      });
      return allowedOf('convexity', bench);
    };
    expect(hollow(1)).toEqual(hollow(-0.2));
  });
});

describe('what stands first', () => {
  it('is leg, convexity, gap and undercut of a fillet, and their kin of a butt joint', () => {
    const fields = (bench: BenchSession): readonly string[] =>
      leadParameters(bench.joint, bench.parameters).map(({ field }) => field);
    expect(fields(fillet())).toEqual(['leg1', 'convexity', 'rootGap', 'undercut2Depth']);
    expect(fields(butt())).toEqual(['capHeight', 'rootHeight', 'offset', 'undercut2Depth']);
    expect(fields(butt({ stage: 'fitUp' }))).toEqual([
      'bevelAngle1',
      'rootOpening',
      'rootFace1',
      'offset',
    ]);
  });
});

describe('the cause of a call', () => {
  it('names the check that decides and counts the others', () => {
    const bench = fillet();
    bench.propose('leg1', 6);
    const [first, ...more] = causeOf(bench.overall);
    expect(first).toEqual(bench.overall.decides?.name);
    expect(more.map(({ key }) => key)).toContain('bench_cause_more');
  });

  it('is nothing for an accept', () => {
    const bench = fillet();
    bench.propose('undercut2Depth', 0);
    expect(bench.overall.call).toBe('accept');
    expect(causeOf(bench.overall)).toEqual([]);
  });

  it('puts rejects first and keeps the order of the sheet within a call', () => {
    const { checks } = fillet();
    const sorted = rejectsFirst(checks);
    expect(sorted[0]?.measurement).toBe('undercut2');
    expect(sorted.slice(1)).toEqual(checks.filter((check) => check.call !== 'reject'));
  });
});

describe('the section in words', () => {
  it('says plates and face, the plates only where the title has not', () => {
    const keys = ({ measurements }: BenchSession): readonly string[] =>
      summarise(measurements).map(({ key }) => key);
    expect(keys(fillet())).toEqual(['bench_summary_plates', 'bench_summary_convex']);
    expect(keys(butt())).toEqual(['bench_summary_cap']);
    expect(keys(butt({ stage: 'fitUp' }))).toEqual(['bench_summary_groove']);
  });

  it('says what rejects, two of them at most', () => {
    const { overall } = fillet();
    expect(rejectsInWords(overall).map(({ key }) => key)).toEqual(['bench_summary_over']);
    const [undercut] = overall.rejected;
    if (undercut === undefined) throw new Error('an undercut out of limit');
    const named = (key: string) => ({ ...undercut, name: { key } });
    const [one, two, three] = [named('one'), named('two'), named('three')];
    const rejected = [one, two, three];
    const said = (decides: Check | null): readonly unknown[] =>
      rejectsInWords({ ...overall, rejected, decides }).map(({ values }) => values?.['name']);
    expect(said(one)).toEqual([one.name, two.name]);
    // what decides stands first, as it does beside the call
    expect(said(three)).toEqual([three.name, one.name]);
    expect(rejectsInWords({ ...overall, rejected: [], decides: null })).toEqual([]);
  });

  it('says once what sheet and limit set reject for one reason, and twice what is out on both sides', () => {
    const { overall } = fillet();
    const [undercut] = overall.rejected;
    if (undercut === undefined) throw new Error('an undercut out of limit');
    const said = (...rejected: readonly Check[]) => rejectsInWords({ ...overall, rejected });
    const bySheet = { ...undercut, id: 'sheet', limit: 0.4 };
    expect(said(undercut, bySheet)).toHaveLength(1);
    expect(said(undercut, { ...bySheet, sense: 'min' as const })).toHaveLength(2);
    const other = { ...bySheet, name: { ...undercut.name, values: { side: 1 } } };
    expect(said(undercut, bySheet, other)).toHaveLength(2);
  });

  it.each([
    [{ convexity: 0 }, 'bench_summary_flat'],
    [{ convexity: -1 }, 'bench_summary_concave'],
    [{ convexity: 0.6, reverseCurve: 0.5 }, 'bench_summary_mixed'],
    [{ rootGap: 1 }, 'bench_summary_gap'],
    [{ stage: 'fitUp' }, 'bench_summary_gap'],
  ] as const)('says of a fillet with %o: %s', (change, key) => {
    const joint = { ...defaultJoint('fillet'), ...change };
    const bench = new BenchSession({ ...startingBench(), joint });
    expect(shapeOf(bench.measurements).map((said) => said.key)).toContain(key);
  });

  it.each([
    [{}, 'bench_summary_cap'],
    [{ offset: 1 }, 'bench_summary_offset'],
    [{ capHeight: -1, capPast1: 0, capPast2: 0 }, 'bench_summary_underfill'],
    [{ stage: 'fitUp' }, 'bench_summary_groove'],
  ] as const)('says of a butt joint with %o: %s', (change, key) => {
    expect(shapeOf(butt(change).measurements).map((said) => said.key)).toContain(key);
  });

  it('is headed by form and size: legs once welded, plates before and in a butt joint', () => {
    expect(titleOf(fillet().measurements).key).toBe('bench_title_legs');
    expect(titleOf(butt().measurements).key).toBe('bench_title_plates');
  });
});
