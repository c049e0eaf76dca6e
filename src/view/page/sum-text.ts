import { mmToInch, nearestInch64, type Message, type MessageValue } from '../../units/index.ts';
import { quantity, text, type Reading } from '../text.ts';

/** A message in words whose measurement, limit and margin add up as they are written. */
export function sumText(message: Message, reading: Reading): string {
  const { measured, limit, margin } = message.values ?? {};
  if (!isLength(measured) || !isLength(limit) || !isLength(margin)) return text(message, reading);
  const way = sumReading(measured.value, limit.value, margin.value, reading);
  const values = Object.fromEntries(
    Object.entries(message.values ?? {}).map(([name, value]) => [
      name,
      isLength(value) ? quantity(value.value, 'mm', way(value.value)) : value,
    ]),
  );
  return text({ ...message, values }, reading);
}

const isLength = (value: MessageValue | undefined): value is { value: number; unit: 'mm' } =>
  typeof value === 'object' && 'unit' in value && value.unit === 'mm';

/** A count of 64ths that is off a whole one by less than this is one. */
const ON_RULE = 1e-6;

/**
 * How to write each figure of a measurement, its limit and the margin between them: where their
 * fractions would not add up, what lies off the rule's divisions takes decimals.
 */
export function sumReading(
  measured: number,
  limit: number,
  margin: number,
  reading: Reading,
): (value: number) => Reading {
  const counts = [measured, limit, margin].map((value) => nearestInch64(value, 64));
  const [found = 0, asked = 0, apart = 0] = counts;
  if (Math.abs(found - asked) === Math.abs(apart)) return () => reading;
  return (value) => {
    const count = mmToInch(value) * 64;
    const isOnRule = Math.abs(count - Math.round(count)) < ON_RULE;
    return isOnRule ? reading : { ...reading, inches: 'decimal' };
  };
}
