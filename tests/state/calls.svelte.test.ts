import { beforeEach, describe, expect, it } from 'vitest';
import { defaultJobSheet, openingLimitSet } from '../../src/limits/index.ts';
import { drawQuestion, type LogRecord, type QuestionSpec } from '../../src/quiz/index.ts';
import type { CallKeeper, Chooser, KeptRun } from '../../src/state/call-run.ts';
import { CallsSession } from '../../src/state/calls.svelte.ts';
import type { World } from '../../src/state/world.ts';

const sheet = defaultJobSheet();
const limits = openingLimitSet;
const undercut = (seed: number, asked: number): QuestionSpec => ({
  version: 1,
  seed,
  skill: 'fillet.welded.undercut.max',
  view: 'cut',
  asked,
});

/** Keeps what it is given; `refuses` makes writing take until it is let go. */
class Keeper implements CallKeeper {
  records: LogRecord[] = [];
  run: KeptRun | null = null;
  wait: Promise<void> = Promise.resolve();
  async add(record: LogRecord): Promise<void> {
    await this.wait;
    this.records.push(record);
  }
  keepRun(run: KeptRun | null): void {
    this.run = run;
  }
}

let clock = 0;
let named = 0;
const world: World = {
  now: () => new Date('2026-03-02T08:15:00Z'),
  clock: () => clock,
  name: () => `name ${named++}`,
  seed: () => 7,
};
let keeper: Keeper;
let specs: QuestionSpec[];
const choose: Chooser = () => specs.shift() ?? undercut(1000 + specs.length, 0.4);
const session = (): CallsSession => new CallsSession(keeper, choose, { sheet, limits }, world);

beforeEach(() => {
  clock = 0;
  named = 0;
  keeper = new Keeper();
  specs = [undercut(1, 0.4), undercut(2, -0.4), undercut(3, 0.4), undercut(4, -0.4)];
});

