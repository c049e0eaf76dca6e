import { isTwoSided } from '../prepared-sides.ts';
import { arc, line } from '../../geometry/index.ts';
import type { Contour, Point, Segment } from '../../geometry/index.ts';
import { deg, toRad } from '../../units/index.ts';
import type { ButtJoint, PlateNumber } from '../joint.ts';
import { inMm, refuse } from '../refuse.ts';

/** Shortest bevel, root face or fused height that is still a piece of its own, mm. */
export const LEAST_LENGTH = 1e-3;

/**
 * One prepared edge before welding, in its plate's own frame: x is the setback
 * from the nose into the plate, y the height above the root surface. The path
 * climbs from the root groove edge to the face groove edge with the metal on
 * its right, so the setback is a single-valued function of the height.
 */
export interface PreparedEdge {
  readonly thickness: number;
  /** straight bevel on the root side; null when there is none */
  readonly rootBevel: Segment | null;
  /** unbevelled height; null for a feather edge */
  readonly rootFace: Segment | null;
  /** curved part of a U or J; null otherwise */
  readonly hollow: Segment | null;
  readonly hollowRadius: number;
  /** straight bevel on the face side; null when the edge is square there */
  readonly faceBevel: Segment | null;
  readonly path: Contour;
}

/**
 * The prepared edge of one plate. Single bevel, double bevel and J prepare
 * plate 1 and leave plate 2 square. Bevel angles count from the plate's normal;
 * a two-sided edge gives `rootSideShare` of its bevelled depth to the root side.
 */
export function prepareEdge(joint: ButtJoint, plate: PlateNumber): PreparedEdge {
  const first = plate === 1;
  const thickness = first ? joint.t1 : joint.t2;
  switch (joint.preparation) {
    case 'square':
      return squareEdge(thickness);
    case 'singleBevel':
    case 'doubleBevel':
    case 'singleJ':
      if (!first) return squareEdge(thickness);
      break;
    case 'singleV':
    case 'doubleV':
    case 'singleU':
      break;
  }
  const rootFace = first ? joint.rootFace1 : joint.rootFace2;
  // nothing left to bevel
  if (rootFace > thickness - LEAST_LENGTH) {
    refuse(`rootFace${plate}`, thickness - LEAST_LENGTH, 'joint_error_root_face_too_high', {
      thickness: inMm(thickness),
    });
  }
  const bevel = first ? joint.bevelAngle1 : joint.bevelAngle2;
  switch (joint.preparation) {
    case 'singleU':
    case 'singleJ':
      return hollowEdge(joint, plate, thickness, rootFace, bevel);
    default:
      return bevelledEdge(joint, plate, thickness, rootFace, bevel);
  }
}

/** Setback of the edge at a height, mm. */
export function setbackAt(edge: PreparedEdge, height: number): number {
  const piece = pieceAt(edge, height);
  if (piece === edge.hollow) {
    // circle with its centre straight above the top of the root face
    const rise = height - piece.a.y;
    return Math.sqrt(Math.max(0, rise * (2 * edge.hollowRadius - rise)));
  }
  const share = (height - piece.a.y) / (piece.b.y - piece.a.y);
  return piece.a.x * (1 - share) + piece.b.x * share;
}

/** Gain of setback per height just above (`up`) or just below a height; infinite at the foot of a U. */
export function setbackSlope(edge: PreparedEdge, height: number): number {
  const piece = pieceAt(edge, height);
  if (piece === edge.hollow) {
    const rise = height - piece.a.y;
    return (edge.hollowRadius - rise) / setbackAt(edge, height);
  }
  return (piece.b.x - piece.a.x) / (piece.b.y - piece.a.y);
}

/** The stretch of the edge between two heights, climbing; empty when they meet. */
export function portionOf(edge: PreparedEdge, from: number, to: number): Contour {
  const portion: Segment[] = [];
  for (const piece of edge.path) {
    const low = Math.max(from, piece.a.y);
    const high = Math.min(to, piece.b.y);
    if (high <= low) continue;
    if (low === piece.a.y && high === piece.b.y) {
      portion.push(piece);
      continue;
    }
    const a = { x: setbackAt(edge, low), y: low };
    const b = { x: setbackAt(edge, high), y: high };
    portion.push(
      piece === edge.hollow ? stretchOfHollow(edge.hollowRadius, piece, a, b) : line(a, b),
    );
  }
  return portion;
}

