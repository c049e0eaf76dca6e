import { atMost } from './document-tolerance.ts';
import type { JobSheet, SheetLength, Toleranced } from './job-sheet.ts';
import { ownLength, valueIn } from './sheet-length.ts';

/** A dimension of the preparation as the drawing details it, against the WPS's nominal and tolerance. */
export interface DetailCheck {
  readonly field: keyof JobSheet['groove'];
  readonly unit: 'mm' | 'in' | 'deg';
  readonly drawn: number;
  readonly nominal: number;
  readonly least: number;
  readonly most: number;
  readonly accept: boolean;
}

/**
 * Whether what the drawing details keeps to what the WPS lets a drawing vary:
 * a question about two documents, answered before any plate is cut. Only the
 * dimensions that the sheet gives a drawn value and a tolerance as detailed.
 */
export function detailChecks({ groove }: JobSheet): readonly DetailCheck[] {
  return [
    angle('bevelAngle', groove.bevelAngle),
    angle('grooveAngle', groove.grooveAngle),
    length('rootOpening', groove.rootOpening),
    length('rootFace', groove.rootFace),
  ].filter((check) => check !== null);
}

function angle(
  field: DetailCheck['field'],
  { nominal, drawn, detailed }: Toleranced<number>,
): DetailCheck | null {
  if (nominal === null || drawn === undefined || detailed === undefined) return null;
  return checked(field, 'deg', drawn, nominal, detailed.minus, detailed.plus);
}

function length(
  field: DetailCheck['field'],
  { nominal, drawn, detailed }: Toleranced<SheetLength>,
): DetailCheck | null {
  if (nominal === null || drawn === undefined || detailed === undefined) return null;
  const own = ownLength(nominal);
  const of = (entered: SheetLength): number => valueIn(entered, own.unit);
  return checked(field, own.unit, of(drawn), own.value, of(detailed.minus), of(detailed.plus));
}

function checked(
  field: DetailCheck['field'],
  unit: DetailCheck['unit'],
  drawn: number,
  nominal: number,
  minus: number,
  plus: number,
): DetailCheck {
  // a tolerance wider than its nominal reaches no further down than nothing
  const [least, most] = [Math.max(0, nominal - minus), nominal + plus];
  const accept = atMost(least, drawn) && atMost(drawn, most);
  return { field, unit, drawn, nominal, least, most, accept };
}
