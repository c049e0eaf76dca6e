import iso5817C from './sets/iso5817-c.compiled.json' with { type: 'json' };
import lockGateSheet from './sheets/lock-gate-3-weld-14.json' with { type: 'json' };
import type { JobSheet } from './job-sheet.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/**
 * The set that the opening sheet names. TypeScript widens what it reads from JSON; that the file is
 * what `CompiledLimitSet` says is held by the test that parses and compiles its source again.
 */
export const openingLimitSet = iso5817C as unknown as CompiledLimitSet;

/** The sheet that the bench opens with: a tee fillet of the invented lock gate. */
export const defaultJobSheet = (): JobSheet => lockGateSheet as JobSheet;
