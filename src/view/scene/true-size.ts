import type { Section } from '../../joint/index.ts';
import { contourBounds } from '../../geometry/index.ts';
import type { Cut } from './cut-away.ts';
import { groundAt } from './drawing-sheet.ts';
import { boxesMeet, type LabelBox, uprightBox } from './label-box.ts';
import { anyMeets, type Lines } from './lines.ts';
import { type BodyLines, sectionBody, type SectionBody } from './section-body.ts';
import type { Sheet } from './sheet.ts';
import type { View } from './view-transform.ts';

/** The joint at life size, standing where the drawing has air to spare. */
export interface TrueSize {
  readonly body: SectionBody;
  /** middle and baseline of its caption, px */
  readonly caption: { readonly x: number; readonly y: number };
  /** the room it takes up, caption included */
  readonly box: LabelBox;
}

/** What the section and its dimensions have taken of the paper. */
export interface Taken {
  /** every visible edge */
  readonly outline: Lines;
  readonly labels: readonly LabelBox[];
  readonly lines: Lines;
}

/** Plates shown past the weld, mm. */
const SHOWN = 6;
const CAPTION = 26;
const CLEAR = 12;
/** Never wider or higher than this share of the sheet. */
const LARGEST = 0.3;

/** The true-size picture in the first corner of free air that holds it; null when none does. */
export function placeTrueSize(
  section: Section,
  sheet: Sheet,
  view: View,
  lines: BodyLines,
  taken: Taken,
  pxPerMm: number,
): TrueSize | null {
  // A wall or a phone has no room to spare; at life size the drawing itself is the picture.
  if (sheet.manner !== 'bench' || view.scale < pxPerMm * 1.5) return null;
  const { low, high, cuts } = shownPart(section);
  const width = (high.x - low.x) * pxPerMm;
  const height = (high.y - low.y) * pxPerMm;
  if (width > sheet.width * LARGEST || height > sheet.height * LARGEST) return null;
  const halfWidth = width / 2 + CLEAR;
  const halfHeight = (height + CAPTION) / 2 + CLEAR;
  for (const [right, down] of [
    [1, 0],
    [0, 0],
    [1, 1],
    [0, 1],
  ] as const) {
    const x = right === 1 ? sheet.right - halfWidth : sheet.left + halfWidth;
    for (const inset of [0, 24, 48]) {
      const y = down === 1 ? sheet.bottom - halfHeight - inset : sheet.top + halfHeight + inset;
      for (const aside of [0, 26, 52, 78]) {
        const box = uprightBox(
          x + (right === 1 ? -aside : aside),
          y,
          2 * halfWidth,
          2 * halfHeight,
        );
        if (anyMeets(taken.outline, box, 0)) continue;
        if (groundAt(lines, box.x, box.y) !== 'air') continue;
        if (taken.labels.some((label) => boxesMeet(box, label, 4))) continue;
        if (anyMeets(taken.lines, box, 4)) continue;
        return drawAt(section, pxPerMm, cuts, box, low, high);
      }
    }
  }
  return null;
}

function drawAt(
  section: Section,
  pxPerMm: number,
  cuts: readonly [readonly Cut[], readonly Cut[]],
  box: LabelBox,
  low: Corner,
  high: Corner,
): TrueSize {
  const view: View = {
    scale: pxPerMm,
    originX: box.x - ((low.x + high.x) / 2) * pxPerMm,
    originY: box.y - CAPTION / 2 + ((low.y + high.y) / 2) * pxPerMm,
    width: 0,
    height: 0,
    subject: '',
  };
  return {
    body: sectionBody(section, view, cuts),
    caption: { x: box.x, y: box.y + box.halfHeight - CLEAR - 4 },
    box,
  };
}

interface Corner {
  readonly x: number;
  readonly y: number;
}

/** The part of the section shown: the weld and 6 mm round it, plates cut off there. */
function shownPart(section: Section): {
  readonly low: Corner;
  readonly high: Corner;
  readonly cuts: readonly [readonly Cut[], readonly Cut[]];
} {
  let [left, right, bottom, top] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const side of [section.face, section.root]) {
    if (side === null) continue;
    const marks = [...(side.toes ?? []), ...(side.grooveEdges ?? []), side.surfaces[0].origin];
    for (const { x, y } of marks) {
      left = Math.min(left, x);
      right = Math.max(right, x);
      bottom = Math.min(bottom, y);
      top = Math.max(top, y);
    }
  }
  for (const region of section.welds) {
    const bounds = contourBounds(region);
    left = Math.min(left, bounds.left);
    right = Math.max(right, bounds.right);
    bottom = Math.min(bottom, bounds.bottom);
    top = Math.max(top, bounds.top);
  }
  const [west, east] = [left - SHOWN, right + SHOWN];
  const [south, north] = [bottom - SHOWN, top + SHOWN];
  const frame: readonly Cut[] = [
    { at: { x: west, y: 0 }, away: { x: -1, y: 0 } },
    { at: { x: east, y: 0 }, away: { x: 1, y: 0 } },
    { at: { x: 0, y: south }, away: { x: 0, y: -1 } },
    { at: { x: 0, y: north }, away: { x: 0, y: 1 } },
  ];
  return { low: { x: west, y: south }, high: { x: east, y: north }, cuts: [frame, frame] };
}
