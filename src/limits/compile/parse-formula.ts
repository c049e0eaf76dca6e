import type { MathNode } from 'mathjs';
import { FormulaError } from './formula-error.ts';

/** A formula is a line of a table; what is longer is something else. */
const longestFormula = 200;

/** The part of mathjs that is used: text in, syntax tree out, nothing worked out. */
export type Parser = (text: string) => MathNode;

/** Loads mathjs's parser, and nothing else of it, when a formula is first compiled. */
export async function loadParser(): Promise<Parser> {
  const { create, parseDependencies } = await import('mathjs/number');
  return create(parseDependencies ?? {}).parse;
}

/**
 * mathjs reads `in` as "convert to"; here it is the inch. The stand-in is as
 * long as what it stands for, so that places in the text stay right.
 */
export const inchSymbol = 'iN';

/** The syntax tree of a formula, or the place where it can't be read. */
export function parseFormula(parser: Parser, text: string): MathNode {
  if (text.length > longestFormula) {
    throw new FormulaError('limits_formula_too_long', text.slice(0, 20), { most: longestFormula });
  }
  if (text.trim() === '') throw new FormulaError('limits_formula_empty', text);
  const plain = text
    .replace(/×/gu, '*')
    .replace(/÷/gu, '/')
    .replace(/−/gu, '-')
    .replace(/\bin\b/gu, inchSymbol);
  try {
    return parser(plain);
  } catch (error) {
    const place = placeOf(error, text);
    const typed = decimalComma(text.slice(0, text.length - place.length), place);
    if (typed !== null) {
      const meant = typed.replace(',', '.');
      throw new FormulaError('limits_formula_decimal_comma', typed, { meant });
    }
    throw place.trim() === ''
      ? new FormulaError('limits_formula_broken_off', text)
      : new FormulaError('limits_formula_unreadable', place);
  }
}

/** The number with a comma in it that the parser stopped in; null where it stopped at something else. */
function decimalComma(before: string, from: string): string | null {
  const [whole] = /\d+$/u.exec(before) ?? [];
  const [part] = /^,\d+/u.exec(from) ?? [];
  return whole === undefined || part === undefined ? null : whole + part;
}

/** What stands where the parser stopped; nothing when it stopped at the end. */
function placeOf(error: unknown, text: string): string {
  const char = typeof error === 'object' && error !== null && 'char' in error ? error.char : null;
  return typeof char === 'number' ? text.slice(char - 1) : text;
}
