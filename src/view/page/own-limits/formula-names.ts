import { knownSymbols, type LimitSet } from '../../../limits/index.ts';
import { measurementIds } from '../../../measure/index.ts';
import type { Message } from '../../../units/index.ts';
import { measurementName } from '../measurement-name.ts';

/** A name that a formula of a set may use, and what it means in plain words. */
export interface FormulaName {
  readonly name: string;
  readonly meaning: Message;
}

/** Every name that a formula of the set may use, each once, the set's own names first. */
export function formulaNames({ symbols }: LimitSet): readonly FormulaName[] {
  return [...new Set(knownSymbols(symbols))].map((name) => ({
    name,
    meaning: meaningOf(Object.hasOwn(symbols, name) ? (symbols[name] ?? name) : name),
  }));
}

function meaningOf(name: string): Message {
  const id = measurementIds.find((one) => one === name);
  return id === undefined
    ? { key: `own_limits_symbol_${name.toLowerCase()}` }
    : measurementName(id);
}
