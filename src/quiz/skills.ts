import { askedOf } from '../limits/index.ts';
import type { Criterion, JobSheet } from '../limits/index.ts';
import { measurementCatalogue, measurementIds } from '../measure/index.ts';
import { scaleOf } from './distance.ts';
import { atDistance } from './draw/draw-question.ts';
import type { Patience } from './draw/pair.ts';
import { truthsLeftOpen } from './draw/refer.ts';
import type { LimitSet } from './limit-set.ts';
import { quantityOf } from './quantity.ts';
import type { EyeScale, SectionView, Truth } from './question.ts';
import { viewsOf } from './sections-seen.ts';
import { remembered } from './remembered.ts';
import { sheetKey } from './sheet-key.ts';
import { openSheet, settledSheet } from './settle.ts';
import { skillIdOf } from './skill-id.ts';
import type { Quantity, Skill } from './skill.ts';

/** A skill as one sheet under one set lets it be asked. */
export interface SheetSkill extends Skill {
  readonly scale: EyeScale;
  /** how far on either side of the limit it can be asked, on that scale; 0 of what the sheet leaves open */
  readonly reach: number;
  /** what a section of it may come to */
  readonly truths: readonly Truth[];
  readonly views: readonly SectionView[];
}

/** Where a limit's scale is found out, on any scale. */
const NEAR = 0.1;
/** The nearest that a skill has to be askable at: nearer no instrument would tell, an angle least of all. Our choice. */
const nearest: Readonly<Record<EyeScale, number>> = { ratio: 0.1, deg: 1, mm: 0.2 };
/** Distances that are tried after it, each as a step further. */
const steps: Readonly<Record<EyeScale, readonly number[]>> = {
  ratio: [0.2, 0.35, 0.6],
  deg: [3, 8],
  mm: [0.5, 1.5],
};
/** A skill is offered where each of these seeds gives a question. */
const [FIRST, SECOND] = [11, 12];
const patience: Patience = { forms: 60, tried: 9 };
const brief: Patience = { forms: 30, tried: 4 };

const bySheet = remembered<readonly SheetSkill[]>();

/**
 * Every skill that can be asked on this sheet under this set, in the sheet's order and the set's:
 * those of which questions were in fact drawn. Worked out once for a sheet and a set.
 */
export const skillsOf = (sheet: JobSheet, limits: LimitSet): readonly SheetSkill[] =>
  bySheet(limits, sheetKey(sheet), () =>
    judgedSkills(sheet, limits).flatMap((skill) => asked(skill, sheet, limits)),
  );

function asked(skill: Skill, sheet: JobSheet, limits: LimitSet): readonly SheetSkill[] {
  const settled = settledSheet(sheet);
  const at = (seed: number, away: number, how = patience) =>
    atDistance(seed, away, skill, settled, limits, how);
  const views = viewsOf(skill, sheet);
  const first = at(FIRST, NEAR);
  const scale = first?.[0] === undefined ? 'ratio' : scaleOf(first[0].decisive);
  const open = { ...skill, refers: true };
  const openTruths = truthsLeftOpen(open, openSheet(sheet), limits);
  const settles =
    first !== null && [FIRST, SECOND].every((seed) => at(seed, nearest[scale]) !== null);
  let reach = settles ? nearest[scale] : 0;
  for (const step of settles ? steps[scale] : []) {
    if (at(FIRST, step, brief) === null) break;
    reach = step;
  }
  return [
    ...(settles ? [{ ...skill, scale, reach, truths: ['accept', 'reject'] as const, views }] : []),
    ...(openTruths === null
      ? []
      : [{ ...open, id: skillIdOf(open), scale, reach: 0, truths: openTruths, views }]),
  ];
}

/** What the sheet and the set put a limit to, whether or not it can be asked by itself. */
function judgedSkills(sheet: JobSheet, { criteria }: LimitSet): readonly Skill[] {
  const all = [...sheetRows(sheet), ...criteria].flatMap(skillsIn);
  return [...new Map(all.map((skill) => [skill.id, skill])).values()];
}

type Row = Pick<Criterion, 'measurements' | 'kind' | 'stage' | 'max' | 'min'>;

/** What a sheet asks of its own accord. */
function sheetRows({ groove }: JobSheet): readonly Row[] {
  const weld = { kind: 'fillet', stage: 'welded', min: {} } as const;
  const fitUp = { kind: 'butt', stage: 'fitUp' } as const;
  return [
    { ...weld, measurements: ['leg1', 'leg2'] },
    { ...weld, measurements: ['isoscelesThroat', 'theoreticalThroat'] },
    ...(['grooveAngle', 'bevelAngle', 'rootOpening', 'rootFace'] as const).flatMap(
      (name): Row[] => {
        const asked: unknown = askedOf<unknown>(groove[name]);
        if (asked === null) return [];
        const measurements = [name === 'bevelAngle' ? ('bevelAngle1' as const) : name];
        return [
          { ...fitUp, measurements, min: {} },
          { ...fitUp, measurements, max: {} },
        ];
      },
    ),
  ];
}

function skillsIn({ measurements, kind, stage, max, min }: Row): readonly Skill[] {
  const sense = min === undefined ? 'max' : 'min';
  if (min === undefined && max === undefined) return [];
  return [...new Set(measurements.map(quantityOf))].flatMap((quantity) =>
    places(quantity).flatMap((place) => {
      const isFor = (kind ?? place.kind) === place.kind && (stage ?? place.stage) === place.stage;
      if (!isFor) return [];
      const skill = { ...place, quantity, sense, refers: false } as const;
      return [{ ...skill, id: skillIdOf(skill) }];
    }),
  );
}

/** The kinds and stages that a quantity is measured at. */
function places(quantity: Quantity): readonly Pick<Skill, 'kind' | 'stage'>[] {
  const stages = ['fitUp', 'welded'] as const;
  const worked = { misalignment: 'butt', angleDeparture: 'fillet' } as const;
  const own = quantity in worked ? worked[quantity as keyof typeof worked] : null;
  if (own !== null) return stages.map((stage) => ({ kind: own, stage }));
  const entries = measurementIds
    .filter((id) => quantityOf(id) === quantity)
    .map((id) => measurementCatalogue[id]);
  return (['fillet', 'butt'] as const).flatMap((kind) =>
    stages
      .filter((stage) => entries.some((e) => e.kinds.includes(kind) && e.stages.includes(stage)))
      .map((stage) => ({ kind, stage })),
  );
}
