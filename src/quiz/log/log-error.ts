import type { Message } from '../../units/index.ts';

/** What can't be taken into a log: where it stands, and why. */
export class LogError extends Error {
  readonly path: string;
  readonly reason: Message;

  constructor(path: string, reason: Message) {
    super(`${path}: ${reason.key}`);
    this.name = 'LogError';
    this.path = path;
    this.reason = reason;
  }
}
