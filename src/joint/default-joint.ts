import type { ButtJoint, FilletJoint, Joint, Preparation } from './joint.ts';
import { choicesOfKind, parametersFor } from './ranges.ts';

/** What a form needs changed in a plain joint of its kind. */
const forms: Readonly<
  Record<FilletJoint['arrangement'], Partial<FilletJoint>> & Record<Preparation, Partial<ButtJoint>>
> = {
  tee: {},
  lap: {},
  corner: {},
  square: { t1: 4, t2: 4, rootOpening: 2, capHeight: 1 },
  singleV: {},
  doubleV: { t1: 20, t2: 20 },
  singleBevel: { bevelAngle1: 45 },
  doubleBevel: { t1: 20, t2: 20, bevelAngle1: 45, rootBevelAngle1: 45 },
  singleU: { t1: 20, t2: 20, bevelAngle1: 12, bevelAngle2: 12 },
  singleJ: { t1: 20, t2: 20, bevelAngle1: 20 },
};

/** A plain, sound joint of a kind and form, from which every other is a change. */
export function defaultJoint(kind: 'fillet', form?: FilletJoint['arrangement']): FilletJoint;
export function defaultJoint(kind: 'butt', form?: Preparation): ButtJoint;
export function defaultJoint(
  kind: Joint['kind'],
  form?: FilletJoint['arrangement'] | Preparation,
): Joint;
export function defaultJoint(
  kind: Joint['kind'],
  form: FilletJoint['arrangement'] | Preparation = kind === 'fillet' ? 'tee' : 'singleV',
): Joint {
  const fields: Record<string, unknown> = {};
  for (const { field, values, start } of choicesOfKind(kind)) fields[field] = start ?? values[0];
  for (const { field, start } of parametersFor(kind)) fields[field] = start;
  fields[kind === 'fillet' ? 'arrangement' : 'preparation'] = form;
  fields['spatter'] = [];
  // the tables hold every field of the kind: the schema test says so
  return { ...fields, ...forms[form] } as unknown as Joint;
}
