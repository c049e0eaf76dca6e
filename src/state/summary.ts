import type { Check, Overall } from '../limits/index.ts';
import type { MeasurementId, Measurements } from '../measure/index.ts';
import type { Message, MessageValue } from '../units/index.ts';
import { isNamesake } from './namesake.ts';

/** Smaller than a person reads off a section; said as none. */
const NOTHING = 0.05;

/** The section in a few short sentences that stand under its title: plates, shape of the face, what is off. */
export function summarise(measurements: Measurements): readonly Message[] {
  const shape = shapeOf(measurements);
  // a title of plates has said them
  if (!isOfLegs(measurements)) return shape;
  const read = (id: MeasurementId): number => measurements.values[id]?.value ?? 0;
  return [sentence('bench_summary_plates', { t1: mm(read('t1')), t2: mm(read('t2')) }), ...shape];
}

/** What rejects it, in at most two sentences, what decides first; what two rows reject for one reason is said once. */
export function rejectsInWords({ decides, rejected }: Overall): readonly Message[] {
  const first = decides?.call === 'reject' ? decides : rejected[0];
  if (first === undefined) return [];
  const other = rejected.find((check) => !sameReason(check, first));
  return (other === undefined ? [first] : [first, other]).map(overLimit);
}

/** One quantity out on one side: by the job sheet and by the limit set, for example. */
const sameReason = (one: Check, other: Check): boolean =>
  one.sense === other.sense && isNamesake(one, other);

/** What tells this section from its neighbours, plates left out. */
export function shapeOf(measurements: Measurements): readonly Message[] {
  const { section } = measurements;
  const read = (id: MeasurementId): number => measurements.values[id]?.value ?? 0;
  if (section.stage === 'fitUp') return fitUp(section.kind, read);
  return section.kind === 'fillet' ? fillet(read) : butt(read);
}

/** A rejected check as a sentence: what was measured and what was allowed or needed. */
function overLimit(check: Check): Message {
  return sentence(check.sense === 'max' ? 'bench_summary_over' : 'bench_summary_under', {
    name: check.name,
    measured: { value: check.measured ?? 0, unit: check.unit },
    limit: { value: check.limit ?? 0, unit: check.unit },
  });
}

type Read = (id: MeasurementId) => number;

function fillet(read: Read): readonly Message[] {
  const said: Message[] = [];
  const convex = read('convexity');
  const concave = read('concavity');
  if (convex >= NOTHING && concave >= NOTHING) {
    said.push(sentence('bench_summary_mixed', { convex: mm(convex), concave: mm(concave) }));
  } else if (convex >= NOTHING) said.push(sentence('bench_summary_convex', { rise: mm(convex) }));
  else if (concave >= NOTHING) said.push(sentence('bench_summary_concave', { rise: mm(concave) }));
  else said.push({ key: 'bench_summary_flat' });
  if (read('rootGap') >= NOTHING) {
    said.push(sentence('bench_summary_gap', { gap: mm(read('rootGap')) }));
  }
  return said;
}

function butt(read: Read): readonly Message[] {
  const said: Message[] = [];
  const higher = read('faceReinforcement.higher');
  if (higher >= NOTHING) said.push(sentence('bench_summary_cap', { height: mm(higher) }));
  if (read('underfill') >= NOTHING) {
    said.push(sentence('bench_summary_underfill', { depth: mm(read('underfill')) }));
  }
  return [...said, ...alignment(read)];
}

function alignment(read: Read): readonly Message[] {
  const offset = Math.abs(read('centrelineOffset'));
  return offset < NOTHING ? [] : [sentence('bench_summary_offset', { offset: mm(offset) })];
}

function fitUp(kind: 'fillet' | 'butt', read: Read): readonly Message[] {
  if (kind === 'fillet') {
    return [sentence('bench_summary_gap', { gap: mm(read('rootGap')) })];
  }
  return [
    sentence('bench_summary_groove', {
      angle: { value: read('grooveAngle'), unit: 'deg' },
      opening: mm(read('rootOpening')),
      face: mm(read('rootFace')),
    }),
    ...alignment(read),
  ];
}

const mm = (value: number): MessageValue => ({ value, unit: 'mm' });

const sentence = (key: string, values: Readonly<Record<string, MessageValue>>): Message => ({
  key,
  values,
});

/** What the joint is called at the head of the sheet: its form and its size. */
export function titleOf(measurements: Measurements): Message {
  const { section, values } = measurements;
  const read = (id: MeasurementId): number => values[id]?.value ?? 0;
  const form = { key: `bench_title_${section.form.toLowerCase()}` };
  return isOfLegs(measurements)
    ? sentence('bench_title_legs', { form, leg1: mm(read('leg1')), leg2: mm(read('leg2')) })
    : sentence('bench_title_plates', { form, t1: mm(read('t1')), t2: mm(read('t2')) });
}

/** Whether the size of the joint is that of its weld's legs: otherwise it is that of its plates. */
const isOfLegs = ({ section }: Measurements): boolean =>
  section.kind === 'fillet' && section.stage === 'welded';
