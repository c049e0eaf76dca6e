import type { FilletJoint } from '../../src/joint/index.ts';

/** An equal flat 8 mm fillet on 12 mm plates at a right angle, with what a test changes. */
export function fillet(changes: Partial<FilletJoint> = {}): FilletJoint {
  return {
    version: 1,
    kind: 'fillet',
    arrangement: 'tee',
    endCut: 'fitted',
    stage: 'welded',
    t1: 12,
    t2: 12,
    dihedralAngle: 90,
    cornerOverlap: 0,
    rootGap: 0,
    leg1: 8,
    leg2: 8,
    convexity: 0,
    crownShift: 0,
    reverseCurve: 0,
    rootPenetration: 0,
    edgeMelt: 0,
    fusionDepth: 1,
    undercut1Depth: 0,
    undercut1Width: 2,
    undercut1Shape: 'rounded',
    undercut2Depth: 0,
    undercut2Width: 2,
    undercut2Shape: 'rounded',
    overlap1: 0,
    overlap2: 0,
    spatter: [],
    ...changes,
  };
}
