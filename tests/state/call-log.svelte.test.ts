import { forceCloseDatabase, IDBFactory } from 'fake-indexeddb';
import { deleteDB, openDB } from 'idb';
import 'fake-indexeddb/auto';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { defaultJobSheet } from '../../src/limits/index.ts';
import { CallLog } from '../../src/state/call-log.svelte.ts';
import type { KeptRun } from '../../src/state/call-run.ts';
import { logToJson } from '../../src/quiz/index.ts';
import { callWith, slipOf } from '../quiz/any-call.ts';

let open: CallLog[] = [];
async function logHere(): Promise<CallLog> {
  const log = await CallLog.open();
  open.push(log);
  return log;
}

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  for (const log of open) log.close();
  open = [];
  vi.restoreAllMocks();
});

/** The connections that are opened from here on. */
function connectionsOpened(): readonly IDBDatabase[] {
  const connections: IDBDatabase[] = [];
  const { indexedDB } = globalThis;
  const opening = indexedDB.open.bind(indexedDB);
  vi.spyOn(indexedDB, 'open').mockImplementation((name, version) => {
    const request = opening(name, version);
    request.addEventListener('success', () => connections.push(request.result));
    return request;
  });
  return connections;
}

/** A log whose connection the browser has ended, as it does when its storage fails, with one call written. */
async function lostLog(): Promise<CallLog> {
  const connections = connectionsOpened();
  const log = await logHere();
  await log.add(callWith({ id: 'a' }));
  forceCloseDatabase(connections[0] as never);
  await vi.waitFor(() => expect(log.trouble?.key).toBe('calls_log_not_kept'));
  return log;
}

const run: KeptRun = {
  version: 1,
  id: 'run-1',
  way: 'practice',
  skill: null,
  length: 20,
  sheet: defaultJobSheet(),
  spec: callWith().spec,
};

