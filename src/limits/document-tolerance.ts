/**
 * How far past a limit a measurement may be and still stand on it, in the unit
 * that the document prints (mm, inch or degree). It only takes up what binary
 * arithmetic leaves behind; the same figure decides thickness bands.
 */
export const documentTolerance = 1e-9;

/** a ≤ b, both in the document's unit. */
export const atMost = (a: number, b: number): boolean => a <= b + documentTolerance;

/** a = b, both in the document's unit. */
export const same = (a: number, b: number): boolean => Math.abs(a - b) <= documentTolerance;
