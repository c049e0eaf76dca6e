import type { Point } from '../../geometry/index.ts';

/** What a dimension's colour says; always with weight or wording beside it. */
export type Tone = 'plain' | 'reject' | 'refer';

/** What every dimension asks for, however it is drawn. */
export interface Asked {
  /** stable from one layout to the next: the measurement's id, or a name of the drawing's own */
  readonly key: string;
  /** small text before the value: the full name, then shorter ones for where there is no room */
  readonly names: readonly string[];
  readonly value: string;
  readonly tone: Tone;
  /** pointed at: heavier, in the accent colour, never dropped */
  readonly lit: boolean;
  /** what the drawing is there to show: not dropped either, though nothing is out of limit */
  readonly kept?: boolean;
  /** lower is placed first and dropped last */
  readonly rank: number;
  /** path data that explains it while it is pointed at; '' otherwise */
  readonly figure: string;
}

/** Held by itself, not spread into each request: half a dozen are made for every move of a hand. */
interface Request {
  readonly asked: Asked;
}

/** A direction for a dimension line to be set off in, and how far it may lie, px, best first. */
export interface Way {
  readonly off: Point;
  readonly levels: readonly number[];
}

/**
 * A distance (px, y down) with a dimension line set off from it: `off` is the unit direction
 * of its extension lines, `levels` how far along it the dimension line may lie,
 * best first. `label` 'on' prefers the text above the line, 'end' at the end of
 * a line carried past `outer`.
 */
export interface LinearRequest extends Request {
  readonly kind: 'linear';
  readonly from: Point;
  readonly to: Point;
  readonly off: Point;
  readonly levels: readonly number[];
  /** another direction to try when none of the levels serves, found when it is wanted */
  readonly instead?: () => Way;
  readonly label: 'on' | 'end';
  /** the end that looks into the air, where a small dimension's text belongs */
  readonly outer: 'from' | 'to';
  /** ends that need no extension line, because a construction line or a surface lies there */
  readonly bare?: 'from' | 'to' | 'both' | undefined;
}

/** One arrow of a running dimension from a common origin; the text on the line or past its arrow. */
export interface RunningRequest extends Request {
  readonly kind: 'running';
  readonly from: Point;
  readonly to: Point;
  /** endOrOn: on the line only if there is no fair place past the arrow */
  readonly label: 'on' | 'end' | 'endOrOn';
  /** how far past its arrow a longer one that runs its way ends, px; left out where none does */
  readonly next?: number | undefined;
}

/** An angle at `vertex` from `start` to `end`, radians on the screen, `end` beyond `start` clockwise. */
export interface AngleRequest extends Request {
  readonly kind: 'angle';
  readonly vertex: Point;
  readonly start: number;
  readonly end: number;
  readonly radii: readonly number[];
}

/** A text with a line to a point that it speaks of, leaving it towards `towards` first. */
export interface NoteRequest extends Request {
  readonly kind: 'note';
  readonly at: Point;
  readonly towards: Point;
}

/**
 * Small text along a line from `from` to `to`, or along the arc that rises
 * `sagitta` px over it away from `inward` (unit), on the inward side.
 */
export interface CaptionRequest extends Request {
  readonly kind: 'caption';
  readonly from: Point;
  readonly to: Point;
  readonly sagitta: number;
  readonly inward: Point;
}

export type DimensionRequest =
  LinearRequest | RunningRequest | AngleRequest | NoteRequest | CaptionRequest;

/** Text sizes of the drawing, px. */
export interface Lettering {
  readonly name: number;
  readonly value: number;
  /** texts inside the allowed band */
  readonly small: number;
  readonly arrowLength: number;
  readonly arrowWidth: number;
}

export const LETTERING = {
  screen: { name: 13, value: 16, small: 12.5, arrowLength: 11, arrowWidth: 3.8 },
  presenting: { name: 26, value: 34, small: 22, arrowLength: 18, arrowWidth: 7 },
} as const satisfies Record<string, Lettering>;

/** A filled arrowhead: its tip and the unit direction that it points in. */
export interface Arrowhead {
  readonly x: number;
  readonly y: number;
  readonly dx: number;
  readonly dy: number;
}
