import type { Message, MessageValue } from '../units/index.ts';

/** A length or angle in a sentence; the view writes it in the reader's unit. */
const quantity = (value: number, unit: 'mm' | 'deg'): MessageValue => ({ value, unit });

interface Compared {
  readonly sense: 'max' | 'min';
  readonly unit: 'mm' | 'deg';
  readonly measured: number;
  readonly limit: number;
  readonly margin: number;
}

/** Says where a measurement stands to its limit: on it, so far inside, or so far outside. */
export function standing(compared: Compared, side: 'on' | 'inside' | 'outside'): Message {
  const { sense, unit, measured, limit, margin } = compared;
  // where nothing is permitted there is no distance to speak of
  if (sense === 'max' && limit === 0) {
    return side === 'outside'
      ? { key: 'limits_reason_none_permitted', values: { measured: quantity(measured, unit) } }
      : { key: 'limits_reason_none_found' };
  }
  return {
    key: `limits_reason_${side}_${sense}`,
    values: {
      measured: quantity(measured, unit),
      limit: quantity(limit, unit),
      margin: quantity(Math.abs(margin), unit),
    },
  };
}

/** The measurement is nearer to its limit than the instrument can be trusted to. */
export const withinGuard = (margin: number, guard: number, unit: 'mm' | 'deg'): Message => ({
  key: 'limits_reason_guard',
  values: { margin: quantity(Math.abs(margin), unit), guard: quantity(guard, unit) },
});

export const roundedFirst = (rounded: number, unit: 'mm' | 'deg'): Message => ({
  key: 'limits_reason_rounded',
  values: { rounded: quantity(rounded, unit) },
});

export const missingInput = (symbol: string, from: 'measurement' | 'sheet'): Message => ({
  key: from === 'sheet' ? 'limits_reason_missing_on_sheet' : 'limits_reason_missing_input',
  values: { symbol },
});
