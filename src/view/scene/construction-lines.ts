import type { Contour, Point } from '../../geometry/index.ts';
import { add, line, scale } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import type { Measurements } from '../../measure/index.ts';
import type { Construction } from './construction.ts';
import type { Lines } from './lines.ts';
import { flattenInto, pathOf } from './outline-path.ts';
import type { View } from './view-transform.ts';

/** Construction as path data, by line type. */
export interface ConstructionPaths {
  /** dashed: plate surfaces and prepared edges inside the weld */
  readonly hidden: string;
  /** narrow: chord, largest triangle */
  readonly narrow: string;
  /** long-dash dot: surface lines carried on through the weld and past it */
  readonly surfaces: string;
}

interface Shown {
  readonly section: Section;
  readonly measurements: Measurements;
  readonly show: Construction;
}

/** How far a surface line is carried on past what it belongs to, px. */
const CARRIED_ON = 34;

/** The construction that is switched on, as path data and as lines for labels to keep off. */
export function constructionLines(
  shown: Shown,
  view: View,
): { readonly paths: ConstructionPaths; readonly lines: Lines } {
  const hidden = shown.show.triangle || shown.section.kind === 'butt' ? hiddenEdges(shown) : [];
  const narrow = [...chords(shown), ...triangle(shown)];
  const surfaces = shown.show.surfaces ? surfaceLines(shown.section, view) : [];
  const lines: number[] = [];
  for (const contour of [hidden, narrow, surfaces]) flattenInto(lines, view, contour);
  return {
    paths: {
      hidden: pathOf(view, hidden),
      narrow: pathOf(view, narrow),
      surfaces: pathOf(view, surfaces),
    },
    lines,
  };
}

/** Where the plates' edges run unseen inside the weld: surface lines of a fillet, prepared edges of a groove. */
function hiddenEdges({ section }: Shown): Contour {
  const { face, groove } = section;
  if (face.toes === null) return [];
  if (section.kind === 'fillet') {
    return [
      line(face.surfaces[0].origin, face.toes[0]),
      line(face.surfaces[1].origin, face.toes[1]),
    ];
  }
  return groove === null ? [] : groove.preparedEdges.flat();
}

function chords({ section, show }: Shown): Contour {
  if (!show.chord) return [];
  return [section.face.toes, section.root?.toes ?? null]
    .filter((toes) => toes !== null)
    .map((toes) => line(toes[0], toes[1]));
}

/** The third side of the largest triangle, where the chord isn't it already. */
function triangle({ measurements, show }: Shown): Contour {
  const { 'sizePair.1': size, concavity } = measurements.values;
  if (!show.triangle || size?.witness.kind !== 'triangle') return [];
  if (show.chord && (concavity?.value ?? 0) < 1e-6) return [];
  return [line(size.witness.corner1, size.witness.corner2)];
}

/** Each surface line from just behind the weld to just past the other plate's. */
function surfaceLines({ face, root, kind }: Section, view: View): Contour {
  const pieces: Contour[number][] = [];
  for (const side of [face, root]) {
    if (side === null) continue;
    for (const plate of [0, 1] as const) {
      const { origin, along } = side.surfaces[plate];
      const own = stationOf(side.toes?.[plate] ?? side.grooveEdges?.[plate] ?? null, origin, along);
      const other = stationOf(
        side.toes?.[1 - plate] ?? side.grooveEdges?.[1 - plate] ?? null,
        origin,
        along,
      );
      const past = CARRIED_ON / view.scale;
      const far = kind === 'fillet' ? 0 : other;
      pieces.push(
        line(add(origin, scale(along, own + past)), add(origin, scale(along, far - past))),
      );
    }
  }
  return pieces;
}

function stationOf(mark: Point | null, origin: Point, along: Point): number {
  return mark === null ? 0 : (mark.x - origin.x) * along.x + (mark.y - origin.y) * along.y;
}
