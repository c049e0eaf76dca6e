import type { Contour, Point } from '../geometry/index.ts';
import type { Side } from '../joint/index.ts';

/** Weld metal that shows on one side, from toe to toe. */
export interface ExposedWeld {
  readonly bead: Contour;
  readonly toes: readonly [Point, Point];
  readonly lips: readonly [Point, Point];
}

/** The weld metal that shows on a side; null where none does. */
export function exposedWeld({ bead, toes, lips }: Side): ExposedWeld | null {
  return bead === null || toes === null || lips === null ? null : { bead, toes, lips };
}
