import type { Message } from '../units/index.ts';

/** What was asked can't be asked: the view says why. */
export class QuizError extends Error {
  readonly reason: Message;

  constructor(reason: Message) {
    super(reason.key);
    this.name = 'QuizError';
    this.reason = reason;
  }
}