/** A stretch of the curve of a U: its direction turns as its radius does, from straight down at the foot. */
function stretchOfHollow(size: number, { a: foot }: Segment, from: Point, to: Point): Segment {
  const turned = ({ x, y }: Point): number => Math.atan2(x, size - (y - foot.y));
  return arc(from, to, Math.tan((turned(to) - turned(from)) / 4));
}

function pieceAt(edge: PreparedEdge, height: number): Segment {
  for (const piece of edge.path) if (height <= piece.b.y) return piece;
  return edge.path[edge.path.length - 1] as Segment;
}

function squareEdge(thickness: number): PreparedEdge {
  const rootFace = line({ x: 0, y: 0 }, { x: 0, y: thickness });
  return edgeOf(thickness, { rootFace });
}

/** V and bevel, one- or two-sided. */
function bevelledEdge(
  joint: ButtJoint,
  plate: PlateNumber,
  thickness: number,
  rootFace: number,
  bevel: number,
): PreparedEdge {
  const depth = thickness - rootFace;
  const rootDepth = isTwoSided(joint) ? joint.rootSideShare * depth : 0;
  const faceDepth = depth - rootDepth;
  // one side would have no bevel left
  if (isTwoSided(joint) && (rootDepth < LEAST_LENGTH || faceDepth < LEAST_LENGTH)) {
    refuse('rootSideShare', null, 'joint_error_bevel_without_depth');
  }
  const rootAngle = plate === 1 ? joint.rootBevelAngle1 : joint.rootBevelAngle2;
  const nose = { x: 0, y: rootDepth };
  const top = { x: 0, y: rootDepth + rootFace };
  return edgeOf(thickness, {
    rootBevel: rootDepth > 0 ? line({ x: rootDepth * slope(rootAngle), y: 0 }, nose) : null,
    rootFace: rootFace > 0 ? line(nose, top) : null,
    faceBevel: line(top, { x: faceDepth * slope(bevel), y: thickness }),
  });
}

/**
 * U and J: an arc whose centre stands straight above the top of the root face,
 * so it starts level there, carried on by its tangent at the bevel angle.
 */
function hollowEdge(
  joint: ButtJoint,
  plate: PlateNumber,
  thickness: number,
  rootFace: number,
  bevel: number,
): PreparedEdge {
  // a level arc on the root surface itself would end in an edge without thickness
  if (rootFace < LEAST_LENGTH) {
    refuse(`rootFace${plate}`, LEAST_LENGTH, 'joint_error_feather_edge');
  }
  const radius = joint.rootRadius;
  const angle = toRad(deg(bevel));
  const foot = { x: 0, y: rootFace };
  const tangentPoint = {
    x: radius * Math.cos(angle),
    y: rootFace + radius * (1 - Math.sin(angle)),
  };
  // the arc must end below the face and leave a straight bevel to carry the angle
  if (tangentPoint.y > thickness - LEAST_LENGTH) {
    const bound = (thickness - LEAST_LENGTH - rootFace) / (1 - Math.sin(angle));
    refuse('rootRadius', bound > 0 ? bound : null, 'joint_error_root_radius_too_big', {
      thickness: inMm(thickness),
    });
  }
  const faceEdge = {
    x: tangentPoint.x + (thickness - tangentPoint.y) * slope(bevel),
    y: thickness,
  };
  return edgeOf(thickness, {
    rootFace: line({ x: 0, y: 0 }, foot),
    hollow: arc(foot, tangentPoint, Math.tan((Math.PI / 2 - angle) / 4)),
    hollowRadius: radius,
    faceBevel: line(tangentPoint, faceEdge),
  });
}

function edgeOf(thickness: number, parts: Partial<PreparedEdge>): PreparedEdge {
  const { rootBevel = null, rootFace = null, hollow = null, faceBevel = null } = parts;
  const { hollowRadius = 0 } = parts;
  const path = [rootBevel, rootFace, hollow, faceBevel].filter((piece) => piece !== null);
  return { thickness, rootBevel, rootFace, hollow, hollowRadius, faceBevel, path };
}

function slope(angle: number): number {
  return Math.tan(toRad(deg(angle)));
}