describe('the log of calls', () => {
  it('has a call written before it says so, and gives it back to the next page', async () => {
    const log = await logHere();
    await log.add(callWith({ id: 'a' }));
    await log.add(slipOf('a'));
    expect(log.trouble).toBeNull();
    log.close();
    const next = await logHere();
    expect(next.records.map(({ id }) => id)).toEqual(['a', 'slip of a']);
  });

  it('keeps a section that is infinitely far inside', async () => {
    const log = await logHere();
    await log.add(callWith({ distance: -Infinity, truth: 'accept', fault: null }));
    log.close();
    const [record] = (await logHere()).records;
    expect(record).toEqual(callWith({ distance: -Infinity, truth: 'accept', fault: null }));
  });

  it('gives back the round that was broken off, and forgets it when it is over', async () => {
    const log = await logHere();
    log.keepRun(run);
    await log.add(callWith());
    log.close();
    const next = await logHere();
    expect(next.run).toEqual(run);
    next.keepRun(null);
    await next.add(callWith({ id: 'b' }));
    next.close();
    expect((await logHere()).run).toBeNull();
  });

  it('goes on in memory where the browser opens no database, and says so', async () => {
    vi.spyOn(globalThis.indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    const log = await logHere();
    await log.add(callWith());
    expect(log.records).toHaveLength(1);
    expect(log.trouble?.key).toBe('calls_log_not_kept');
    expect(log.exportJson()).toContain('call-1');
  });

  it('on a full disk goes on, says so, and writes all that is missing once there is room', async () => {
    const log = await logHere();
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await log.add(callWith({ id: 'a' }));
    await log.add(callWith({ id: 'b' }));
    expect(log.trouble?.key).toBe('calls_log_full');
    expect(log.records.map(({ id }) => id)).toEqual(['a', 'b']);
    put.mockRestore();
    await log.add(callWith({ id: 'c' }));
    expect(log.trouble).toBeNull();
    log.close();
    expect((await logHere()).records.map(({ id }) => id)).toEqual(['a', 'b', 'c']);
  });

  it('leaves a database of a newer program alone, goes on in memory and says so', async () => {
    const later = await openDB('toeline-calls', 7, {
      upgrade(database) {
        void database.createObjectStore('records', { keyPath: 'id' }).put({ id: 'x', version: 7 });
      },
    });
    later.close();
    const log = await logHere();
    expect(log.trouble?.key).toBe('calls_log_newer_program');
    await log.add(callWith());
    expect(log.records).toHaveLength(1);
    const still = await openDB('toeline-calls', 7);
    expect(await still.getAll('records')).toEqual([{ id: 'x', version: 7 }]);
    still.close();
  });

  it('keeps records of a later version as they are, out of the count and in the export', async () => {
    const log = await logHere();
    await log.add(callWith());
    log.close();
    const database = await openDB('toeline-calls', 1);
    await database.put('records', { id: 'x', version: 2, kind: 'glance' });
    database.close();
    const next = await logHere();
    expect(next.records).toHaveLength(1);
    expect(next.newer).toBe(1);
    expect(next.exportJson()).toContain('"kind":"glance"');
  });

  it('keeps the first of two calls that two tabs make on one question in the same instant', async () => {
    const [first, second] = [await logHere(), await logHere()];
    const [one, other] = [callWith({ id: 'a', took: 1 }), callWith({ id: 'a', took: 2 })];
    await Promise.all([first.add(one), second.add(other)]);
    await vi.waitFor(() => {
      expect(first.records).toEqual([one]);
      expect(second.records).toEqual([one]);
    });
    expect([first.trouble, second.trouble]).toEqual([null, null]);
    expect((await logHere()).records).toEqual([one]);
  });

  it('takes in what another tab calls', async () => {
    const [one, other] = [await logHere(), await logHere()];
    await one.add(callWith({ id: 'a' }));
    await vi.waitFor(() => expect(other.records.map(({ id }) => id)).toEqual(['a']));
    await other.add(callWith({ id: 'b' }));
    await vi.waitFor(() => expect(one.records.map(({ id }) => id)).toEqual(['a', 'b']));
  });

  it('brings a file in once, however often it is opened', async () => {
    const log = await logHere();
    await log.add(callWith({ id: 'a' }));
    await log.add(callWith({ id: 'b', at: '2026-03-02T08:20:00.000Z' }));
    const [json, csv] = [log.exportJson(), log.exportCsv()];
    await log.clear();
    expect(log.records).toEqual([]);
    expect(await log.bringIn(json)).toEqual({ ok: true, added: 2, known: 0, later: 0 });
    expect(await log.bringIn(csv)).toEqual({ ok: true, added: 0, known: 2, later: 0 });
    log.close();
    expect((await logHere()).records.map(({ id }) => id)).toEqual(['a', 'b']);
  });

  it('counts a record that stands twice in a file once, and keeps one of a later version', async () => {
    const log = await logHere();
    const [a, b] = [callWith({ id: 'a' }), callWith({ id: 'b' })];
    const later = { version: 2, id: 'x', kind: 'glance' };
    const file = logToJson([a, b, a], [later]);
    expect(await log.bringIn(file)).toEqual({ ok: true, added: 2, known: 0, later: 1 });
    log.close();
    const next = await logHere();
    expect(next.records.map(({ id }) => id)).toEqual(['a', 'b']);
    expect(next.newer).toBe(1);
    expect(await next.bringIn(file)).toEqual({ ok: true, added: 0, known: 2, later: 1 });
    // of two that differ under one id one is taken, and the other is not said to be here already
    const twins = logToJson([callWith({ id: 'c' }), callWith({ id: 'c', limit: 0.4 })]);
    expect(await next.bringIn(twins)).toEqual({ ok: true, added: 1, known: 0, later: 0 });
    expect(next.newer).toBe(1);
  });

  it('counts calls and not the slips that go with them', async () => {
    const log = await logHere();
    const file = logToJson([callWith({ id: 'a' }), callWith({ id: 'b' }), slipOf('a')]);
    expect(await log.bringIn(file)).toEqual({ ok: true, added: 2, known: 0, later: 0 });
    expect(log.records).toHaveLength(3);
    expect(await log.bringIn(logToJson([slipOf('b')]))).toEqual({
      ok: true,
      added: 0,
      known: 0,
      later: 0,
    });
  });

  it('says that nothing is kept where the browser is made to forget its database', async () => {
    const log = await logHere();
    await log.add(callWith({ id: 'a' }));
    await deleteDB('toeline-calls');
    expect(log.trouble?.key).toBe('calls_log_not_kept');
    expect(log.records).toHaveLength(1);
  });

  it('refuses a file that is none and keeps what is here', async () => {
    const log = await logHere();
    await log.add(callWith());
    expect(await log.bringIn('{"records":')).toMatchObject({ ok: false });
    expect(await log.bringIn('name,size\r\n')).toMatchObject({ ok: false });
    expect(log.records).toHaveLength(1);
  });

  it('deletes everything on request, the broken-off round too', async () => {
    const log = await logHere();
    log.keepRun(run);
    await log.add(callWith());
    await log.clear();
    log.close();
    const next = await logHere();
    expect(next.records).toEqual([]);
    expect(next.run).toBeNull();
  });

  it('deletes what was written even after the database was lost', async () => {
    const log = await lostLog();
    await log.add(callWith({ id: 'b' }));
    expect(await log.clear()).toBe(true);
    expect(log.records).toEqual([]);
    expect(log.trouble).toBeNull();
    log.close();
    expect((await logHere()).records).toEqual([]);
  });

  it('says that it could not delete what a newer program has taken over, and holds on to it', async () => {
    const log = await logHere();
    await log.add(callWith({ id: 'a' }));
    (await openDB('toeline-calls', 7)).close();
    expect(log.trouble?.key).toBe('calls_log_newer_program');
    expect(await log.clear()).toBe(false);
    expect(log.records.map(({ id }) => id)).toEqual(['a']);
    expect(log.trouble?.key).toBe('calls_log_newer_program');
    const still = await openDB('toeline-calls', 7);
    expect(await still.count('records')).toBe(1);
    still.close();
  });

  it('says that it could not delete where deleting fails, and keeps what is not written too', async () => {
    const log = await logHere();
    await log.add(callWith({ id: 'a' }));
    log.keepRun(run);
    const clear = vi.spyOn(IDBObjectStore.prototype, 'clear').mockImplementation(() => {
      throw new DOMException('no', 'UnknownError');
    });
    expect(await log.clear()).toBe(false);
    expect(log.records).toHaveLength(1);
    expect(log.run).toEqual(run);
    clear.mockRestore();
    log.close();
    const next = await logHere();
    expect(next.records).toHaveLength(1);
    expect(next.run).toEqual(run);
  });

  it('deletes what is in memory only where the browser opens no database', async () => {
    vi.spyOn(globalThis.indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    const log = await logHere();
    await log.add(callWith());
    expect(await log.clear()).toBe(true);
    expect(log.records).toEqual([]);
  });

  it('goes on without other tabs where the browser forbids a channel to them', async () => {
    vi.stubGlobal(
      'BroadcastChannel',
      vi.fn(function forbidden(): never {
        throw new DOMException('no', 'SecurityError');
      }),
    );
    const log = await logHere();
    vi.unstubAllGlobals();
    await log.add(callWith({ id: 'a' }));
    expect([log.records.length, log.trouble]).toEqual([1, null]);
  });

  it.each([{ way: 'gamble' }, { length: 2.5 }, { length: -3 }, { length: 'abc' }, { spec: null }])(
    'takes up no run that is kept as %o',
    async (change) => {
      const log = await logHere();
      log.keepRun({ ...run, ...change } as unknown as KeptRun);
      await log.add(callWith());
      log.close();
      expect((await logHere()).run).toBeNull();
    },
  );

  it('can say nothing of what is written where the lost database opens no more', async () => {
    const log = await lostLog();
    vi.spyOn(globalThis.indexedDB, 'open').mockImplementation(() => {
      throw new DOMException('denied', 'SecurityError');
    });
    expect(await log.clear()).toBe(false);
    expect(log.records).toHaveLength(1);
  });

  it('without its database keeps what is here, whatever another tab writes', async () => {
    const log = await lostLog();
    const third = new BroadcastChannel('toeline-calls');
    const heard = new Promise((resolve) => {
      third.addEventListener('message', resolve, { once: true });
    });
    await (await logHere()).add(callWith({ id: 'b' }));
    await heard;
    third.close();
    // what the message sets off has its turn
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(log.records.map(({ id }) => id)).toEqual(['a']);
  });
});
