/**
 * Nothing but what drives the measurement, or its limit, may tell a reject from an accept: a threshold
 * on any other parameter, chosen on one half of the questions, is no better than chance on the other.
 */
import { describe, expect, it } from 'vitest';
import { choicesOfKind, parametersFor } from '../../src/joint/index.ts';
import type { Joint } from '../../src/joint/index.ts';
import { measurementCatalogue, measurementIds } from '../../src/measure/index.ts';
import type { MeasurementId } from '../../src/measure/index.ts';
import { drawQuestion, faultOn, quantityOf, skillsOf } from '../../src/quiz/index.ts';
import type { Question, Skill } from '../../src/quiz/index.ts';
import { sheetUnder } from '../quiz/question-sheets.ts';
import { runs } from '../runs.ts';

const QUESTIONS = runs(10) === 10 ? 2000 : runs(1000);
const HALF = QUESTIONS / 2;
/**
 * 58 per cent at the full count, where that lies five standard errors over a half; at a smaller count
 * five standard errors, √(¼ / n) each, so that chance alone passes.
 */
const MOST_RIGHT = Math.max(0.58, 0.5 + 5 * Math.sqrt(0.25 / HALF));

/** All of these at the full count, the first alone at a smaller one. */
const sheets = [
  sheetUnder('iso5817-c'),
  sheetUnder('lock-gate-house'),
  sheetUnder('aws-d11-static'),
  sheetUnder('b313-normal'),
].slice(0, runs(4));

/** What `judge` works out, by the measurements that it is worked out from. */
const workedOut: Readonly<Record<string, readonly MeasurementId[]>> = {
  misalignment: ['centrelineOffset', 'faceStep', 'rootStep'],
  angleDeparture: ['dihedralAngle'],
};

/** The parameters that the catalogue says drive this measurement, or one that its limit follows. */
function driving(quantity: string, { checks }: Question): ReadonlySet<string> {
  const own = workedOut[quantity] ?? measurementIds.filter((id) => quantityOf(id) === quantity);
  const symbols = checks
    .filter(({ measurement }) => quantityOf(measurement) === quantity)
    .flatMap(({ working }) => working?.symbols.map(({ symbol }) => symbol) ?? []);
  const limits = measurementIds.filter((id) => symbols.includes(id));
  return new Set([...own, ...limits].flatMap((id) => measurementCatalogue[id].drivenBy));
}

/** Every parameter of the joint as a number, and how it is shown. */
function featuresOf(question: Question): ReadonlyMap<string, number> {
  const { joint, known, mirrored } = question;
  const fields = joint as unknown as Readonly<Record<string, number | string>>;
  const numbers = parametersFor(joint.kind).map(
    ({ field }) => [field, Number(fields[field])] as const,
  );
  const chosen = choicesOfKind(joint.kind).map(
    ({ field, values }) => [field, values.indexOf(fields[field] as string)] as const,
  );
  const together = extra(joint);
  return new Map([
    ...numbers,
    ...chosen,
    ...together,
    ['known', known === 't1' ? 0 : 1],
    ['mirrored', mirrored ? 1 : 0],
    ...toldBeforehand(question),
  ]);
}

/** What stands beside the drawing before the call: as numbers, each text by one of its own. */
function toldBeforehand(question: Question): readonly (readonly [string, number])[] {
  const { sheet, choices, recorded, either, joint } = question;
  const lines = new Set(
    either.filter(({ limit }) => limit !== null).map((check) => faultOn(joint, check)),
  );
  return [
    ['extent', numberOf(sheet.extent)],
    ['sheet', numberOf(JSON.stringify({ ...sheet, extent: '' }))],
    ['choices', numberOf(choices.join())],
    ['names required', numberOf([...lines].join())],
    ['recorded', recorded.length],
  ];
}
const numbers = new Map<string, number>();
function numberOf(told: string): number {
  if (!numbers.has(told)) numbers.set(told, numbers.size);
  return numbers.get(told) ?? 0;
}

/** Thickness against thickness: what a threshold on either alone would miss. */
const extra = ({ t1, t2 }: Joint): readonly (readonly [string, number])[] => [
  ['t1 + t2', t1 + t2],
  ['t1 - t2', t1 - t2],
];

