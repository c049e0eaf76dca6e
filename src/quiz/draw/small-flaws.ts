import type { Joint } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import { between, happens, type Random } from '../random.ts';
import { binding, comfortOf } from './comfort.ts';
import { valueAt } from '../distance.ts';
import { within, type Fields } from './joint-fields.ts';

/** How often a joint has each small flaw that it may have. */
const OFTEN = 0.4;
/** How often a cap has its crown so far to one side that it stands steep at that toe. */
const STEEP = 0.25;

/**
 * What is amiss with a sound joint without counting: a share of what the sheet permits. Among it what
 * looks bad and is good: a dip in a cap that stays above the plate, a steep toe, a gap.
 */
export function smallFlaws(
  chance: Random,
  joint: Joint,
  checks: readonly Check[],
  scant: boolean,
): Fields {
  /** at most how much there may be, comfortably; 0 where nothing is permitted, `else` where nothing is said */
  const most = (measurement: Check['measurement'], otherwise: number): number => {
    const check = binding(checks, measurement, 'max');
    if (check === null) return otherwise;
    return Math.min(otherwise * 2, valueAt(-1.2 * comfortOf(check, checks), check));
  };
  const some = (measurement: Check['measurement'], otherwise: number): number =>
    happens(chance, OFTEN) ? between(chance, 0.15, 0.85) * most(measurement, otherwise) : 0;
  const shape = () => (happens(chance, 0.5) ? 'rounded' : 'sharp');
  const groove = (name: string, measurement: Check['measurement']): Fields => {
    const depth = some(measurement, 0.4);
    const width = within(
      joint.kind,
      `${name}Width`,
      Math.max(0.5, between(chance, 2.6, 5) * depth),
    );
    return { [`${name}Depth`]: depth, [`${name}Width`]: width, [`${name}Shape`]: shape() };
  };
  if (joint.kind === 'fillet') {
    const gap =
      joint.stage === 'welded'
        ? { rootGap: some('rootGap', 0.8) }
        : { rootGap: some('rootGap', 1) };
    if (joint.stage === 'fitUp') return gap;
    const legs = scant || happens(chance, 0.3) ? scantLegs(chance, checks) : {};
    const wave = happens(chance, 0.2) ? between(chance, -0.4, 0.4) : 0;
    return {
      ...gap,
      ...legs,
      ...groove('undercut1', 'undercut1'),
      ...groove('undercut2', 'undercut2'),
      reverseCurve: Math.abs(wave) < 0.1 ? 0 : wave,
    };
  }
  const turned = some('angularMisalignment', 1) * (happens(chance, 0.5) ? 1 : -1);
  const step = some('misalignment', 0.8) * 0.6 * (happens(chance, 0.5) ? 1 : -1);
  const lie = { angularMisalignment: turned, offset: joint.offset + step };
  if (joint.stage === 'fitUp') return lie;
  const root =
    joint.backing === 'strip'
      ? {}
      : {
          ...groove('rootUndercut1', 'rootUndercut1'),
          ...groove('rootUndercut2', 'rootUndercut2'),
        };
  return {
    ...lie,
    ...root,
    ...groove('undercut1', 'undercut1'),
    ...groove('undercut2', 'undercut2'),
    ...steepToe(chance, joint),
    // its bottom stays above the plates
    capDip: happens(chance, 0.3) ? between(chance, 0.2, 0.6) * joint.capHeight : 0,
  };
}

/** A toe that looks like undercut and is none: a high cap leaning over it, and no groove beside it. */
function steepToe(chance: Random, joint: Joint): Fields {
  const plate = happens(chance, 0.5) ? 1 : 2;
  const [lean, more] = [between(chance, 0.32, 0.46), between(chance, 0.6, 1.4)];
  if (joint.kind !== 'butt' || !happens(chance, STEEP)) return {};
  return {
    crownShift: plate === 1 ? -lean : lean,
    capHeight: within('butt', 'capHeight', joint.capHeight + more),
    [`undercut${plate}Depth`]: 0,
  };
}

/** Legs as near what is asked at least as can be without being in question. */
function scantLegs(chance: Random, checks: readonly Check[]): Fields {
  return Object.fromEntries(
    (['leg1', 'leg2'] as const).flatMap((leg) => {
      const check = binding(checks, leg, 'min');
      if (check === null) return [];
      const over = comfortOf(check, checks) * between(chance, 1.1, 2.4);
      return [[leg, within('fillet', leg, valueAt(-over, check))]];
    }),
  );
}
