import { createContext } from 'svelte';
import type { PreferenceSession } from '../state/preferences.svelte.ts';
import type { Message, MessageValue } from '../units/index.ts';
import { fetchRest, length, quantity, text, type Reading } from './text.ts';

/** Words and numbers as this person reads them; what uses it follows when a switch is turned. */
export class Wording {
  readonly #preferences: PreferenceSession;
  /** whether every sentence is here; words that were not are put in when it turns true */
  #whole = $state.raw(false);

  constructor(preferences: PreferenceSession) {
    this.#preferences = preferences;
  }

  get reading(): Reading {
    void this.#whole;
    return this.#preferences.value;
  }

  /** Pixels to a millimetre of this person's screen; null until it has been measured. */
  get pxPerMm(): number | null {
    return this.#preferences.value.pxPerMm;
  }

  /** Fetches the sentences that the page did not open with; whoever waits for them says so if that fails. */
  async complete(): Promise<void> {
    await fetchRest();
    this.#whole = true;
  }

  /** A sentence by key, for words that stand in a template. */
  say(key: string, values?: Readonly<Record<string, MessageValue>>): string {
    return text(values === undefined ? { key } : { key, values }, this.reading);
  }

  text(message: Message): string {
    return text(message, this.reading);
  }

  /** A message whose lengths stand without their unit, as on the drawing. */
  brief(message: Message): string {
    return text(message, this.reading, true);
  }

  /** A length without its unit. */
  length(value: number, decimals?: number): string {
    return length(value, this.reading, decimals === undefined ? {} : { decimals });
  }

  quantity(value: number, unit: 'mm' | 'deg' | 'mm2' | 'cm3/m' | 'kg/m' | 'ratio'): string {
    return quantity(value, unit, this.reading);
  }
}

export const [getWording, setWording] = createContext<Wording>();
