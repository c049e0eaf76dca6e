import type { ButtJoint, Joint } from '../joint/index.ts';
import type { Message } from '../units/index.ts';
import { enteredToMm } from '../units/index.ts';
import { asking, bevelAsking } from './asking.ts';
import type { JobSheet, SheetLength } from './job-sheet.ts';
import { LimitsError } from './limits-error.ts';
import { parseWeldSymbol } from './parse-weld-symbol.ts';
import {
  faceKind,
  preparedDepths,
  symbolOf,
  type SymbolElement,
  type SymbolMarks,
  type SymbolSize,
  type WeldSymbol,
} from './weld-symbol.ts';

export type SymbolPlace = 'arrowSide' | 'otherSide';

/** A drawing doesn't tell depths or angles apart that differ by less, mm or degrees. */
const alike = 0.06;

/**
 * The sheet with what a symbol asks for put in. A symbol that asks for another
 * joint than this one, or that can't be read, is refused with a LimitsError that
 * names the symbol's field. A symbol drawn from the sheet leaves it as it is.
 * A groove angle takes the sheet's bevel angle along: half of it for a V or U.
 */
export function sheetFromSymbol(symbol: WeldSymbol, sheet: JobSheet, joint: Joint): JobSheet {
  const read = parseWeldSymbol(symbol);
  const marks = marksOf(read, joint);
  const drawn = symbolOf(joint, sheet, read.system, marks);
  const [facePlace, rootPlace] = placesOf(marks);
  for (const place of [facePlace, rootPlace]) refuseOtherKind(read[place], drawn[place], place);
  if (read.preparedPlate !== drawn.preparedPlate)
    refuse('preparedPlate', 'symbol_joint_other_plate');
  const face = read[facePlace];
  const before = drawn[facePlace];
  // neither is missing: a joint has a weld on its face side, and the two agree
  if (face === null || before === null) return sheet;
  if (joint.kind === 'fillet') {
    return { ...sheet, size: sizeAsked(face.size, before.size, sheet.size) };
  }
  const next = { ...sheet, groove: grooveAsked(face, before, sheet.groove) };
  refuseOtherDepths(read, next, joint, marks);
  const root = read[rootPlace];
  if (root !== null)
    refuseOtherRoot(root, face, symbolOf(joint, next, read.system, marks), rootPlace);
  return next;
}

/** What a symbol says besides the joint and the rest of the sheet. */
export function marksOf(symbol: WeldSymbol, joint: Joint): SymbolMarks {
  const { allRound, field, tail } = symbol;
  const place = facePlaceOf(symbol, joint);
  const arrowSide = place === 'arrowSide' ? 'face' : 'root';
  return { contour: symbol[place]?.contour ?? 'none', allRound, field, tail, arrowSide };
}

/** Where the face side's and the root side's weld stand on a symbol. */
export const placesOf = ({
  arrowSide,
}: Pick<SymbolMarks, 'arrowSide'>): readonly [SymbolPlace, SymbolPlace] =>
  arrowSide === 'face' ? ['arrowSide', 'otherSide'] : ['otherSide', 'arrowSide'];

/**
 * Where the face side's weld stands. Of two like marks it is the one with the
 * root opening; with none, the one as deep as the joint's face side is against
 * its root side; the arrow side when nothing tells them apart.
 */
function facePlaceOf({ arrowSide, otherSide }: WeldSymbol, joint: Joint): SymbolPlace {
  if (arrowSide === null || otherSide === null) return arrowSide ? 'arrowSide' : 'otherSide';
  if (arrowSide.kind !== otherSide.kind) {
    return otherSide.kind === faceKind(joint) ? 'otherSide' : 'arrowSide';
  }
  // a fillet on both sides is none of these joints: refused as one too many on the other side
  if (joint.kind === 'fillet') return 'arrowSide';
  if (arrowSide.rootOpening !== null) return 'arrowSide';
  if (otherSide.rootOpening !== null) return 'otherSide';
  const [near, far] = [arrowSide.depth, otherSide.depth];
  // neither says its depth
  if (near === null || far === null) return 'arrowSide';
  const deeper = enteredToMm(far) - enteredToMm(near);
  return deeper * (0.5 - joint.rootSideShare) > 0 ? 'otherSide' : 'arrowSide';
}

