export * from './judging.ts';
export * from './job-sheet.ts';
export type * from './limit-set.ts';
export { isMeasured, subjects, type Subject } from './subject.ts';
export { LimitsError } from './limits-error.ts';
export { parseJobSheet } from './parse-job-sheet.ts';
export { parseLimitSet } from './parse-limit-set.ts';
export { limitSetSchema } from './limit-set-schema.ts';
export * from './limit-set-terms.ts';
export { knownSymbols, sourceOf } from './known-symbols.ts';
export { writeTree, writeValue } from './substitute.ts';
export { compileLimits } from './compile/index.ts';
export type { CompileResult, FormulaProblem } from './compile/index.ts';
export { limitSets } from './built-in.ts';
export { defaultJobSheet, openingLimitSet } from './opening-set.ts';
export { judge } from './judge.ts';
export { judgeAll } from './unjudged.ts';
export { leastTriangle, type LeastTriangle } from './least-triangle.ts';
export { stepFor } from './reading.ts';
export { columnConflicts, type ColumnConflict } from './columns.ts';
export { askedOf } from './asked.ts';
export { intendedOffset } from './intended-offset.ts';
export { otherDocument } from './other-document.ts';
export { detailChecks, type DetailCheck } from './detail-checks.ts';
export { fitUpRange, type FitUpEnd, type FitUpWeld } from './fit-up-range.ts';
export { overWelding, type OverWelding } from './over-welding.ts';
export {
  circumstanceNames,
  circumstances,
  unknownService,
  type Circumstance,
  type Service,
} from './circumstance.ts';
export { normalDensity, normalShare } from './normal.ts';
export { overallCall, type Overall } from './overall-call.ts';
export { allowedRange, type AllowedRange } from './allowed-range.ts';
export { twinSize, specifiedSize, type SpecifiedSize } from './sheet-size.ts';
export { plainMarks, symbolOf } from './weld-symbol.ts';
export type * from './weld-symbol.ts';
export { marksOf, placesOf, sheetFromSymbol, type SymbolPlace } from './weld-symbol-sheet.ts';
export { misread, mistakes, type Misreading, type Mistake } from './weld-symbol-misread.ts';
export { parseWeldSymbol } from './parse-weld-symbol.ts';
export { contours, parseSymbolMarks } from './parse-symbol-marks.ts';
