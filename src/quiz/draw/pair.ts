import type { Joint } from '../../joint/index.ts';
import type { Check, JobSheet } from '../../limits/index.ts';
import { scaleOf, valueAt } from '../distance.ts';
import type { LimitSet } from '../limit-set.ts';
import { quantityOf } from '../quantity.ts';
import type { Skill } from '../skill.ts';
import { pick, random, type Random } from '../random.ts';
import { buttForm } from './butt-form.ts';
import { binding, intruders, type ComparedCheck } from './comfort.ts';
import { driverOf, type Driver } from './driver.ts';
import { evaluate, type Evaluated } from './evaluate.ts';
import { filletForm } from './fillet-form.ts';
import { finely, tidy, withFields } from './joint-fields.ts';
import { mend, type Intruding } from './mend.ts';
import { smallFlaws } from './small-flaws.ts';
import { solve } from './solve.ts';

/** A joint brought to where it is asked, and the check that decides it. */
export interface Placed extends Evaluated {
  readonly decisive: ComparedCheck;
}

/** What is brought to its place. */
export type Target = Pick<
  ComparedCheck,
  'measurement' | 'sense' | 'limit' | 'ordinary' | 'unit' | 'guard'
>;

/** What a joint is drawn for. */
export interface Wanted {
  readonly skill: Skill;
  readonly sheet: JobSheet;
  readonly limits: LimitSet;
  /** where it has to stand, on the scale of the limit; all of these with one set of features */
  readonly distances: (target: Target, chance: Random) => readonly number[];
  /** whether the joint at one of them is what was wanted, past being the only thing in question */
  readonly suits: (placed: Placed, distance: number, index: number) => boolean;
}

/** How often each form is mended. */
const MOST_MENDS = 5;

/** Forms that are tried before a joint is given up: of all, and of those that have the check in question. */
export interface Patience {
  readonly forms: number;
  readonly tried: number;
}

/**
 * Joints at each of the wanted distances that differ in nothing but what drives the measurement:
 * features come first, the same whatever side is asked for, and have to serve every side. Null where
 * no form served.
 */
export function drawPlaced(
  seed: number,
  wanted: Wanted,
  { forms, tried }: Patience,
): readonly Placed[] | null {
  const chance = random(seed);
  let failed = 0;
  for (let form = 0; form < forms && failed < tried; form++) {
    const placed = onOneForm(chance, wanted);
    if (placed === 'nothingToAsk') continue;
    if (placed !== null) return placed;
    failed++;
  }
  return null;
}

function onOneForm(chance: Random, wanted: Wanted): readonly Placed[] | 'nothingToAsk' | null {
  const { skill, sheet, limits } = wanted;
  const form = skill.kind === 'fillet' ? filletForm : buttForm;
  const drawn = tidy(form(chance, sheet, skill.stage));
  const plain = evaluate(drawn, sheet, limits);
  if (plain === null) return 'nothingToAsk';
  const flaws = smallFlaws(chance, drawn, plain.checks, isOfThroat(skill));
  let base = tidy(withFields(drawn, flaws));
  const sample = aimAt(chance, skill, plain) ?? rarely(chance, wanted, base);
  if (sample === null) return 'nothingToAsk';
  const driver = driverOf({ ...sample, sheet, capMost: capMost(plain) }, base, chance);
  if (driver === null) return 'nothingToAsk';
  base = tidy(withFields(base, driver.before));
  const open = new Set(
    plain.checks.filter(({ call }) => call === 'notAssessed').map(({ id }) => id),
  );
  const distances = wanted.distances(sample, chance);
  let before = '';
  for (let round = 0; round <= MOST_MENDS; round++) {
    const { placed, intruding } = placeAll(base, driver, sample, distances, open, wanted);
    if (placed === null) return null;
    if (intruding.length === 0) {
      return placed.every((one, i) => wanted.suits(one, distances[i] as number, i)) ? placed : null;
    }
    // what came back after it was mended twice comes back again
    const now = intruding.map(({ check }) => check.id).join(' ');
    if (round > 1 && now === before) return null;
    before = round > 0 ? now : '';
    const change = mend(chance, intruding, driver.fields);
    if (change === null) return null;
    base = tidy(withFields(base, change));
  }
  return null;
}

