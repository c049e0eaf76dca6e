import type { JobSheet } from '../limits/index.ts';
import type { Joint } from '../joint/index.ts';
import type { MeasurementId } from '../measure/index.ts';
import type { Condition } from './condition.ts';

/** A lesson as a page can show it: text blocks, sections to drive, tasks that can be checked. */
export interface Lesson {
  /** Folder name without its number: the permanent address of the lesson. */
  readonly slug: string;
  /** From the folder's number: place in the list. */
  readonly order: number;
  readonly title: string;
  readonly summary: string;
  /** Rough reading and doing time. */
  readonly minutes: number;
  readonly blocks: readonly Block[];
}

export type Block =
  | { readonly kind: 'heading'; readonly level: 2 | 3; readonly text: string }
  | { readonly kind: 'paragraph'; readonly text: readonly Inline[] }
  | {
      readonly kind: 'list';
      readonly ordered: boolean;
      readonly items: readonly (readonly Inline[])[];
    }
  | { readonly kind: 'caution'; readonly text: readonly Inline[] }
  | { readonly kind: 'figure'; readonly figure: Figure }
  | { readonly kind: 'task'; readonly task: Task };

/** A run of text in one voice. */
export interface Inline {
  readonly text: string;
  readonly voice: 'plain' | 'strong' | 'emphasis' | 'code';
}

/** What a figure starts from: whole in itself, nothing inherited. */
export interface LessonState {
  readonly joint: Joint;
  readonly sheet: JobSheet | null;
}

/** Construction that a figure shows; the same words as the bench's toggles. */
export const constructionNames = [
  'legs',
  'triangle',
  'throats',
  'chord',
  'band',
  'surfaces',
  'fusion',
  'toeAngles',
] as const;
export type ConstructionName = (typeof constructionNames)[number];

/** A section that the reader drives. */
export interface Figure {
  readonly start: LessonState;
  /** Joint parameters with a control beside the drawing. */
  readonly drive: readonly string[];
  readonly show: readonly ConstructionName[];
  /** Measurements read out beside the drawing. */
  readonly read: readonly MeasurementId[];
  readonly caption: string;
}

/** Something to do that the page can check by measuring the section. */
export type Task = DriveTask | ChooseTask;

interface CommonTask {
  readonly id: string;
  readonly ask: string;
  /** Said once it is right: why. */
  readonly why: string;
  readonly figure: Figure;
}

/** Bring the section to where every condition holds. */
export interface DriveTask extends CommonTask {
  readonly kind: 'drive';
  readonly conditions: readonly Condition[];
}

/** Pick the statement that is true of the section; the truth is measured, not stored. */
export interface ChooseTask extends CommonTask {
  readonly kind: 'choose';
  readonly options: readonly {
    readonly id: string;
    readonly label: string;
    readonly conditions: readonly Condition[];
  }[];
}

/** A lesson file that cannot be used: which file, which key, why. Read by whoever writes lessons. */
export class LessonError extends Error {
  readonly file: string;
  readonly key: string;

  constructor(file: string, key: string, why: string) {
    super(`${file}: ${key}: ${why}`);
    this.name = 'LessonError';
    this.file = file;
    this.key = key;
  }
}
