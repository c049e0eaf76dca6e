import { describe, expect, it } from 'vitest';
import type { Toleranced } from '../../../src/limits/index.ts';
import {
  detailedParts,
  fittedParts,
  type GroovePart,
} from '../../../src/view/page/groove-parts.ts';

const bevel: Toleranced<number> = { nominal: 30, minus: 2, plus: 5 };
const part = (parts: readonly GroovePart[], id: string): GroovePart => {
  const found = parts.find((one) => one.id === id);
  if (found === undefined) throw new Error(id);
  return found;
};

describe('the parts of a toleranced dimension', () => {
  it('read back what was written, the others untouched', () => {
    for (const one of [...fittedParts, ...detailedParts]) {
      const written = one.write(bevel, 7, 0);
      expect(one.read(written)).toBe(7);
      for (const other of fittedParts) {
        if (other !== one) expect(other.read(written)).toBe(other.read(bevel));
      }
    }
  });

  it('are taken away by an empty field', () => {
    const drawn = part(detailedParts, 'drawn');
    expect(drawn.write({ ...bevel, drawn: 32 }, null, 0)).toEqual(bevel);
    expect(part(fittedParts, 'nominal').write(bevel, null, 0).nominal).toBeNull();
  });

  it('of a tolerance as detailed stand at nothing on the side that is not given', () => {
    const [minus, plus] = [part(detailedParts, 'minus'), part(detailedParts, 'plus')];
    expect(minus.write(bevel, null, 0)).toBe(bevel);
    expect(plus.write(bevel, 10, 0).detailed).toEqual({ minus: 0, plus: 10 });
    const both = minus.write(plus.write(bevel, 10, 0), 1, 0);
    expect(both.detailed).toEqual({ minus: 1, plus: 10 });
    expect(minus.write(both, null, 0).detailed).toEqual({ minus: 0, plus: 10 });
  });
});
