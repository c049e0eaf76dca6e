/** The known name that differs from a mistyped one in the fewest letters, if that is at most two. */
export function nearestName(name: string, known: readonly string[]): string | null {
  const [nearest] = known
    .map((candidate) => ({
      candidate,
      slips: editDistance(name.toLowerCase(), candidate.toLowerCase()),
    }))
    // a name of one or two letters is not a slip for any other one
    .filter(({ candidate, slips }) => slips <= 2 && slips < Math.min(name.length, candidate.length))
    .sort((a, b) => a.slips - b.slips);
  return nearest?.candidate ?? null;
}

/** Letters to add, drop or change to make one word of another (Levenshtein). */
function editDistance(from: string, to: string): number {
  let row = Array.from({ length: to.length + 1 }, (_, at) => at);
  for (const [at, letter] of Array.from(from).entries()) {
    const next = [at + 1];
    for (const [place, other] of Array.from(to).entries()) {
      const changed = (row[place] ?? 0) + (letter === other ? 0 : 1);
      next.push(Math.min(changed, (row[place + 1] ?? 0) + 1, (next[place] ?? 0) + 1));
    }
    row = next;
  }
  return row.at(-1) ?? 0;
}
