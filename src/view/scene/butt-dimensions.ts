import type { DimensionContext } from './dimension-context.ts';
import type { DimensionRequest } from './dimension-request.ts';

export function buttDimensions(_context: DimensionContext): readonly DimensionRequest[] {
  return [];
}
