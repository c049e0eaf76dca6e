import {
  parametersOf,
  type Joint,
  type ParameterRange,
  type Section,
  type Stage,
} from '../joint/index.ts';
import { judgeAll, overallCall, type Check, type JobSheet } from '../limits/index.ts';
import type { MeasurementId, Measurements } from '../measure/index.ts';
import type { Message } from '../units/index.ts';
import type { ConstructionName } from '../lesson/index.ts';
import type { BenchDocument } from './bench-document.ts';
import { type Work, workOf } from './bench-work.ts';
import { measurementsOf, refusal, sectionOf } from './built.ts';
import { constrain, type Stop } from './constrain.ts';
import { limitSetOf } from './limit-sets.ts';
import { ownSetOf, sourceOf } from './own-sets.svelte.ts';
import { steadyChecks, steadyList, steadyValue } from './steady.ts';
import { titleOf } from './summary.ts';
import { record, redo, startHistory, undo, type History } from './history.ts';

/** The text of a bench that could not be read, and why. */
export interface Unreadable {
  readonly text: string;
  readonly why: Message;
}

/**
 * One bench: a joint and its job sheet, replaced whole; all that follows from them is derived. A
 * change shows at once and becomes a step of the history when it is committed.
 */
export class BenchSession {
  readonly #start: Work;
  #history: History<Work>;
  #joint: Joint;
  #sheet: JobSheet;
  #held: Joint | null;
  #construction: readonly ConstructionName[];
  /** where the last proposal was stopped short, and why */
  stop = $state.raw<Stop | null>(null);
  /** something to tell the person, until the next change */
  notice = $state.raw<Message | null>(null);
  /** what was kept from the last visit and could not be read, until it's saved or waved away */
  unreadable = $state.raw<Unreadable | null>(null);
  /** check pointed at or focused: its witness is lit */
  lit = $state.raw<string | null>(null);
  /** measurement pointed at or focused, whether or not a check judges it: its witness is lit */
  pointed = $state.raw<MeasurementId | null>(null);
  /** check whose working is open */
  opened = $state.raw<string | null>(null);
  /** parameter whose handle or scale has the focus */
  focused = $state.raw<string | null>(null);
  /** the parameter that had it last: what a phone's one big scale holds */
  inHand = $state.raw<string | null>(null);

  constructor(document: BenchDocument) {
    this.#start = workOf(document);
    this.#history = $state.raw(startHistory(this.#start));
    // apart, so that a joint under the hand troubles nothing that asks for the sheet
    this.#joint = $state.raw(document.joint);
    this.#sheet = $state.raw(document.sheet);
    this.#held = $state.raw(document.held);
    this.#construction = $state.raw(document.construction);
  }

