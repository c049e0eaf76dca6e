import type { JobSheet } from '../../limits/index.ts';
import { distanceOf, scaleOf } from '../distance.ts';
import type { LimitSet } from '../limit-set.ts';
import { between, happens, type Random } from '../random.ts';
import { quantityOf } from '../quantity.ts';
import type { EyeScale, Truth } from '../question.ts';
import type { Skill } from '../skill.ts';
import { remembered } from '../remembered.ts';
import { sheetKey } from '../sheet-key.ts';
import { drawPlaced, type Patience, type Placed, type Target } from './pair.ts';

/** A short imperfection is asked about in this part of what is allowed to it alone. */
const BETWEEN = [0.12, 0.88] as const;
/** Where over the whole length none is allowed at all: inside the limit by so much, on its scale. */
const NOTHING = { ratio: [-0.7, -0.03], deg: [-12, -1], mm: [0, 0] } as const;
/** So far past what the sheet leaves open a section is plainly the one or the other. Our choice. */
const PLAIN = { ratio: [0.08, 0.3], deg: [2, 8], mm: [0.3, 1.2] } as const;
/** An instrument's doubt is asked about within this share of it, and not at all from another share on. */
const [OF_GUARD, PAST_GUARD] = [0.85, 1.15];

/**
 * One joint with each of these truths, in their order, on a sheet that leaves something open: an
 * imperfection of a length that nobody gave, a measurement nearer its limit than the instrument can be
 * trusted, a root that no eye gets to. They differ in nothing but what drives the measurement. Null
 * where there is none such.
 */
export function openPlaced(
  seed: number,
  truths: readonly Truth[],
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
  patience: Patience,
): readonly Placed[] | null {
  const wanted = {
    skill,
    sheet,
    limits,
    distances: (target: Target, chance: Random) => openPlaces(target, chance, truths),
    suits: ({ decisive }: Placed, _: number, index: number) => decisive.call === truths[index],
  };
  return drawPlaced(seed, wanted, patience);
}

/** Whether what the sheet leaves open is so between two limits, or about one, and settled past them. */
const mayBeEitherWay = ({ quantity }: Skill, sheet: JobSheet, { criteria }: LimitSet): boolean =>
  sheet.guard.factor > 0 ||
  (sheet.extent === 'unknown' &&
    criteria.some(
      ({ short, measurements }) =>
        short === true && measurements.map(quantityOf).includes(quantity),
    ));

/** Seeds that have to give a question of what is offered. */
const TRIED = [11, 12, 13, 14];
const patience: Patience = { forms: 60, tried: 20 };
const bySkill = remembered<readonly Truth[] | null>();

/**
 * The answers that one joint may be drawn for where the sheet leaves something open about a skill, the
 * most of them that can be had; null where it leaves nothing. Worked out once for a sheet and a set.
 */
export const truthsLeftOpen = (
  skill: Skill,
  sheet: JobSheet,
  limits: LimitSet,
): readonly Truth[] | null =>
  bySkill(limits, `${skill.id} ${sheetKey(sheet)}`, () => {
    const isDrawn = (truths: readonly Truth[]): boolean =>
      TRIED.every((seed) => openPlaced(seed, truths, skill, sheet, limits, patience) !== null);
    return answersTo(skill, sheet, limits).find(isDrawn) ?? null;
  });

/** The answers that are tried for, the most of them first; all of a root that nobody sees is open. */
function answersTo(skill: Skill, sheet: JobSheet, limits: LimitSet): readonly (readonly Truth[])[] {
  if (mayBeEitherWay(skill, sheet, limits)) {
    return [['reject', 'refer', 'accept'], ['reject', 'refer'], ['refer', 'accept'], ['refer']];
  }
  return skill.kind === 'butt' && !sheet.rootAccessible ? [['refer']] : [];
}

function openPlaces(target: Target, chance: Random, truths: readonly Truth[]): readonly number[] {
  const scale = scaleOf(target);
  const { guard, ordinary, limit } = target;
  const within = ([low, high]: readonly [number, number]): number => between(chance, low, high);
  const ofInstrument = guard > 0 && (ordinary === undefined || happens(chance, 0.5));
  const doubt = guard > 0 ? onScale(scale, PAST_GUARD * guard, target) : 0;
  // where the whole length has to stand, and between there and the limit what only a short one may have
  const whole = ordinary === undefined ? 0 : distanceOf({ ...target, limit, measured: ordinary });
  const short = Number.isFinite(whole) ? within(BETWEEN) * whole : within(NOTHING[scale]);
  const places: Readonly<Record<Truth, number>> = {
    refer: ofInstrument
      ? onScale(scale, between(chance, -OF_GUARD, OF_GUARD) * guard, target)
      : short,
    reject: doubt + within(PLAIN[scale]),
    accept: whole - doubt - within(PLAIN[scale]),
  };
  return truths.map((truth) => places[truth]);
}

/** So many mm or degrees past the limit, on the scale that distances from it are taken on. */
const onScale = (scale: EyeScale, off: number, { limit }: Target): number =>
  scale === 'ratio' ? Math.log(Math.max(0.05, 1 + off / limit)) : off;
