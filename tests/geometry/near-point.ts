import { expect } from 'vitest';
import type { Point } from '../../src/geometry/index.ts';

/** Expects a point at (x, y) within `within` mm, with both coordinates in the message. */
export function expectPoint(
  actual: Point | null | undefined,
  x: number,
  y: number,
  within = 1e-12,
) {
  const off = Math.hypot((actual?.x ?? NaN) - x, (actual?.y ?? NaN) - y);
  expect(
    off,
    `(${String(actual?.x)}, ${String(actual?.y)}) should be at (${x}, ${y})`,
  ).toBeLessThanOrEqual(within);
}
