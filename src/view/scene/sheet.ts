/** Drawing rules that change with the room: a phone, a bench, a wall. */
export type Manner = 'bench' | 'phone' | 'presenting';

/** Room kept round the weld for plates and dimensions, px. */
export interface Margins {
  /** air above the face, where leg 1 or the cap width is written */
  readonly above: number;
  /** air beside a fillet, where leg 2 and the face labels are written */
  readonly beside: number;
  /** plate shown on either side of a butt weld */
  readonly flank: number;
  /** under the root of a butt joint */
  readonly below: number;
  /** plate shown beyond a fillet's own corner */
  readonly metal: number;
  /** beyond the shown depth of a fillet's plates */
  readonly under: number;
}

/** The paper: its size, the part that the view may fill, and the room kept in it, px. */
export interface Sheet {
  readonly width: number;
  readonly height: number;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
  readonly manner: Manner;
  readonly margins: Margins;
  /** depth of a fillet's plates worth showing, as a share of the weld's width */
  readonly depthShare: number;
  /** the plate of a fillet that is shown whole however thick; none when left out */
  readonly whole?: 0 | 1;
  /** spacing of hatch lines, square to them */
  readonly hatch: number;
}

const HATCH_PITCH = { bench: 12, phone: 11, presenting: 17 } as const;
/** Hatch pitch of the true-size picture. */
export const TRUE_SIZE_HATCH = 5;
/** Height of the strip under the view that holds scale bar and count. */
const FOOTER = { bench: 34, phone: 24, presenting: 52 } as const;
const EDGE = { bench: 16, phone: 8, presenting: 24 } as const;

/** The sheet for a drawing of this size; margins are shares of it within readable bounds. */
export function sheetOf(width: number, height: number, manner: Manner): Sheet {
  const edge = EDGE[manner];
  const between = (least: number, value: number, most: number): number =>
    Math.min(most, Math.max(least, value)) * (manner === 'presenting' ? 1.5 : 1);
  return {
    width,
    height,
    left: edge,
    top: edge - 4,
    right: width - edge,
    bottom: height - FOOTER[manner],
    manner,
    margins: {
      above: between(84, height * 0.23, 140),
      beside: between(96, width * 0.24, 180),
      flank: between(72, width * 0.2, 170),
      below: between(56, height * 0.15, 110),
      metal: between(40, width * 0.14, 110),
      under: between(14, height * 0.04, 28),
    },
    depthShare: manner === 'phone' ? 0.14 : 0.26,
    hatch: HATCH_PITCH[manner],
  };
}
