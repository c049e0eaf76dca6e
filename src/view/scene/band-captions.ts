import type { Contour, Point } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import { sagitta } from '../../geometry/index.ts';
import type { AllowedBand, DrawnBand } from './allowed-band.ts';
import type { CaptionRequest } from './dimension-request.ts';
import type { SceneWords } from './dimension-context.ts';
import { toPx, type View } from './view-transform.ts';

/** Captions of the allowed band are the first to go when room runs out. */
const RANK = 100;

interface Captioned {
  readonly section: Section;
  readonly band: AllowedBand | null;
  readonly words: SceneWords;
}

/** `most` along the outer limit and `least` along the inner one, on their inner sides. */
export function bandCaptions(
  { section, band, words }: Captioned,
  view: View,
  drawn: DrawnBand,
): readonly CaptionRequest[] {
  // nothing switched on
  if (band === null || drawn.limits === '') return [];
  const inner = section.kind === 'fillet' ? section.face.surfaces[0].origin : middleOf(section);
  const least = words.least(band, section.kind);
  const most = words.most(band, section.kind);
  return [
    ...caption('least', least, drawn.least, inner, view),
    ...caption('most', most, drawn.most, inner, view),
  ];
}

function caption(
  key: string,
  name: string,
  limit: Contour,
  inner: Point,
  view: View,
): readonly CaptionRequest[] {
  const [piece] = limit;
  if (piece === undefined || name === '') return [];
  const [from, to, root] = [toPx(view, piece.a), toPx(view, piece.b), toPx(view, inner)];
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // a limit of no length
  if (length < 1e-6) return [];
  const [dx, dy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const side = dx * (root.y - from.y) - dy * (root.x - from.x) > 0 ? 1 : -1;
  return [
    {
      asked: { key, names: [name], value: '', tone: 'plain', lit: false, rank: RANK, figure: '' },
      kind: 'caption',
      from,
      to,
      sagitta: Math.abs(sagitta(piece)) * view.scale,
      inward: { x: -dy * side, y: dx * side },
    },
  ];
}

/** A point inside a butt weld: half way between the middles of its face and root chords. */
function middleOf({ face, root }: Section): Point {
  const ends = [face, root].flatMap((side) => side?.toes ?? side?.grooveEdges ?? []);
  const sum = ends.reduce((p, q) => ({ x: p.x + q.x, y: p.y + q.y }), { x: 0, y: 0 });
  return { x: sum.x / Math.max(1, ends.length), y: sum.y / Math.max(1, ends.length) };
}