describe('a run of calls', () => {
  it('asks, writes the call, and only then says what it comes to', async () => {
    const calls = session();
    calls.start('practice', null, 20);
    expect(calls.question?.truth).toBe('reject');
    calls.draft.mark('reject');
    calls.draft.name('undercut.max');
    let written = (): void => undefined;
    keeper.wait = new Promise((done) => (written = done));
    clock = 3210;
    const made = calls.commit(31);
    expect(calls.made).toBeNull();
    expect(calls.writing).toBe(true);
    written();
    await made;
    expect(calls.made?.grade).toMatchObject({ right: true, rightReason: true });
    expect(keeper.records).toHaveLength(1);
    expect(keeper.records[0]).toMatchObject({
      kind: 'call',
      truth: 'reject',
      fault: 'undercut.max',
      answer: { call: 'reject', fault: 'undercut.max', sure: 80 },
      pxPerMm: 31,
      took: 3210,
      run: 'name 0',
    });
  });

  it('takes the same call again for meant, but a reject only once it is said what is wrong', () => {
    const calls = session();
    calls.start('practice', null, 20);
    expect(calls.draft.mark('accept')).toBe(false);
    expect(calls.draft.mark('accept')).toBe(true);
    expect(calls.draft.mark('reject')).toBe(false);
    expect(calls.draft.mark('reject')).toBe(false);
    expect(calls.draft.answer).toBeNull();
    calls.draft.name('notSure');
    expect(calls.draft.mark('reject')).toBe(true);
  });

  it('lets a call be taken back until it is made, and not after', async () => {
    const calls = session();
    calls.start('practice', null, 20);
    calls.draft.mark('accept');
    calls.draft.takeBack();
    expect(calls.draft.call).toBeNull();
    await calls.commit(30);
    expect(keeper.records).toHaveLength(0);
    calls.draft.mark('accept');
    await calls.commit(30);
    calls.draft.takeBack();
    calls.draft.mark('reject');
    expect(calls.made?.record.answer.call).toBe('accept');
    await calls.commit(30);
    expect(keeper.records).toHaveLength(1);
  });

  it('keeps how sure one was for the next question', async () => {
    const calls = session();
    calls.start('practice', null, 20);
    calls.draft.setSure(60);
    calls.draft.mark('accept');
    await calls.commit(30);
    calls.next();
    expect(calls.draft).toMatchObject({ call: null, fault: undefined, sure: 60 });
  });

  it('goes up and down the steps of sure, and stops at their ends', () => {
    const calls = session();
    calls.start('practice', null, 20);
    calls.draft.surer(1);
    expect(calls.draft.sure).toBe(90);
    for (let i = 0; i < 9; i++) calls.draft.surer(1);
    expect(calls.draft.sure).toBe(100);
    for (let i = 0; i < 9; i++) calls.draft.surer(-1);
    expect(calls.draft.sure).toBe(50);
  });

  it('names what is wrong one after the other, round at the ends', () => {
    const calls = session();
    calls.start('practice', null, 20);
    calls.draft.mark('reject');
    const named = calls.draft.names.map(() => {
      calls.draft.nameNext(1);
      return calls.draft.fault;
    });
    expect(named).toEqual(calls.draft.names);
    calls.draft.nameNext(1);
    expect(calls.draft.fault).toBe(calls.draft.names[0]);
    calls.draft.nameNext(-1);
    expect(calls.draft.fault).toBe('notSure');
    calls.draft.takeBack();
    calls.draft.nameNext(-1);
    expect(calls.draft.fault).toBe('notSure');
  });

  it('flags a slip as a record of its own, once', async () => {
    const calls = session();
    calls.start('practice', null, 20);
    calls.draft.mark('accept');
    await calls.commit(30);
    await calls.slip();
    await calls.slip();
    expect(keeper.records.map(({ kind }) => kind)).toEqual(['call', 'slip']);
    expect(keeper.records[1]).toMatchObject({ call: keeper.records[0]?.id });
  });

  it('leaves no record of what is skipped', () => {
    const calls = session();
    calls.start('practice', null, 20);
    const first = calls.question?.spec;
    calls.skip();
    expect(calls.question?.spec).not.toEqual(first);
    expect(keeper.records).toEqual([]);
  });

  it('doesn’t count the time of a pause', async () => {
    const calls = session();
    calls.start('practice', null, 20);
    clock = 1000;
    calls.pause(true);
    expect(calls.draft.mark('accept')).toBe(false);
    clock = 61_000;
    calls.pause(false);
    clock = 62_000;
    calls.draft.mark('accept');
    await calls.commit(30);
    expect(keeper.records[0]).toMatchObject({ took: 2000 });
  });

  it('is not gone on with where its question can’t be drawn any more', () => {
    const calls = session();
    calls.start('practice', null, 2);
    const kept = keeper.run;
    expect(kept).not.toBeNull();
    if (kept === null) return;
    const skill = 'fillet.welded.nothing.min' as const;
    expect(session().resume({ ...kept, spec: { ...kept.spec, skill } })).toBe(false);
    expect(session().resume(kept)).toBe(true);
  });

  it('ends after as many calls as it was to have, and is kept as ended until it is left', async () => {
    const calls = session();
    calls.start('practice', null, 2);
    for (let i = 0; i < 2; i++) {
      calls.draft.mark('accept');
      await calls.commit(30);
      calls.next();
    }
    expect(calls.ended).toBe(true);
    expect(calls.done).toHaveLength(2);
    expect(keeper.run?.ended).toBe(true);
    const after = session();
    if (keeper.run !== null) after.resume(keeper.run);
    expect(after.ended).toBe(true);
    expect(after.done).toEqual(calls.done);
    after.stop();
    expect(keeper.run).toBeNull();
  });

  it('says so where no question can be drawn', () => {
    specs = [];
    const nothing: Chooser = () => null;
    const calls = new CallsSession(keeper, nothing, { sheet, limits }, world);
    calls.start('practice', null, 20);
    expect(calls.question).toBeNull();
    expect(calls.trouble?.key).toBe('calls_error_not_on_this_sheet');
  });
});

