import iso5817C from './sets/iso5817-c.compiled.json' with { type: 'json' };
import lockGateHouse from './sets/lock-gate-house.compiled.json' with { type: 'json' };
import lockGateSheet from './sheets/lock-gate-3-weld-14.json' with { type: 'json' };
import type { JobSheet } from './job-sheet.ts';
import type { CompiledLimitSet } from './limit-set.ts';

/**
 * The sets that come with the program, compiled. TypeScript widens what it
 * reads from JSON; that these files are what `CompiledLimitSet` says is held by
 * the test that parses and compiles their sources again.
 */
export const limitSets = [iso5817C, lockGateHouse] as unknown as readonly CompiledLimitSet[];

/** The sheet that the bench opens with: a tee fillet of the invented lock gate. */
export const defaultJobSheet = (): JobSheet => lockGateSheet as JobSheet;
