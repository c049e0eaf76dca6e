import { createEmptyCard, fsrs, Rating, type Card, type Grade as Reviewed } from 'ts-fsrs';
import { isRight, type CallRecord } from '../call-record.ts';
import { groupedBy } from '../grouped.ts';
import { middleOf } from '../middle.ts';
import type { SkillId } from '../skill.ts';

/** When a skill comes again. */
export interface Due {
  readonly skill: SkillId;
  /** ISO 8601, UTC */
  readonly again: string;
  readonly isDue: boolean;
}

/** One go at a skill: its calls in one run. */
interface Go {
  readonly at: Date;
  readonly right: number;
  readonly calls: number;
  /** middle time to a call, ms */
  readonly took: number;
  /** mean sureness, per cent */
  readonly sure: number;
}

/**
 * FSRS with the library's own weights, but without chance, which would make two looks at one log
 * differ, and without steps of minutes: a go at a skill is a day’s work, and the next is another day’s.
 */
export const scheduler = fsrs({ enable_fuzz: false, enable_short_term: false });
/** A go with fewer right than this has to be learned again. Our choice. */
const LEAST_RIGHT = 0.7;
const ALL_RIGHT = 0.95;
/** Twice one's own usual time is slow. */
const SLOW = 2;
const SURE = 90;

/**
 * When each skill comes again, by the memory model FSRS over its goes: a skill is what is scheduled,
 * each time on new sections. Skills without a call are not in the list; the earliest stands first.
 */
export function dueSkills(calls: readonly CallRecord[], now: Date): readonly Due[] {
  return [...groupedBy(calls, ({ skill }) => skill)]
    .map(([skill, own]) => {
      const again = cardOf(goesOf(own)).due;
      return { skill, again: again.toISOString(), isDue: again.getTime() <= now.getTime() };
    })
    .sort((a, b) => a.again.localeCompare(b.again));
}

function goesOf(calls: readonly CallRecord[]): readonly Go[] {
  return [...groupedBy(calls, ({ run }) => run).values()]
    .map((own) => ({
      at: new Date(own.at(-1)?.at ?? 0),
      right: own.filter(isRight).length,
      calls: own.length,
      took: middleOf(own.map(({ took }) => took)),
      sure: own.reduce((sum, { answer }) => sum + answer.sure, 0) / own.length,
    }))
    .sort((a, b) => a.at.getTime() - b.at.getTime());
}

/** What the schedule knows of a skill after its goes, replayed one after the other. */
function cardOf(goes: readonly Go[]): Card {
  const usual = middleOf(goes.map(({ took }) => took));
  let card = createEmptyCard(goes[0]?.at ?? new Date(0));
  for (const go of goes) card = scheduler.next(card, go.at, reviewOf(go, usual)).card;
  return card;
}

/** Wrong: again. Right but slow: hard. Right, quick and sure: easy. Otherwise good. */
function reviewOf({ right, calls, took, sure }: Go, usual: number): Reviewed {
  if (right / calls < LEAST_RIGHT) return Rating.Again;
  if (took > SLOW * usual) return Rating.Hard;
  return right / calls >= ALL_RIGHT && sure >= SURE && took <= usual ? Rating.Easy : Rating.Good;
}