interface Drawn {
  readonly value: number;
  readonly rejected: boolean;
}

/** The threshold and the side that part these best. */
function bestThreshold(drawn: readonly Drawn[]): { readonly at: number; readonly over: boolean } {
  const sorted = [...drawn].sort((a, b) => a.value - b.value);
  let right = drawn.filter(({ rejected }) => rejected).length;
  let best = { at: Number.NEGATIVE_INFINITY, over: true, right };
  const consider = (at: number): void => {
    if (right > best.right) best = { at, over: true, right };
    if (drawn.length - right > best.right) best = { at, over: false, right: drawn.length - right };
  };
  consider(Number.NEGATIVE_INFINITY);
  sorted.forEach(({ value, rejected }, i) => {
    right += rejected ? -1 : 1;
    if (sorted[i + 1]?.value !== value) consider(value);
  });
  return best;
}

const shareRight = (drawn: readonly Drawn[], { at, over }: { at: number; over: boolean }): number =>
  drawn.filter(({ value, rejected }) => value > at === (rejected === over)).length / drawn.length;

function questionsOf(skill: Skill, reach: number, { sheet, limits }: (typeof sheets)[number]) {
  return Array.from({ length: QUESTIONS }, (_, i) => {
    // a side for each seed that the seed doesn't tell: every other one, a fresh seed each time
    const asked = (i % 2 === 0 ? 1 : -1) * 0.5 * reach;
    return drawQuestion(
      { version: 1, seed: 900_000 + 7 * i, skill: skill.id, view: 'cut', asked },
      sheet,
      limits,
    );
  });
}

describe('no parameter gives the answer away', () => {
  it('finds a parameter that would', () => {
    const told = Array.from({ length: 200 }, (_, i) => ({
      value: i % 2 ? 5 : 4,
      rejected: i % 2 === 0,
    }));
    expect(bestThreshold(told)).toMatchObject({ at: 4, over: false });
    expect(shareRight(told, { at: 4, over: false })).toBe(1);
    expect(shareRight(told, { at: 4, over: true })).toBe(0);
  });

  it.each(sheets)(
    'moves from side to side by what drives the measurement alone, $name',
    (one) => {
      for (const skill of skillsOf(one.sheet, one.limits).filter(({ reach }) => reach > 0)) {
        for (let seed = 0; seed < 6; seed++) {
          const [rejected, accepted] = [0.5, -0.5].map((side) =>
            drawQuestion(
              { version: 1, seed, skill: skill.id, view: 'cut', asked: side * skill.reach },
              one.sheet,
              one.limits,
            ),
          ) as [Question, Question];
          const exempt = driving(skill.quantity, rejected);
          const other = featuresOf(accepted);
          const moved = [...featuresOf(rejected)].filter(
            ([name, value]) => !exempt.has(name) && other.get(name) !== value,
          );
          expect([skill.id, moved]).toEqual([skill.id, []]);
        }
      }
    },
    600_000,
  );

  it.each(sheets)(
    'under $name',
    (one) => {
      const tell: string[] = [];
      for (const skill of skillsOf(one.sheet, one.limits).filter(({ reach }) => reach > 0)) {
        const drawn = questionsOf(skill, skill.reach, one);
        const exempt = driving(skill.quantity, drawn[0] as Question);
        const features = drawn.map(featuresOf);
        const rejected = drawn.map(({ truth }) => truth === 'reject');
        // as many of the one as of the other, or a guess alone would do better than a half
        expect([skill.id, rejected.filter(Boolean).length]).toEqual([skill.id, Math.floor(HALF)]);
        for (const name of features[0]?.keys() ?? []) {
          if (exempt.has(name)) continue;
          const all = features.map((of, i) => ({
            value: of.get(name) ?? 0,
            rejected: rejected[i] ?? false,
          }));
          const right = shareRight(all.slice(HALF), bestThreshold(all.slice(0, HALF)));
          if (right > MOST_RIGHT) tell.push(`${skill.id} ${name} ${right}`);
        }
      }
      expect(tell).toEqual([]);
    },
    1_200_000,
  );
});
