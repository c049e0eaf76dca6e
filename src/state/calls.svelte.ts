import type { CompiledLimitSet, JobSheet } from '../limits/index.ts';
import {
  drawQuestion,
  gradeAnswer,
  LOG_VERSION,
  recordOf,
  skillsOf,
  type CallRecord,
  type Grade,
  type Question,
  type QuestionSpec,
  type SkillId,
  type Way,
} from '../quiz/index.ts';
import type { Message } from '../units/index.ts';
import { AnswerClock } from './answer-clock.svelte.ts';
import { CallDraft } from './call-draft.svelte.ts';
import {
  callName,
  isSameAnswer,
  callsIn,
  type CallKeeper,
  type Chooser,
  type KeptRun,
  type Run,
} from './call-run.ts';
import { nextQuestion, questionOf } from './next-question.ts';
import { sameValue } from './same-value.ts';
import { browserWorld, type World } from './world.ts';

/** After feedback nothing is asked for so long, ms: a rule that was just seen needs its moment. */
export const QUIET = 1000;

/**
 * Questions, calls and feedback, one after the other. A call counts once it is committed and
 * written; until then it can be taken back, afterwards it can only be flagged as a slip.
 */
export class CallsSession {
  readonly #keeper: CallKeeper;
  readonly #choose: Chooser;
  readonly #world: World;
  readonly #answering: AnswerClock;

  sheet: JobSheet;
  limits: CompiledLimitSet;
  run = $state.raw<Run | null>(null);
  question = $state.raw<Question | null>(null);
  readonly draft = new CallDraft(
    () => this.question !== null && this.made === null && !this.paused && !this.writing,
    () => this.question?.choices ?? [],
    () => this.#keep(),
  );
  /** the call just made and what it comes to; null while a question is open */
  made = $state.raw<{ readonly record: CallRecord; readonly grade: Grade } | null>(null);
  /** the calls of this run */
  done = $state.raw<readonly CallRecord[]>([]);
  /** the run has come to its end */
  ended = $state.raw(false);
  /** a call is being written */
  writing = $state.raw(false);
  slipped = $state.raw(false);
  /** the open question was called otherwise in another tab before: that call stands, this one counts for nothing */
  overruled = $state.raw(false);
  /** a call of an ended run is looked at again */
  reviewing = $state.raw(false);
  /** why no question could be drawn */
  trouble = $state.raw<Message | null>(null);

  constructor(
    keeper: CallKeeper,
    choose: Chooser,
    on: { readonly sheet: JobSheet; readonly limits: CompiledLimitSet },
    world: World = browserWorld,
  ) {
    this.#keeper = keeper;
    this.#choose = choose;
    this.#world = world;
    this.#answering = new AnswerClock(world.clock);
    this.sheet = on.sheet;
    this.limits = on.limits;
  }

  /** Whether the sheet leaves anything open: then there are three answers to every question on it. */
  get refers(): boolean {
    return skillsOf(this.sheet, this.limits).some(({ refers }) => refers);
  }
  /**
   * px per mm that this run is drawn at, near which each section is to be; null for the first, which
   * stays as it is drawn when it has been called
   */
  readonly heldScale = $derived(
    this.done.find(({ id }) => id !== this.made?.record.id)?.pxPerMm ?? null,
  );
  /** Whether feedback waits for the end: a test is no lesson. */
  readonly testing = $derived(this.run?.way === 'mixedTest');

