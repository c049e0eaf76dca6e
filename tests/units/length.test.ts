import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LengthFormat } from '../../src/units/index.ts';
import { enteredToMm, formatLength, parseLength } from '../../src/units/index.ts';
import { runs } from '../runs.ts';

const mmOf = (text: string, unit: 'mm' | 'in' = 'mm'): number => {
  const read = parseLength(text, unit);
  return read.ok ? read.mm : Number.NaN;
};
const exactOf = (text: string, unit: 'mm' | 'in' = 'in'): unknown => {
  const read = parseLength(text, unit);
  return read.ok ? read.exact : read.message;
};
const refusal = (text: string, unit: 'mm' | 'in' = 'mm'): string => {
  const read = parseLength(text, unit);
  return read.ok ? `read as ${read.mm}` : read.message.key;
};

describe('reading a length', () => {
  it('takes a bare decimal in the unit of the field, with a point or a comma', () => {
    expect(mmOf('7')).toBe(7);
    expect(mmOf('7.5')).toBe(7.5);
    expect(mmOf('7,5')).toBe(7.5);
    expect(mmOf('.5')).toBe(0.5);
    expect(mmOf('7.')).toBe(7);
    expect(mmOf('0.5', 'in')).toBe(12.7);
  });

  it('lets a unit that is written out win over the unit of the field', () => {
    expect(mmOf('8 mm', 'in')).toBe(8);
    expect(mmOf('8mm', 'in')).toBe(8);
    expect(mmOf('8 Millimetres', 'in')).toBe(8);
    expect(mmOf('0.5 in')).toBe(12.7);
    expect(mmOf('0.5 in.')).toBe(12.7);
    expect(mmOf('2 inches')).toBe(50.8);
    expect(mmOf('0.5"')).toBe(12.7);
    expect(mmOf('0.5″')).toBe(12.7);
    expect(mmOf("0.5''")).toBe(12.7);
  });

  it('knows every spelling of the two units, and no other word', () => {
    for (const word of ['mm', 'MM', 'millimetre', 'millimetres', 'millimeter', 'millimeters']) {
      expect(exactOf(`8 ${word}`)).toEqual({ unit: 'mm', value: 8 });
    }
    for (const word of ['in', 'In', 'in.', 'inch', 'inches', '"', '”', '′′']) {
      expect(exactOf(`8 ${word}`, 'mm')).toEqual({ unit: 'in', value: 8 });
    }
    for (const word of ['constructor', 'm', 'inc', 'mm mm', '-mm', '"in']) {
      expect(parseLength(`8 ${word}`, 'mm').ok).toBe(false);
    }
  });

  it('takes a fraction as inches whatever the field shows', () => {
    // 5/16 × 25.4 = 7.9375
    expect(mmOf('5/16')).toBe(7.9375);
    expect(mmOf('5/16', 'in')).toBe(7.9375);
    expect(mmOf('5/16 in')).toBe(7.9375);
    expect(mmOf('5/16"')).toBe(7.9375);
    expect(mmOf('5 / 16')).toBe(7.9375);
    // 1 1/4 × 25.4 = 31.75
    expect(mmOf('1 1/4')).toBe(31.75);
    expect(mmOf('5/4')).toBe(31.75);
  });

  it('knows the printed fractions and the fraction stroke', () => {
    expect(mmOf('½')).toBe(12.7);
    expect(mmOf('1½')).toBe(38.1);
    expect(mmOf('1 ½ in')).toBe(38.1);
    expect(mmOf('⅜')).toBe(9.525);
    expect(mmOf('3⁄8')).toBe(9.525);
    expect(mmOf('3∕8')).toBe(9.525);
  });

  it('knows every minus sign, and carries it over whole and fraction', () => {
    expect(mmOf('-0.5')).toBe(-0.5);
    expect(mmOf('−0.5')).toBe(-0.5);
    expect(mmOf('–0.5')).toBe(-0.5);
    expect(mmOf('- 0.5')).toBe(-0.5);
    expect(mmOf('+0.5')).toBe(0.5);
    expect(mmOf('−1 1/4')).toBe(-31.75);
  });

  it('reads minus nothing as nothing', () => {
    expect(Object.is(mmOf('-0'), 0)).toBe(true);
    expect(Object.is(mmOf('-0/4'), 0)).toBe(true);
    expect(exactOf('-0/4')).toEqual({ unit: 'in64', value: 0 });
  });

  it('keeps what was entered, a fraction as whole 64ths', () => {
    expect(exactOf('5/16')).toEqual({ unit: 'in64', value: 20 });
    expect(exactOf('1 1/64')).toEqual({ unit: 'in64', value: 65 });
    expect(exactOf('3/128')).toEqual({
      key: 'units_fraction_not_on_rule',
      values: { denominator: 128 },
    });
    expect(exactOf('2/128')).toEqual({ unit: 'in64', value: 1 });
    expect(exactOf('0.3125')).toEqual({ unit: 'in', value: 0.3125 });
    expect(exactOf('8 mm')).toEqual({ unit: 'mm', value: 8 });
    for (const text of ['5/16', '0.3125', '8 mm']) {
      const read = parseLength(text, 'in');
      expect(read.ok && enteredToMm(read.exact)).toBe(read.ok && read.mm);
    }
  });

  it('says what is wrong with a text that is no length', () => {
    expect(refusal('')).toBe('units_nothing_typed');
    expect(refusal('   ')).toBe('units_nothing_typed');
    expect(refusal('seven')).toBe('units_not_a_number');
    expect(parseLength('-abc', 'mm')).toMatchObject({
      message: { key: 'units_not_a_number', values: { text: 'abc' } },
    });
    expect(refusal('7 cm')).toBe('units_unknown_length_unit');
    expect(refusal('7..5')).toBe('units_not_a_number');
    expect(refusal('1,234.5')).toBe('units_not_a_number');
    expect(refusal('.')).toBe('units_not_a_number');
    expect(refusal('mm')).toBe('units_not_a_number');
    expect(refusal('--7')).toBe('units_not_a_number');
    expect(refusal('3-1')).toBe('units_not_a_number');
    expect(refusal('5/16/2')).toBe('units_not_a_number');
    expect(refusal('5/16 2')).toBe('units_not_a_number');
    expect(refusal('.5/16')).toBe('units_not_a_number');
    expect(refusal('x 5/16')).toBe('units_not_a_number');
    expect(refusal('8 mm 5')).toBe('units_not_a_number');
    expect(refusal('7 8')).toBe('units_not_a_number');
    expect(refusal('1e3')).toBe('units_not_a_number');
    expect(refusal('1e')).toBe('units_unknown_length_unit');
    expect(refusal('1/0')).toBe('units_fraction_over_zero');
    expect(refusal('1 9/8')).toBe('units_fraction_too_large');
    expect(refusal('1 8/8')).toBe('units_fraction_too_large');
    expect(refusal('1/3')).toBe('units_fraction_not_on_rule');
    expect(refusal('5/16 mm')).toBe('units_fraction_of_mm');
    expect(refusal('1234567890')).toBe('units_not_a_number');
    expect(refusal('9'.repeat(41))).toBe('units_text_too_long');
    expect(mmOf(`7${' '.repeat(39)}`)).toBe(7);
  });

  it('names the text, the unit or the denominator at fault', () => {
    expect(parseLength('7 cm', 'mm')).toEqual({
      ok: false,
      message: { key: 'units_unknown_length_unit', values: { unit: 'cm' } },
    });
    expect(parseLength('1/0', 'mm')).toEqual({
      ok: false,
      message: { key: 'units_fraction_over_zero', values: { text: '1/0' } },
    });
    expect(parseLength('7..5', 'mm')).toEqual({
      ok: false,
      message: { key: 'units_not_a_number', values: { text: '7..5' } },
    });
    expect(parseLength('1 9/8', 'mm')).toEqual({
      ok: false,
      message: { key: 'units_fraction_too_large', values: { text: '1 9/8' } },
    });
    expect(parseLength('', 'mm')).toEqual({ ok: false, message: { key: 'units_nothing_typed' } });
  });

  it('reads or refuses any text, and never gives a length that is no number', () => {
    const alphabet = fc.constantFrom(...'0123456789.,/-−½⅜⁄"inmm° e+xX()'.split(''));
    fc.assert(
      fc.property(fc.array(alphabet, { maxLength: 45 }), fc.string(), (letters, other) => {
        for (const text of [letters.join(''), other]) {
          const read = parseLength(text, 'mm');
          if (read.ok) expect(Number.isFinite(read.mm)).toBe(true);
          else expect(read.message.key).toMatch(/^units_/u);
        }
      }),
      { numRuns: runs(20_000) },
    );
  });
});

