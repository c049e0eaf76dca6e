import type { SceneWords } from './dimension-context.ts';
import { type BarLength, scaleBar, type ScaleBar, scaleText } from './scale-bar.ts';
import type { Sheet } from './sheet.ts';
import { textWidth } from './text-width.ts';

/** The line under the view: scale bar, drawn scale, and what found no room. */
export interface DrawingFoot {
  readonly bar: ScaleBar | null;
  readonly scale: string;
  readonly notShown: string;
  /** there is no room for it beside the bar: it stands in a line of its own */
  readonly stacked: boolean;
  readonly size: number;
}

const SIZE = { bench: 13, phone: 12, presenting: 24 } as const;
/** Most of the sheet's width that the bar may take. */
const BAR_SHARE = { bench: 0.25, phone: 0.2, presenting: 0.25 } as const;
/** Between bar and words, and between the words at either end, px. */
const GAP = 8;
const APART = 16;

/** What the last foot was made of, and what it came to: under the hand it is mostly asked for again. */
let last: { readonly of: readonly unknown[]; readonly foot: DrawingFoot } | null = null;

/**
 * The foot of a drawing; the bar is the longest round one that leaves room for its words. What is not
 * shown has no say in it: two drawings of one scale side by side have the same bar. The very same foot
 * while nothing it is made of changes: then nothing that shows it need run.
 */
export function drawingFoot(...of: Parameters<typeof composeFoot>): DrawingFoot {
  const before = last?.of;
  if (last === null || of.some((one, place) => one !== before?.[place]))
    last = { of, foot: composeFoot(...of) };
  return last.foot;
}

function composeFoot(
  sheet: Sheet,
  pxPerMm: number,
  times: number,
  lengths: readonly BarLength[],
  words: SceneWords,
  notShown: number,
): DrawingFoot {
  const size = SIZE[sheet.manner];
  const missing = notShown === 0 ? '' : words.notShown(notShown);
  const drawn = scaleText(times);
  const widest = Math.max(
    0,
    ...lengths.map(({ text }) => textWidth(words.scale(text, drawn), size, 400)),
  );
  const room = sheet.right - sheet.left - widest - GAP;
  const bar = scaleBar(pxPerMm, Math.min(sheet.width * BAR_SHARE[sheet.manner], room), lengths);
  const scale = bar === null ? '' : words.scale(bar.length.text, drawn);
  const used = (bar?.width ?? 0) + GAP + textWidth(scale, size, 400) + APART;
  return {
    bar,
    scale,
    notShown: missing,
    stacked: missing !== '' && used + textWidth(missing, size, 400) > sheet.right - sheet.left,
    size,
  };
}
