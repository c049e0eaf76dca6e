/**
 * Binary arithmetic leaves noise in the last places of a sum (0.1 + 0.2); a
 * length of this program never means more than twelve significant digits.
 */
const significantDigits = 12;

/** The same number without the noise that binary arithmetic leaves behind its twelfth digit. */
function withoutNoise(value: number): number {
  return Number(value.toPrecision(significantDigits));
}

/**
 * The multiple of 10^-decimals nearest to a number; a half goes away from zero.
 * This is the one rounding rule of the program, whatever the unit. Never −0.
 */
export function roundHalfAway(value: number, decimals: number): number {
  // nothing to round in a value that is no number
  if (!Number.isFinite(value)) return value;
  return nowhereNearHalf(value, decimals) ?? roundByDigits(value, decimals);
}

const powersOfTen = [1, 10, 100, 1000, 10_000] as const;

/**
 * The same for nearly every number at a small part of the cost: one whose multiple lies so far
 * from a half that no noise could carry it over. Dividing a whole number by a power of ten gives
 * the double nearest to the decimal. null where the digits have to be looked at.
 */
function nowhereNearHalf(value: number, decimals: number): number | null {
  const power = powersOfTen[decimals];
  if (power === undefined) return null;
  const multiple = Math.abs(value) * power;
  const whole = Math.floor(multiple);
  const rest = multiple - whole;
  if (multiple > 1e6 || Math.abs(rest - 0.5) < 1e-3) return null;
  const rounded = (rest > 0.5 ? whole + 1 : whole) / power;
  return rounded === 0 ? 0 : Math.sign(value) * rounded;
}

function roundByDigits(value: number, decimals: number): number {
  const size = Math.abs(withoutNoise(value));
  // shifting the decimal point in the text is exact; multiplying by a power of ten is not
  const shifted = Math.round(shiftPoint(size, decimals));
  const rounded = shiftPoint(shifted, -decimals);
  // a value that rounds to nothing has no sign
  return rounded === 0 ? 0 : Math.sign(value) * rounded;
}

/** A number times a power of ten, exact to the last digit that a number can hold. */
function shiftPoint(value: number, places: number): number {
  const [digits = '0', exponent = '0'] = value.toString().split('e');
  return Number(`${digits}e${Number(exponent) + places}`);
}

/** A rounded number with exactly so many decimals and a true minus sign; never "−0.00". */
export function formatFixed(value: number, decimals: number): string {
  const rounded = roundHalfAway(value, decimals);
  const digits = Math.abs(rounded).toFixed(decimals);
  return rounded < 0 ? `−${digits}` : digits;
}
