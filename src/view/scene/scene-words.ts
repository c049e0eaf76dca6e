import type { Measurement } from '../../measure/index.ts';
import { inchToMm } from '../../units/index.ts';
import { length, quantity, type Reading, text } from '../text.ts';
import type { SceneWords } from './dimension-context.ts';
import type { BarLength } from './scale-bar.ts';

/** Values kept in words before they are forgotten. */
const MOST_WORDED = 400;

/** The drawing's words for one reader; a dotted id takes an underscore in its key. */
export function sceneWords(reading: Reading): SceneWords {
  const say = (key: string, values?: Readonly<Record<string, string | number>>): string =>
    text(values === undefined ? { key } : { key, values }, reading);
  const none = (): Map<string, string> => new Map();
  const [names, shorts, scales] = [none(), none(), none()];
  const [governs, governsShort] = [none(), none()];
  // A value that stays while another one runs is put into words once.
  const worded = new Map<Measurement['unit'], Map<number, string>>();
  const value = ({ value, unit }: Measurement): string => {
    if (value === null) return '';
    let ofUnit = worded.get(unit);
    if (ofUnit === undefined) worded.set(unit, (ofUnit = new Map<number, string>()));
    return once(ofUnit, value, () => valueText(value, unit, reading));
  };
  const lengths = new Map<number, string>();
  const shown = (mm: number): string => once(lengths, mm, () => length(mm, reading));
  return {
    name: (id) => once(names, id, () => say(`scene_${id.replace('.', '_')}`)),
    short: (id) => once(shorts, id, () => say(`scene_${id.replace('.', '_')}_short`)),
    value,
    governs: (throat) => once(governs, throat, () => say('scene_governs', { name: throat })),
    governsShort: (throat) =>
      once(governsShort, throat, () => say('scene_governs_short', { name: throat })),
    scale: (bar, scale) =>
      once(scales, `${bar} ${scale}`, () => say('scene_scale', { bar, scale })),
    notShown: (count) =>
      count === 1 ? say('scene_not_shown_one') : say('scene_not_shown', { count }),
    least: ({ least: { leg1, leg2 }, below: { limit } }, kind) => {
      if (kind === 'butt')
        return limit === null ? '' : say('scene_least_cap', { depth: shown(limit) });
      if (leg1 === null || leg2 === null) return '';
      return leg1 === leg2
        ? say('scene_least', { leg: shown(leg1) })
        : say('scene_least_unequal', { leg1: shown(leg1), leg2: shown(leg2) });
    },
    most: ({ most: { limit } }, kind) =>
      limit === null
        ? ''
        : say(kind === 'fillet' ? 'scene_most' : 'scene_most_cap', { height: shown(limit) }),
  };
}

/** What was found before of that name, a handful of names being asked for at every move; or finds it. */
function once<Name>(known: Map<Name, string>, name: Name, find: () => string): string {
  const before = known.get(name);
  if (before !== undefined) return before;
  if (known.size >= MOST_WORDED) known.clear();
  const found = find();
  known.set(name, found);
  return found;
}

function valueText(value: number, unit: Measurement['unit'], reading: Reading): string {
  return unit === 'mm' ? length(value, reading) : quantity(value, unit, reading);
}

/** The lengths that make a round scale bar in the reader's unit. */
export function barLengths(reading: Reading): readonly BarLength[] {
  const metric = reading.units === 'mm';
  const lengths = metric
    ? [0.5, 1, 2, 5, 10, 20, 50, 100]
    : [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1, 2, 4].map(inchToMm);
  return lengths.map((mm) => ({
    mm,
    text: metric ? `${mm} mm` : length(mm, reading, { unitMark: true }),
  }));
}
