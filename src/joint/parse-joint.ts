import { JointError } from './joint-error.ts';
import type { Joint } from './joint.ts';
import { fault, rangeFaults, type JointFault } from './joint-fault.ts';
import { choicesOfKind, parametersFor, spatterBounds } from './ranges.ts';

type PlainObject = Readonly<Record<string, unknown>>;

/** A joint read from outside (file, link, lesson); the first fault is thrown as a JointError. */
export function parseJoint(value: unknown): Joint {
  const [fault] = jointFaults(value);
  if (fault) throw new JointError(fault.field, fault.bound, fault.reason);
  // every field has been seen to be there, of its type and within its bounds, and no other
  return value as Joint;
}

/** Everything that keeps a value from being a joint; empty when it is one. Whether it can be built is for `build` to say. */
export function jointFaults(value: unknown): readonly JointFault[] {
  if (!isObject(value)) return [fault('', 'joint_error_not_an_object')];
  const kind = own(value, 'kind');
  if (kind !== 'fillet' && kind !== 'butt') return [fault('kind', 'joint_error_kind')];
  const version = own(value, 'version');
  if (version !== 1) return [fault('version', 'joint_error_version')];

  const choices = choicesOfKind(kind);
  const ranges = parametersFor(kind);
  const faults = fieldFaults(value, '', [...choices, ...ranges, { field: 'spatter' }]);
  for (const { field, values } of choices) {
    if (Object.hasOwn(value, field)) faults.push(...choiceFaults(own(value, field), field, values));
  }
  for (const range of ranges) {
    if (Object.hasOwn(value, range.field)) {
      faults.push(...rangeFaults(own(value, range.field), range.field, range));
    }
  }
  if (Object.hasOwn(value, 'spatter')) faults.push(...spatterFaults(own(value, 'spatter')));
  return faults;
}

function choiceFaults(
  value: unknown,
  field: string,
  values: readonly unknown[],
): readonly JointFault[] {
  if (values.includes(value)) return [];
  return [fault(field, 'joint_error_unknown_choice', { choices: values.join(', ') })];
}

function spatterFaults(value: unknown): readonly JointFault[] {
  if (!Array.isArray(value)) return [fault('spatter', 'joint_error_not_a_list')];
  const { place, height, most } = spatterBounds;
  if (value.length > most) return [fault('spatter', 'joint_error_too_much_spatter', { most })];
  return value.flatMap((bump: unknown, index) => {
    const at = `spatter.${index}`;
    if (!isObject(bump)) return [fault(at, 'joint_error_not_an_object')];
    const fields = [{ field: 'plate' }, { field: 'place' }, { field: 'height' }];
    const faults = fieldFaults(bump, `${at}.`, fields);
    if (faults.length > 0) return faults;
    return [
      ...choiceFaults(own(bump, 'plate'), `${at}.plate`, [1, 2]),
      ...rangeFaults(own(bump, 'place'), `${at}.place`, place),
      ...rangeFaults(own(bump, 'height'), `${at}.height`, height),
    ];
  });
}

/** Fields missing and fields that don't belong there. */
function fieldFaults(
  value: PlainObject,
  path: string,
  fields: readonly { readonly field: string }[],
): JointFault[] {
  const known = new Set(fields.map(({ field }) => field));
  return [
    ...Object.keys(value)
      .filter((field) => !known.has(field))
      .map((field) => fault(path + field, 'joint_error_unknown_field')),
    ...[...known]
      .filter((field) => !Object.hasOwn(value, field))
      .map((field) => fault(path + field, 'joint_error_missing_field')),
  ];
}

function isObject(value: unknown): value is PlainObject {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** Only what the value itself says: nothing from a prototype. */
function own(value: PlainObject, field: string): unknown {
  return Object.hasOwn(value, field) ? value[field] : undefined;
}
