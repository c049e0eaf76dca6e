import type { Service } from './circumstance.ts';
import type { SymbolMarks } from './weld-symbol.ts';

/**
 * What the WPS, the drawing and the limit set require of one joint. Plain JSON, part of the permalink and the saved file.
 * Lengths are kept as entered, in `column` units, so that a document's inch
 * and metric columns never mix.
 */
export interface JobSheet {
  readonly version: 1;
  /** Free text, shown above the checks. */
  readonly job: string;
  readonly weld: string;
  /** number of the welding procedure specification, of the drawing; governing code and its edition */
  readonly wps: string;
  readonly drawing: string;
  readonly code: string;
  readonly material: string;
  readonly process: string;
  readonly limitSet: string;
  /** Which column of the documents is judged in. */
  readonly column: 'mm' | 'in';
  /** Specified fillet size: leg z or throat a, as the drawing gives it. `second` only for unequal legs. */
  readonly size: {
    readonly as: 'leg' | 'throat';
    readonly first: SheetLength;
    readonly second: SheetLength | null;
  };
  /** Fillet: the angle the drawing asks for. */
  readonly dihedralAngle: number;
  readonly groove: {
    readonly bevelAngle: Toleranced<number>;
    readonly grooveAngle: Toleranced<number>;
    readonly rootOpening: Toleranced<SheetLength>;
    readonly rootFace: Toleranced<SheetLength>;
  };
  readonly intendedAlignment: 'centrelines' | 'faceFlush' | 'rootFlush';
  /** absolute: as measured. lastPlace: measured is rounded to the last place of the printed limit first. */
  readonly rounding: 'absolute' | 'lastPlace';
  /** Guard band = factor times the instrument's standard uncertainty; factor 0 switches it off. */
  readonly guard: {
    readonly factor: number;
    readonly lengthUncertainty: number;
    readonly angleUncertainty: number;
  };
  /** For rows that allow short imperfections only. */
  readonly extent: 'unknown' | 'isolatedShort' | 'typical';
  /** What is smaller than this counts as nothing in a row for short imperfections. */
  readonly leastImperfection: SheetLength;
  readonly penetrationProven: boolean;
  /** whether an eye can get to the root side of the finished weld */
  readonly rootAccessible: boolean;
  /** what some rows depend on and no section shows */
  readonly service: Service;
  /** what the welding symbol on the drawing says besides the dimensions above; plain when left out */
  readonly symbol?: SymbolMarks;
}

/** A length as entered: a decimal in the sheet's column, or an exact inch fraction of 64ths. */
export type SheetLength =
  | { readonly unit: 'mm'; readonly value: number }
  | { readonly unit: 'in'; readonly value: number }
  | { readonly unit: 'in64'; readonly value: number };

/**
 * A dimension of the preparation. `nominal` is the WPS's (null: not required);
 * `drawn` is what the drawing details where that differs, which it may do
 * within `detailed`; `minus` and `plus` are what the fit-up may be under and
 * over what is drawn.
 */
export interface Toleranced<T> {
  readonly nominal: T | null;
  readonly minus: T;
  readonly plus: T;
  readonly drawn?: T;
  readonly detailed?: { readonly minus: T; readonly plus: T };
}
