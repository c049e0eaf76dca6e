import type { Message } from '../units/index.ts';

/** A joint that cannot exist, refused by name: which field, which bound, why. */
export class JointError extends Error {
  readonly field: string;
  /** The nearest value of `field` known to be allowed, if there is one to name. */
  readonly bound: number | null;
  readonly reason: Message;

  constructor(field: string, bound: number | null, reason: Message) {
    super(`${field}: ${reason.key}${bound === null ? '' : ` (bound ${bound})`}`);
    this.name = 'JointError';
    this.field = field;
    this.bound = bound;
    this.reason = reason;
  }
}