  start(way: Way, skill: SkillId | null, length: number | null): void {
    this.run = { id: this.#world.name(), way, skill, length };
    this.done = [];
    this.ended = false;
    this.next();
  }

  /**
   * Goes on with a run that was left: with the very question that was open and what was highlighted,
   * with the feedback to the call that was made on it, or with what the run came to. False where its
   * question can't be drawn any more: by a later program, or because it was kept damaged.
   */
  resume({ sheet, spec, answer, ended, ...run }: KeptRun): boolean {
    this.sheet = sheet;
    this.run = { id: run.id, way: run.way, skill: run.skill, length: run.length };
    this.done = callsIn(this.run, this.#keeper.records);
    if (ended === true) {
      this.ended = true;
      return true;
    }
    const { question, trouble } = questionOf(spec, this);
    this.trouble = trouble;
    if (question === null) return false;
    this.#show(question);
    const called = this.#calledOn(spec);
    if (called === undefined) {
      if (answer !== undefined) this.draft.resume(answer);
      return true;
    }
    if (this.testing) this.next();
    else this.#answer(called);
    return true;
  }

  /** The call that was made on a question of this run, in this tab or another. */
  #calledOn(spec: QuestionSpec): CallRecord | undefined {
    return this.run === null
      ? undefined
      : callsIn(this.run, this.#keeper.records).find((call) => sameValue(call.spec, spec));
  }

  /** The next question, or the end of the run. */
  next(): void {
    const { run } = this;
    if (run === null || this.writing) return;
    if (this.reviewing || (run.length !== null && this.done.length >= run.length)) {
      this.#end();
      return;
    }
    const { records } = this.#keeper;
    const { question, trouble } = nextQuestion(this.#choose, run, records, this.#world.seed, this);
    if (question !== null) this.#show(question);
    else {
      this.trouble = trouble;
      this.#end();
    }
  }

  #show(question: Question): void {
    this.question = question;
    this.trouble = null;
    this.made = null;
    this.slipped = false;
    this.overruled = false;
    this.draft.clear();
    this.#answering.start();
    this.#keep();
  }

  /** Keeps where the run stands, for when the page comes back. */
  #keep(): void {
    const { run, sheet, question, ended } = this;
    if (run === null || question === null) return;
    const { spec } = question;
    const answer = this.draft.highlighted;
    this.#keeper.keepRun({ ...run, version: 1, sheet, spec, answer, ...(ended ? { ended } : {}) });
  }

  #end(): void {
    this.ended = true;
    this.reviewing = false;
    this.made = null;
    this.#keep();
  }

  /** Shows a call of this run again, once the run has ended: a test's feedback. */
  review(record: CallRecord): void {
    if (!this.ended) return;
    this.question = drawQuestion(record.spec, this.sheet, this.limits);
    this.#answer(record);
    this.reviewing = true;
    this.ended = false;
  }

  /** Shows what a call on the open question comes to. */
  #answer(record: CallRecord): void {
    if (this.question === null) return;
    this.made = { record, grade: gradeAnswer(this.question, record.answer, this.limits) };
    this.slipped = this.#keeper.records.some(
      (other) => other.kind === 'slip' && other.call === record.id,
    );
  }

  /** Whether the question is put away for a while. */
  get paused(): boolean {
    return this.#answering.paused;
  }

  /** Puts the question away for a while, or takes it up again: the time between counts for nothing. */
  pause(on: boolean): void {
    if (this.question !== null && this.made === null) this.#answering.pause(on);
  }

  /** Makes the call: written first, then answered. What another tab has called stands as it is. */
  async commit(pxPerMm: number): Promise<void> {
    const { question, run } = this;
    const { answer } = this.draft;
    if (question === null || run === null || answer === null) return;
    if (this.writing || this.made !== null) return;
    const called = this.#calledOn(question.spec);
    const record =
      called ??
      recordOf(question, answer, {
        id: callName(run, question.spec),
        at: this.#world.now().toISOString(),
        way: run.way,
        run: run.id,
        pxPerMm,
        took: this.#answering.took,
      });
    this.writing = true;
    try {
      if (called === undefined) await this.#keeper.add(record);
    } finally {
      this.writing = false;
    }
    this.done = callsIn(run, this.#keeper.records);
    this.#answer(record);
    this.overruled = called !== undefined && !isSameAnswer(called.answer, answer);
    if (this.testing) this.next();
  }

  /** Flags the call just made as a slip: out of the curve, still in the tally. */
  async slip(): Promise<void> {
    if (this.made === null || this.slipped) return;
    this.slipped = true;
    await this.#keeper.add({
      version: LOG_VERSION,
      kind: 'slip',
      id: this.#world.name(),
      at: this.#world.now().toISOString(),
      call: this.made.record.id,
    });
  }

  /** Another question in place of this one, which leaves no record. */
  skip(): void {
    if (this.made === null) this.next();
  }

  /** Ends the run before its time: to what it came to, or straight back where no call was made. */
  finish(): void {
    if (this.done.length === 0) this.stop();
    else this.#end();
  }

  /** Leaves the run; what was called is kept. */
  stop(): void {
    this.run = null;
    this.question = null;
    this.made = null;
    this.ended = false;
    this.reviewing = false;
    this.trouble = null;
    this.#keeper.keepRun(null);
  }
}
