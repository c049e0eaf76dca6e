import type { ParameterRange } from '../../joint/index.ts';
import type { BenchSession } from '../../state/bench.svelte.ts';
import { leadParameters } from '../../state/lead-parameters.ts';
import { numberAt } from '../../state/parameter.ts';
import { stepped, stepsOf } from '../../state/parameter-step.ts';
import type { Wording } from '../wording.svelte.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };
const CHOICES: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };
/** Sizes of flaws; what shapes one (an undercut's width) is no flaw by itself. */
const FLAWS = /^(undercut.Depth|rootUndercut.Depth|overlap.|capDrop.|incompletePenetration)$/;
/** More than these find no room in one row. */
const MOST_CHOICES = 6;
/** Steps of one key press with Shift. */
const COARSE = 10;

/** The room is asked first: no call, no colour and no reason stands on the wall. Stays so from one showing to the next. */
let keptBack = $state.raw(false);

/** What an instructor drives by while the bench is on the wall: one parameter in hand, the calls shown or kept back. */
export class PresentedHand {
  readonly #bench: BenchSession;
  readonly #wording: Wording;
  #field = $state.raw<string | null>(null);

  constructor(bench: BenchSession, wording: Wording) {
    this.#bench = bench;
    this.#wording = wording;
    this.#field = bench.inHand;
  }

  /** The parameters that may be taken in hand: what stands first on the bench, what was held there, and flaws that are there. */
  readonly ranges = $derived.by((): readonly ParameterRange[] => {
    const { joint, parameters, inHand } = this.#bench;
    const leads = leadParameters(joint, parameters);
    const isMore = (range: ParameterRange): boolean =>
      !leads.includes(range) &&
      (range.field === inHand || (FLAWS.test(range.field) && this.valueOf(range) > 0));
    return [...leads, ...parameters.filter(isMore)].slice(0, MOST_CHOICES);
  });
  /** The one in hand. A joint of another kind may not have it: then the first. */
  readonly range = $derived(
    this.ranges.find(({ field }) => field === this.#field) ?? this.ranges[0],
  );

  valueOf({ field, min }: ParameterRange): number {
    return numberAt(this.#bench.joint, field) ?? min;
  }

  get keptBack(): boolean {
    return keptBack;
  }

  keepBack(on: boolean): void {
    keptBack = on;
  }

  choose(field: string): void {
    // The key that moved the one before may still be down.
    this.#bench.commit();
    this.#bench.stop = null;
    this.#field = field;
  }

  /** Moves what is in hand so many steps; to be settled on when the key or thumb is let go. */
  step(count: number, fine = false): void {
    const { range } = this;
    if (range === undefined) return;
    const steps = stepsOf(range, this.#wording.reading);
    const asked = stepped(this.valueOf(range), count, fine ? steps.fine : steps.model);
    this.#bench.propose(range.field, asked);
  }

  /** Answers a key that drives; `scrolls` where up and down are the list's own. Whether it was one. */
  press(event: KeyboardEvent, scrolls: boolean): boolean {
    const isC = event.key.toLowerCase() === 'c' && !event.altKey;
    if (event.ctrlKey || event.metaKey) return false;
    const step = STEPS[event.key];
    const choice = scrolls ? undefined : CHOICES[event.key];
    if (step !== undefined) this.step(step * (event.shiftKey ? COARSE : 1), event.altKey);
    else if (choice !== undefined) this.#chooseNext(choice);
    else if (!isC) return false;
    // held down it would flash the calls before the room
    else if (!event.repeat) this.keepBack(!keptBack);
    return true;
  }

  /** Settles on it once the key is let go: held down, it is one step for undo. */
  release(event: KeyboardEvent): void {
    if (event.key in STEPS) this.#bench.commit();
  }

  #chooseNext(by: number): void {
    const { ranges, range } = this;
    const place = ranges.findIndex((one) => one === range);
    const next = ranges[(place + by + ranges.length) % ranges.length];
    if (next !== undefined) this.choose(next.field);
  }
}
