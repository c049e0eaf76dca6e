interface Piece {
  readonly d: string;
  readonly dashed?: boolean;
}

export type IconName =
  'undo' | 'redo' | 'reset' | 'hold' | 'present' | 'share' | 'chevron' | 'close' | 'more';

/** Marks of the commands, 16 × 16, drawn in one weight. */
export const icons: Readonly<Record<IconName, readonly Piece[]>> = {
  undo: [{ d: 'M5 3L2 6l3 3M2.5 6H10a3.5 3.5 0 010 7H6' }],
  redo: [{ d: 'M11 3l3 3-3 3M13.5 6H6a3.5 3.5 0 000 7h4' }],
  reset: [{ d: 'M3.2 5.5A5.5 5.5 0 112.5 8M3 2v3.6h3.6' }],
  hold: [{ d: 'M2 13C4 6 8 3 14 3' }, { d: 'M2 13C5 9 9 8 14 8', dashed: true }],
  present: [{ d: 'M2 3h12v8H2zM8 11v3M5 14h6' }],
  share: [{ d: 'M8 10V2M5 4.5L8 1.8l3 2.7M3 8v5.5h10V8' }],
  chevron: [{ d: 'M4 6l4 4 4-4' }],
  close: [{ d: 'M4 4l8 8M12 4l-8 8' }],
  more: [{ d: 'M2 4h12M2 8h12M2 12h12' }],
};
