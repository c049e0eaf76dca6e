import type { CompiledLimitSet } from '../limits/index.ts';

/** A limit set as questions are judged by: its formulas compiled. */
export type LimitSet = CompiledLimitSet;
