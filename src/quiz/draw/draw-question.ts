import { judge, type Call, type JobSheet } from '../../limits/index.ts';
import { distanceOf, exceedanceOf, isCompared, scaleOf } from '../distance.ts';
import type { LimitSet } from '../limit-set.ts';
import { faultOn } from '../quantity.ts';
import { QuizError } from '../quiz-error.ts';
import type { Question, QuestionSpec } from '../question.ts';
import { happens, sfc32 } from '../random.ts';
import { recordedFor, viewsOf } from '../sections-seen.ts';
import { openSheet, settledSheet } from '../settle.ts';
import { skillOf } from '../skill-id.ts';
import type { Skill } from '../skill.ts';
import { choicesFor } from './choices.ts';
import { drawPlaced, type Patience, type Placed } from './pair.ts';
import { referable } from './refer.ts';

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
  const own = asked === 'refer' ? openSheet(sheet) : settledSheet(sheet);
  const placed =
    asked === 'refer'
      ? referable(seed, skill, own, limits, thorough)
      : nearest(seed, asked, skill, own, limits);
  if (placed === null) throw new QuizError({ key: 'calls_error_not_on_this_sheet' });
  const [shown, as] =
    asked === 'refer' ? [own, placed] : leftOpen(placed, openSheet(sheet), limits, own);
  return questionOf(spec, shown, skill, as);
}

/**
 * The same joint on the sheet as it was given, where what that leaves open changes no call: what a
 * sheet leaves unsaid must not say by itself that a question is open.
 */
function leftOpen(
  placed: Placed,
  open: JobSheet,
  limits: LimitSet,
  settled: JobSheet,
): readonly [JobSheet, Placed] {
  const checks = judge(placed.measurements, open, limits);
  const callOf = new Map(placed.checks.map(({ id, call }) => [id, call]));
  const isSame = checks.every(({ id, call }) => callOf.get(id) === call);
  const decisive = checks.find(({ id }) => id === placed.decisive.id);
  return isSame && decisive !== undefined && isCompared(decisive)
    ? [open, { ...placed, checks, decisive }]
    : [settled, placed];
}

/** Enough for what one form in ten can show; before that, for what one in three can. */
const thorough: Patience = { forms: 300, tried: 100 };
const quick: Patience = { forms: 150, tried: 36 };
/** What can't stand so far from its limit is asked nearer, each time by this share. */
const NEARER = 0.6;
const MOST_TIMES = 4;

/** A joint at the asked distance, or as near to it as there is one on this sheet. */
function nearest(
  seed: number,
  asked: number,
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
): Placed | null {
  for (let times = 0; times < MOST_TIMES; times++) {
    const placed = atDistance(seed, asked * NEARER ** times, skill, sheet, limits, quick);
    if (placed !== null) return placed;
  }
  return atDistance(seed, asked * NEARER ** MOST_TIMES, skill, sheet, limits, thorough);
}

/**
 * A joint at a distance from its limit. Its features serve the same distance on the other side too,
 * so that they can't tell which side was asked for.
 */
export function atDistance(
  seed: number,
  asked: number,
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
  patience: Patience,
): Placed | null {
  const away = Math.abs(asked);
  const wanted = { skill, sheet, limits, distances: () => [away, -away], suits: isSettled };
  const both = drawPlaced(seed, wanted, patience);
  return both?.[asked > 0 ? 0 : 1] ?? null;
}

/** Accept inside, reject outside; on the limit itself either. */
function isSettled({ decisive }: Placed, distance: number): boolean {
  if (distance === 0) return decisive.call === 'accept' || decisive.call === 'reject';
  return decisive.call === (distance > 0 ? 'reject' : 'accept');
}

function questionOf(spec: QuestionSpec, sheet: JobSheet, skill: Skill, placed: Placed): Question {
  const { joint, measurements, checks, decisive } = placed;
  const truth = decisive.call as Exclude<Call, 'notAssessed'>;
  // how it is shown is drawn apart from what it is
  const chance = sfc32(1, spec.seed, 0);
  return {
    spec,
    sheet,
    joint,
    measurements,
    checks,
    decisive,
    truth,
    fault: truth === 'reject' ? faultOn(joint, decisive) : null,
    scale: scaleOf(decisive),
    distance: distanceOf(decisive),
    exceedance: exceedanceOf(decisive),
    known: happens(chance, 0.5) ? 't1' : 't2',
    mirrored: happens(chance, 0.5),
    recorded: recordedFor(skill, spec.view, measurements),
    choices: choicesFor(placed),
  };
}
