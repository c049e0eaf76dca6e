import type { Joint, UndercutShape } from '../joint/index.ts';

/** The undercuts of this joint whose bottom may be rounded or sharp: only those that are there. */
export function undercutShapes(
  joint: Joint,
): readonly { readonly field: string; readonly value: UndercutShape }[] {
  // At fit-up nothing is welded yet, so nothing is undercut.
  if (joint.stage === 'fitUp') return [];
  const all =
    joint.kind === 'fillet'
      ? ([
          ['undercut1Shape', joint.undercut1Depth, joint.undercut1Shape],
          ['undercut2Shape', joint.undercut2Depth, joint.undercut2Shape],
        ] as const)
      : ([
          ['undercut1Shape', joint.undercut1Depth, joint.undercut1Shape],
          ['undercut2Shape', joint.undercut2Depth, joint.undercut2Shape],
          ['rootUndercut1Shape', joint.rootUndercut1Depth, joint.rootUndercut1Shape],
          ['rootUndercut2Shape', joint.rootUndercut2Depth, joint.rootUndercut2Shape],
        ] as const);
  return all.filter(([, depth]) => depth > 0).map(([field, , value]) => ({ field, value }));
}
