import type { ParameterRange } from '../../joint/index.ts';
import type { BenchSession } from '../../state/bench.svelte.ts';
import { leadParameters } from '../../state/lead-parameters.ts';
import { numberAt } from '../../state/parameter.ts';
import { stepped, stepsOf } from '../../state/parameter-step.ts';
import type { Wording } from '../wording.svelte.ts';

const STEPS: Readonly<Record<string, number>> = { ArrowRight: 1, ArrowLeft: -1 };
const CHOICES: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1 };
/** Steps of one key press with Shift. */
const COARSE = 10;

/** What an instructor drives by while the bench is on the wall: one parameter in hand, the calls shown or kept back. */
export class PresentedHand {
  readonly #bench: BenchSession;
  readonly #wording: Wording;
  #field = $state.raw<string | null>(null);
  /** the room is asked first: no call, no colour and no reason stands on the wall */
  keptBack = $state.raw(false);

  constructor(bench: BenchSession, wording: Wording) {
    this.#bench = bench;
    this.#wording = wording;
    this.#field = bench.inHand;
  }

  /** The parameters that may be taken in hand: what stands first on the bench, and what was held there. */
  readonly ranges = $derived.by((): readonly ParameterRange[] => {
    const { joint, parameters, inHand } = this.#bench;
    const leads = leadParameters(joint, parameters);
    const held = parameters.find(({ field }) => field === inHand);
    return held === undefined || leads.includes(held) ? leads : [...leads, held];
  });
  /** The one in hand. A joint of another kind may not have it: then the first. */
  readonly range = $derived(
    this.ranges.find(({ field }) => field === this.#field) ?? this.ranges[0],
  );

  valueOf({ field, min }: ParameterRange): number {
    return numberAt(this.#bench.joint, field) ?? min;
  }

  choose(field: string): void {
    this.#field = field;
    this.#bench.stop = null;
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
    if (event.ctrlKey || event.metaKey) return false;
    const step = STEPS[event.key];
    const choice = scrolls ? undefined : CHOICES[event.key];
    if (step !== undefined) this.step(step * (event.shiftKey ? COARSE : 1), event.altKey);
    else if (choice !== undefined) this.#chooseNext(choice);
    else if (event.key.toLowerCase() === 'c') this.keptBack = !this.keptBack;
    else return false;
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
