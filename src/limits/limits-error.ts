import type { Message } from '../units/index.ts';

/** A job sheet, limit set or formula that can't be taken, refused whole by name: which field, why. */
export class LimitsError extends Error {
  readonly field: string;
  readonly reason: Message;

  constructor(field: string, reason: Message) {
    super(`${field}: ${reason.key} ${JSON.stringify(reason.values ?? {})}`);
    this.name = 'LimitsError';
    this.field = field;
    this.reason = reason;
  }
}
