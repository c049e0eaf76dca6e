import type { Contour } from '../../geometry/index.ts';
import { contourLength, pointAtLength } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import type { DimensionRequest } from './dimension-request.ts';
import type { SceneInput } from './scene.ts';
import { toPx, type View } from './view-transform.ts';

const RANK = 65;

/** Words for a held outline, with a leader to it. */
export function heldNote({ held }: SceneInput, view: View): readonly DimensionRequest[] {
  const bead = held?.section.face.bead ?? null;
  if (held === null || bead === null) return [];
  const { point } = pointAtLength(bead, contourLength(bead) * 0.34);
  const { normal } = held.section.face.surfaces[0];
  return [
    {
      asked: {
        key: 'held',
        names: [held.label],
        value: '',
        tone: 'plain',
        lit: false,
        rank: RANK,
        figure: '',
      },
      kind: 'note',
      at: toPx(view, point),
      towards: { x: normal.x, y: -normal.y },
    },
  ];
}

/** What is kept of a held section: the outline of its face and of its root. */
export function heldContours({ face, root }: Section): readonly Contour[] {
  return [face.bead, root?.bead ?? null].flatMap((bead) => (bead === null ? [] : [bead]));
}