/** A cap that nobody limits is about so high, mm; common practice, no source. */
const CAP = 3;

const capMost = ({ checks }: Evaluated): number =>
  Math.min(4, binding(checks, 'faceReinforcement.higher', 'max')?.limit ?? CAP);

/** A throat is only ever short where the legs have little to spare. */
const isOfThroat = ({ quantity, sense }: Skill): boolean =>
  sense === 'min' && /Throat$|^size/u.test(quantity);

/** One of the checks that the skill is about, of either toe or plate. */
function aimAt(chance: Random, { quantity, sense }: Skill, { checks }: Evaluated): Target | null {
  const about = checks.filter(
    (check) => check.sense === sense && quantityOf(check.measurement) === quantity,
  );
  const places = [...new Set(about.map(({ measurement }) => measurement))]
    .map((measurement) => binding(checks, measurement, sense))
    .filter((check) => check !== null);
  return places.length === 0 ? null : pick(chance, places);
}

/** The same where a row counts only once there is something to it: a root that is hollow, say. */
function rarely(chance: Random, wanted: Wanted, base: Joint): Target | null {
  const { skill, sheet, limits } = wanted;
  const guessed = {
    measurement: skill.quantity as Check['measurement'],
    sense: skill.sense,
    limit: 1,
    sheet,
    capMost: CAP,
  };
  const before = driverOf(guessed, base, chance)?.before;
  if (before === undefined || Object.keys(before).length === 0) return null;
  const found = evaluate(withFields(base, before), sheet, limits);
  return found === null ? null : aimAt(chance, skill, found);
}

interface AllPlaced {
  readonly placed: readonly Placed[] | null;
  /** what is in question beside what should be, on the first joint where anything is */
  readonly intruding: readonly Intruding[];
}

function placeAll(
  base: Joint,
  driver: Driver,
  target: Target,
  distances: readonly number[],
  open: ReadonlySet<string>,
  wanted: Wanted,
): AllPlaced {
  const all: Placed[] = [];
  for (const distance of distances) {
    const on = place(base, driver, target, distance, wanted);
    if (on === null) return { placed: null, intruding: [] };
    all.push(on);
    const found = intruders(on, on.decisive, open);
    if (found.length > 0) {
      return { placed: all, intruding: found.map((check) => ({ check, on })) };
    }
  }
  return { placed: all, intruding: [] };
}

/** The base with the measurement brought to a distance from its limit, which may move with it. */
function place(
  base: Joint,
  driver: Driver,
  { measurement, sense, limit, unit }: Target,
  distance: number,
  { sheet, limits }: Wanted,
): Placed | null {
  const at = (joint: Joint): Placed | null => {
    const evaluated = evaluate(joint, sheet, limits);
    if (evaluated === null) return null;
    const decisive = binding(evaluated.checks, measurement, sense);
    return decisive === null ? null : { ...evaluated, decisive };
  };
  // where nothing is permitted, nothing is the only way to be inside; and of a length nothing is infinitely far in
  const isNone = distance === Number.NEGATIVE_INFINITY;
  if (isNone || (scaleOf({ unit, limit }) === 'mm' && distance <= 0)) {
    const clean = at(base);
    return clean?.decisive.measured === 0 ? clean : null;
  }
  const from = driver.read(base);
  const start = at(base);
  const slope = driver.slope;
  const guess =
    start === null
      ? from
      : from + (valueAt(distance, start.decisive) - start.decisive.measured) / slope;
  const x = solve(
    (to) => {
      const found = at(driver.place(base, to));
      if (found === null) return null;
      return { off: found.decisive.measured - valueAt(distance, found.decisive), found: to };
    },
    guess,
    slope,
    [driver.low, driver.high],
  );
  return x === null ? null : at(driver.place(base, finely(x)));
}
