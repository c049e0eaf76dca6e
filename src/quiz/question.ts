import type { Joint } from '../joint/index.ts';
import type { Call, Check, JobSheet } from '../limits/index.ts';
import type { Measurements } from '../measure/index.ts';
import type { Fault, SkillId } from './skill.ts';

/** outside: the outer outline alone, as an inspector meets the weld. cut: a macro-section, all shown. */
export type SectionView = 'outside' | 'cut';

/** What a section may come to. */
export type Truth = Exclude<Call, 'notAssessed'>;

/** How near a limit is taken: as a logarithm of the ratio, in degrees, or in mm where the limit may be 0. */
export type EyeScale = 'ratio' | 'deg' | 'mm';

/**
 * All that a question follows from; plain JSON. The same spec, sheet and set give the same question
 * on every machine.
 */
export interface QuestionSpec {
  readonly version: 1;
  /** whole number from 0 to 2^32 - 1 */
  readonly seed: number;
  readonly skill: SkillId;
  readonly view: SectionView;
  /**
   * Where the section shall stand: distance past the limit on the skill's scale, positive on the
   * reject side. Of what the sheet leaves open: what the call shall be.
   */
  readonly asked: number | Truth;
}

/** A joint whose truth is known. */
export interface Question {
  readonly spec: QuestionSpec;
  readonly sheet: JobSheet;
  readonly joint: Joint;
  readonly measurements: Measurements;
  /** every check of the sheet on this joint */
  readonly checks: readonly Check[];
  /**
   * the checks of the sheet on this joint and on what else it might have been with another truth: what
   * is told beforehand goes by these, so that it is the same whatever the truth
   */
  readonly either: readonly Check[];
  /** the check that is asked about; the truth is its call */
  readonly decisive: Check;
  readonly truth: Truth;
  /** what is wrong; null where the joint is acceptable */
  readonly fault: Fault | null;
  readonly scale: EyeScale;
  /** distance past the limit on that scale, positive on the reject side */
  readonly distance: number;
  /** the same in mm or degrees */
  readonly exceedance: number;
  /** one size that is told, for scale: a thickness */
  readonly known: 't1' | 't2';
  /** whether the drawing is shown turned left to right */
  readonly mirrored: boolean;
  /** what the fit-up record says beside an outside view, where the answer needs it */
  readonly recorded: readonly { readonly measurement: 'rootGap'; readonly value: number }[];
  /** what may be answered to "what is wrong", the fault among them when there is one */
  readonly choices: readonly Fault[];
}

/** What a person answered. */
export interface Answer {
  readonly call: Truth;
  /** null: not asked, or the call was accept */
  readonly fault: Fault | 'somethingElse' | 'notSure' | null;
  /** 50 to 100 per cent */
  readonly sure: number;
}
