import type { JobSheet } from '../limits/index.ts';
import type { Measurements } from '../measure/index.ts';
import type { Question, SectionView } from './question.ts';
import type { Skill } from './skill.ts';

/** What only a cut shows; a gap that the record tells is read, not seen. */
const inside: ReadonlySet<string> = new Set([
  'rootPenetration',
  'actualThroat',
  'deepThroat',
  'jointThickness',
  'rootGap',
]);
/** What lies on the root side of a butt weld: seen where an eye gets to it. */
const onRootSide: ReadonlySet<string> = new Set([
  'rootReinforcement',
  'rootUndercut',
  'rootConcavity',
  'incompletePenetration',
]);
/** What the fit-up record tells of a finished fillet. */
const byRecord: ReadonlySet<string> = new Set(['contactLeg', 'effectiveThroat']);

/**
 * The views in which a skill can be asked. Before welding everything is open to the eye; on a
 * finished weld what is hidden takes a cut, or the fit-up record.
 */
export function viewsOf(skill: Omit<Skill, 'id'>, sheet: JobSheet): readonly SectionView[] {
  const { quantity, stage } = skill;
  if (stage === 'fitUp') return ['outside', 'cut'];
  if (inside.has(quantity)) return ['cut'];
  if (onRootSide.has(quantity) && !sheet.rootAccessible) return ['cut'];
  return ['outside', 'cut'];
}

/** What is told beside an outside view, where the answer needs it: the gap under a finished fillet. */
export function recordedFor(
  skill: Omit<Skill, 'id'>,
  view: SectionView,
  { values }: Measurements,
): Question['recorded'] {
  const gap = values.rootGap?.value ?? null;
  if (view === 'cut' || skill.stage === 'fitUp' || gap === null) return [];
  return gap > 0 || byRecord.has(skill.quantity) ? [{ measurement: 'rootGap', value: gap }] : [];
}
