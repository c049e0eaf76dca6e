import { judge, type JobSheet } from '../../limits/index.ts';
import { distanceOf, exceedanceOf, isCompared, scaleOf } from '../distance.ts';
import type { LimitSet } from '../limit-set.ts';
import { faultOn } from '../quantity.ts';
import { QuizError } from '../quiz-error.ts';
import type { Question, QuestionSpec, Truth } from '../question.ts';
import { happens, sfc32 } from '../random.ts';
import { recordedFor, viewsOf } from '../sections-seen.ts';
import { openSheet, settledSheet } from '../settle.ts';
import { skillOf } from '../skill-id.ts';
import type { Skill } from '../skill.ts';
import { choicesFor } from './choices.ts';
import { drawPlaced, type Patience, type Placed } from './pair.ts';
import { openPlaced, truthsLeftOpen } from './refer.ts';

/**
 * The joint that a spec, a sheet and a set make, its truth known: exactly the fault that was asked
 * for or none, everything else comfortably inside, the decisive measurement at the asked distance.
 * Where what the given sheet leaves open would leave the call open too, the question's sheet says it,
 * unless what is open is the question.
 * A QuizError where that can't be had on this sheet.
 */
export function drawQuestion(spec: QuestionSpec, sheet: JobSheet, limits: LimitSet): Question {
  const { asked, seed, view } = spec;
  const skill = skillOf(spec.skill);
  if (skill === null) throw new QuizError({ key: 'calls_error_no_such_skill' });
  if (!viewsOf(skill, sheet).includes(view)) throw new QuizError({ key: 'calls_error_not_seen' });
  const drawn =
    typeof asked === 'number'
      ? settled(seed, asked, skill, sheet, limits)
      : open(seed, asked, skill, sheet, limits);
  if (drawn === null) throw new QuizError({ key: 'calls_error_not_on_this_sheet' });
  return questionOf(spec, skill, drawn);
}

/** A joint that was asked for, and the sheet that it is called by. */
interface Drawn {
  readonly sheet: JobSheet;
  readonly placed: Placed;
  /** it and its like with every other truth that might have been asked for, always in the same order */
  readonly either: readonly Placed[];
}

/** Accept or reject, whichever side was asked for. */
function settled(
  seed: number,
  asked: number,
  skill: Skill,
  given: JobSheet,
  limits: LimitSet,
): Drawn | null {
  const sheet = settledSheet(given);
  const both = nearest(seed, asked, skill, sheet, limits);
  if (both === null) return null;
  const which = asked > 0 ? 0 : 1;
  const left = both.map((placed) => leftOpen(placed, openSheet(given), limits));
  // said on both sides or on neither: else what the sheet says would say which side it is
  const isLeft = left.every((placed) => placed !== null);
  const either = isLeft ? left : both;
  return {
    sheet: isLeft ? openSheet(given) : sheet,
    placed: either[which] as Placed,
    either,
  };
}

/**
 * The same joint on the sheet as it was given, where what that leaves open changes no call: what a
 * sheet leaves unsaid must not say by itself that a question is open. Null where it changes one.
 */
function leftOpen(placed: Placed, sheet: JobSheet, limits: LimitSet): Placed | null {
  const checks = judge(placed.measurements, sheet, limits);
  const callOf = new Map(placed.checks.map(({ id, call }) => [id, call]));
  const isSame = checks.every(({ id, call }) => callOf.get(id) === call);
  const decisive = checks.find(({ id }) => id === placed.decisive.id);
  return isSame && decisive !== undefined && isCompared(decisive)
    ? { ...placed, checks, decisive }
    : null;
}

/** What the sheet leaves open, with every answer that there may be to it. */
function open(
  seed: number,
  asked: Truth,
  skill: Skill,
  given: JobSheet,
  limits: LimitSet,
): Drawn | null {
  const sheet = openSheet(given);
  const truths = truthsLeftOpen(skill, sheet, limits);
  if (!truths?.includes(asked)) return null;
  const either = openPlaced(seed, truths, skill, sheet, limits, thorough);
  const placed = either?.[truths.indexOf(asked)];
  return either === null || placed === undefined ? null : { sheet, placed, either };
}

/** Enough for what one form in ten can show; before that, for what one in three can. */
const thorough: Patience = { forms: 300, tried: 100 };
const quick: Patience = { forms: 150, tried: 36 };
/** What can't stand so far from its limit is asked nearer, each time by this share. */
const NEARER = 0.6;
const MOST_TIMES = 4;

/** Joints at the asked distance on either side, or as near to it as there are any on this sheet. */
function nearest(
  seed: number,
  asked: number,
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
): readonly Placed[] | null {
  for (let times = 0; times < MOST_TIMES; times++) {
    const placed = atDistance(seed, asked * NEARER ** times, skill, sheet, limits, quick);
    if (placed !== null) return placed;
  }
  return atDistance(seed, asked * NEARER ** MOST_TIMES, skill, sheet, limits, thorough);
}

/**
 * Joints at a distance from their limit, past it and inside it. They differ in nothing but what drives
 * the measurement, so that their features can't tell which side was asked for.
 */
export function atDistance(
  seed: number,
  asked: number,
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
  patience: Patience,
): readonly Placed[] | null {
  const away = Math.abs(asked);
  const wanted = { skill, sheet, limits, distances: () => [away, -away], suits: isSettled };
  return drawPlaced(seed, wanted, patience);
}

/** Accept inside and on the limit itself, reject past it. */
const isSettled = ({ decisive }: Placed, distance: number): boolean =>
  decisive.call === (distance > 0 ? 'reject' : 'accept');

function questionOf(spec: QuestionSpec, skill: Skill, { sheet, placed, either }: Drawn): Question {
  const { joint, measurements, checks, decisive } = placed;
  const truth = decisive.call as Truth;
  // how it is shown is drawn apart from what it is
  const chance = sfc32(1, spec.seed, 0);
  const all = either.flatMap((one) => one.checks);
  return {
    spec,
    sheet,
    joint,
    measurements,
    checks,
    either: all,
    decisive,
    truth,
    fault: truth === 'reject' ? faultOn(joint, decisive) : null,
    scale: scaleOf(decisive),
    distance: distanceOf(decisive),
    exceedance: exceedanceOf(decisive),
    known: happens(chance, 0.5) ? 't1' : 't2',
    mirrored: happens(chance, 0.5),
    recorded: recordedFor(skill, spec.view, measurements),
    choices: choicesFor(joint, all),
  };
}
