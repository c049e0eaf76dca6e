import type { Point, Vector } from '../../geometry/index.ts';
import { line, polyline } from '../../geometry/index.ts';
import type { Section } from '../../joint/index.ts';
import type { Check } from '../../limits/index.ts';
import type { Measurement, MeasurementId, Measurements, Witness } from '../../measure/index.ts';
import type { AllowedBand } from './allowed-band.ts';
import type { Construction } from './construction.ts';
import type { AngleRequest, Asked, NoteRequest, Tone } from './dimension-request.ts';
import { pathOf } from './outline-path.ts';
import type { Sheet } from './sheet.ts';
import { toPx, type View } from './view-transform.ts';

/** The words of the drawing, in the reader's language, terms and units. */
export interface SceneWords {
  /** of a measurement, or of what a step is judged as */
  readonly name: (id: MeasurementId | 'misalignment') => string;
  readonly short: (id: MeasurementId) => string;
  readonly value: (measurement: Measurement) => string;
  /** "{name}, governs": the throat that the size follows from */
  readonly governs: (name: string) => string;
  readonly governsShort: (name: string) => string;
  /** "5 mm, drawn 9.5 : 1", and how many dimensions found no room */
  readonly scale: (bar: string, scale: string) => string;
  readonly notShown: (count: number) => string;
  /** captions of the allowed band; '' where it has no such limit */
  readonly least: (band: AllowedBand, kind: Section['kind']) => string;
  readonly most: (band: AllowedBand, kind: Section['kind']) => string;
}

/** What the choice of dimensions needs to know. */
export interface DimensionContext {
  readonly section: Section;
  readonly measurements: Measurements;
  readonly tones: ReadonlyMap<MeasurementId, Tone>;
  readonly checks: readonly Check[];
  /** whether the sheet sets a limit on a measurement, or on what is drawn as it */
  readonly judges: (id: MeasurementId) => boolean;
  readonly lit: MeasurementId | null;
  /** what stands on the drawing already, beside its dimensions */
  readonly told: ReadonlySet<MeasurementId>;
  /** the throat that decides; null when it is none that is drawn */
  readonly governing: MeasurementId | null;
  readonly show: Construction;
  readonly view: View;
  readonly sheet: Sheet;
  readonly words: SceneWords;
}

/** Smaller than this a flaw or difference is none and isn't dimensioned, mm or degrees. */
export const NOTHING = 5e-4;
/** Below this nobody sees or gauges a difference, so it is dimensioned only where it presses, mm or degrees. */
const UNSEEN = 0.05;
/** A figure other than 0 in a value's text. */
const SOME = /[1-9]/u;

/** The colour of each judged measurement; the worse call where several checks judge one. */
export function tonesOf(
  checks: readonly Check[],
  measurements: Measurements,
  step: MeasurementId,
): ReadonlyMap<MeasurementId, Tone> {
  const tones = new Map<MeasurementId, Tone>();
  for (const { measurement, call } of checks) {
    if (call !== 'reject' && call !== 'refer') continue;
    for (const id of drawnAs(measurement, measurements, step)) {
      if (tones.get(id) !== 'reject') tones.set(id, call);
    }
  }
  return tones;
}

/** The measurements that a check's subject is drawn as; `step` is the one that misalignment is read from. */
export function drawnAs(
  subject: Check['measurement'],
  { values }: Measurements,
  step: MeasurementId,
): readonly MeasurementId[] {
  const present = (ids: readonly MeasurementId[]): readonly MeasurementId[] =>
    ids.filter((id) => values[id] !== undefined);
  switch (subject) {
    case 'misalignment':
      // Plates of one thickness step alike everywhere, and it is written at the face.
      return present([sameStep(values, step) ? 'faceStep' : step]);
    case 'angleDeparture':
      return present(['dihedralAngle', 'angularMisalignment']);
    case 'toeAngle':
      // The smaller one is judged and drawn at its own toe.
      return (values.toeAngle2?.value ?? Infinity) < (values.toeAngle1?.value ?? Infinity)
        ? ['toeAngle2']
        : ['toeAngle1'];
    case 'effectiveThroat':
    case 'isoscelesThroat':
      return [sameThroat(subject, values)];
    default:
      return [subject];
  }
}

/** Throats that differ by less than this are one and are written once, mm. */
const SAME_THROAT = 5e-3;

/** The throat that one is drawn as: an equal one of the two that are always drawn, or itself. */
function sameThroat(id: MeasurementId, values: Measurements['values']): MeasurementId {
  const own = values[id]?.value ?? Infinity;
  const candidates = ['theoreticalThroat', 'actualThroat'] as const;
  const equal = candidates.find(
    (other) => Math.abs((values[other]?.value ?? -Infinity) - own) < SAME_THROAT,
  );
  return equal ?? id;
}

