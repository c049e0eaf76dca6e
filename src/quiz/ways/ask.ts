import type { CallRecord, Way } from '../call-record.ts';
import { currentEye, practiceDistance, type Side, tellingDistance } from '../eye/index.ts';
import { looksLike } from '../quantity.ts';
import type { QuestionSpec, Truth } from '../question.ts';
import { below, happens, pick, random, type Random, shuffled } from '../random.ts';
import type { SheetSkill } from '../skills.ts';
import type { SkillId } from '../skill.ts';

/** What a way to practise chooses the next question from. */
export interface AskContext {
  /** what the sheet lets be asked */
  readonly skills: readonly SheetSkill[];
  /** the skill that is practised; null: as the way chooses */
  readonly skill: SkillId | null;
  /** a person's kept calls, slips taken out, oldest first */
  readonly calls: readonly CallRecord[];
  /** those of this run, slips among them: what was asked was asked */
  readonly inRun: readonly CallRecord[];
  /** skills whose time has come again */
  readonly due: readonly SkillId[];
  /** whole number from 0 to 2^32 - 1 */
  readonly seed: number;
}

/** A new skill is kept to for so many calls before others are mixed in: first the rule, then the eye. Our choice. */
const BLOCK = 6;
/** How often a look-alike follows, where there is one. Our choice. */
const ALIKE = 0.6;
/** How often what the sheet may leave open is left so, where there are other answers. Our choice. */
const OPEN = 0.5;
/** Whether a way is about an eye at a limit, where there is nothing to refer. */
export const isAtLimit = (way: Way): boolean =>
  way === 'limit' || way === 'pairs' || way === 'naming' || way === 'rareFaults';
/** Rejects among rare faults: 5 to 10 per cent. */
const RARE = 1 / 13;
/** Naming shows faults plainly: so many times as far from the limit as practice would, and mostly faults. Our choice. */
const [PLAIN, FAULTY] = [1.6, 0.8];
/** A pair is asked in a round of two pairs, so that the second of one doesn't follow its first. */
const ROUND = 4;

/** The next question of a way to practise; null where the sheet lets nothing be asked. */
export function nextSpec(way: Way, context: AskContext): QuestionSpec | null {
  const chance = random(context.seed);
  if (way === 'pairs') return pairSpec(context, chance);
  const skill = nextSkill(way, context, chance);
  if (skill === null) return null;
  const asked = skill.refers ? nextTruth(skill, chance) : nextDistance(way, skill, context, chance);
  return specOf(skill, asked, chance);
}

function specOf(skill: SheetSkill, asked: QuestionSpec['asked'], chance: Random): QuestionSpec {
  return {
    version: 1,
    seed: below(chance, 2 ** 32),
    skill: skill.id,
    view: pick(chance, skill.views),
    asked,
  };
}

function nextSkill(way: Way, context: AskContext, chance: Random): SheetSkill | null {
  const { skills, skill, inRun, due } = context;
  const usable = isAtLimit(way) ? skills.filter(({ refers }) => !refers) : skills;
  if (skill !== null) return usable.find(({ id }) => id === skill) ?? null;
  if (usable.length === 0) return null;
  const last = usable.find(({ id }) => id === inRun.at(-1)?.skill);
  // one limit is found at a time
  if (way === 'limit' && last !== undefined) return last;
  if (way === 'due') {
    const ready = usable.filter(({ id }) => due.includes(id));
    return ready.length > 0 ? pick(chance, ready) : leastCalled(usable, context, chance);
  }
  if (way === 'mixedTest' || way === 'rareFaults') return inTurn(usable, context, chance);
  if (way === 'practice' && last !== undefined && callsOf(context, last.id).length < BLOCK)
    return last;
  const alike = last === undefined ? [] : usable.filter((other) => areAlike(last, other));
  if (alike.length > 0 && happens(chance, ALIKE)) return pick(chance, alike);
  return leastCalled(usable, context, chance);
}

const areAlike = (one: SheetSkill, other: SheetSkill): boolean =>
  one.kind === other.kind &&
  one.stage === other.stage &&
  looksLike(`${one.quantity}.${one.sense}`, `${other.quantity}.${other.sense}`);

const callsOf = ({ calls }: AskContext, skill: SkillId): readonly CallRecord[] =>
  calls.filter((call) => call.skill === skill);

/** One of the skills with the fewest calls so far. */
function leastCalled(
  skills: readonly SheetSkill[],
  context: AskContext,
  chance: Random,
): SheetSkill {
  const counts = skills.map(({ id }) => callsOf(context, id).length);
  const fewest = Math.min(...counts);
  return pick(
    chance,
    skills.filter((_, index) => counts[index] === fewest),
  );
}

/** Every skill once before any comes again in the run. */
function inTurn(skills: readonly SheetSkill[], { inRun }: AskContext, chance: Random): SheetSkill {
  const since = inRun.length % skills.length;
  const asked = new Set(inRun.slice(inRun.length - since).map((call) => call.skill));
  const left = skills.filter(({ id }) => !asked.has(id));
  return pick(chance, left.length > 0 ? left : skills);
}

/** What a section that may be left open shall come to. */
function nextTruth({ truths }: SheetSkill, chance: Random): Truth {
  const closed = truths.filter((truth) => truth !== 'refer');
  return closed.length === 0 || happens(chance, OPEN) ? 'refer' : pick(chance, closed);
}

function nextDistance(way: Way, skill: SheetSkill, context: AskContext, chance: Random): number {
  const calls = callsOf(context, skill.id);
  if (way === 'limit') return tellingDistance(calls, skill.scale, skill.reach);
  const rejects = way === 'rareFaults' ? RARE : way === 'naming' ? FAULTY : 1 / 2;
  const side: Side = happens(chance, rejects) ? 'reject' : 'accept';
  const distance = practiceDistance(currentEye(calls, skill.scale), side);
  return within(skill, way === 'naming' ? PLAIN * distance : distance);
}

const within = ({ reach }: SheetSkill, distance: number): number =>
  Math.max(-reach, Math.min(reach, distance));

/**
 * Two pairs in a round of four, each the same joint just inside and just outside, in an order that
 * the round's seed draws: what was shown first says nothing of what comes next.
 */
function pairSpec(context: AskContext, chance: Random): QuestionSpec | null {
  const { skills, skill, inRun } = context;
  const usable = skills.filter(({ id, reach }) => reach > 0 && (skill === null || id === skill));
  if (usable.length === 0) return null;
  const at = inRun.length % ROUND;
  const round = at === 0 ? [] : inRun.slice(-at).map(({ spec }) => spec);
  const open = round.filter(
    (spec) => round.filter((other) => other.seed === spec.seed).length === 1,
  );
  // the last ones of a round are what is left of its pairs
  const mustClose = ROUND - at <= open.length;
  const closing =
    open[0] !== undefined && (mustClose || (open.length > 0 && happens(chance, 1 / 3)));
  if (closing) {
    const [first] = shuffled(chance, open);
    if (first !== undefined && typeof first.asked === 'number')
      return { ...first, asked: -first.asked };
  }
  const chosen = pick(chance, usable);
  const eye = currentEye(callsOf(context, chosen.id), chosen.scale);
  const side: Side = happens(chance, 1 / 2) ? 'reject' : 'accept';
  return specOf(chosen, within(chosen, practiceDistance(eye, side)), chance);
}
