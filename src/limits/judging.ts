import type { Message } from '../units/index.ts';
import type { Subject } from './subject.ts';

export type Call = 'accept' | 'reject' | 'refer' | 'notAssessed';

/** One requirement applied to one measurement. */
export interface Check {
  /** Unique within the sheet: criterion id, plus the measurement it was applied to. */
  readonly id: string;
  readonly measurement: Subject;
  /** What stands in the first column (term pair key, US and ISO). */
  readonly name: Message;
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'deg';
  /** The limit in mm or degrees; null when an input is missing. */
  readonly limit: number | null;
  /**
   * What is required over the whole length where `limit` is allowed over a short
   * one only, mm or degrees; absent where the limit holds whatever the length.
   */
  readonly ordinary?: number;
  /** The limit as the document prints it, in the document's unit (mm, in, deg). */
  readonly printed: { readonly value: number; readonly unit: 'mm' | 'in' | 'deg' } | null;
  readonly measured: number | null;
  /** Positive inside, negative outside, mm or degrees. */
  readonly margin: number | null;
  /** Half-width of the guard band, mm or degrees; 0 when none is set. */
  readonly guard: number;
  /** Standard uncertainty of the instrument, mm or degrees; 0 where nothing was compared. */
  readonly uncertainty: number;
  /** Probability that the true value lies inside the limit (JCGM 106), 0 to 1; null where nothing was compared. */
  readonly conformance: number | null;
  readonly call: Call;
  /** Why this call, most telling first. */
  readonly reasons: readonly Message[];
  /** The sum with numbers put in. */
  readonly working: Working | null;
  readonly source: CriterionSource;
}

export interface Working {
  /** the formula as the data has it */
  readonly formula: string;
  /** each symbol that the formula used, with its value in `unit` */
  readonly symbols: readonly {
    readonly symbol: string;
    readonly value: number;
    readonly unit: 'mm' | 'in' | 'deg' | '';
  }[];
  /** the same formula with numbers in place of symbols */
  readonly substituted: string;
}

export interface CriterionSource {
  readonly document: string;
  readonly edition: string;
  readonly clause: string;
  /** seen: read in a public text. memory: from memory, verify. invented: house specification. sheet: the job sheet itself. */
  readonly status: 'seen' | 'memory' | 'invented' | 'sheet';
  readonly note?: string;
}
