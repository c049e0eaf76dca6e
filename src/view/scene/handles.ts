import type { Point, Vector } from '../../geometry/index.ts';
import type { Joint, ParameterRange, Section } from '../../joint/index.ts';
import { numberAt } from '../../state/parameter.ts';
import type { Grip, Grips } from './grips.ts';
import type { Sheet } from './sheet.ts';
import { toPx, type View } from './view-transform.ts';
import { written } from './written.ts';

/** A point of the drawing that one parameter is moved by. */
export interface Handle {
  readonly field: string;
  /** where it stands, mm */
  readonly at: Point;
  /** how far and where that point goes per unit of the parameter, mm */
  readonly axis: Vector;
  /** belongs to a discontinuity: drawn smaller */
  readonly flaw: boolean;
  readonly value: number;
  readonly range: ParameterRange;
}

/** What the bench folds its controls by; null while none is chosen. */
export type HandleGroup = ParameterRange['group'] | 'measured' | 'sheet' | null;

const MOST_HANDLES = 6;
/** Two handles of one bead may not stand on the same point, mm. */
const SAME_PLACE = 0.05;

type Fields = Readonly<Record<ParameterRange['group'] | 'first', readonly string[]>>;

/** What else the same toe may have. */
const OTHER_OF_TOE: Readonly<Record<string, string>> = {
  undercut1Depth: 'overlap1',
  undercut2Depth: 'overlap2',
  overlap1: 'undercut1Depth',
  overlap2: 'undercut2Depth',
};

const UNDERCUTS = ['undercut1Depth', 'undercut2Depth'] as const;

/** Fields that have a place on the drawing, most telling first. */
const FIELDS: Readonly<Record<Joint['kind'], Readonly<Record<Joint['stage'], Fields>>>> = {
  fillet: {
    welded: {
      first: ['leg1', 'leg2', 'convexity', ...UNDERCUTS, 'rootGap'],
      joint: ['dihedralAngle', 'cornerOverlap', 't1', 't2'],
      fitUp: ['rootGap'],
      weld: ['leg1', 'leg2', 'convexity', 'rootPenetration', 'edgeMelt'],
      discontinuities: [...UNDERCUTS, 'overlap1', 'overlap2'],
    },
    fitUp: {
      first: ['dihedralAngle', 'rootGap', 'cornerOverlap', 't1', 't2'],
      joint: ['dihedralAngle', 'cornerOverlap', 't1', 't2'],
      fitUp: ['rootGap'],
      weld: [],
      discontinuities: [],
    },
  },
  butt: {
    welded: {
      first: ['capHeight', 'capPast1', 'capPast2', 'rootHeight', 'offset', ...UNDERCUTS],
      joint: ['t1', 't2'],
      fitUp: ['offset', 'angularMisalignment'],
      weld: ['capHeight', 'capPast1', 'capPast2', 'rootHeight', 'rootPast1', 'rootPast2'],
      discontinuities: [
        ...UNDERCUTS,
        'rootUndercut1Depth',
        'rootUndercut2Depth',
        'overlap1',
        'overlap2',
        'capDrop1',
        'capDrop2',
        'incompletePenetration',
      ],
    },
    fitUp: {
      first: ['bevelAngle1', 'bevelAngle2', 'rootOpening', 'rootFace1', 'rootFace2', 'offset'],
      joint: ['bevelAngle1', 'bevelAngle2', 'rootFace1', 'rootFace2', 't1', 't2'],
      fitUp: ['rootOpening', 'offset', 'angularMisalignment'],
      weld: [],
      discontinuities: [],
    },
  },
};

/**
 * The handles of the chosen group of the joint's parameters, at most six. Of those that would stand on
 * one point the first is kept; a flaw that is there comes before one that isn't.
 */
export function handlesOf(
  joint: Joint,
  section: Section,
  ranges: readonly ParameterRange[],
  group: HandleGroup,
  grips: Grips,
): readonly Handle[] {
  const listed = FIELDS[joint.kind][joint.stage];
  const fields =
    group === null || group === 'measured' || group === 'sheet' ? listed.first : listed[group];
  const handles: Handle[] = [];
  for (const { field, value, range } of presentFirst(joint, fields, ranges)) {
    const grip: Grip | null = grips[field]?.(joint, section) ?? null;
    if (grip === null || handles.some(({ at }) => near(at, grip.at))) continue;
    const flaw = range.group === 'discontinuities';
    handles.push({ field, at: grip.at, axis: grip.axis, flaw, value, range });
    if (handles.length === MOST_HANDLES) break;
  }
  // In the listed order, whatever was chosen first: a ring that changed places would lose the focus.
  return handles.sort((p, q) => fields.indexOf(p.field) - fields.indexOf(q.field));
}

type Parameter = Pick<Handle, 'field' | 'value' | 'range'>;

/**
 * Flaws of some size before flaws of none, otherwise as listed. A toe has an
 * undercut or an overlap, so the one that is there hides the other.
 */
function presentFirst(
  joint: Joint,
  listed: readonly string[],
  ranges: readonly ParameterRange[],
): readonly Parameter[] {
  const present: Parameter[] = [];
  const absent: Parameter[] = [];
  for (const field of listed) {
    const other = OTHER_OF_TOE[field];
    if (other !== undefined && (numberAt(joint, other) ?? 0) > 0) continue;
    const value = numberAt(joint, field);
    // a handful is asked for of some thirty: looked up as it comes, sooner than put into a table
    const range = ranges.find((one) => one.field === field);
    if (value === null || range === undefined) continue;
    const isAbsent = range.group === 'discontinuities' && value <= 0;
    (isAbsent ? absent : present).push({ field, value, range });
  }
  return [...present, ...absent];
}

/** A handle with its place on the drawing, px. */
export interface ShownHandle {
  readonly handle: Handle;
  readonly at: Point;
  /** the same as an SVG transform */
  readonly place: string;
}

/** Whether two handles look and read alike, whatever way either would be pulled. */
export const showsTheSame = (one: ShownHandle, other: ShownHandle): boolean =>
  one.place === other.place &&
  one.handle.field === other.handle.field &&
  one.handle.value === other.handle.value &&
  one.handle.range === other.handle.range;

/**
 * The handles that stand on the sheet. The handle of a flaw that isn't there
 * yet gives way to a neighbour nearer than `apart` px. The one that has the
 * focus stays wherever it is: its ring would take the focus and the drag with it.
 */
export function shownHandles(
  handles: readonly Handle[],
  view: View,
  { width, bottom }: Sheet,
  apart: number,
  focused: string | null = null,
): readonly ShownHandle[] {
  const placed = handles.map((handle): ShownHandle => {
    const at = toPx(view, handle.at);
    return { handle, at, place: `translate(${written(at.x)} ${written(at.y)})` };
  });
  return placed.filter(({ handle, at }) => {
    if (handle.field === focused) return true;
    if (at.x < 0 || at.x > width || at.y < 0 || at.y > bottom) return false;
    if (!handle.flaw || handle.value !== 0) return true;
    return placed.every(
      (other) =>
        other.handle === handle || Math.hypot(other.at.x - at.x, other.at.y - at.y) >= apart,
    );
  });
}

function near(p: Point, q: Point): boolean {
  return Math.hypot(p.x - q.x, p.y - q.y) < SAME_PLACE;
}

/** The parameter's value when its handle is pulled by `pull` mm from where it was `start`. */
export function pulledValue({ axis }: Handle, start: number, pull: Vector): number {
  return start + (pull.x * axis.x + pull.y * axis.y) / (axis.x * axis.x + axis.y * axis.y);
}
