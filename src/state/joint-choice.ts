import { defaultJoint, type Joint } from '../joint/index.ts';

/** A choice that says what the joint is, not how large. */
export interface JointChoice {
  readonly field: string;
  readonly value: string;
  readonly options: readonly string[];
}

const options = {
  kind: ['fillet', 'butt'],
  arrangement: ['tee', 'lap', 'corner'],
  endCut: ['fitted', 'square'],
  preparation: ['square', 'singleV', 'doubleV', 'singleBevel', 'doubleBevel', 'singleU', 'singleJ'],
  product: ['plate', 'pipe'],
  backing: ['none', 'strip'],
} as const;

/** The choices that mean something for this joint, in the order they are made. */
export function choicesOf(joint: Joint): readonly JointChoice[] {
  const chosen: readonly (readonly [keyof typeof options, string])[] =
    joint.kind === 'fillet'
      ? [
          ['kind', joint.kind],
          ['arrangement', joint.arrangement],
          // a lap lies flat on plate 1 whatever the cut of its end
          ...(joint.arrangement === 'lap' ? [] : [['endCut', joint.endCut] as const]),
        ]
      : [
          ['kind', joint.kind],
          ['preparation', joint.preparation],
          ['product', joint.product],
          ['backing', joint.backing],
        ];
  return chosen.map(([field, value]) => ({ field, value, options: options[field] }));
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
