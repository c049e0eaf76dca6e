import type { LogRecord } from '../quiz/index.ts';
import type { CallKeeper, KeptRun } from './calls.svelte.ts';

/** Calls kept for as long as the page is open. */
export class MemoryLog implements CallKeeper {
  records = $state.raw<readonly LogRecord[]>([]);
  run: KeptRun | null = null;

  add(record: LogRecord): Promise<void> {
    this.records = [...this.records, record];
    return Promise.resolve();
  }

  keepRun(run: KeptRun | null): void {
    this.run = run;
  }
}
