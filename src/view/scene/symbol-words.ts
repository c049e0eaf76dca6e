import type { SheetLength, SymbolElement, WeldSymbol } from '../../limits/index.ts';
import { formatInch64, type Message } from '../../units/index.ts';

/** A length as it is read out: its figures and its own unit. */
function spoken({ unit, value }: SheetLength): string {
  return unit === 'in64' ? `${formatInch64(value)} in` : `${value} ${unit}`;
}

/**
 * A welding symbol in full sentences, for someone who doesn't see it: the system,
 * each side's mark with its figures, and what stands at either end. `say` puts a
 * message into words.
 */
export function symbolSentence(symbol: WeldSymbol, say: (message: Message) => string): string {
  const { system, arrowSide, otherSide, preparedPlate, allRound, field, tail } = symbol;
  const mark = (side: SymbolElement | null): Readonly<Record<string, string>> => ({
    mark:
      side === null ? say({ key: 'symbol_words_no_weld' }) : markWords(side).map(say).join(', '),
  });
  const sentences: Message[] = [
    { key: system === 'AWS' ? 'symbol_words_aws' : 'symbol_words_iso' },
    { key: 'symbol_words_arrow_side', values: mark(arrowSide) },
    { key: 'symbol_words_other_side', values: mark(otherSide) },
  ];
  if (preparedPlate !== null) {
    sentences.push({ key: 'symbol_words_broken', values: { plate: preparedPlate } });
  }
  if (allRound) sentences.push({ key: 'symbol_words_all_round' });
  if (field) sentences.push({ key: 'symbol_words_field' });
  if (tail !== '') sentences.push({ key: 'symbol_words_tail', values: { tail } });
  return sentences.map(say).join(' ');
}

/** A weld mark and what is written round it, in the order in which a symbol is read. */
function markWords(element: SymbolElement): readonly Message[] {
  const { kind, size, depth, grooveAngle, rootOpening, contour } = element;
  const words: Message[] = [{ key: `symbol_words_${kind.toLowerCase()}` }];
  if (size !== null) words.push(sizeWords(size));
  if (depth !== null) words.push({ key: 'symbol_words_depth', values: { depth: spoken(depth) } });
  if (grooveAngle !== null) {
    const angle = { value: grooveAngle, unit: 'deg' } as const;
    words.push({ key: 'symbol_words_angle', values: { angle } });
  }
  if (rootOpening !== null) {
    words.push({ key: 'symbol_words_opening', values: { opening: spoken(rootOpening) } });
  }
  if (contour === 'flush') {
    const face = kind === 'fillet' ? 'symbol_words_flush_fillet' : 'symbol_words_flush_groove';
    words.push({ key: face });
  } else if (contour !== 'none') words.push({ key: `symbol_words_${contour}` });
  return words;
}

function sizeWords({ prefix, first, second }: NonNullable<SymbolElement['size']>): Message {
  if (second !== null) {
    const values = { first: spoken(first), second: spoken(second) };
    return { key: 'symbol_words_legs', values };
  }
  const key = prefix === 'a' ? 'symbol_words_throat' : 'symbol_words_leg';
  return { key, values: { size: spoken(first) } };
}
