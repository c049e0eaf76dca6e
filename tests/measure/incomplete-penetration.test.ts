import { describe, expect, it } from 'vitest';
import { build } from '../../src/joint/index.ts';
import { butt } from '../joint/butt/plain-butt.ts';
import { endsOf, valueOf } from './reading.ts';

// The plain joint: 45° bevels, plate 1's from (-1, 2) to (-9, 10), under a flush cap.

describe('incomplete penetration of a joint with a dropped cap', () => {
  const dropped = { capPast1: 0, capDrop1: 2 };

  it('doesn’t count the bevel left bare above the cap, which is underfill', () => {
    const section = build(butt(dropped));
    expect(valueOf(section, 'incompletePenetration')).toBe(0);
    // the toe lies at y = 8, the groove edges at y = 10
    expect(valueOf(section, 'underfill')).toBeCloseTo(2, 12);
  });

  it('still counts the unfused root below it', () => {
    const section = build(butt({ ...dropped, incompletePenetration: 1.5 }));
    expect(valueOf(section, 'incompletePenetration')).toBeCloseTo(1.5, 12);
    expect(endsOf(section, 'incompletePenetration')).toEqual([-1, 0, -1, 1.5]);
    // from (-1, 1.5) square to the cap from (-7, 8) to (10, 10): 122.5/√(2² + 17²)
    expect(valueOf(section, 'jointThickness')).toBeCloseTo(122.5 / Math.sqrt(293), 12);
  });

  it('still counts an unfused middle below it', () => {
    const doubleV = { ...dropped, preparation: 'doubleV', incompletePenetration: 1 } as const;
    const section = build(butt(doubleV));
    expect(valueOf(section, 'incompletePenetration')).toBeCloseTo(1, 12);
    expect(endsOf(section, 'incompletePenetration')).toEqual([-1, 4.5, -1, 5.5]);
  });
});
