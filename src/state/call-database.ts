import { openDB, type DBSchema, type IDBPDatabase } from 'idb';
import type { Message } from '../units/index.ts';

const NAME = 'toeline-calls';
const SCHEMA = 1;

interface Schema extends DBSchema {
  /** every record once, by its id; never changed, only added and, on request, all deleted */
  records: { key: string; value: { readonly id: string } };
  /** the run in progress under `run` */
  state: { key: string; value: unknown };
}

export type CallDatabase = IDBPDatabase<Schema>;

/** Opens the browser's database of calls; `lost` is told when it goes later on, and why. */
export function openCallDatabase(lost: (why: Message) => void): Promise<CallDatabase> {
  return openDB<Schema>(NAME, SCHEMA, {
    upgrade(database) {
      database.createObjectStore('records', { keyPath: 'id' });
      database.createObjectStore('state');
    },
    // a later version in another tab wants to change the database: it goes first
    // (or the person wants the browser to forget it)
    blocking: (_current, wanted, event) => {
      (event.target as IDBDatabase).close();
      lost({ key: wanted === null ? 'calls_log_not_kept' : 'calls_log_newer_program' });
    },
    terminated: () => lost({ key: 'calls_log_not_kept' }),
  });
}

/** Why a database doesn't open: a later version of the program has it, or the browser keeps none. */
export function notOpened(error: unknown): Message {
  const isLater = error instanceof DOMException && error.name === 'VersionError';
  return { key: isLater ? 'calls_log_newer_program' : 'calls_log_not_kept' };
}

/** What other tabs are told by; null where the browser has none, or forbids it here. */
export function otherTabs(): BroadcastChannel | null {
  try {
    return typeof BroadcastChannel === 'undefined' ? null : new BroadcastChannel(NAME);
  } catch {
    return null;
  }
}
