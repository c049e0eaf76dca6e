/**
 * Numbers that must not be mistaken for one another carry a brand; the
 * constructors below are the only place where a brand is added.
 */

declare const brand: unique symbol;
type Branded<Name extends string> = number & { readonly [brand]: Name };

/** A length in millimetres, the core's only unit of length. */
export type Mm = Branded<'mm'>;
/** An angle in degrees, the core's unit of angle at every public face. */
export type Deg = Branded<'deg'>;
/** An angle in radians, inside the geometry kernel only. */
export type Rad = Branded<'rad'>;

export const mm = (value: number): Mm => value as Mm;
export const deg = (value: number): Deg => value as Deg;
export const rad = (value: number): Rad => value as Rad;

export const toRad = (angle: Deg): Rad => ((angle * Math.PI) / 180) as Rad;
export const toDeg = (angle: Rad): Deg => ((angle * 180) / Math.PI) as Deg;
