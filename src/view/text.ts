import {
  formatFixed,
  formatLength,
  inch64ToMm,
  mmToInch,
  nearestInch64,
  type LengthFormat,
} from '../units/index.ts';
import type { Message, MessageValue } from '../units/index.ts';
import type { Preferences } from '../state/preferences.ts';
import { sentences as first } from './messages/compiled/en-first.js';

type Sentences = typeof first;
type Sentence = Sentences[string];

/**
 * The sentences that the bench opens with; the rest is fetched at the first touch of the page. One
 * language so far; another is two more modules, chosen here.
 */
let rest: Sentences | null = null;

/** Fetches the sentences that the page did not open with. */
export async function fetchRest(): Promise<void> {
  if (rest !== null) return;
  rest = (await import('./messages/compiled/en-rest.js')).sentences;
  found.US.clear();
  found.ISO.clear();
}

/** The compiler's name of a key: small letters, and how many capitals the key had. */
function nameOf(key: string): string {
  const capitals = key.match(/[A-Z]/g)?.length ?? 0;
  return key.toLowerCase() + (capitals > 0 ? String(capitals) : '');
}

/** What each key was looked up to be in either terms; null until the rest is here. */
const found = { US: new Map<string, Sentence | null>(), ISO: new Map<string, Sentence | null>() };

/** The sentence of a key, or of its pair in these terms; null when there is none, or none yet. */
function sentenceOf(key: string, terms: Reading['terms']): Sentence | null {
  const before = found[terms].get(key);
  if (before !== undefined) return before;
  const sentence = sentenceNamed(key) ?? sentenceNamed(`${key}_${terms.toLowerCase()}`);
  found[terms].set(key, sentence);
  return sentence;
}

function sentenceNamed(key: string): Sentence | null {
  const name = nameOf(key);
  return own(first, name) ?? (rest === null ? null : own(rest, name));
}

const own = (sentences: Sentences, name: string): Sentence | null =>
  Object.hasOwn(sentences, name) ? (sentences[name] ?? null) : null;

/** What a person chose about numbers and names. */
export interface Reading extends Pick<Preferences, 'units' | 'inches' | 'terms'> {
  /** decimals of a millimetre figure that nothing less tells apart; then no length is a fraction */
  readonly decimals?: number;
}

/** Whether a key has a sentence, alone or as a pair of terms. */
export const known = (key: string): boolean =>
  sentenceOf(key, 'US') !== null && sentenceOf(key, 'ISO') !== null;

/**
 * A message in words, its quantities as the reader chose. A key that is a pair of terms gives the
 * chosen one of `key_us` and `key_iso`. `brief` leaves out units where they are the sheet's own.
 */
export function text(message: Message, reading: Reading, brief = false): string {
  const sentence = sentenceOf(message.key, reading.terms);
  // Not fetched yet, or no sentence at all: then the key shows, better than a blank. A test forbids it.
  if (sentence === null) return rest === null ? '…' : message.key;
  if (typeof sentence === 'string') return sentence;
  const { values = {} } = message;
  const words: Record<string, string | number> = {};
  for (const [name, value] of Object.entries(values)) words[name] = word(value, reading, brief);
  return isUntold(values, words, reading)
    ? text(message, { ...reading, decimals: (reading.decimals ?? 1) + 1 }, brief)
    : sentence(words);
}

/** No figure is given to more decimals than these. */
const MOST_DECIMALS = 6;

/**
 * Whether what was measured and its limit read alike, though they are not: 1/32, over the 1/32 allowed;
 * or a limit reads as the fraction that it isn't.
 */
function isUntold(
  { measured, limit }: NonNullable<Message['values']>,
  words: Readonly<Record<string, string | number>>,
  reading: Reading,
): boolean {
  const isPair = typeof measured === 'object' && typeof limit === 'object';
  if (!isPair || !('value' in measured) || !('value' in limit)) return false;
  if ((reading.decimals ?? 0) >= MOST_DECIMALS) return false;
  const isAlike = measured.value !== limit.value && words['measured'] === words['limit'];
  return isAlike || (limit.unit === 'mm' && !isTrue(limit.value, reading));
}

