import { describe, expect, it } from 'vitest';
import { normalShare } from '../../src/limits/index.ts';
import {
  afterAnswer,
  evenWeights,
  mostTelling,
  questPlus,
  type QuestPlus,
} from '../../src/quiz/eye/quest-plus.ts';
import { staircase } from '../property/staircase.ts';

// Source of both sequences: hoechenberger/questplus, tests/test_qp.py (commit 15e63bf1), which has
// them from Watson 2017, Examples 1 and 3. C: the answer was yes (or right), I: no.

/** Whole numbers from one to another. */
const through = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

function played(quest: QuestPlus, count: number, answers: string) {
  let weights = evenWeights(count);
  const placed = Array.from(answers, (answer) => {
    const index = mostTelling(quest, weights);
    weights = afterAnswer(quest, weights, index, answer === 'C');
    return quest.stimuli[index];
  });
  const mode = weights.indexOf(Math.max(...weights));
  const mean = (of: (index: number) => number): number =>
    weights.reduce((sum, weight, i) => sum + weight * of(i), 0);
  return { placed, mode, mean };
}

describe('placement by QUEST+', () => {
  it('shows the 32 contrasts of the first published example, and ends at its threshold (psy-13)', () => {
    const thresholds = through(-40, 0);
    const quest = questPlus(through(-40, 0), thresholds, (x, threshold) => {
      const [slope, guess, lapse] = [3.5, 0.5, 0.02];
      return 1 - lapse - (1 - guess - lapse) * Math.exp(-(10 ** ((slope * (x - threshold)) / 20)));
    });
    const { placed, mode, mean } = played(quest, 41, 'CCCCIICCCCCCCCICCICCICCCCCCCCCCC');
    expect(placed).toEqual([
      -18, -22, -25, -28, -30, -22, -13, -15, -16, -18, -19, -20, -21, -22, -23, -19, -20, -20, -18,
      -18, -19, -17, -17, -18, -18, -18, -19, -19, -19, -19, -19, -19,
    ]);
    const at = (index: number): number => thresholds[index] as number;
    expect(at(mode)).toBe(-20);
    const middle = mean(at);
    expect(middle).toBeCloseTo(-20.3936031164, 6);
    expect(Math.sqrt(mean((i) => (at(i) - middle) ** 2))).toBeCloseTo(1.389334006, 6);
  });

  it('shows the 128 sizes of the published eye with bias, scatter and lapses (psy-14)', () => {
    const eyes = through(-5, 5).flatMap((bias) =>
      through(1, 10).flatMap((scatter) =>
        [0, 0.01, 0.02, 0.03, 0.04].map((lapse) => ({ bias, scatter, lapse })),
      ),
    );
    const quest = questPlus(
      through(-10, 10),
      eyes,
      (x, { bias, scatter, lapse }) => lapse + (1 - 2 * lapse) * normalShare((x - bias) / scatter),
    );
    const answers =
      'CIICCCCCCCICIIIICCICCIIICICIICIICICIICICCCICCCIIIIICIIIICIIICIICIIICCCIICCICIIIC' +
      'CIIIIICIICCICCICICCICCICIIIICCCCICIIICIIIICCCCCI';
    expect(answers.length).toBe(128);
    const { placed, mode, mean } = played(quest, eyes.length, answers);
    expect(placed).toEqual([
      0, -1, 2, -2, 2, 3, 3, -5, 3, 3, 3, 3, -7, -7, -7, -7, 4, -7, 4, 4, 4, -8, -8, -8, 4, -8, 4,
      -8, -7, 4, -7, -7, 4, -7, 4, -7, -6, 3, -4, -5, 3, 3, -7, 2, 2, 1, 0, -7, -6, -6, -6, 2, -5,
      2, -6, -5, 3, -5, -5, 3, 4, -5, -5, 4, -4, -4, -4, -4, 4, 3, 3, 4, 5, 5, -5, 5, -5, -5, 4, 5,
      5, -5, -4, -4, -4, -4, 5, -4, -4, -3, 4, 4, 5, 5, -4, 5, -4, -4, 5, 4, 5, 5, -5, 5, -4, -4,
      -4, -4, 5, -4, 5, 4, -4, 4, -4, -4, -4, 4, -4, -4, -4, 4, 4, -4, 4, 4, 4, -4,
    ]);
    expect(eyes[mode]).toEqual({ bias: 0, scatter: 4, lapse: 0.01 });
    expect(mean((i) => eyes[i]?.bias ?? NaN)).toBeCloseTo(-0.1021096, 5);
    expect(mean((i) => eyes[i]?.scatter ?? NaN)).toBeCloseTo(4.1768222, 5);
    expect(mean((i) => eyes[i]?.lapse ?? NaN)).toBeCloseTo(0.0193461, 5);
  });
});

describe('the staircase that placement is held against', () => {
  it('makes the trace of two down, one up (psy-09)', () => {
    // Source: the rule applied by hand.
    const answers = 'CCCCICCICCCCI';
    const settings = { start: 1, step: 0.1, downAfter: 2, count: answers.length };
    const { shown, next, reversals } = staircase(settings, (_, i) => answers[i] === 'C');
    const rounded = (levels: readonly number[]) => levels.map((level) => Number(level.toFixed(9)));
    expect(rounded(shown)).toEqual([1, 1, 0.9, 0.9, 0.8, 0.9, 0.9, 0.8, 0.9, 0.9, 0.8, 0.8, 0.7]);
    expect(next).toBeCloseTo(0.8, 9);
    expect(rounded(reversals)).toEqual([0.8, 0.9, 0.8, 0.9, 0.7]);
    const lastFour = reversals.slice(-4).reduce((sum, level) => sum + level, 0) / 4;
    expect(lastFour).toBeCloseTo(0.825, 9);
  });
});