describe('writing a length', () => {
  it('writes millimetres with fixed decimals, two unless said otherwise', () => {
    expect(formatLength(7.9375, { unit: 'mm' })).toBe('7.94');
    expect(formatLength(8, { unit: 'mm', decimals: 1 })).toBe('8.0');
    expect(formatLength(-0.001, { unit: 'mm' })).toBe('0.00');
  });

  it('writes decimal inches, three places unless said otherwise', () => {
    expect(formatLength(8, { unit: 'in', style: 'decimal' })).toBe('0.315');
    expect(formatLength(25.4, { unit: 'in', style: 'decimal', decimals: 1 })).toBe('1.0');
  });

  it('writes inch fractions to the denominator asked for', () => {
    expect(formatLength(7.9375, { unit: 'in', style: 'fraction', denominator: 16 })).toBe('5/16');
    expect(formatLength(31.75, { unit: 'in', style: 'fraction', denominator: 64 })).toBe('1 1/4');
  });

  it('writes the unit behind when asked to', () => {
    expect(formatLength(8, { unit: 'mm', decimals: 1, unitMark: true })).toBe('8.0 mm');
    expect(
      formatLength(7.9375, { unit: 'in', style: 'fraction', denominator: 16, unitMark: true }),
    ).toBe('5/16 in');
    expect(formatLength(8, { unit: 'mm', decimals: 1, unitMark: false })).toBe('8.0');
  });

  it('is read back as the same length, to the place it was written to', () => {
    const formats: readonly { readonly format: LengthFormat; readonly half: number }[] = [
      { format: { unit: 'mm', decimals: 2, unitMark: true }, half: 0.005 },
      { format: { unit: 'in', style: 'decimal', decimals: 3, unitMark: true }, half: 0.0127 },
      {
        format: { unit: 'in', style: 'fraction', denominator: 64, unitMark: true },
        half: 25.4 / 128,
      },
      {
        format: { unit: 'in', style: 'fraction', denominator: 16, unitMark: true },
        half: 25.4 / 32,
      },
    ];
    fc.assert(
      fc.property(fc.double({ min: -500, max: 500, noNaN: true }), (length) => {
        for (const { format, half } of formats) {
          const text = formatLength(length, format);
          const read = mmOf(text);
          expect(Math.abs(read - length)).toBeLessThanOrEqual(half + 1e-9);
          // written again it is the same text: rounding has nothing left to do
          expect(formatLength(read, format)).toBe(text);
        }
      }),
      { numRuns: runs(10_000) },
    );
  });

  it('holds fractions exactly: what is entered in 64ths adds up in 64ths', () => {
    const count = fc.integer({ min: 1, max: 640 });
    fc.assert(
      fc.property(count, count, (first, second) => {
        const [a, b] = [parseLength(`${first}/64`, 'in'), parseLength(`${second}/64`, 'in')];
        const sum = a.ok && b.ok ? a.exact.value + b.exact.value : Number.NaN;
        expect(sum).toBe(first + second);
        // the same in millimetres, to the noise of binary arithmetic
        expect(a.ok && b.ok && Math.abs(a.mm + b.mm - (sum * 25.4) / 64) < 1e-12).toBe(true);
      }),
      { numRuns: runs(5_000) },
    );
  });
});