const judgedThroats: ReadonlySet<Check['measurement']> = new Set<Check['measurement']>([
  'isoscelesThroat',
  'theoreticalThroat',
  'effectiveThroat',
  'actualThroat',
]);

/**
 * The throat that decides, as it is drawn: what the first check of a least throat was put to, which
 * is the deep one where penetration counts; null when that is a triangle that no dimension shows.
 * Without such a check, the effective one.
 */
export function governingThroat(
  checks: readonly Check[],
  { values }: Measurements,
): MeasurementId | null {
  const check = checks.find(
    ({ sense, measurement }) => sense === 'min' && judgedThroats.has(measurement),
  );
  if (check === undefined) return sameThroat('effectiveThroat', values);
  const put = check.measured ?? Infinity;
  const id = [check.measurement as MeasurementId, 'deepThroat' as const].find(
    (throat) => Math.abs((values[throat]?.value ?? -Infinity) - put) < SAME_THROAT,
  );
  return id === undefined ? null : sameThroat(id, values);
}

/** Steps that differ by less than this are one step, written once, mm. */
const SAME_STEP = 5e-3;

/** Whether a butt joint steps by the same amount there and on its face, as plates of one thickness do. */
export function sameStep(values: Measurements['values'], step: MeasurementId): boolean {
  return Math.abs((values.faceStep?.value ?? 0) - (values[step]?.value ?? 0)) < SAME_STEP;
}

/** A measurement with what its dimension asks for; null when there is nothing to show. */
export interface Wanted<W extends Witness['kind']> {
  readonly measurement: Measurement;
  readonly witness: Extract<Witness, { kind: W }>;
  readonly asked: Asked;
}

export function wanted<W extends Witness['kind']>(
  context: DimensionContext,
  id: MeasurementId,
  kind: W,
  rank: number,
): Wanted<W> | null {
  const measurement = context.measurements.values[id];
  if (measurement?.value == null || measurement.witness.kind !== kind) return null;
  if (Math.abs(measurement.value) < NOTHING) return null;
  const lit = context.lit === id;
  const value = context.words.value(measurement);
  const isNoise = Math.abs(measurement.value) < UNSEEN || !SOME.test(value);
  if ((isNoise || context.told.has(id)) && !pressing(context, id)) return null;
  return {
    measurement,
    witness: measurement.witness as Extract<Witness, { kind: W }>,
    asked: {
      key: id,
      names: [context.words.name(id), context.words.short(id)],
      value,
      tone: context.tones.get(id) ?? 'plain',
      lit,
      figure: lit ? figureOf(measurement.witness, context.view) : '',
      rank,
    },
  };
}

/** What explains a witness that is pointed at: its construction lines, triangle or area. */
function figureOf(witness: Witness, view: View): string {
  switch (witness.kind) {
    case 'distance':
      return pathOf(
        view,
        witness.construction.map(([p, q]) => line(p, q)),
      );
    case 'triangle':
      return pathOf(view, polyline([witness.apex, witness.corner1, witness.corner2], true));
    case 'area':
      return witness.regions.map((region) => pathOf(view, region, true)).join('');
    case 'angle':
    case 'none':
      return '';
  }
}

/** Out of limit or pointed at: drawn whatever construction is switched off. */
export function pressing({ tones, lit }: DimensionContext, id: MeasurementId): boolean {
  return lit === id || tones.has(id);
}

/** A direction of the section plane as it points on the screen. */
export function onScreen({ x, y }: Vector): Point {
  return { x, y: -y };
}

/** An angle measurement as a dimension. */
export function angleRequest(
  { view }: DimensionContext,
  { witness, asked }: Wanted<'angle'>,
  radii: readonly number[],
): AngleRequest {
  const vertex = toPx(view, witness.vertex);
  const direction = (point: Point): number => {
    const { x, y } = toPx(view, point);
    return Math.atan2(y - vertex.y, x - vertex.x);
  };
  // Counter-clockwise in the plane runs the other way on the screen, where y points down.
  const start = direction(witness.to);
  let end = direction(witness.from);
  while (end <= start) end += 2 * Math.PI;
  return { asked, kind: 'angle', vertex, start, end, radii };
}

/** A text with a leader to a point. */
export function noteRequest(
  { asked }: Pick<Wanted<Witness['kind']>, 'asked'>,
  at: Point,
  towards: Point,
): NoteRequest {
  return { asked, kind: 'note', at, towards };
}
