import type { Requirement } from './assess.ts';
import type { JobSheet } from './job-sheet.ts';
import type { Working } from './judging.ts';
import type { Subject } from './subject.ts';
import type { SymbolValue } from './substitute.ts';
import { substitute } from './substitute.ts';
import { symbolsIn, type Tree } from './tree.ts';

/** A sum that the sheet's own figures go into, as text and as a tree. */
export interface SheetSum {
  readonly formula: string;
  readonly tree: Tree;
}

interface SheetLimit {
  readonly id: string;
  readonly subject: Subject;
  /** the measurement that the limit is put to, where it is one of several that the subject goes over */
  readonly judged?: Subject;
  readonly name: string;
  readonly side?: 1 | 2 | undefined;
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'in' | 'deg';
  readonly limit: number;
  readonly lastPlace: number;
  readonly sum: SheetSum;
  readonly inputs: Readonly<Record<string, SymbolValue>>;
}

/** A requirement that the job sheet itself makes. */
export function sheetRequirement(sheet: JobSheet, made: SheetLimit): Requirement {
  const { id, subject, judged = subject, name, side, sense, unit, limit, lastPlace } = made;
  return {
    id: `${id}:${subject}`,
    subject: judged,
    name: side === undefined ? { key: name } : { key: name, values: { side } },
    sense,
    documentUnit: unit,
    limit,
    shortFrom: null,
    lengthAllowed: null,
    lastPlace,
    source: { document: sheet.job, edition: '', clause: sheet.weld, status: 'sheet' },
    working: () => workingOf(made),
  };
}

function workingOf({ sum, inputs }: SheetLimit): Working {
  const valueOf = (symbol: string): SymbolValue =>
    inputs[symbol] ?? { value: Number.NaN, unit: '' };
  return {
    formula: sum.formula,
    symbols: symbolsIn(sum.tree).map((symbol) => ({ symbol, ...valueOf(symbol) })),
    substituted: substitute(sum.tree, valueOf),
  };
}
