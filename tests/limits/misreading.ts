import { defaultJoint, type Joint } from '../../src/joint/index.ts';
import type { JobSheet, Misreading, Mistake, SymbolSystem } from '../../src/limits/index.ts';
import { misread, symbolOf } from '../../src/limits/index.ts';
import { mm, sheetWith } from './hand-made.ts';

export const tee = defaultJoint('fillet', 'tee');
export const singleV = defaultJoint('butt', 'singleV');
export const doubleV = defaultJoint('butt', 'doubleV');
export const throat5 = sheetWith({ size: { as: 'throat', first: mm(5), second: null } });
export const unequal = sheetWith({ size: { as: 'leg', first: mm(6), second: mm(10) } });

/** The symbol of a joint and sheet read wrong this way. */
export function read(
  joint: Joint,
  sheet: JobSheet,
  how: Mistake,
  system: SymbolSystem = 'ISO',
): Misreading {
  const found = misread(symbolOf(joint, sheet, system), how, sheet, joint);
  if (found === null) throw new Error('no such mistake');
  return found;
}

/** The numbers of a misreading's price, quantities without their units. */
export function price({ cost }: Misreading): Readonly<Record<string, number>> {
  return Object.fromEntries(
    Object.entries(cost.values ?? {}).map(([name, value]) => [
      name,
      typeof value === 'object' && 'value' in value ? value.value : Number(value),
    ]),
  );
}
