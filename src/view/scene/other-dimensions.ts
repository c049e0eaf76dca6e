import type { Point } from '../../geometry/index.ts';
import { contourBounds } from '../../geometry/index.ts';
import type { MeasurementId, Witness } from '../../measure/index.ts';
import { angleRequest, type DimensionContext, noteRequest, wanted } from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';
import { toPx } from './view-transform.ts';

const RANK = 45;

/** Measurements out of limit or pointed at that the drawing has no manner of its own for, straight from their witness. */
export function otherDimensions(
  context: DimensionContext,
  drawn: ReadonlySet<string>,
): readonly DimensionRequest[] {
  const ids = new Set<MeasurementId>(context.tones.keys());
  if (context.lit !== null) ids.add(context.lit);
  const requests: DimensionRequest[] = [];
  for (const id of ids) {
    if (drawn.has(id)) continue;
    const request = fromWitness(
      context,
      id,
      context.measurements.values[id]?.witness.kind ?? 'none',
    );
    if (request !== null) requests.push(request);
  }
  return requests;
}

function fromWitness(
  context: DimensionContext,
  id: MeasurementId,
  kind: Witness['kind'],
): DimensionRequest | null {
  switch (kind) {
    case 'distance':
      return alongDistance(context, id);
    case 'angle': {
      const want = wanted(context, id, 'angle', RANK);
      return want === null ? null : angleRequest(context, want, [40, 56, 72, 30]);
    }
    case 'triangle': {
      const want = wanted(context, id, 'triangle', RANK);
      if (want === null) return null;
      const { apex, corner1, corner2 } = want.witness;
      const [o, p, q] = [
        toPx(context.view, apex),
        toPx(context.view, corner1),
        toPx(context.view, corner2),
      ];
      return noteRequest(want, share(p, q, 0.5), unit(o, share(p, q, 0.5)));
    }
    case 'area': {
      const want = wanted(context, id, 'area', RANK);
      const [region] = want?.witness.regions ?? [];
      if (want === null || region === undefined) return null;
      const { left, right, bottom, top } = contourBounds(region);
      const middle = toPx(context.view, { x: (left + right) / 2, y: (bottom + top) / 2 });
      return noteRequest(want, middle, { x: Math.SQRT1_2, y: -Math.SQRT1_2 });
    }
    case 'none':
      return null;
  }
}

/** A distance dimensioned where it was taken, or a little to either side. */
function alongDistance(context: DimensionContext, id: MeasurementId): DimensionRequest | null {
  const want = wanted(context, id, 'distance', RANK);
  if (want === null) return null;
  const { asked, witness } = want;
  const from = toPx(context.view, witness.from);
  const to = toPx(context.view, witness.to);
  const along = unit(from, to);
  const off = { x: -along.y, y: along.x };
  const levels = [0, 26, -26, 44, -44];
  return { asked, kind: 'linear', from, to, off, levels, label: 'end', outer: 'to' };
}

function share(p: Point, q: Point, t: number): Point {
  return { x: p.x + (q.x - p.x) * t, y: p.y + (q.y - p.y) * t };
}

function unit(from: Point, to: Point): Point {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  // no direction of its own: straight up
  return length < 1e-6
    ? { x: 0, y: -1 }
    : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
}
