import { bevelsBothPlates } from '../../joint/index.ts';
import { intendedOffset } from '../../limits/index.ts';
import type { Joint } from '../../joint/index.ts';
import type { Check, JobSheet } from '../../limits/index.ts';
import { between, happens, type Random } from '../random.ts';
import { quantityOf, sideOf } from '../quantity.ts';
import { boundsOf, numberIn, withFields, within, type Fields } from './joint-fields.ts';

/** What is moved to bring a measurement to where it is asked. */
export interface Driver {
  /** the fields that it moves; nothing else may */
  readonly fields: readonly string[];
  /** what has to be so first, whatever is asked */
  readonly before: Fields;
  readonly low: number;
  readonly high: number;
  /** about how much the measurement grows with it */
  readonly slope: number;
  readonly place: (joint: Joint, x: number) => Joint;
  readonly read: (joint: Joint) => number;
}

/** What a driver is chosen for. */
export interface Aim {
  readonly measurement: Check['measurement'];
  readonly sense: Check['sense'];
  /** about where the limit is, mm or degrees */
  readonly limit: number;
  readonly sheet: JobSheet;
  /** about how high a cap may be, mm */
  readonly capMost: number;
}

type Choose = (aim: Aim, joint: Joint, chance: Random) => Driver;

/** One field, as it is or turned round, counted from `zero`. */
function field(
  joint: Joint,
  name: string,
  more: { sign?: 1 | -1; zero?: number; slope?: number; low?: number; before?: Fields } = {},
): Driver {
  const { sign = 1, zero = 0, slope = 1, before = {} } = more;
  const [least, most] = boundsOf(joint.kind, name);
  const ends = [(least - zero) * sign, (most - zero) * sign] as const;
  return {
    fields: [name],
    before,
    low: Math.max(Math.min(...ends), more.low ?? Number.NEGATIVE_INFINITY),
    high: Math.max(...ends),
    slope,
    place: (at, x) => withFields(at, { [name]: within(at.kind, name, zero + sign * x) }),
    read: (at) => (numberIn(at, name) - zero) * sign,
  };
}

const eitherWay = (chance: Random): 1 | -1 => (happens(chance, 0.5) ? 1 : -1);

/** A groove beside a toe, wide enough for what may be asked of its depth. */
function undercut(name: string): Choose {
  return ({ measurement, limit }, joint, chance) => {
    const side = sideOf(measurement) ?? 1;
    const width = between(chance, 2.8, 5) * Math.max(0.25, limit);
    const kept = name === 'undercut' ? { [`overlap${side}`]: 0 } : {};
    const drop = joint.kind === 'butt' ? { [`capDrop${side}`]: 0 } : {};
    const before = {
      ...kept,
      ...drop,
      [`${name}${side}Width`]: within(joint.kind, `${name}${side}Width`, width),
    };
    return field(joint, `${name}${side}Depth`, { before });
  };
}

/** Both plates' angles by the same amount, so that what they make together is x. */
function angles(name: string): Choose {
  return (_, joint) => {
    const second = numberIn(joint, `${name}2`);
    const apart = numberIn(joint, `${name}1`) - second;
    const both = joint.kind === 'butt' && bevelsBothPlates(joint);
    const { low, high } = field(joint, `${name}1`);
    const one = field(joint, `${name}1`);
    if (!both) return one;
    return {
      ...one,
      fields: [`${name}1`, `${name}2`],
      low: 2 * low + Math.abs(apart),
      high: 2 * high - Math.abs(apart),
      place: (at, x) =>
        withFields(at, { [`${name}1`]: (x + apart) / 2, [`${name}2`]: (x - apart) / 2 }),
      read: (at) => numberIn(at, `${name}1`) + numberIn(at, `${name}2`),
    };
  };
}

/** Two fields that are kept in the same proportion. */
function together(joint: Joint, first: string, second: string, slope: number): Driver {
  const share = numberIn(joint, second) / Math.max(1e-6, numberIn(joint, first));
  const one = field(joint, first, { slope });
  return {
    ...one,
    fields: [first, second],
    place: (at, x) => withFields(at, { [first]: x, [second]: within(at.kind, second, x * share) }),
  };
}

const hollowFace: Choose = (_, joint) => field(joint, 'convexity');
const sided =
  (name: string, before: (side: number) => Fields = () => ({})): Choose =>
  ({ measurement }, joint) => {
    const side = sideOf(measurement) ?? 1;
    return field(joint, `${name}${side}`, { before: before(side) });
  };

