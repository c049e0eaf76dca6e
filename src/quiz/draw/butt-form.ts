import { defaultJoint, isTwoSided } from '../../joint/index.ts';
import type { ButtJoint, Preparation, Stage } from '../../joint/index.ts';
import { askedOf, intendedOffset } from '../../limits/index.ts';
import type { JobSheet, SheetLength, Toleranced } from '../../limits/index.ts';
import { enteredToMm } from '../../units/index.ts';
import { between, happens, lengthBetween, pick, type Random } from '../random.ts';
import { within } from './joint-fields.ts';

/** The thinnest and the thickest plate that a preparation is made in, mm; common practice, no source. */
const thickness: Readonly<Record<Preparation, readonly [number, number]>> = {
  square: [3, 6],
  singleV: [5, 26],
  singleBevel: [6, 26],
  doubleV: [14, 40],
  doubleBevel: [14, 40],
  singleU: [16, 40],
  singleJ: [16, 40],
};
const preparations = Object.keys(thickness) as readonly Preparation[];

/** Past this share of its tolerance a dimension of the fit-up isn't drawn. */
const OF_TOLERANCE = 0.45;

/** A sound butt weld, or its fit-up as the sheet asks for it: no flaw, the plates in line. */
export function buttForm(chance: Random, sheet: JobSheet, stage: Stage): ButtJoint {
  const preparation = pick(chance, preparations);
  const plain = defaultJoint('butt', preparation);
  const [least, most] = thickness[preparation];
  const t1 = Math.round(2 * lengthBetween(chance, least, most)) / 2;
  const more = happens(chance, 0.6) ? 0 : Math.round(2 * between(chance, 0, 0.12 * t1)) / 2;
  const t2 = within('butt', 't2', t1 + more);
  const [thin, thick] = happens(chance, 0.5) ? [t1, t2] : [t2, t1];
  const fitUp = fitUpOf(chance, sheet, plain);
  const oneSided = !isTwoSided(plain);
  return {
    ...plain,
    ...fitUp,
    stage,
    t1: thin,
    t2: thick,
    product: happens(chance, 0.5) ? 'plate' : 'pipe',
    backing: oneSided && happens(chance, 0.25) ? 'strip' : 'none',
    offset: intendedOffset({ t1: thin, t2: thick }, sheet.intendedAlignment),
    rootSideShare: between(chance, 0.35, 0.55),
    capHeight: between(chance, 0.5, 1.1),
    crownShift: between(chance, -0.25, 0.25),
    capPast1: between(chance, 1, 2.6),
    capPast2: between(chance, 1, 2.6),
    rootHeight: between(chance, 0.3, 0.9),
    rootPast1: between(chance, 0.5, 1.5),
    rootPast2: between(chance, 0.5, 1.5),
    fusionDepth: between(chance, 0.6, 1.6),
  };
}

/** Angles, opening and root face about as the sheet has them, or as the preparation usually has. */
function fitUpOf(chance: Random, { groove }: JobSheet, plain: ButtJoint): Partial<ButtJoint> {
  const off = (minus: number, plus: number): number =>
    between(chance, -OF_TOLERANCE * minus, OF_TOLERANCE * plus);
  const angle = (
    name: 'bevelAngle1' | 'bevelAngle2' | 'rootBevelAngle1' | 'rootBevelAngle2',
  ): number => {
    const asked = askedOf(groove.bevelAngle);
    const included = askedOf(groove.grooveAngle);
    const one = asked ?? (included === null ? null : included / 2);
    if (one === null) return within('butt', name, plain[name] + off(3, 3));
    const { minus, plus } = asked === null ? groove.grooveAngle : groove.bevelAngle;
    return within('butt', name, one + off(Math.min(minus, 4), Math.min(plus, 4)));
  };
  const length = (name: 'rootOpening' | 'rootFace1', asked: Toleranced<SheetLength>): number => {
    const nominal = askedOf(asked);
    if (nominal === null) return Math.max(0, plain[name] + off(0.5, 0.5));
    const mm = enteredToMm(nominal) + off(enteredToMm(asked.minus), enteredToMm(asked.plus));
    return within('butt', name, mm);
  };
  const rootFace = length('rootFace1', groove.rootFace);
  return {
    bevelAngle1: angle('bevelAngle1'),
    bevelAngle2: angle('bevelAngle2'),
    rootBevelAngle1: angle('rootBevelAngle1'),
    rootBevelAngle2: angle('rootBevelAngle2'),
    rootOpening: length('rootOpening', groove.rootOpening),
    rootFace1: rootFace,
    rootFace2: rootFace,
  };
}