function refuse(field: string, key: string, values?: Message['values']): never {
  throw new LimitsError(field, values === undefined ? { key } : { key, values });
}

function refuseOtherKind(
  read: SymbolElement | null,
  drawn: SymbolElement | null,
  place: SymbolPlace,
): void {
  if (read?.kind === drawn?.kind) return;
  const nameOf = ({ kind }: SymbolElement): Message => ({
    key: `symbol_kind_${kind.toLowerCase()}`,
  });
  if (drawn === null) return refuse(place, 'symbol_joint_has_none');
  if (read === null) return refuse(place, 'symbol_joint_has_more', { has: nameOf(drawn) });
  refuse(`${place}.kind`, 'symbol_joint_other_kind', { asked: nameOf(read), has: nameOf(drawn) });
}

/** The joint has its depths; a symbol that says none leaves them to it. */
function refuseOtherDepths(
  read: WeldSymbol,
  sheet: JobSheet,
  joint: ButtJoint,
  marks: SymbolMarks,
): void {
  const depths = preparedDepths(joint, sheet);
  const [facePlace, rootPlace] = placesOf(marks);
  for (const [place, has] of [
    [facePlace, depths.face],
    [rootPlace, depths.root],
  ] as const) {
    const asked = read[place]?.depth ?? null;
    if (asked === null) continue;
    const [askedMm, hasMm] = [enteredToMm(asked), has === null ? 0 : enteredToMm(has)];
    if (Math.abs(askedMm - hasMm) <= alike) continue;
    refuse(`${place}.depth`, 'symbol_joint_other_depth', {
      asked: { value: askedMm, unit: 'mm' },
      has: { value: hasMm, unit: 'mm' },
    });
  }
}

/** The sheet asks nothing of a root side: what the symbol writes there must follow from the rest. */
function refuseOtherRoot(
  root: SymbolElement,
  face: SymbolElement,
  drawn: WeldSymbol,
  place: SymbolPlace,
): void {
  const { rootOpening, grooveAngle, contour } = root;
  if (rootOpening !== null) refuse(`${place}.rootOpening`, 'symbol_opening_once');
  if (root.kind !== 'strip' && contour !== face.contour) {
    refuse(`${place}.contour`, 'symbol_one_contour');
  }
  const has = drawn[place]?.grooveAngle ?? null;
  if (grooveAngle === null || has === null || Math.abs(grooveAngle - has) <= alike) return;
  refuse(`${place}.grooveAngle`, 'symbol_joint_other_angle', {
    asked: { value: grooveAngle, unit: 'deg' },
    has: { value: has, unit: 'deg' },
  });
}

function sizeAsked(
  asked: SymbolSize | null,
  before: SymbolSize | null,
  has: JobSheet['size'],
): JobSheet['size'] {
  // a fillet has a size; one that reads as the sheet's was drawn leaves the sheet's own figure
  if (asked === null || (before !== null && sameSize(asked, before))) return has;
  const { prefix, first, second } = asked;
  const unequal = second !== null && enteredToMm(second) !== enteredToMm(first);
  return { as: prefix === 'a' ? 'throat' : 'leg', first, second: unequal ? second : null };
}

const sameSize = (one: SymbolSize, other: SymbolSize): boolean =>
  one.prefix === other.prefix &&
  sameLength(one.first, other.first) &&
  sameLength(one.second, other.second);

const sameLength = (one: SheetLength | null, other: SheetLength | null): boolean =>
  one?.unit === other?.unit && one?.value === other?.value;

function grooveAsked(
  { kind, grooveAngle, rootOpening }: SymbolElement,
  before: SymbolElement,
  groove: JobSheet['groove'],
): JobSheet['groove'] {
  const next = { ...groove, rootOpening: asking(groove.rootOpening, rootOpening) };
  // a square groove has no angle to ask for; what the sheet holds waits for the next preparation
  if (kind === 'square' || grooveAngle === before.grooveAngle) return next;
  const { bevelAngle } = groove;
  const plates = kind === 'V' || kind === 'U' ? 2 : 1;
  return {
    ...next,
    grooveAngle: asking(groove.grooveAngle, grooveAngle),
    bevelAngle:
      grooveAngle === null
        ? bevelAngle
        : bevelAsking(bevelAngle, groove.grooveAngle, grooveAngle / plates),
  };
}
