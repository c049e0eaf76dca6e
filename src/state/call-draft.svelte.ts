import type { Answer, Fault } from '../quiz/index.ts';

export const STEPS_OF_SURE = [50, 60, 70, 80, 90, 100] as const;
const SURE_AT_FIRST = 80;

type Name = NonNullable<Answer['fault']>;

/** An answer in the making: what is highlighted, and can be taken back until the call is made. */
export class CallDraft {
  readonly #isOpen: () => boolean;
  readonly #choices: () => readonly Fault[];
  call = $state.raw<Answer['call'] | null>(null);
  /** what is named as wrong; undefined while a reject has named nothing */
  fault = $state.raw<Answer['fault'] | undefined>(undefined);
  /** how sure, %: stays from one question to the next */
  sure = $state.raw<number>(SURE_AT_FIRST);

  /** `isOpen`: whether an answer may be changed now; `choices`: the faults that may be named. */
  constructor(isOpen: () => boolean, choices: () => readonly Fault[]) {
    this.#isOpen = isOpen;
    this.#choices = choices;
  }

  /** What may be answered to "what is wrong", in the order of the panel and of its keys. */
  get names(): readonly Name[] {
    return [...this.#choices(), 'somethingElse', 'notSure'];
  }

  /** The answer, where enough is said to be called: a reject says what is wrong. */
  get answer(): Answer | null {
    const { call, fault, sure } = this;
    if (call === null || (call === 'reject' && fault === undefined)) return null;
    return { call, fault: fault ?? null, sure };
  }

  /** Highlights a call; true where it was highlighted already, is meant so, and may be made. */
  mark(call: Answer['call']): boolean {
    if (!this.#isOpen()) return false;
    if (this.call === call) return this.answer !== null;
    this.call = call;
    this.fault = undefined;
    return false;
  }

  /** Names what is wrong; a fault is only named of what is rejected. */
  name(fault: Name): void {
    if (!this.#isOpen()) return;
    this.call = 'reject';
    this.fault = fault;
  }

  /** Names what stands `by` places further down the list than what is named now; round at its ends. */
  nameNext(by: 1 | -1): void {
    const { names } = this;
    const at = names.findIndex((name) => name === this.fault);
    const next = names.at((at < 0 && by < 0 ? -1 : at + by) % names.length);
    if (next !== undefined) this.name(next);
  }

  setSure(sure: number): void {
    if (this.#isOpen()) this.sure = sure;
  }

  /** One step surer, or less sure. */
  surer(by: 1 | -1): void {
    const steps: readonly number[] = STEPS_OF_SURE;
    const next = steps[steps.indexOf(this.sure) + by];
    if (next !== undefined) this.setSure(next);
  }

  /** Takes back what is highlighted. */
  takeBack(): void {
    if (this.#isOpen()) this.clear();
  }

  /** Begins the next answer. */
  clear(): void {
    this.call = null;
    this.fault = undefined;
  }
}
