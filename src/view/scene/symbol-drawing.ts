import type { SymbolElement, WeldSymbol } from '../../limits/index.ts';
import { drawMark, halfWidth, roomLeft } from './symbol-marks.ts';
import type { SymbolPath, SymbolText } from './symbol-marks.ts';
import type { MarkPlace } from './symbol-shapes.ts';
import { textWidth } from './text-width.ts';
import { rounded } from './written.ts';

/** A welding symbol in px: y down, the elbow of arrow and reference line at the origin. */
export interface SymbolDrawing {
  readonly paths: readonly SymbolPath[];
  readonly texts: readonly SymbolText[];
  /** what it takes up, lines and words included */
  readonly box: {
    readonly left: number;
    readonly top: number;
    readonly right: number;
    readonly bottom: number;
  };
}

// All in sizes of the type.
const ARROW = { along: -2.6, down: 3.2 };
const HEAD = { length: 0.85, half: 0.2 };
/** The kink of a broken arrow: half its length along the arrow, and its throw to each side. */
const BREAK = { along: 0.22, aside: 0.32 };
const IDENTIFICATION = 0.45;
const ROUND = 0.42;
const FLAG = { high: 2.3, deep: 0.95, long: 1.25 };
const TAIL = 0.9;
const BEFORE = 1.3;
const AFTER = 0.9;
const SHORTEST = 5;
const MARGIN = 0.15;

/**
 * The drawing of a welding symbol with figures of type `size` px. AWS A2.4: one
 * line, the arrow side's mark below it. ISO 2553 system A: the arrow side's mark
 * on the solid line, the other side's on the dashed one, drawn below it and left
 * out where both sides are the same. All round: a circle at the elbow; on site: a
 * flag there; a fork behind for what the tail says.
 */
export function symbolDrawing(
  symbol: WeldSymbol,
  column: 'mm' | 'in',
  size: number,
): SymbolDrawing {
  const { system, arrowSide, otherSide, allRound, field, tail } = symbol;
  const at = (x: number, y: number): string => `${rounded(x * size)} ${rounded(y * size)}`;
  const both = [arrowSide, otherSide].filter((side) => side !== null);
  const widest = Math.max(...both.map((side) => halfWidth(side, column)));
  const twins = arrowSide?.kind === otherSide?.kind;
  const half = (side: SymbolElement): number => (twins ? widest : halfWidth(side, column));
  const before = BEFORE + (field ? FLAG.long : 0);
  const left = Math.max(...both.map((side) => roomLeft(side, column, half(side))));
  const centre = (before + left) * size;
  const end = Math.max(SHORTEST * size, centre + (widest + AFTER) * size);

  const dashed = system === 'ISO' && !isSymmetrical(arrowSide, otherSide);
  const places = markPlaces(symbol, dashed, size);
  const paths: SymbolPath[] = [
    { part: 'reference', look: 'line', d: `M0 0H${rounded(end)}` },
    ...arrow(symbol.preparedPlate !== null, size),
  ];
  if (dashed) {
    const y = rounded(IDENTIFICATION * size);
    paths.push({ part: 'identification', look: 'dashed', d: `M0 ${y}H${rounded(end)}` });
  }
  if (allRound) paths.push({ part: 'allRound', look: 'line', d: circle(ROUND * size) });
  if (field) {
    const { high, deep, long } = FLAG;
    paths.push(
      { part: 'field', look: 'line', d: `M0 0V${rounded(-high * size)}` },
      {
        part: 'field',
        look: 'filled',
        d: `M${at(0, -high)}L${at(long, -high + deep / 2)}L${at(0, -high + deep)}Z`,
      },
    );
  }
  const texts: SymbolText[] = [];
  let right = end;
  if (tail !== '') {
    const tip = end / size;
    const d = `M${at(tip + TAIL, -TAIL)}L${at(tip, 0)}L${at(tip + TAIL, TAIL)}`;
    paths.push({ part: 'tail', look: 'line', d });
    const x = end + TAIL * size;
    texts.push({
      part: 'tail',
      text: tail,
      x: rounded(x),
      y: rounded(0.35 * size),
      size,
      anchor: 'start',
    });
    right = x + textWidth(tail, size, 400);
  }
  let top = (field ? FLAG.high : allRound ? ROUND : 0) * size;
  let bottom = ARROW.down * size;
  if (tail !== '') top = Math.max(top, TAIL * size);
  for (const [side, place] of places) {
    const mark = drawMark(side, system, column, { ...place, x: centre, half: half(side) }, size);
    paths.push(...mark.paths);
    texts.push(...mark.texts);
    if (place.out === -1) top = Math.max(top, mark.reach - place.line);
    else bottom = Math.max(bottom, mark.reach + place.line);
  }
  const margin = MARGIN * size;
  return {
    paths,
    texts,
    box: {
      left: rounded(ARROW.along * size - margin),
      top: rounded(-top - margin),
      right: rounded(right + margin),
      bottom: rounded(bottom + margin),
    },
  };
}

/** Both sides the same: ISO 2553 leaves out the identification line, and they share the solid one. */
function isSymmetrical(one: SymbolElement | null, other: SymbolElement | null): boolean {
  if (one === null || other === null) return false;
  // the root opening is written at one of them and holds for both
  const asked = (side: SymbolElement): string => JSON.stringify({ ...side, rootOpening: null });
  return asked(one) === asked(other);
}

/** The line that each side's mark stands on, and which way out of it. */
function markPlaces(
  { system, arrowSide, otherSide }: WeldSymbol,
  dashed: boolean,
  size: number,
): readonly (readonly [SymbolElement, Pick<MarkPlace, 'line' | 'out'>])[] {
  const arrowOut = system === 'AWS' ? 1 : -1;
  const otherOut = system === 'AWS' ? -1 : 1;
  const otherLine = dashed ? IDENTIFICATION * size : 0;
  return [
    ...(arrowSide === null ? [] : [[arrowSide, { line: 0, out: arrowOut }] as const]),
    ...(otherSide === null ? [] : [[otherSide, { line: otherLine, out: otherOut }] as const]),
  ];
}

/** The arrow from the elbow to the joint, with the break that says it points to the prepared plate. */
function arrow(broken: boolean, size: number): readonly SymbolPath[] {
  const length = Math.hypot(ARROW.along, ARROW.down);
  const [ux, uy] = [ARROW.along / length, ARROW.down / length];
  /** a place so far along the arrow and to its right, in sizes of the type */
  const at = (along: number, aside: number): string =>
    `${rounded((ux * along - uy * aside) * size)} ${rounded((uy * along + ux * aside) * size)}`;
  const neck = length - HEAD.length;
  const middle = neck / 2;
  const { along, aside } = BREAK;
  const kink = broken ? `L${at(middle + along, aside)}L${at(middle - along, -aside)}` : '';
  return [
    { part: 'arrow', look: 'line', d: `M0 0${kink}L${at(neck, 0)}` },
    {
      part: 'arrowHead',
      look: 'filled',
      d: `M${at(length, 0)}L${at(neck, HEAD.half)}L${at(neck, -HEAD.half)}Z`,
    },
  ];
}

function circle(radius: number): string {
  const r = rounded(radius);
  return `M${-r} 0A${r} ${r} 0 1 1 ${r} 0A${r} ${r} 0 1 1 ${-r} 0Z`;
}
