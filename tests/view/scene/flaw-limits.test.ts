import { describe, expect, test } from 'vitest';
import type { Section } from '../../../src/joint/index.ts';
import {
  defaultJobSheet,
  judge,
  limitSets,
  openingLimitSet,
  type JobSheet,
} from '../../../src/limits/index.ts';
import { measure } from '../../../src/measure/index.ts';
import { allowedBandOf, drawnBand } from '../../../src/view/scene/allowed-band.ts';
import { buttBand } from '../../../src/view/scene/butt-band.ts';
import { flawLimits } from '../../../src/view/scene/flaw-limits.ts';
import { sheetOf } from '../../../src/view/scene/sheet.ts';
import { bandOn, butt, check, tee } from './any-scene.ts';

const limitsOf = (section: Section, changes: Partial<JobSheet> = {}, set = openingLimitSet) => {
  const measurements = measure(section);
  const checks = judge(measurements, { ...defaultJobSheet(), ...changes }, set);
  return flawLimits(checks, measurements);
};

describe('How far a flaw may go is drawn', () => {
  test('as a line at the greatest depth under the surface, as long as the undercut is wide', () => {
    // ISO 5817 level C, 12 mm plate: 0.5 mm; plate 2 stands on the y axis, its metal to the left
    const [line, ...others] = limitsOf(tee({ undercut2Depth: 0.6, undercut2Width: 2 }));
    expect(others).toEqual([]);
    expect(line?.a).toMatchObject({
      x: expect.closeTo(-0.5, 9) as number,
      y: expect.closeTo(8, 9) as number,
    });
    expect(line?.b).toMatchObject({
      x: expect.closeTo(-0.5, 9) as number,
      y: expect.closeTo(10, 9) as number,
    });
  });

  test('not where there is no undercut, nor where none is allowed', () => {
    expect(limitsOf(tee())).toEqual([]);
    const measurements = measure(tee({ undercut2Depth: 0.6 }));
    expect(flawLimits([check('undercut2', 'reject', 0)], measurements)).toEqual([]);
  });

  test('as plate 2’s face where the greatest offset would put it, whichever way it lies', () => {
    const house = limitSets.find(({ id }) => id === 'lock-gate-house') ?? openingLimitSet;
    for (const offset of [1.5, -1.5]) {
      const section = butt({ offset, t1: 12, t2: 12 });
      const [line] = limitsOf(section, { limitSet: house.id }, house);
      // house 2.4: 0.07 × 12 = 0.84 mm from plate 1's face, at y = 12
      expect(line?.a.y).toBeCloseTo(12 + Math.sign(offset) * 0.84, 9);
      expect(line?.b.y).toBeCloseTo(line?.a.y ?? NaN, 9);
      expect((line?.b.x ?? 0) - (line?.a.x ?? 0)).toBeCloseTo(12, 9);
    }
    expect(limitsOf(butt({ offset: 0 }), { limitSet: house.id }, house)).toEqual([]);
  });

  test('before welding too, and only with the allowed band', () => {
    const section = butt({ offset: 2, stage: 'fitUp' });
    const measurements = measure(section);
    const checks = [{ ...check('misalignment', 'reject', 1), measured: 2 }];
    const view = { scale: 10, originX: 0, originY: 0, width: 0, height: 0, subject: '' };
    const band = bandOn(section, allowedBandOf(checks, measurements), view);
    expect(band.limits).toMatch(/^M[\d.-]+ [\d.-]+L[\d.-]+ [\d.-]+$/);
    expect(band.flaws).toHaveLength(1);
  });

  test('no further than the sheet, where the view breaks plate 2 off before the line would end', () => {
    // the right edge of the paper stands at 10 mm, the line would run 12 mm from the groove
    const section = butt({ offset: 2, stage: 'fitUp' });
    const checks = [{ ...check('misalignment', 'reject', 1), measured: 2 }];
    const sheet = { ...sheetOf(500, 400, 'bench'), left: 10, right: 100, top: 10, bottom: 390 };
    const view = { scale: 10, originX: 0, originY: 300, width: 0, height: 0, subject: '' };
    const band = allowedBandOf(checks, measure(section));
    const [line] = drawnBand(section, band, view, sheet, buttBand).flaws;
    expect(band.flaws[0]?.b.x).toBeGreaterThan(10);
    expect(line?.a).toEqual(band.flaws[0]?.a);
    expect(line?.b.x).toBeCloseTo(10, 9);
  });
});
