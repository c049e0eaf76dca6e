/** How long an answer takes: from when its question was shown, the time it was put away left out. */
export class AnswerClock {
  readonly #clock: () => number;
  #shownAt = 0;
  #pausedAt = 0;
  /** the question is put away for a while */
  paused = $state.raw(false);

  /** `clock`: the time, ms. */
  constructor(clock: () => number) {
    this.#clock = clock;
  }

  /** A question is shown. */
  start(): void {
    this.paused = false;
    this.#shownAt = this.#clock();
  }

  /** The question is put away, or taken up again. */
  pause(on: boolean): void {
    if (on === this.paused) return;
    if (on) this.#pausedAt = this.#clock();
    else this.#shownAt += this.#clock() - this.#pausedAt;
    this.paused = on;
  }

  /** ms since the question was shown, as long as it was to be seen. */
  get took(): number {
    return this.#clock() - this.#shownAt;
  }
}
