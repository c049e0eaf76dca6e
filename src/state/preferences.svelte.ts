import { readPreferences, type Preferences } from './preferences.ts';
import type { Shelf } from './shelf.ts';

const NAME = 'toeline.preferences';

/** The preferences of this person, kept on the shelf as soon as one changes. */
export class PreferenceSession {
  readonly #shelf: Shelf;
  #value: Preferences;
  #dark = $state.raw(false);

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#value = $state.raw(readPreferences(shelf.read(NAME)));
  }

  get value(): Preferences {
    return this.#value;
  }

  /** Light or dark, the system's own wish already put in. */
  get theme(): 'light' | 'dark' {
    if (this.#value.theme !== 'system') return this.#value.theme;
    return this.#dark ? 'dark' : 'light';
  }

  change(next: Partial<Preferences>): void {
    this.#value = { ...this.#value, ...next };
    this.#shelf.write(NAME, JSON.stringify(this.#value));
  }

  /** Called with what the system says, at the start and whenever it changes. */
  followSystem(dark: boolean): void {
    this.#dark = dark;
  }
}