/** Half of the last place that a millimetre figure is given to. */
const FRACTION_OFF = 0.005;

/** Whether the reader's own figure of a limit is the limit: 3 mm is no eighth of an inch. */
export const isTrue = (limit: number, { units, inches, decimals }: Reading): boolean =>
  units === 'mm' ||
  inches !== 'fraction' ||
  decimals !== undefined ||
  Math.abs(byRule(limit) - limit) < FRACTION_OFF;

/** A length as a rule in 64ths gives it, mm. */
const byRule = (value: number): number => inch64ToMm(nearestInch64(value, 64));

function word(value: MessageValue, reading: Reading, brief: boolean): string | number {
  if (typeof value === 'string') return value;
  if (typeof value === 'number') return `${value}`.replace('-', '−');
  if ('key' in value) return text(value, reading, brief);
  if (brief && value.unit === 'mm') return length(value.value, reading);
  return quantity(value.value, value.unit, reading);
}

type QuantityUnit = Exclude<MessageValue, string | number | Message>['unit'];

/** A quantity in a sentence, its unit behind it and no more decimals than it needs. */
export function quantity(value: number, unit: QuantityUnit, reading: Reading): string {
  switch (unit) {
    case 'mm':
      return length(value, reading, { unitMark: true });
    case 'deg':
      return shorter(formatFixed(value, reading.decimals ?? 1)) + '°';
    case 'mm2':
      return reading.units === 'mm'
        ? `${formatFixed(value, 1)} mm²`
        : `${formatFixed(mmToInch(mmToInch(value)), 4)} in²`;
    case 'cm3/m':
      // a section of 1 in² is 12 in³ for each foot
      return reading.units === 'mm'
        ? `${formatFixed(value, 1)} cm³/m`
        : `${formatFixed(12 * mmToInch(mmToInch(value)), 3)} in³/ft`;
    case 'kg/m':
      return reading.units === 'mm'
        ? `${formatFixed(value, 3)} kg/m`
        : `${formatFixed(value * 0.671969, 3)} lb/ft`;
    case 'ratio':
      return shorter(formatFixed(value, 2));
  }
}

/**
 * A length in the reader's unit. `decimals` is of the millimetre figure; an inch figure carries one
 * more, at least three (0.01 mm is about 0.0004 in). Without it: as many as the length needs, at
 * least one.
 */
export function length(
  value: number,
  reading: Reading,
  how: { readonly decimals?: number; readonly unitMark?: boolean } = {},
): string {
  const mark = how.unitMark ?? false;
  const decimals = reading.decimals ?? how.decimals;
  if (reading.units === 'mm') {
    const digits = formatFixed(value, decimals ?? 2);
    return (decimals === undefined ? lessZero(digits) : digits) + (mark ? ' mm' : '');
  }
  const format: LengthFormat =
    reading.inches === 'fraction' && reading.decimals === undefined && !isUnderRule(value)
      ? { unit: 'in', style: 'fraction', denominator: 64, unitMark: mark }
      : {
          unit: 'in',
          style: 'decimal',
          decimals: Math.max(3, (decimals ?? 2) + 1),
          unitMark: mark,
        };
  return formatLength(value, format);
}

/** Less than this a flaw is measured finer than a rule's divisions are: 1/16 in. */
const FINE = 1.6;
/** So far off its nearest 64th a fraction says of it what isn't so, mm. */
const FAR_OFF = 0.1;

/** Small, and no fraction of a rule's divisions, yet not nothing by the third decimal: 0.6 mm is 0.024 in, 1/32 no more than near it. */
const isUnderRule = (value: number): boolean =>
  Math.abs(value) < FINE &&
  Math.abs(mmToInch(value)) >= 5e-4 &&
  (byRule(value) === 0 || Math.abs(byRule(value) - value) > FAR_OFF);

/** 12.00 as 12.0, 5.66 as it is: one decimal stands at least. */
const lessZero = (digits: string): string => (digits.endsWith('0') ? digits.slice(0, -1) : digits);
/** 90.0 as 90, 37.5 as it is. */
const shorter = (digits: string): string => digits.replace(/\.?0+$/, '');
