import { add, arc, distance, line, scale, segmentLength, subtract } from '../geometry/index.ts';
import type { Contour, Point, Region, Segment } from '../geometry/index.ts';
import type { SpatterBump } from './joint.ts';
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
  const rest: Contour = first && grooveEnd ? [line(grooveEnd, first.b), ...path.slice(1)] : path;
  const bare = [...undercut, ...rest];
  // a clean surface: nothing more to place
  if (flaws.spatter.length === 0) return { bare, beyond: bare, undercut, spatter: [] };

  const spatter: Region[] = [];
  const beyond: Segment[] = [...undercut];
  const bumps = [...flaws.spatter].sort((a, b) => a.place - b.place);
  let taken = 0;
  let start = first && grooveEnd ? distance(first.a, grooveEnd) : 0;
  let clear = Math.max(start, flaws.covered);
  for (const piece of rest) {
    const size = segmentLength(piece);
    let from = piece.a;
    let fromAt = start;
    for (let bump = bumps[taken]; bump && bump.place < start + size; bump = bumps[taken]) {
      const half = halfWidth(bump);
      const fits =
        piece.bulge === 0 && bump.place - half >= clear && bump.place + half <= start + size;
      if (!fits) refuseBump(bump);
      const along = scale(subtract(piece.b, piece.a), 1 / size);
      const at = (s: number): Point => add(piece.a, scale(along, s - start));
      const foot1 = at(bump.place - half);
      const foot2 = at(bump.place + half);
      if (bump.place - half > fromAt) beyond.push(line(from, foot1));
      beyond.push(arc(foot1, foot2, air === 'left' ? -BUMP_BULGE : BUMP_BULGE));
      spatter.push(bumpRegion(foot1, foot2, air));
      from = foot2;
      fromAt = bump.place + half;
      clear = fromAt;
      taken += 1;
    }
    if (from === piece.a) beyond.push(piece);
    else if (fromAt < start + size) beyond.push(line(from, piece.b));
    start += size;
    clear = Math.max(clear, start);
  }
  const left = bumps[taken];
  if (left) refuseBump(left);
  return { bare, beyond, undercut, spatter };
}

function refuseBump(bump: SpatterBump): never {
  return refuse('spatter', null, 'joint_error_spatter_no_room', {
    place: inMm(bump.place),
    height: inMm(bump.height),
  });
}