  /** all that follows from the joint alone, in one: what shows several parts of it hears of a change once */
  readonly #shape = $derived.by(() => {
    const joint = this.#joint;
    const section = sectionOf(joint);
    return { joint, section, measurements: measurementsOf(section) };
  });
  readonly limits = $derived(limitSetOf(this.sheet.limitSet));
  /** what was judged last and by which sheet, so that rows which say the same stay the same */
  #judged: readonly Check[] = [];
  #judgedBy: JobSheet | null = null;
  readonly checks = $derived.by(() => {
    const { limits, measurements, sheet } = this;
    const judged = limits === undefined ? [] : judgeAll(measurements, sheet, limits);
    // Another sheet may say otherwise of the same numbers: how they are rounded, for one.
    const before = sheet === this.#judgedBy ? this.#judged : [];
    this.#judgedBy = sheet;
    return (this.#judged = steadyChecks(before, judged, this.opened));
  });
  readonly overall = $derived(overallCall(this.checks));
  #title: Message | null = null;
  /** what the section is, in a few words */
  readonly title = $derived.by(
    () => (this.#title = steadyValue(this.#title, titleOf(this.measurements))),
  );
  #ranges: readonly ParameterRange[] = [];
  readonly parameters = $derived.by(
    () => (this.#ranges = steadyList(this.#ranges, parametersOf(this.joint))),
  );
  /** the measurement pointed at, or what the lit check is put to */
  readonly litSubject = $derived(
    this.lit === null
      ? this.pointed
      : (this.checks.find((check) => check.id === this.lit)?.measurement ?? null),
  );

  get joint(): Joint {
    return this.#shape.joint;
  }
  get section(): Section {
    return this.#shape.section;
  }
  get measurements(): Measurements {
    return this.#shape.measurements;
  }
  get sheet(): JobSheet {
    return this.#sheet;
  }
  get held(): Joint | null {
    return this.#held;
  }
  get construction(): readonly ConstructionName[] {
    return this.#construction;
  }
  /** whether a change is under the hand, not settled on yet */
  get moving(): boolean {
    const { joint, sheet, held } = this.#history.present;
    return joint !== this.joint || sheet !== this.#sheet || held !== this.#held;
  }
  /** whether there is something to tell the person */
  get hasNotice(): boolean {
    return this.notice !== null || this.unreadable !== null;
  }
  get canUndo(): boolean {
    return this.#history.past.length > 0;
  }
  get canRedo(): boolean {
    return this.#history.future.length > 0;
  }
  /** The bench as it was last settled on: what is kept, linked and saved. */
  get document(): BenchDocument {
    const own = ownSetOf(this.#history.present.sheet.limitSet);
    return {
      version: 1,
      ...this.#history.present,
      construction: this.#construction,
      ...(own === undefined ? {} : { limits: sourceOf(own) }),
    };
  }

  /** The handle or scale of a parameter was taken in hand, or let go. */
  focus(field: string | null): void {
    this.focused = field;
    if (field !== null) this.inHand = field;
  }

  /** A live change of one parameter, from a pointer, a key, a stepper or a typed field alike. */
  propose(field: string, asked: number): void {
    const { joint, stop } = constrain(this.#joint, field, asked);
    this.stop = stop;
    if (joint !== this.#joint) this.#show({ joint });
  }

  /** Settles on what is shown. */
  commit(): void {
    const work = { joint: this.#joint, sheet: this.#sheet, held: this.#held };
    this.#history = record(this.#history, work);
    this.#hand(this.#history.present);
  }

  /** Gives up the live change. */
  cancel(): void {
    this.stop = null;
    this.#hand(this.#history.present);
  }

  /** A choice that changes what the joint is: the first that can be built; says so when it wasn't the one meant. */
  choose(meant: Joint, ...others: readonly Joint[]): void {
    const refused = refusal(meant);
    if (refused === null) {
      this.#settle({ joint: meant });
      return;
    }
    const other = others.find((joint) => refusal(joint) === null);
    if (other !== undefined) this.#settle({ joint: other });
    this.notice = {
      key: other === undefined ? 'bench_choice_refused' : 'bench_choice_afresh',
      values: { reason: refused },
    };
  }

  setStage(stage: Stage): void {
    this.choose({ ...this.#joint, stage });
  }

  /** Another sheet, one that can be read again: `changeSheet` sees to that. */
  setSheet(sheet: JobSheet): void {
    this.#settle({ sheet });
  }

  undo(): void {
    this.#travel(undo(this.#history));
  }

  redo(): void {
    this.#travel(redo(this.#history));
  }

  /** Back to what the bench opened with, as a step that can be undone; what is held stays. */
  reset(): void {
    const { joint, sheet } = this.#start;
    this.#settle({ joint, sheet });
  }

  /** Another bench in place of this one, as a step that can be undone. */
  load(document: BenchDocument): void {
    this.#settle(workOf(document));
    this.#construction = document.construction;
  }

  /** Holds the present outline to compare with, or lets it go, as a step that can be undone. */
  hold(): void {
    const held = this.held === null ? this.#joint : null;
    // What is under the hand goes on: only the outline is settled on.
    this.#history = record(this.#history, { ...this.#history.present, held });
    this.#held = held;
  }

  showConstruction(name: ConstructionName, on: boolean): void {
    const others = this.#construction.filter((shown) => shown !== name);
    this.#construction = on ? [...others, name] : others;
  }

  /** Puts what is given of the work under the hand, the rest as it is. */
  #hand({ joint = this.#joint, sheet = this.#sheet, held = this.#held }: Partial<Work>): void {
    this.#joint = joint;
    this.#sheet = sheet;
    this.#held = held;
  }

  #show(work: Partial<Work>): void {
    this.notice = null;
    this.#hand(work);
  }

  #settle(work: Partial<Work>): void {
    this.stop = null;
    this.#show(work);
    this.commit();
  }

  #travel(history: History<Work>): void {
    this.stop = null;
    this.notice = null;
    this.#history = history;
    this.#hand(history.present);
  }
}
