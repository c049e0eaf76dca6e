/**
 * Area under the curve of hits over false alarms from ratings, counted from surest accept to surest
 * reject on good and on bad sections: the chance that a bad one is rated worse than a good one, a
 * tie counting half; with its standard error. J. A. Hanley and B. J. McNeil, Radiology 143, 1982.
 */
export function areaOfRatings(
  good: readonly number[],
  bad: readonly number[],
): { readonly area: number; readonly standardError: number } | null {
  const [goods, bads] = [sum(good), sum(bad)];
  if (goods === 0 || bads === 0) return null;
  const won = bad.map((count, i) => count * (sum(good.slice(0, i)) + (good[i] ?? 0) / 2));
  const area = sum(won) / (goods * bads);
  const twoBad = area / (2 - area) - area * area;
  const twoGood = (2 * area * area) / (1 + area) - area * area;
  const variance = area * (1 - area) + (bads - 1) * twoBad + (goods - 1) * twoGood;
  return { area, standardError: Math.sqrt(variance / (goods * bads)) };
}

const sum = (counts: readonly number[]): number => counts.reduce((all, one) => all + one, 0);