describe('a mixed test', () => {
  it('goes on without feedback, which comes at the end, call by call', async () => {
    const calls = session();
    calls.start('mixedTest', null, 2);
    const asked = calls.question?.spec;
    calls.draft.mark('accept');
    await calls.commit(30);
    expect(calls.made).toBeNull();
    expect(calls.question?.spec).not.toEqual(asked);
    calls.draft.mark('accept');
    await calls.commit(30);
    expect(calls.ended).toBe(true);
    const [first] = calls.done;
    if (first === undefined) throw new Error('no call');
    calls.review(first);
    expect(calls.question?.spec).toEqual(asked);
    expect(calls.made?.grade.right).toBe(false);
    calls.next();
    expect(calls.ended).toBe(true);
  });
});

describe('a round that a reload broke off', () => {
  it('goes on with the very same question and the calls made before', async () => {
    const before = session();
    before.start('practice', null, 20);
    before.draft.mark('accept');
    await before.commit(30);
    before.next();
    const open = before.question;
    const kept = JSON.parse(JSON.stringify(keeper.run)) as KeptRun;
    const after = session();
    after.resume(kept);
    expect(after.question).toEqual(open);
    expect(after.question).toEqual(drawQuestion(kept.spec, sheet, limits));
    expect(after.done).toHaveLength(1);
    expect(after.run?.id).toBe(before.run?.id);
  });

  it('goes on with what was highlighted, taken back or named since', () => {
    const reloaded = (): CallsSession => {
      const after = session();
      after.resume(JSON.parse(JSON.stringify(keeper.run)) as KeptRun);
      return after;
    };
    let calls = session();
    calls.start('practice', null, 20);
    calls.draft.mark('reject');
    calls = reloaded();
    expect(calls.draft.call).toBe('reject');
    expect(calls.draft.answer).toBeNull();
    calls.draft.name('undercut.max');
    calls.draft.setSure(60);
    calls = reloaded();
    expect(calls.draft.answer).toEqual({ call: 'reject', fault: 'undercut.max', sure: 60 });
    calls.draft.takeBack();
    calls = reloaded();
    expect(calls.draft.call).toBeNull();
    expect(calls.draft.sure).toBe(60);
  });

  it('passes over what can’t be answered to its question', () => {
    session().start('practice', null, 20);
    const { run } = keeper;
    if (run === null) throw new Error('no round');
    const after = session();
    after.resume({ ...run, answer: { call: 'reject', fault: 'underfill.max', sure: 65 } });
    expect(after.draft.call).toBe('reject');
    expect(after.draft.fault).toBeUndefined();
    expect(after.draft.sure).toBe(80);
    const damaged = { call: 'no call', sure: 'high' } as unknown as KeptRun['answer'] & object;
    expect(session().resume({ ...run, answer: damaged })).toBe(true);
  });

  it('shows what the call made on it came to, and asks no second time', async () => {
    const before = session();
    before.start('practice', null, 20);
    const kept = keeper.run;
    before.draft.mark('accept');
    await before.commit(30);
    const after = session();
    if (kept === null) throw new Error('no round');
    after.resume(kept);
    expect(after.made).toEqual(before.made);
    await after.slip();
    const again = session();
    again.resume(kept);
    expect(again.slipped).toBe(true);
  });

  it('goes on to the next question of a test, where feedback waits', async () => {
    const before = session();
    before.start('mixedTest', null, 20);
    const kept = keeper.run;
    before.draft.mark('accept');
    await before.commit(30);
    const after = session();
    if (kept === null) throw new Error('no round');
    after.resume(kept);
    expect(after.made).toBeNull();
    expect(after.question?.spec).not.toEqual(kept.spec);
  });

  it('writes one call where the same question stands open in two tabs', async () => {
    const one = session();
    one.start('practice', null, 20);
    const kept = keeper.run;
    const two = session();
    if (kept === null) throw new Error('no round');
    two.resume(kept);
    one.draft.mark('accept');
    await one.commit(30);
    two.draft.mark('reject');
    two.draft.name('notSure');
    await two.commit(30);
    expect(keeper.records).toHaveLength(1);
    expect(two.made?.record.answer.call).toBe('accept');
    expect(two.done).toHaveLength(1);
    // said, for the hand that made the other call saw it come to nothing
    expect([one.overruled, two.overruled]).toEqual([false, true]);
    two.next();
    expect(two.overruled).toBe(false);
  });
});
