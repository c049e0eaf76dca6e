import type { Contour, Point, Region, Vector } from '../geometry/index.ts';

/**
 * The exact shape of a joint: labelled contours of lines and arcs, in mm.
 * Everything that is measured, gauged or drawn is read off this and nothing else.
 *
 * Frames. Fillet: plate 1's weld-side surface lies along +x, O at the origin,
 * plate 2's along (cos ψ, sin ψ); the weld lies between. Butt: plate 1 on the
 * left, its root surface on y = 0, face side up, x = 0 midway in the root opening.
 */
export interface Section {
  readonly kind: 'fillet' | 'butt';
  readonly stage: 'fitUp' | 'welded';
  /** Fillet: tee, lap or corner. Butt: its preparation. A label only. */
  readonly form: string;
  readonly product: 'plate' | 'pipe';

  /** Base metal as it is now: melted and gouged parts taken away. [plate 1, plate 2] */
  readonly plates: readonly [Region, Region];
  /** As-supplied surfaces of each plate: the one towards the face (weld) side, and the opposite one. */
  readonly plateSurfaces: readonly [PlateSurfaces, PlateSurfaces];
  /** Weld metal, melted base metal included; none at fit-up, two for a two-sided weld with unfused mid-wall. */
  readonly welds: readonly Region[];
  /** Weld metal outside the plates as prepared: what `weldArea` counts. */
  readonly deposits: readonly Region[];
  readonly backing: Region | null;
  readonly spatter: readonly Region[];

  /** The side that is welded from; of a fillet, the only one. */
  readonly face: Side;
  /** Butt: the root side. null for a fillet. */
  readonly root: Side | null;

  /** Butt only. */
  readonly groove: Groove | null;
  /** Fillet only. */
  readonly filletRoot: FilletRoot | null;
}

export interface PlateSurfaces {
  readonly face: SurfaceLine;
  readonly opposite: SurfaceLine;
}

/** A straight as-supplied surface, running through anything later melted, gouged or covered. */
export interface SurfaceLine {
  readonly origin: Point;
  /** Unit, away from the weld. */
  readonly along: Vector;
  /** Unit, out of the metal into the air. */
  readonly normal: Vector;
}

/** One side of a joint as an eye or a gauge meets it. Always ordered plate 1 to plate 2. */
export interface Side {
  /** The whole exposed outline from plate 1's far end to plate 2's far end: beyond[0] reversed, bead, beyond[1]. */
  readonly outline: Contour;
  /** The surface lines that legs, depths and heights are measured from. (Lap, corner: the end faces that carry the weld.) */
  readonly surfaces: readonly [SurfaceLine, SurfaceLine];
  /** Butt: where the prepared edge met the surface line before welding. null for a fillet. */
  readonly grooveEdges: readonly [Point, Point] | null;
  /** Exposed weld metal from fused toe 1 to fused toe 2, any overlap's under-surface included; null when there is none. */
  readonly bead: Contour | null;
  /** Where the face meets its surface line (fused toe with an overlap), or the bevel when the groove is not filled to its edge. */
  readonly toes: readonly [Point, Point] | null;
  /** On the surface line, level with the outermost metal; equals the toe when nothing overhangs. */
  readonly lips: readonly [Point, Point] | null;
  /** The outline past each toe, walking away from the weld: undercut, bare bevel, plate surface, spatter. */
  readonly beyond: readonly [Contour, Contour];
  /** The labelled undercut pieces of `beyond`, each walking away from the weld; empty when there is none. */
  readonly undercuts: readonly [Contour, Contour];
}

export interface Groove {
  /** Prepared edges before welding, from root groove edge to face groove edge, each plate. */
  readonly preparedEdges: readonly [Contour, Contour];
  /** The straight bevelled piece of each edge on the face side (null when that edge is square there). */
  readonly faceBevels: readonly [Contour | null, Contour | null];
  readonly rootBevels: readonly [Contour | null, Contour | null];
  /** The unbevelled piece of each edge; empty for a feather edge. Of a square preparation the whole edge. */
  readonly rootFaces: readonly [Contour, Contour];
  /**
   * Pieces of each prepared edge that no weld metal is fused to, from root to face: an unfused root or
   * middle, and the bare bevel above a face that stops short of its groove edge (the whole edge at fit-up).
   */
  readonly unfused: readonly [Contour, Contour];
  /** Face-side and root-side groove included; closed with the datum lines: the void that `grooveArea` counts. */
  readonly void: readonly Region[];
}

export interface FilletRoot {
  /** N: end points of the unfused faying surfaces. Equal to O when there is no gap and no penetration. */
  readonly weldRoots: readonly Point[];
  /** Plate 2's corner at the root; equal to O when there is no gap. */
  readonly plate2Corner: Point;
  /** Lap: what is left unmelted of the end face above toe 2 and its undercut (empty when none). null when not a lap. */
  readonly edge: Contour | null;
}
