import { choicesOfKind, defaultJoint, type Joint } from '../joint/index.ts';

/** A choice that says what the joint is, not how large. */
export interface JointChoice {
  readonly field: string;
  readonly value: string;
  readonly options: readonly string[];
}

const kinds: readonly Joint['kind'][] = ['fillet', 'butt'];

/** What is chosen of each kind, in the order it is chosen; of what values, the joint's own tables say. */
const chosen: Readonly<Record<Joint['kind'], readonly string[]>> = {
  fillet: ['arrangement', 'endCut'],
  butt: ['preparation', 'product', 'backing'],
};

/** The choices that mean something for this joint, in the order they are made. */
export function choicesOf(joint: Joint): readonly JointChoice[] {
  const { kind } = joint;
  const tables = choicesOfKind(kind);
  const own = chosen[kind].flatMap((field): readonly JointChoice[] => {
    // a lap lies flat on plate 1 whatever the cut of its end
    if (field === 'endCut' && joint.kind === 'fillet' && joint.arrangement === 'lap') return [];
    const options = tables.find((choice) => choice.field === field)?.values.map(String) ?? [];
    const value: unknown = joint[field as keyof Joint];
    return typeof value === 'string' ? [{ field, value, options }] : [];
  });
  return [{ field: 'kind', value: kind, options: kinds }, ...own];
}

/**
 * Joints that answer a choice, the one that keeps most of the present joint first. Another form may
 * not be buildable with the present numbers; then a plain one of that form follows, same stage.
 */
export function withChoice(joint: Joint, field: string, value: string): readonly Joint[] {
  const { stage } = joint;
  if (field === 'kind') {
    const kind = value === 'butt' ? 'butt' : 'fillet';
    const plain = { ...defaultJoint(kind), stage };
    return kind === joint.kind ? [joint] : [{ ...plain, t1: joint.t1, t2: joint.t2 }, plain];
  }
  const changed = { ...joint, [field]: value };
  if (changed.kind === 'fillet' && field === 'arrangement') {
    return [changed, { ...defaultJoint('fillet', changed.arrangement), stage }];
  }
  if (changed.kind === 'butt' && field === 'preparation') {
    return [changed, { ...defaultJoint('butt', changed.preparation), stage }];
  }
  return [changed];
}