const fillets: Readonly<Record<string, Choose>> = {
  leg: sided('leg'),
  contactLeg: (_, joint) => field(joint, 'leg2'),
  legDifference: (_, joint, chance) => {
    const [longer, other] = happens(chance, 0.5) ? ['leg1', 'leg2'] : ['leg2', 'leg1'];
    return {
      ...field(joint, longer),
      low: 0,
      place: (at, x) =>
        withFields(at, { [longer]: within('fillet', longer, numberIn(at, other) + x) }),
      read: (at) => numberIn(at, longer) - numberIn(at, other),
    };
  },
  sizeEqual: hollowFace,
  sizePair: hollowFace,
  theoreticalThroat: hollowFace,
  actualThroat: hollowFace,
  effectiveThroat: hollowFace,
  deepThroat: hollowFace,
  isoscelesThroat: (aim, joint, chance) =>
    aim.sense === 'min' ? hollowFace(aim, joint, chance) : together(joint, 'leg1', 'leg2', 0.7),
  rootPenetration: (_, joint) => field(joint, 'rootPenetration'),
  convexity: (_, joint) => field(joint, 'convexity', { low: 0 }),
  concavity: (_, joint) => field(joint, 'convexity', { sign: -1, low: 0 }),
  toeAngle: (_, joint) => field(joint, 'convexity', { slope: -10 }),
  edgeRemaining: (_, joint) =>
    field(joint, 'edgeMelt', { slope: Math.min(-0.5, numberIn(joint, 'leg2') - joint.t2) }),
  rootGap: (_, joint) => field(joint, 'rootGap', { before: { endCut: 'fitted' } }),
  angleDeparture: ({ sheet }, joint, chance) =>
    field(joint, 'dihedralAngle', { zero: sheet.dihedralAngle, sign: eitherWay(chance), low: 0 }),
  undercut: undercut('undercut'),
  overlap: sided('overlap', (side) => ({ [`undercut${side}Depth`]: 0 })),
};

/** A root bead is at most about so high, mm; common practice, no source. */
const MOST_ROOT = 3;

const butts: Readonly<Record<string, Choose>> = {
  faceReinforcement: (_, joint) => field(joint, 'capHeight'),
  rootReinforcement: ({ limit }, joint, chance) => {
    // a root bead as high as that has run out as wide: a narrow one would be a ball, which no root is
    const past = (): number =>
      within('butt', 'rootPast1', between(chance, 0.9, 1.25) * Math.max(limit, MOST_ROOT));
    const before = { backing: 'none', rootPast1: past(), rootPast2: past() };
    return field(joint, 'rootHeight', { before });
  },
  underfill: (_, joint, chance) => {
    if (happens(chance, 0.5)) {
      return field(joint, 'capHeight', { sign: -1, before: { capDip: 0 } });
    }
    const side = happens(chance, 0.5) ? 1 : 2;
    const before = {
      [`capPast${side}`]: 0,
      [`overlap${side}`]: 0,
      [`undercut${side}Depth`]: 0,
      capDip: 0,
    };
    return field(joint, `capDrop${side}`, { before });
  },
  rootConcavity: (_, joint) =>
    field(joint, 'rootHeight', { sign: -1, before: { backing: 'none' } }),
  incompletePenetration: (_, joint) =>
    field(joint, 'incompletePenetration', {
      before: { backing: 'none', rootUndercut1Depth: 0, rootUndercut2Depth: 0 },
    }),
  jointThickness: (_, joint) =>
    field(joint, 'rootHeight', { before: { backing: 'none', rootHeight: -0.6 } }),
  capPastGroove: sided('capPast', (side) => ({ [`capDrop${side}`]: 0 })),
  toeAngle: ({ capMost }, joint, chance) =>
    field(joint, 'crownShift', {
      sign: eitherWay(chance),
      low: 0,
      slope: -60,
      // a high cap with its crown to one side: steep at that toe and no higher than it may be
      before: { capDip: 0, capHeight: between(chance, 0.72, 0.86) * capMost },
    }),
  undercut: undercut('undercut'),
  rootUndercut: undercut('rootUndercut'),
  overlap: sided('overlap', (side) => ({ [`undercut${side}Depth`]: 0, [`capDrop${side}`]: 0 })),
  misalignment: ({ sheet }, joint, chance) =>
    field(joint, 'offset', {
      zero: intendedOffset(joint, sheet.intendedAlignment),
      sign: eitherWay(chance),
      low: 0,
    }),
  angularMisalignment: (_, joint, chance) =>
    field(joint, 'angularMisalignment', { sign: eitherWay(chance), low: 0 }),
  bevelAngle: sided('bevelAngle'),
  rootBevelAngle: sided('rootBevelAngle'),
  grooveAngle: angles('bevelAngle'),
  rootGrooveAngle: angles('rootBevelAngle'),
  rootOpening: (_, joint) => field(joint, 'rootOpening'),
  rootFace: (_, joint) => together(joint, 'rootFace1', 'rootFace2', 1),
};

/** What moves this measurement; null where nothing does by itself. */
export function driverOf(aim: Aim, joint: Joint, chance: Random): Driver | null {
  const table = joint.kind === 'fillet' ? fillets : butts;
  return table[quantityOf(aim.measurement)]?.(aim, joint, chance) ?? null;
}
