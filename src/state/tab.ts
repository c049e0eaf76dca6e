import { isBenchHash } from './bench-document.ts';

/**
 * What this tab itself remembers: a reload brings it back, also where the browser keeps nothing for
 * the address, and whatever other tabs have kept since.
 */
export interface Tab {
  /** The bench that this tab was left with, or null. */
  read(): string | null;
  /** Whether the text is remembered. */
  write(text: string): boolean;
}

/** The tab's own memory of its present page; a link that was worked on leaves the address. */
export const browserTab: Tab = {
  read() {
    const state: unknown = history.state;
    const bench = typeof state === 'object' && state !== null && 'bench' in state && state.bench;
    return typeof bench === 'string' ? bench : null;
  },
  write(bench) {
    try {
      // Left there, the link would come back over the work at a reload.
      history.replaceState({ bench }, '', isBenchHash(location.hash) ? '#bench' : undefined);
      return true;
    } catch {
      // More than the browser takes, or too often.
      return false;
    }
  },
};
