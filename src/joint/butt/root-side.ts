import { contourEnd, contourStart, line } from '../../geometry/index.ts';
import type { Contour } from '../../geometry/index.ts';
import type { Side } from '../section.ts';
import { assembleSide } from '../side.ts';
import { restsOn, roundBacking, type Backing } from './backing.ts';
import { through, via } from './outline.ts';
import { both, type Pair } from './pair.ts';
import type { SetUp } from './set-up.ts';

interface Walk {
  readonly beyond: Contour;
  readonly undercut: Contour;
}

/**
 * The root side where there is no bead: round a backing strip, or up the bare
 * edges of an unfused root and across the end of the weld between them.
 */
export function rootWithoutBead(set: SetUp, walks: Pair<Walk>, backing: Backing | null): Side {
  const grooveEdges = both((i) => set.plates[i].root.origin);
  const surfaces = both((i) => set.plates[i].root);
  if (backing === null) {
    const [from, to] = both((i) => contourStart(walks[i].beyond));
    const between = through(via(from), via(to));
    return assembleSide({ surfaces, grooveEdges, bead: null, walks, between });
  }
  // under a plate that rests on it the strip hides the root surface
  const rests = restsOn(backing, set);
  const past = both((i): Walk => {
    const start = rests[i]
      ? { x: i === 0 ? backing.left : backing.right, y: backing.top }
      : grooveEdges[i];
    return { beyond: [line(start, contourEnd(walks[i].beyond))], undercut: [] };
  });
  const between = roundBacking(backing, set);
  return assembleSide({ surfaces, grooveEdges, bead: null, walks: past, between });
}
