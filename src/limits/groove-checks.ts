import type { MeasurementId, Measurements } from '../measure/index.ts';
import { askedOf } from './asked.ts';
import { assess } from './assess.ts';
import { atMost } from './document-tolerance.ts';
import type { JobSheet, Toleranced } from './job-sheet.ts';
import type { Check } from './judging.ts';
import { judgedAt, readingAt } from './reading.ts';
import { ownLength, valueIn } from './sheet-length.ts';
import { sheetRequirement } from './sheet-requirement.ts';
import { absent } from './size-checks.ts';
import type { SymbolValue } from './substitute.ts';

const least = { formula: 'nominal - minus', tree: ['-', 'nominal', 'minus'] } as const;
const most = { formula: 'nominal + plus', tree: ['+', 'nominal', 'plus'] } as const;

/** One toleranced dimension of the preparation, all in one unit. */
interface Dimension {
  readonly subject: MeasurementId;
  readonly name: string;
  readonly side?: 1 | 2 | undefined;
  readonly unit: 'mm' | 'in' | 'deg';
  readonly nominal: number;
  readonly minus: number;
  readonly plus: number;
  readonly lastPlace: number;
}

/** What the sheet asks of the preparation at fit-up: each dimension not under and not over. */
export function grooveChecks(measurements: Measurements, sheet: JobSheet): readonly Check[] {
  const { bevelAngle, grooveAngle, rootOpening, rootFace } = sheet.groove;
  // a plate cut square on purpose has no bevel to put the angle to
  const secondBevel = measurements.section.groove?.faceBevels[1] != null;
  const dimensions = [
    angle('grooveAngle', 'limits_name_groove_angle', grooveAngle),
    angle('bevelAngle1', 'limits_name_bevel_angle', bevelAngle, 1),
    secondBevel ? angle('bevelAngle2', 'limits_name_bevel_angle', bevelAngle, 2) : null,
    length('rootOpening', 'limits_name_root_opening', rootOpening),
    length('rootFace', 'limits_name_root_face', rootFace),
  ];
  return dimensions
    .filter((dimension) => dimension !== null)
    .flatMap((dimension) =>
      senses(dimension, measurements).map((sense) =>
        toleranceCheck(sense, dimension, measurements, sheet),
      ),
    );
}

/** Least and most; only one of them where the section has nothing to put them to. */
function senses(dimension: Dimension, { values }: Measurements): readonly ('min' | 'max')[] {
  const { subject, unit, nominal, minus } = dimension;
  // nothing can be less than nothing, nor an opening or a root face less than none: that limit asks nothing
  const idle = unit === 'deg' ? nominal < minus : atMost(nominal - minus, 0);
  return idle || values[subject]?.value == null ? ['max'] : ['min', 'max'];
}

function toleranceCheck(
  sense: 'min' | 'max',
  dimension: Dimension,
  measurements: Measurements,
  sheet: JobSheet,
): Check {
  const { subject, name, side, unit, nominal, minus, plus, lastPlace } = dimension;
  const figure = (value: number): SymbolValue => ({ value, unit });
  const isLeast = sense === 'min';
  const requirement = sheetRequirement(sheet, {
    id: `sheet_${sense}`,
    subject,
    judged: judgedAt(subject, sense, measurements),
    name,
    side,
    sense,
    unit,
    limit: isLeast ? nominal - minus : nominal + plus,
    lastPlace,
    sum: isLeast ? least : most,
    inputs: { nominal: figure(nominal), minus: figure(minus), plus: figure(plus) },
  });
  const reading = readingAt(subject, sense, measurements, sheet) ?? absent;
  return assess(requirement, reading, sheet);
}

function angle(
  subject: MeasurementId,
  name: string,
  toleranced: Toleranced<number>,
  side?: 1 | 2,
): Dimension | null {
  const { minus, plus } = toleranced;
  const nominal = askedOf(toleranced);
  // not required
  if (nominal === null) return null;
  return { subject, name, side, unit: 'deg', nominal, minus, plus, lastPlace: 1 };
}

function length(
  subject: MeasurementId,
  name: string,
  toleranced: JobSheet['groove']['rootOpening'],
): Dimension | null {
  const { minus, plus } = toleranced;
  const nominal = askedOf(toleranced);
  // not required
  if (nominal === null) return null;
  const own = ownLength(nominal);
  return {
    subject,
    name,
    unit: own.unit,
    nominal: own.value,
    minus: valueIn(minus, own.unit),
    plus: valueIn(plus, own.unit),
    lastPlace: own.lastPlace,
  };
}
