import type { Answer, Fault } from '../quiz/index.ts';

export const STEPS_OF_SURE = [50, 60, 70, 80, 90, 100] as const;
const SURE_AT_FIRST = 80;

type Name = NonNullable<Answer['fault']>;

/** What is highlighted of an answer, as it is kept while the page is away. */
export interface Highlighted {
  readonly call: Answer['call'] | null;
  /** left out while nothing is named */
  readonly fault?: Answer['fault'];
  readonly sure: number;
}

/** An answer in the making: what is highlighted, and can be taken back until the call is made. */
export class CallDraft {
  readonly #isOpen: () => boolean;
  readonly #choices: () => readonly Fault[];
  readonly #onchange: () => void;
  call = $state.raw<Answer['call'] | null>(null);
  /** what is named as wrong; undefined while a reject has named nothing */
  fault = $state.raw<Answer['fault'] | undefined>(undefined);
  /** how sure, %: stays from one question to the next */
  sure = $state.raw<number>(SURE_AT_FIRST);

  /**
   * `isOpen`: whether an answer may be changed now; `choices`: the faults that may be named; `onchange`:
   * something else is highlighted.
   */
  constructor(isOpen: () => boolean, choices: () => readonly Fault[], onchange: () => void) {
    this.#isOpen = isOpen;
    this.#choices = choices;
    this.#onchange = onchange;
  }

  /** What may be answered to "what is wrong", in the order of the panel and of its keys. */
  get names(): readonly Name[] {
    return [...this.#choices(), 'somethingElse', 'notSure'];
  }

  /** What is highlighted, to go on from later. */
  get highlighted(): Highlighted {
    const { call, fault, sure } = this;
    return { call, sure, ...(fault === undefined ? {} : { fault }) };
  }

  /** Goes on from what was highlighted; what can't be answered to this question is passed over. */
  resume({ call, fault, sure }: Highlighted): void {
    this.setSure(STEPS_OF_SURE.find((step) => step === sure) ?? SURE_AT_FIRST);
    if (call === 'accept' || call === 'reject' || call === 'refer') this.mark(call);
    const named = this.names.find((name) => name === fault);
    if (call === 'reject' && named !== undefined) this.name(named);
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
    this.#onchange();
    return false;
  }

  /** Names what is wrong; a fault is only named of what is rejected. */
  name(fault: Name): void {
    if (!this.#isOpen()) return;
    this.call = 'reject';
    this.fault = fault;
    this.#onchange();
  }

  /** Names what stands `by` places further down the list than what is named now; round at its ends. */
  nameNext(by: 1 | -1): void {
    const { names } = this;
    const at = names.findIndex((name) => name === this.fault);
    const next = names.at((at < 0 && by < 0 ? -1 : at + by) % names.length);
    if (next !== undefined) this.name(next);
  }

  setSure(sure: number): void {
    if (!this.#isOpen()) return;
    this.sure = sure;
    this.#onchange();
  }

  /** One step surer, or less sure. */
  surer(by: 1 | -1): void {
    const steps: readonly number[] = STEPS_OF_SURE;
    const next = steps[steps.indexOf(this.sure) + by];
    if (next !== undefined) this.setSure(next);
  }

  /** Takes back what is highlighted. */
  takeBack(): void {
    if (!this.#isOpen()) return;
    this.clear();
    this.#onchange();
  }

  /** Begins the next answer. */
  clear(): void {
    this.call = null;
    this.fault = undefined;
  }
}
