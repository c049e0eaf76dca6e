import { defaultJobSheet, limitSets } from '../../src/limits/index.ts';
import type { CompiledLimitSet, JobSheet } from '../../src/limits/index.ts';

/** A sheet with the set that it is judged by. */
export interface SheetCase {
  readonly name: string;
  readonly sheet: JobSheet;
  readonly limits: CompiledLimitSet;
}

function setById(id: string): CompiledLimitSet {
  const found = limitSets.find((set) => set.id === id);
  if (found === undefined) throw new Error(`no limit set ${id}`);
  return found;
}

/** The opening sheet put under a set, in the set's own first column, with what a case changes. */
export function sheetUnder(id: string, changed: Partial<JobSheet> = {}): SheetCase {
  const limits = setById(id);
  const column = limits.columns[0] ?? 'mm';
  const sheet = { ...defaultJobSheet(), limitSet: id, column, ...changed };
  return { name: `${id} ${JSON.stringify(changed)}`, sheet, limits };
}

const mm = (value: number) => ({ unit: 'mm', value }) as const;
const { guard } = defaultJobSheet();

/** Every built-in set with its natural sheet, and sheets that ask for something else. */
export const sheetCases: readonly SheetCase[] = [
  ...limitSets.map(({ id }) => sheetUnder(id)),
  sheetUnder('iso5817-c', { size: { as: 'throat', first: mm(5), second: null } }),
  sheetUnder('iso5817-c', { size: { as: 'leg', first: mm(6), second: mm(9) } }),
  sheetUnder('iso5817-d', { intendedAlignment: 'faceFlush', penetrationProven: true }),
  sheetUnder('aws-d11-static', { column: 'mm', intendedAlignment: 'rootFlush' }),
  sheetUnder('aws-d11-static', {
    size: { as: 'leg', first: { unit: 'in64', value: 20 }, second: null },
  }),
  sheetUnder('lock-gate-house', { dihedralAngle: 110 }),
  sheetUnder('lock-gate-house', { rootAccessible: false, guard: { ...guard, factor: 2 } }),
];
