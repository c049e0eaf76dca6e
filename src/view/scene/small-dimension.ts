import type { Point } from '../../geometry/index.ts';
import type { DimensionContext, Wanted } from './dimension-context.ts';
import type { LinearRequest } from './dimension-request.ts';
import { toPx } from './view-transform.ts';

/** A distance too small for its own text: the text stands at the end of the line, past `outer`. */
export function small(
  { view }: DimensionContext,
  { witness, asked }: Wanted<'distance'>,
  off: Point,
  levels: readonly number[],
  outer: 'from' | 'to',
): LinearRequest {
  const [from, to] = [toPx(view, witness.from), toPx(view, witness.to)];
  return { asked, kind: 'linear', from, to, off, levels, label: 'end', outer };
}
