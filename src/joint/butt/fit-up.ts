import { line, reverseContour } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { ButtJoint } from '../joint.ts';
import { assembleSide } from '../side.ts';
import type { Side } from '../section.ts';
import { backingOf, stripRegion, topOfBacking } from './backing.ts';
import { setbackAt } from './edge-preparation.ts';
import { through, via } from './outline.ts';
import { grooveOf } from './groove.ts';
import { both, type Pair } from './pair.ts';
import { plateRegion } from './plate-region.ts';
import { place } from './plate-frame.ts';
import { rootWithoutBead } from './root-side.ts';
import { edgeBetween, type SetUp } from './set-up.ts';
import { farSetback } from './walks.ts';
import type { Shapes } from './welded.ts';

/**
 * The plates set but not yet welded. The face outline goes down the prepared
 * edges to where they touch; through an open root it goes down to the root and
 * straight across (or along the backing strip). The root outline goes up the
 * edges in the same way, straight across between the face groove edges, or
 * round the backing strip.
 */
export function fitUp(joint: ButtJoint, set: SetUp): Shapes {
  const { plates, contact } = set;
  const backing = backingOf(joint, set);
  const surface = (i: 0 | 1, height: number): Contour => {
    const { edge, frame } = plates[i];
    const at = { x: setbackAt(edge, height), y: height };
    const far = { x: farSetback(plates[i], null), y: height };
    return [line(place(frame, at), place(frame, far))];
  };
  const whole = both((i) => edgeBetween(plates[i], 0, plates[i].edge.thickness));
  const face = both((i) => surface(i, plates[i].edge.thickness));
  const root = both((i) => surface(i, 0));
  const upTo = both((i) => edgeBetween(plates[i], contact?.high[i] ?? 0, plates[i].edge.thickness));
  const downTo = both((i) =>
    edgeBetween(plates[i], 0, contact?.low[i] ?? plates[i].edge.thickness),
  );
  const side = (name: 'face' | 'root', seen: Pair<Contour>, between: Contour): Side => {
    const surfaces = both((i) => plates[i][name]);
    const grooveEdges = both((i) => surfaces[i].origin);
    const walks = both((i) => ({ beyond: seen[i], undercut: [] }));
    return assembleSide({ surfaces, grooveEdges, bead: null, walks, between });
  };
  const across = (name: 'face' | 'root'): Contour =>
    contact === null ? through(via(plates[0][name].origin), via(plates[1][name].origin)) : [];
  const faceSeen = both((i) => [...upTo[i], ...face[i]]);
  const rootSeen = both((i) => [...reverseContour(downTo[i]), ...root[i]]);
  return {
    plates: both((i) => plateRegion(plates[i].number, root[i], whole[i], face[i])),
    welds: [],
    deposits: [],
    backing: backing && stripRegion(backing, []),
    spatter: [],
    face: side(
      'face',
      faceSeen,
      contact === null && backing ? topOfBacking(backing, set) : across('root'),
    ),
    root: backing
      ? rootWithoutBead(
          set,
          both((i) => ({ beyond: root[i], undercut: [] })),
          backing,
        )
      : side('root', rootSeen, across('face')),
    groove: grooveOf(set, whole),
  };
}
