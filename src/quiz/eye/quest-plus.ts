/**
 * Which of several stimuli to show next, so that the answer tells most about which of several
 * hypotheses holds: QUEST+, A. B. Watson, Journal of Vision 17(3):10, 2017, for two answers.
 */
export interface QuestPlus {
  readonly stimuli: readonly number[];
  /** for each stimulus the chance of a yes under each hypothesis */
  readonly chances: readonly Float64Array[];
  /** for each stimulus the uncertainty that is left of the answer under each hypothesis, nats */
  readonly left: readonly Float64Array[];
}

/** The table that placement works on; `chance` gives that of a yes, 0 to 1. Made once. */
export function questPlus<Hypothesis>(
  stimuli: readonly number[],
  hypotheses: readonly Hypothesis[],
  chance: (stimulus: number, hypothesis: Hypothesis) => number,
): QuestPlus {
  const chances = stimuli.map((stimulus) =>
    Float64Array.from(hypotheses, (hypothesis) => chance(stimulus, hypothesis)),
  );
  return { stimuli, chances, left: chances.map((row) => row.map(uncertainty)) };
}

/** As likely as any other, all of them. */
export const evenWeights = (count: number): Float64Array => new Float64Array(count).fill(1 / count);

/**
 * The index of the stimulus of least expected entropy, the first of equals. What an answer takes from
 * the entropy on average is the answer's own uncertainty less what is left of it once the hypothesis
 * is known; this is far quicker to work out than the entropies after either answer, and the same.
 */
export function mostTelling(
  { stimuli, chances, left }: QuestPlus,
  weights: Float64Array,
  mayShow: (stimulus: number) => boolean = () => true,
): number {
  let best = -1;
  let most = -Infinity;
  stimuli.forEach((stimulus, index) => {
    if (!mayShow(stimulus)) return;
    const yes = weighed(chances[index] as Float64Array, weights);
    const told = uncertainty(yes) - weighed(left[index] as Float64Array, weights);
    if (told <= most + ALIKE) return;
    best = index;
    most = told;
  });
  return best;
}

/** Differences below this are those of adding up in another order. */
const ALIKE = 1e-12;

/** The weights of the hypotheses after an answer to a stimulus, which add up to 1. */
export function afterAnswer(
  { chances }: QuestPlus,
  weights: Float64Array,
  index: number,
  yes: boolean,
): Float64Array {
  const row = chances[index] as Float64Array;
  const next = weights.map((weight, i) => {
    const chance = row[i] as number;
    return weight * (yes ? chance : 1 - chance);
  });
  const all = next.reduce((sum, weight) => sum + weight, 0);
  return next.map((weight) => weight / all);
}

function weighed(row: Float64Array, weights: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < row.length; i++) sum += (row[i] as number) * (weights[i] as number);
  return sum;
}

/** Entropy of a yes of chance p, nats. */
function uncertainty(p: number): number {
  return p <= 0 || p >= 1 ? 0 : -p * Math.log(p) - (1 - p) * Math.log1p(-p);
}
