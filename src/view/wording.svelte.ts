import { createContext } from 'svelte';
import type { PreferenceSession } from '../state/preferences.svelte.ts';
import type { Message, MessageValue } from '../units/index.ts';
import { length, quantity, text, type Reading } from './text.ts';

/** Words and numbers as this person reads them; what uses it follows when a switch is turned. */
export class Wording {
  readonly #preferences: PreferenceSession;

  constructor(preferences: PreferenceSession) {
    this.#preferences = preferences;
  }

  get reading(): Reading {
    return this.#preferences.value;
  }

  /** A sentence by key, for words that stand in a template. */
  say(key: string, values?: Readonly<Record<string, MessageValue>>): string {
    return text(values === undefined ? { key } : { key, values }, this.reading);
  }

  text(message: Message): string {
    return text(message, this.reading);
  }

  /** A length without its unit. */
  length(value: number, decimals?: number): string {
    return length(value, this.reading, decimals === undefined ? {} : { decimals });
  }

  quantity(value: number, unit: 'mm' | 'deg' | 'mm2' | 'kg/m' | 'ratio'): string {
    return quantity(value, unit, this.reading);
  }
}

export const [getWording, setWording] = createContext<Wording>();
