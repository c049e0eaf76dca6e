import { advances, measuredCharacters } from './glyph-advances.ts';

type Weight = keyof typeof advances;

/**
 * Every digit is given the widest digit's advance, so that a label keeps its
 * place while its value runs and one width serves all values of one length.
 */
const DIGIT = '0123456789';
const WIDEST = 'm';

const tables = {
  400: advanceTable(400),
  620: advanceTable(620),
} satisfies Record<Weight, ReadonlyMap<string, number>>;

function advanceTable(weight: Weight): ReadonlyMap<string, number> {
  const table = new Map<string, number>();
  Array.from(measuredCharacters).forEach((character, index) => {
    table.set(character, advances[weight][index] ?? 0);
  });
  const widestDigit = Math.max(...Array.from(DIGIT, (digit) => table.get(digit) ?? 0));
  for (const digit of DIGIT) table.set(digit, widestDigit);
  return table;
}

/**
 * Width that a line of text takes on the drawing, in px, never less than it is
 * drawn with (kerning only tightens, and a character that was not measured
 * counts as the widest letter).
 */
export function textWidth(text: string, size: number, weight: Weight): number {
  const before = known[weight].get(text);
  if (before !== undefined) return (before * size) / 1000;
  const table = tables[weight];
  const unknown = table.get(WIDEST) ?? 1000;
  let width = 0;
  for (const character of text) width += table.get(character) ?? unknown;
  if (known[weight].size >= MOST_KNOWN) known[weight].clear();
  known[weight].set(text, width);
  return (width * size) / 1000;
}

/** Widths reckoned before, thousandths of the size: a drawing says the same words at every move. */
const known: Record<Weight, Map<string, number>> = { 400: new Map(), 620: new Map() };
const MOST_KNOWN = 400;
