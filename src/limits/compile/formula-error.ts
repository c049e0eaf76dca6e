import type { Message } from '../../units/index.ts';

/** A formula refused, with the reason and the piece of text that it is about. */
export class FormulaError extends Error {
  readonly reason: Message;

  constructor(key: string, place: string, values: Readonly<Record<string, string | number>> = {}) {
    super(`${key} at ${place}`);
    this.name = 'FormulaError';
    this.reason = { key, values: { place, ...values } };
  }
}
