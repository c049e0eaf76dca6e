import type { Section, Side } from '../joint/index.ts';
import { alignment } from './alignment.ts';
import { bevels } from './bevel.ts';
import { capDip } from './cap-dip.ts';
import { capPastGroove } from './cap-past-groove.ts';
import { incompletePenetration } from './incomplete-penetration.ts';
import { jointThickness } from './joint-thickness.ts';
import type { Measurement } from './measurement.ts';
import { preparation } from './preparation.ts';
import { reinforcement } from './reinforcement.ts';
import { rootConcavity, underfill } from './underfill.ts';
import { rootUndercuts } from './undercut.ts';
import { rootWidth } from './width.ts';

/** What only a butt joint has. */
export function buttMeasurements(section: Section): Measurement[] {
  const { groove, face, root, stage } = section;
  const measured = alignment(section);
  if (groove !== null) {
    measured.push(...bevels(groove, face, root), ...preparation(groove, face));
  }
  // not yet welded
  if (stage === 'fitUp') return measured;
  measured.push(...cap(face));
  if (groove !== null) measured.push(incompletePenetration(groove, face));
  // a backing strip covers the root side
  if (root === null || section.backing !== null) return measured;
  measured.push(...rootBead(root), ...jointThickness(face, root));
  return measured;
}

const cap = (face: Side): Measurement[] => [
  ...reinforcement('faceReinforcement', face),
  ...underfill(face),
  ...capDip(face),
  ...capPastGroove(face),
];

const rootBead = (root: Side): Measurement[] => [
  ...reinforcement('rootReinforcement', root),
  ...rootConcavity(root),
  ...rootWidth(root),
  ...rootUndercuts(root),
];
