export { compileLimits } from './compile-limits.ts';
export type { CompileResult, FormulaProblem } from './compile-limits.ts';
