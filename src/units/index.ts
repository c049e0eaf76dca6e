export * from './quantity.ts';
export * from './message.ts';
export { roundHalfAway, formatFixed } from './rounding.ts';
export * from './inch-fraction.ts';
export * from './length.ts';
export * from './angle.ts';
