import type { Section, Side } from '../joint/index.ts';
import { alignment } from './alignment.ts';
import { bevels } from './bevel.ts';
import { capDip } from './cap-dip.ts';
import { capPastGroove } from './cap-past-groove.ts';
import type { ExposedWeld } from './exposed-weld.ts';
import { exposedWeld } from './exposed-weld.ts';
import { incompletePenetration } from './incomplete-penetration.ts';
import { jointThickness } from './joint-thickness.ts';
import type { Measurement } from './measurement.ts';
import { preparation } from './preparation.ts';
import { noReinforcement, reinforcement } from './reinforcement.ts';
import { noRootConcavity, rootConcavity, underfill } from './underfill.ts';
import { rootUndercuts } from './undercut.ts';
import { rootWidth } from './width.ts';

/** What only a butt joint has. */
export function buttMeasurements(section: Section): Measurement[] {
  const { groove, face, root } = section;
  const weld = exposedWeld(face);
  const measured = alignment(section);
  if (groove !== null) {
    measured.push(...bevels(groove, face, root), ...preparation(groove, face));
  }
  // not yet welded
  if (weld === null) return measured;
  measured.push(...cap(face, weld));
  if (groove !== null) measured.push(incompletePenetration(groove, face));
  // a backing strip covers the root side
  if (root === null || section.backing !== null) return measured;
  measured.push(...rootBead(root), ...jointThickness(face, weld, root, groove));
  return measured;
}

const cap = (face: Side, weld: ExposedWeld): Measurement[] => [
  ...reinforcement('faceReinforcement', weld, face.surfaces),
  ...underfill(weld, face),
  ...capDip(weld, face.surfaces[0]),
  ...capPastGroove(weld, face),
];

/** The root side, whether or not a bead shows there. */
function rootBead(root: Side): Measurement[] {
  const weld = exposedWeld(root);
  const undercuts = rootUndercuts(root);
  if (weld === null)
    return [...noReinforcement('rootReinforcement'), noRootConcavity, ...undercuts];
  return [
    ...reinforcement('rootReinforcement', weld, root.surfaces),
    rootConcavity(weld, root),
    rootWidth(weld),
    ...undercuts,
  ];
}
