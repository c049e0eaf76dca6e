import {
  isNewer,
  logFromCsv,
  logFromJson,
  logToCsv,
  logToJson,
  merge,
  readRecord,
  type LogRecord,
  type NewerRecord,
} from '../quiz/index.ts';
import type { Message } from '../units/index.ts';
import { notOpened, openCallDatabase, otherTabs, type CallDatabase } from './call-database.ts';
import { isRun, type CallKeeper, type KeptRun } from './call-run.ts';

/** What bringing a file in came to; slips go with their calls. */
export type BroughtIn =
  | {
      readonly ok: true;
      /** calls that were new here */
      readonly added: number;
      /** calls that were here already */
      readonly known: number;
      /** records of a later version of the program, kept as they are */
      readonly later: number;
    }
  | { readonly ok: false; readonly why: Message };

/**
 * The calls of one person on one machine: kept in the browser's database, each written before its
 * feedback is shown. Where the browser keeps nothing the calls stay in memory, that is said, and
 * writing is tried again with every call. No call is ever changed; a slip is a record of its own.
 */
export class CallLog implements CallKeeper {
  #database: CallDatabase | null = null;
  readonly #channel: BroadcastChannel | null;
  /** records that the database has refused so far */
  #unwritten: readonly (LogRecord | NewerRecord)[] = [];
  /** records of a later version of the program, kept as they are */
  #newer: readonly NewerRecord[] = [];
  #run: KeptRun | null = null;
  /** the records, oldest first */
  records = $state.raw<readonly LogRecord[]>([]);
  /** why calls are not kept beyond this page; null while they are */
  trouble = $state.raw<Message | null>(null);

  private constructor(channel: BroadcastChannel | null) {
    this.#channel = channel;
    channel?.addEventListener('message', () => void this.#readAgain());
  }

  /** Opens what was kept; never fails: where nothing can be kept the log goes on in memory and says so. */
  static async open(): Promise<CallLog> {
    const log = new CallLog(otherTabs());
    await log.#open();
    return log;
  }

  async #open(): Promise<void> {
    try {
      const database = await this.#connect();
      this.#database = database;
      await this.#readAgain();
      const run: unknown = await database.get('state', 'run');
      this.#run = isRun(run) ? run : null;
    } catch (error) {
      this.#lose(notOpened(error));
    }
  }

  #connect = (): Promise<CallDatabase> => openCallDatabase((why) => this.#lose(why));

  #lose(why: Message): void {
    this.#database = null;
    this.trouble = why;
  }

  /** Takes in what another tab has written; without a database what is here is all there is. */
  async #readAgain(): Promise<void> {
    if (this.#database === null) return;
    const kept: readonly unknown[] = await this.#database.getAll('records');
    const values = [...kept, ...this.#unwritten];
    this.#newer = values.filter(isNewer);
    this.records = merge(values.filter((value) => !isNewer(value)).flatMap(readOrNothing), []);
  }

  /** The round that a reload broke off. */
  get run(): KeptRun | null {
    return this.#run;
  }

  /** Records of a later version of the program, which this one can't count. */
  get newer(): number {
    return this.#newer.length;
  }

  async add(record: LogRecord): Promise<void> {
    this.records = [...this.records, record];
    await this.#write([...this.#unwritten, record]);
  }

  async #write(records: readonly (LogRecord | NewerRecord)[]): Promise<void> {
    this.#unwritten = records;
    const database = this.#database;
    if (database === null) {
      this.trouble ??= { key: 'calls_log_not_kept' };
      return;
    }
    try {
      const writing = database.transaction('records', 'readwrite');
      const { store } = writing;
      const isKept = await Promise.all(records.map(({ id }) => store.getKey(id)));
      // what another tab wrote under the same name stands
      const fresh = records.filter((_, place) => isKept[place] === undefined);
      await Promise.all([...fresh.map((record) => store.put(record)), writing.done]);
      this.#unwritten = [];
      this.trouble = null;
      this.#channel?.postMessage('written');
      if (fresh.length < records.length) await this.#readAgain();
    } catch (error) {
      const isFull = error instanceof DOMException && error.name === 'QuotaExceededError';
      this.trouble = { key: isFull ? 'calls_log_full' : 'calls_log_not_kept' };
    }
  }

  keepRun(run: KeptRun | null): void {
    this.#run = run;
    const kept =
      run === null
        ? this.#database?.delete('state', 'run')
        : this.#database?.put('state', run, 'run');
    // a round that isn't kept is only a question lost; the calls say when they aren't
    kept?.catch(() => undefined);
  }

  exportJson = (): string => logToJson(this.records, this.#newer);
  exportCsv = (): string => logToCsv(this.records);

  /** Brings the calls of a file in, whole or not at all; what is here already is not taken twice. */
  async bringIn(text: string): Promise<BroughtIn> {
    const read = /^\uFEFF?\s*[{[]/u.test(text) ? logFromJson(text) : logFromCsv(text);
    if (!read.ok) return read;
    const here = new Set([...this.records, ...this.#newer].map(({ id }) => id));
    const all = merge(read.records, []);
    const fresh = all.filter(({ id }) => !here.has(id));
    const newer = read.newer.filter(({ id }) => !here.has(id));
    this.records = merge(this.records, fresh);
    this.#newer = [...this.#newer, ...newer];
    await this.#write([...this.#unwritten, ...fresh, ...newer]);
    const added = callsAmong(fresh);
    return { ok: true, added, known: callsAmong(all) - added, later: read.newer.length };
  }

  /**
   * Deletes every call for good, here and in other tabs. A database that was lost is opened again
   * first: it still holds what was written. False where that can't be done; then all stays as it is.
   */
  async clear(): Promise<boolean> {
    let database: CallDatabase;
    try {
      database = this.#database ?? (await this.#connect());
    } catch (error) {
      this.#lose(notOpened(error));
      const isDone = this.#isHereOnly();
      if (isDone) this.#forget();
      return isDone;
    }
    try {
      const deleting = database.transaction(['records', 'state'], 'readwrite');
      await Promise.all([
        deleting.objectStore('records').clear(),
        deleting.objectStore('state').delete('run'),
        deleting.done,
      ]);
    } catch {
      if (this.#database === null) database.close();
      return false;
    }
    this.#database = database;
    this.trouble = null;
    this.#forget();
    this.#channel?.postMessage('cleared');
    return true;
  }

  /** Whether all that is here was never written: then there is nothing of it to delete elsewhere. */
  #isHereOnly(): boolean {
    const held = new Set(this.#unwritten.map(({ id }) => id));
    return (
      this.trouble?.key === 'calls_log_not_kept' &&
      [...this.records, ...this.#newer].every(({ id }) => held.has(id))
    );
  }

  #forget(): void {
    this.#unwritten = [];
    this.#run = null;
    this.records = [];
    this.#newer = [];
  }

  /** Lets go of the database and of other tabs. */
  close(): void {
    this.#database?.close();
    this.#channel?.close();
  }
}

const callsAmong = (records: readonly LogRecord[]): number =>
  records.filter(({ kind }) => kind === 'call').length;

/** A record that can't be read is passed over: it stays in the database as it is. */
function readOrNothing(value: unknown): readonly LogRecord[] {
  try {
    return [readRecord(value)];
  } catch {
    return [];
  }
}
