import type { PlateSurfaces, Section } from '../joint/index.ts';
import type { Measurement, Witness } from './measurement.ts';
import { footOn, heightAbove } from './surface-line.ts';
import { measuredLength, span } from './witness.ts';

/** Thickness of each plate between its as-supplied surfaces, the lesser and the greater, mm. */
export function thicknesses({ plateSurfaces }: Section): Measurement[] {
  const [t1, t2] = plateSurfaces.map(thickness) as [Thickness, Thickness];
  const [thin, thick] = t1.value <= t2.value ? [t1, t2] : [t2, t1];
  return [
    measuredLength('t1', t1.value, t1.witness),
    measuredLength('t2', t2.value, t2.witness),
    measuredLength('tMin', thin.value, thin.witness),
    measuredLength('tMax', thick.value, thick.witness),
  ];
}

interface Thickness {
  readonly value: number;
  readonly witness: Witness;
}

function thickness({ face, opposite }: PlateSurfaces): Thickness {
  const from = opposite.origin;
  return { value: -heightAbove(face, from), witness: span(from, footOn(face, from)) };
}
