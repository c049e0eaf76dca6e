import type { Shelf } from './shelf.ts';

const NAME = 'toeline.calls';

/** How a person wants calls made, kept on the shelf. */
export class CallsSettings {
  readonly #shelf: Shelf;
  #committing: boolean;

  constructor(shelf: Shelf) {
    this.#shelf = shelf;
    this.#committing = $state.raw(shelf.read(NAME) === 'commit');
  }

  /** Whether a call is made by itself once it has stood highlighted for a while. */
  get committing(): boolean {
    return this.#committing;
  }

  set committing(on: boolean) {
    this.#committing = on;
    this.#shelf.write(NAME, on ? 'commit' : '');
  }
}
