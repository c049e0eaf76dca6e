/**
 * A joint is plain data: what a person chose. `build` turns it into an exact
 * Section; nothing above this floor reads a dimension from here.
 * All lengths in mm, angles in degrees. Ranges: `ranges.ts`.
 */
export type Joint = FilletJoint | ButtJoint;

/** fitUp: plates set, not yet welded. welded: the same joint after welding. */
export type Stage = 'fitUp' | 'welded';
export type UndercutShape = 'rounded' | 'sharp';
export type PlateNumber = 1 | 2;

/** A bump of spatter stuck to a plate, `place` mm past the toe along the surface. */
export interface SpatterBump {
  readonly plate: PlateNumber;
  readonly place: number;
  readonly height: number;
}

interface CommonJoint {
  readonly version: 1;
  readonly stage: Stage;
  readonly t1: number;
  readonly t2: number;
  /** How deep the weld melts into the plates; drawn, never judged. */
  readonly fusionDepth: number;
  readonly undercut1Depth: number;
  readonly undercut1Width: number;
  readonly undercut1Shape: UndercutShape;
  readonly undercut2Depth: number;
  readonly undercut2Width: number;
  readonly undercut2Shape: UndercutShape;
  /** How far unfused weld metal rolls past the fused toe. */
  readonly overlap1: number;
  readonly overlap2: number;
  readonly spatter: readonly SpatterBump[];
}

export interface FilletJoint extends CommonJoint {
  readonly kind: 'fillet';
  readonly arrangement: 'tee' | 'lap' | 'corner';
  /** Plate 2's end: cut to lie on plate 1, or square to its own faces. */
  readonly endCut: 'fitted' | 'square';
  /** Angle between the two surfaces that carry the weld, through the weld. */
  readonly dihedralAngle: number;
  /** Outside corner only: how far plate 2 covers plate 1's end face; 0 = corner to corner. */
  readonly cornerOverlap: number;
  /** Least gap left by hand under plate 2, normal to plate 1 (a square cut may add to it). */
  readonly rootGap: number;
  readonly leg1: number;
  readonly leg2: number;
  /** Height of the crown off the chord: positive convex, negative concave. */
  readonly convexity: number;
  /** Crown off centre, as a share of the half chord, positive towards toe 2. */
  readonly crownShift: number;
  /** S-shaped face: a second swell the other way, its height, near toe 2 (positive) or toe 1 (negative). */
  readonly reverseCurve: number;
  /** How far fusion runs beyond the theoretical root along the faying surface. */
  readonly rootPenetration: number;
  /** Lap only: share of the end face left above toe 2 that is melted away, 0 to 1. */
  readonly edgeMelt: number;
}

export type Preparation =
  'square' | 'singleV' | 'doubleV' | 'singleBevel' | 'doubleBevel' | 'singleU' | 'singleJ';

export interface ButtJoint extends CommonJoint {
  readonly kind: 'butt';
  readonly preparation: Preparation;
  readonly product: 'plate' | 'pipe';
  /** Face side. A single bevel, double bevel or J prepares plate 1; plate 2 is square. */
  readonly bevelAngle1: number;
  readonly bevelAngle2: number;
  /** Root side of a two-sided preparation. */
  readonly rootBevelAngle1: number;
  readonly rootBevelAngle2: number;
  readonly rootFace1: number;
  readonly rootFace2: number;
  /** Two-sided: share of the bevelled depth that is on the root side. */
  readonly rootSideShare: number;
  /** U and J. */
  readonly rootRadius: number;
  readonly rootOpening: number;
  readonly backing: 'none' | 'strip';
  readonly backingThickness: number;
  readonly backingWidth: number;
  /** Plate 2's mid-plane above plate 1's, at the joint; positive towards the face side. */
  readonly offset: number;
  /** Plate 2 turned up towards the face side, degrees. */
  readonly angularMisalignment: number;
  /** Crown height off the chord between the face toes: positive heavy, negative underfilled. */
  readonly capHeight: number;
  readonly crownShift: number;
  /** Central dip below two crests. */
  readonly capDip: number;
  /** Face toe past its groove edge, along the surface. */
  readonly capPast1: number;
  readonly capPast2: number;
  /** Groove not filled to its edge: depth of the toe below its surface, on the prepared edge. Excludes capPast. */
  readonly capDrop1: number;
  readonly capDrop2: number;
  /** Root bead, outward positive, concave negative. */
  readonly rootHeight: number;
  readonly rootPast1: number;
  readonly rootPast2: number;
  /** Height left unfused: from the root side on a one-sided joint, mid-wall on a two-sided one. */
  readonly incompletePenetration: number;
  readonly rootUndercut1Depth: number;
  readonly rootUndercut1Width: number;
  readonly rootUndercut1Shape: UndercutShape;
  readonly rootUndercut2Depth: number;
  readonly rootUndercut2Width: number;
  readonly rootUndercut2Shape: UndercutShape;
}
