import type { Given } from './circumstance.ts';
import type { CriterionSource } from './judging.ts';
import type { Subject } from './subject.ts';
import type { Tree } from './tree.ts';

/** A document's own columns. A formula without a length of its own stands in `any`, for both. */
export type FormulaColumn = 'mm' | 'in' | 'any';
export type Formulas = Readonly<Partial<Record<FormulaColumn, string>>>;
export type Trees = Readonly<Partial<Record<FormulaColumn, Tree>>>;

/** One requirement of a document, as data. Names, notes and reasons are message keys. */
export interface Criterion {
  readonly id: string;
  /** message key of a term pair: the view adds `_us` or `_iso` */
  readonly name: string;
  readonly measurements: readonly Subject[];
  readonly kind?: 'fillet' | 'butt';
  readonly stage?: 'fitUp' | 'welded';
  readonly product?: 'plate' | 'pipe';
  /** arrangements or preparations that it is for; all when left out */
  readonly forms?: readonly string[];
  /** Butt joints with a backing strip, or without; both when left out. */
  readonly backing?: 'none' | 'strip';
  /** Circumstances that the sheet has to give, in which the row counts. */
  readonly given?: Given;
  readonly when?: Formulas;
  readonly max?: Formulas;
  readonly min?: Formulas;
  /** Message key: why there is no limit, in a row with neither max nor min. */
  readonly unassessed?: string;
  /** Allowed for a short imperfection only; longer is not permitted. */
  readonly short?: true;
  /** The value at which a short imperfection is none; 0 when left out. */
  readonly nominal?: Formulas;
  /** Message key: over what length a short imperfection is allowed, in the document's words of number. */
  readonly lengthAllowed?: string;
  /** The row says how far under the specified size a weld may be: the sheet's own check steps back. */
  readonly standsFor?: 'throat' | 'leg';
  /** Where penetration is proven the deep throat is put to it. */
  readonly deepThroatCounts?: true;
  /** Symbols that mean something else in this row than in the set. */
  readonly symbols?: Readonly<Record<string, string>>;
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
  readonly status: 'seen' | 'memory' | 'invented';
  readonly confidence: 'high' | 'medium';
  readonly note?: string;
}

/** Something the document asks for that a section does not show. */
export interface ChecklistItem {
  readonly id: string;
  readonly name: string;
  /** message key of what is asked */
  readonly asks: string;
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
  readonly status: CriterionSource['status'];
  readonly confidence: 'high' | 'medium';
}

/** The acceptance limits of one document, edition and class, or of a house specification. */
export interface LimitSet {
  readonly version: 1;
  readonly id: string;
  /** message keys */
  readonly name: string;
  readonly about: string;
  readonly columns: readonly ('mm' | 'in')[];
  /** How the set reads what its document leaves open; the symbols below follow it. */
  readonly readings: {
    readonly reinforcementDatum: 'higher' | 'lower' | 'toes';
    readonly note: string;
  };
  /** Symbols of the document and what each is read from. */
  readonly symbols: Readonly<Record<string, string>>;
  /** The last place that its limits are printed to, for rounding before comparing. */
  readonly lastPlace: { readonly mm: number; readonly in: number; readonly deg: number };
  readonly criteria: readonly Criterion[];
  readonly checklist: readonly ChecklistItem[];
}

export interface CriterionTrees {
  readonly when?: Trees;
  readonly limit?: Trees;
  readonly nominal?: Trees;
}

/** A set with a tree for every formula, by criterion id. */
export interface CompiledLimitSet extends LimitSet {
  readonly trees: Readonly<Record<string, CriterionTrees>>;
}
