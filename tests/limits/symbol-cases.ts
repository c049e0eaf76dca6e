import { defaultJoint, type Joint } from '../../src/joint/index.ts';
import { LimitsError, type JobSheet } from '../../src/limits/index.ts';
import { in64, inch, mm, sheetWith } from './hand-made.ts';
import { preparations } from '../joint/forms.ts';

export const tee = defaultJoint('fillet', 'tee');
export const singleV = defaultJoint('butt', 'singleV');
export const doubleV = defaultJoint('butt', 'doubleV');

/** The field and the reason that reading a symbol or its marks is refused with; `taken` where it isn't. */
export function refusal(work: () => unknown): string {
  try {
    work();
    return 'taken';
  } catch (error) {
    if (error instanceof LimitsError) return `${error.field}: ${error.reason.key}`;
    throw error;
  }
}

/** A joint of every form, and some that aren't plain. */
export const joints: readonly Joint[] = [
  tee,
  defaultJoint('fillet', 'lap'),
  ...preparations.map((form) => defaultJoint('butt', form)),
  { ...singleV, backing: 'strip' },
  { ...doubleV, rootSideShare: 0.3, rootBevelAngle1: 40 },
];
/** Sheets that ask for their sizes and grooves in every way. */
export const sheets: readonly JobSheet[] = [
  sheetWith(),
  sheetWith({ size: { as: 'throat', first: mm(5), second: null }, dihedralAngle: 75 }),
  sheetWith({ column: 'in', size: { as: 'throat', first: in64(13), second: null } }),
  sheetWith({ size: { as: 'leg', first: in64(20), second: inch(0.5) } }),
  sheetWith({
    groove: {
      ...sheetWith().groove,
      grooveAngle: { nominal: null, minus: 0, plus: 0 },
      rootOpening: { nominal: null, minus: mm(0), plus: mm(1) },
    },
  }),
];
