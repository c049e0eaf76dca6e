import { add, arc, distance, line, scale, segmentLength, subtract } from '../geometry/index.ts';
import type { Contour, Point, Region, Segment } from '../geometry/index.ts';
import type { SpatterBump } from './joint.ts';
import { LEAST_SIZE } from './least-size.ts';
import { inMm, refuse } from './refuse.ts';
import { BUMP_BULGE, bumpRegion, halfWidth } from './spatter.ts';
import { undercutGroove, type AirSide, type Undercut } from './undercut.ts';

/** A plate's outline past a toe, walking away from the weld. */
export interface SurfaceWalk {
  /** The plate itself: undercut and surface, passing under any spatter. */
  readonly bare: Contour;
  /** What an eye or a gauge meets: spatter included. */
  readonly beyond: Contour;
  /** The undercut pieces, a head of both of the above. */
  readonly undercut: Contour;
  readonly spatter: readonly Region[];
}

export interface SurfaceFlaws {
  /** null where no undercut can be (fit-up, a root side that has none) */
  readonly undercut: Undercut | null;
  /** the bumps on this plate; `place` is the middle of a bump, along the path from the toe */
  readonly spatter: readonly SpatterBump[];
  /** how far weld metal rolls over the surface: no bump there */
  readonly covered: number;
}

/**
 * Walks `path`, a plate's as-welded outline from a toe (without undercut), and
 * puts the undercut at its beginning and the spatter on its straight pieces.
 * Whether the plate can hold the undercut is for `checkUndercut` to say.
 */
export function walkSurface(path: Contour, air: AirSide, flaws: SurfaceFlaws): SurfaceWalk {
  const first = path[0];
  const undercut =
    flaws.undercut && first ? undercutGroove(first.a, first.b, air, flaws.undercut) : [];
  const grooveEnd = undercut[undercut.length - 1]?.b;
  const surface = first && grooveEnd ? [line(grooveEnd, first.b), ...path.slice(1)] : path;
  const bare = [...undercut, ...surface];
  // a clean surface: nothing more to place
  if (flaws.spatter.length === 0) return { bare, beyond: bare, undercut, spatter: [] };

  const start = first && grooveEnd ? distance(first.a, grooveEnd) : 0;
  const bumps = [...flaws.spatter].sort((a, b) => a.place - b.place);
  const { outline, spatter } = spattered(surface, start, flaws.covered, air, bumps);
  return { bare, beyond: [...undercut, ...outline], undercut, spatter };
}

/** A surface with bumps on it; `start` is its own place from the toe, `bumps` are in order of place. */
function spattered(
  surface: Contour,
  start: number,
  covered: number,
  air: AirSide,
  bumps: readonly SpatterBump[],
): { readonly outline: Contour; readonly spatter: readonly Region[] } {
  const outline: Segment[] = [];
  const spatter: Region[] = [];
  let next = 0;
  let pieceStart = start;
  for (const piece of surface) {
    const size = segmentLength(piece);
    const along = scale(subtract(piece.b, piece.a), 1 / size);
    const at = (place: number): Point => add(piece.a, scale(along, place - pieceStart));
    let from = piece.a;
    let clear = Math.max(pieceStart, covered);
    for (let bump = bumps[next]; bump; bump = bumps[next]) {
      if (bump.place >= pieceStart + size) break;
      const [foot1, foot2] = [bump.place - halfWidth(bump), bump.place + halfWidth(bump)];
      const fits =
        piece.bulge === 0 && foot1 >= clear + LEAST_SIZE && foot2 <= pieceStart + size - LEAST_SIZE;
      if (!fits) refuseBump(bump);
      const to = at(foot2);
      outline.push(line(from, at(foot1)));
      outline.push(arc(at(foot1), to, air === 'left' ? -BUMP_BULGE : BUMP_BULGE));
      spatter.push(bumpRegion(at(foot1), to, air));
      from = to;
      clear = foot2;
      next += 1;
    }
    outline.push(from === piece.a ? piece : line(from, piece.b));
    pieceStart += size;
  }
  const left = bumps[next];
  if (left) refuseBump(left);
  return { outline, spatter };
}

function refuseBump(bump: SpatterBump): never {
  return refuse('spatter', null, 'joint_error_spatter_no_room', {
    place: inMm(bump.place),
    height: inMm(bump.height),
  });
}
