import type { Point } from '../../geometry/index.ts';
import type { DimensionContext, Wanted } from './dimension-context.ts';
import type { LinearRequest } from './dimension-request.ts';
import { toPx } from './view-transform.ts';

/**
 * A distance too small for its own text: the text stands at the end of the line, past `outer`,
 * unless there is room for it on the line. `bare`: ends that a line lies at already.
 */
export function small(
  { view }: DimensionContext,
  { witness, asked }: Wanted<'distance'>,
  off: Point,
  levels: readonly number[],
  outer: 'from' | 'to',
  label: 'on' | 'end' = 'end',
  bare?: LinearRequest['bare'],
): LinearRequest {
  const from = toPx(view, witness.from);
  const to = toPx(view, witness.to);
  return { asked, kind: 'linear', from, to, off, levels, label, outer, bare };
}
