import type { Section } from '../../joint/index.ts';
import { type Sheet, sheetOf } from './sheet.ts';

/** The paper that a question is drawn on, px. */
export interface Paper {
  readonly width: number;
  readonly height: number;
  readonly phone: boolean;
}

/** Room at the edge that the known plate runs out to, for its size, px. */
const BESIDE = { screen: 52, phone: 40 } as const;
/** A plate that leans by less than this runs out to one edge only, as a share of its length. */
const LEAN = 0.3;
/**
 * Plate shown beside a butt weld, px: it is broken off near the joint, so that its thickness decides
 * how large it can be drawn and not its length.
 */
const FLANK = { screen: 112, phone: 42 } as const;
/** What is left of the room that the bench keeps for dimensions. */
const SHARE = { above: 0.6, below: 0.75, beside: 0.75 } as const;

/** The sheet of a question: as close round the joint as its dimensions afterwards allow. */
export function callSheet(
  section: Section,
  known: { readonly plate: 0 | 1 },
  { width, height, phone }: Paper,
): Sheet {
  const plain = sheetOf(width, height, phone ? 'phone' : 'bench');
  const size = phone ? 'phone' : 'screen';
  const out = section.plateSurfaces[known.plate].face.along;
  const room = (reaches: number): number => (reaches > LEAN ? BESIDE[size] : plain.left);
  const { margins } = plain;
  return {
    ...plain,
    left: room(-out.x),
    right: width - room(out.x),
    top: room(out.y) + 2,
    bottom: height - room(-out.y),
    margins: {
      ...margins,
      above: margins.above * SHARE.above,
      below: margins.below * SHARE.below,
      beside: margins.beside * SHARE.beside,
      flank: Math.min(margins.flank, FLANK[size]),
    },
    whole: known.plate,
  };
}
