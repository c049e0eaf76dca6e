/**
 * A place where texts are kept by name. Browsers may refuse one (private window, policy) or run
 * full, so neither reading nor writing ever throws.
 */
export interface Shelf {
  /** The text kept under `name`, or null when there is none or the shelf refuses. */
  read(name: string): string | null;
  /** Whether the text was kept. */
  write(name: string, text: string): boolean;
}

/** The browser's own storage for this address. `open` is called each time: asking may itself throw. */
export function browserShelf(open: () => Storage): Shelf {
  return {
    read(name) {
      try {
        return open().getItem(name);
      } catch {
        return null;
      }
    },
    write(name, text) {
      try {
        open().setItem(name, text);
        return true;
      } catch {
        return false;
      }
    },
  };
}
