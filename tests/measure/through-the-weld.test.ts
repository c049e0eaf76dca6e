import { describe, expect, it } from 'vitest';
import type { Section } from '../../src/joint/index.ts';
import { measure, measurementIds } from '../../src/measure/index.ts';
import { at, handButt, handFillet, pathOf, regionOf, unwelded } from '../section-fixtures.ts';
import { endsOf, read, valueOf } from './reading.ts';

const faceBead = pathOf([at(-7, 10), at(0, 9), at(7, 10)]);
const rootBead = pathOf([at(-2, 0), at(0, 0.5), at(2, 0)]);

describe('the thickness through the weld', () => {
  it('is the least distance from the face to the root side', () => {
    const section = handButt({ t1: 10, faceBead, rootBead });
    expect(valueOf(section, 'jointThickness')).toBeCloseTo(8.5, 12);
    expect(endsOf(section, 'jointThickness')).toEqual([0, 9, 0, 0.5]);
  });

  it('is taken from the face to a plate’s root surface where that is nearer', () => {
    // the face is lowest at (6, 8), over plate 2's root surface
    const low = pathOf([at(-7, 10), at(6, 8), at(7, 10)]);
    const section = handButt({ t1: 10, faceBead: low, rootBead: pathOf([at(-2, 0), at(2, 0)]) });
    expect(valueOf(section, 'jointThickness')).toBeCloseTo(8, 12);
    expect(endsOf(section, 'jointThickness')).toEqual([6, 8, 6, 0]);
  });

  it('is taken from the root bead to a plate’s face where that is nearer', () => {
    // a narrow cap over a root bead that is hollow out at x = 9, under plate 2's face
    const hollow = pathOf([at(-2, 0), at(9, 2), at(10, 0)]);
    const high = pathOf([at(-7, 10), at(0, 14), at(7, 10)]);
    const section = handButt({ t1: 10, faceBead: high, rootBead: hollow });
    expect(valueOf(section, 'jointThickness')).toBeCloseTo(8, 12);
    expect(endsOf(section, 'jointThickness')).toEqual([9, 10, 9, 2]);
  });

  it('is taken to the root outline where no root bead shows', () => {
    const section = handButt({ t1: 10, faceBead: pathOf([at(-7, 10), at(7, 10)]) });
    expect(valueOf(section, 'jointThickness')).toBeCloseTo(10, 12);
  });

  it('needs no plate surface beyond the face', () => {
    const section = handButt({ t1: 10, faceBead, rootBead });
    const bare = { ...section.face, beyond: [[], []] as const };
    expect(valueOf({ ...section, face: bare }, 'jointThickness')).toBeCloseTo(8.5, 12);
  });
});

describe('a backing strip', () => {
  const backing = regionOf([at(-20, -6), at(20, -6), at(20, 0), at(-20, 0)]);

  it('covers the root side: nothing is read there', () => {
    const { values } = measure({ ...handButt({ t1: 10, faceBead, rootBead }), backing });
    for (const id of ['rootConcavity', 'rootWidth', 'jointThickness', 'rootUndercut1'] as const) {
      expect(values[id]).toBeUndefined();
    }
    expect(values.incompletePenetration?.value).toBe(0);
    expect(values.underfill?.value).toBeCloseTo(1, 12);
  });
});

describe('incomplete penetration', () => {
  const withUnfused = (unfused: Parameters<typeof handButt>[0]['unfused']): Section =>
    handButt({ t1: 10, faceBead, ...(unfused && { unfused }) });

  it('is the greatest unfused height of either edge', () => {
    const section = withUnfused([
      pathOf([at(-1, 0), at(-1, 0.8)]),
      pathOf([at(1, 0), at(1, 1), at(2, 2.8)]),
    ]);
    expect(valueOf(section, 'incompletePenetration')).toBeCloseTo(2.8, 12);
    // along the plate's normal, not along the bevel
    expect(endsOf(section, 'incompletePenetration')).toEqual([1, 0, 1, 2.8]);
    expect(read(section, 'incompletePenetration').witness).toMatchObject({
      extensions: [[at(2, 2.8), at(1, 2.8)]],
    });
  });

  it('is taken from plate 1 when that is worse', () => {
    const section = withUnfused([pathOf([at(-1, 0), at(-1, 0.8)]), []]);
    expect(valueOf(section, 'incompletePenetration')).toBeCloseTo(0.8, 12);
  });

  it('does not count a bare bevel below the groove edge of the face', () => {
    // plate 2's bevel runs from (1, 1) to (6, 10): bare from (5, 8.2) up
    const bare = pathOf([at(5, 8.2), at(6, 10)]);
    expect(valueOf(withUnfused([[], bare]), 'incompletePenetration')).toBe(0);
    const both = [...pathOf([at(1, 0), at(1, 0.6)]), ...bare];
    expect(valueOf(withUnfused([[], both]), 'incompletePenetration')).toBeCloseTo(0.6, 12);
    const twoPieces = pathOf([at(4, 6.4), at(5, 8.2), at(6, 10)]);
    expect(valueOf(withUnfused([[], twoPieces]), 'incompletePenetration')).toBe(0);
  });

  it('is the whole edge where no metal is fused to it from root to face', () => {
    const whole = pathOf([at(1, 0), at(1, 1), at(6, 10)]);
    expect(valueOf(withUnfused([[], whole]), 'incompletePenetration')).toBeCloseTo(10, 12);
  });

  it('is the tallest unbroken run, not the sum of several', () => {
    const runs = [
      ...pathOf([at(-1, 0), at(-1, 0.5)]),
      ...pathOf([at(-1, 0.7), at(-1, 1), at(-2, 2.8)]),
    ];
    expect(valueOf(withUnfused([runs, []]), 'incompletePenetration')).toBeCloseTo(2.1, 12);
  });

  it('is none when both edges are fused all the way', () => {
    const section = withUnfused([[], []]);
    expect(valueOf(section, 'incompletePenetration')).toBe(0);
    expect(read(section, 'incompletePenetration').witness).toEqual({ kind: 'none' });
  });
});

describe('areas and mass', () => {
  it('add up all deposits, at 7850 kg/m³', () => {
    // 3 · 4 / 2 + 2 · 2 = 10 mm²: 0.0785 kg/m
    const deposits = [
      regionOf([at(0, 0), at(4, 0), at(0, 3)]),
      regionOf([at(10, 0), at(12, 0), at(12, 2), at(10, 2)]),
    ];
    const section = handFillet({ leg1: 4, leg2: 3, deposits });
    expect(valueOf(section, 'weldArea')).toBeCloseTo(10, 12);
    expect(valueOf(section, 'mass')).toBeCloseTo(0.0785, 12);
    expect(read(section, 'weldArea')).toMatchObject({
      unit: 'mm2',
      witness: { kind: 'area', regions: deposits },
    });
    expect(read(section, 'mass').unit).toBe('kg/m');
  });

  it('take the void of the groove before welding', () => {
    // opening 2 x 10, plus two triangles of 5 x 9 / 2: 65 mm²
    const fitUp = handButt({ t1: 10 });
    expect(valueOf(fitUp, 'grooveArea')).toBeCloseTo(65, 12);
    expect(valueOf(fitUp, 'mass')).toBeCloseTo(65 * 0.00785, 12);
    expect(measure(fitUp).values.weldArea).toBeUndefined();
  });

  it('keep the groove area beside the weld area after welding', () => {
    const deposits = [regionOf([at(0, 0), at(4, 0), at(0, 3)])];
    const welded = handButt({ t1: 10, faceBead, deposits });
    expect(valueOf(welded, 'grooveArea')).toBeCloseTo(65, 12);
    expect(valueOf(welded, 'weldArea')).toBeCloseTo(6, 12);
    expect(valueOf(welded, 'mass')).toBeCloseTo(6 * 0.00785, 12);
  });
});

describe('thickness', () => {
  it('is taken between each plate’s own surfaces', () => {
    const section = handButt({ t1: 12, t2: 9 });
    expect(valueOf(section, 't1')).toBe(12);
    expect(valueOf(section, 't2')).toBe(9);
    expect(read(section, 'tMin')).toMatchObject({ id: 'tMin', value: 9 });
    expect(read(section, 'tMax')).toMatchObject({ id: 'tMax', value: 12 });
    expect(endsOf(section, 't2')).toEqual([1, 0, 1, 9]);
    expect(endsOf(section, 'tMin')).toEqual([1, 0, 1, 9]);
  });
});

describe('a fillet before welding', () => {
  it('has plates, an angle and a gap, and nothing of a weld', () => {
    const fitUp = unwelded(handFillet({ dihedral: 75, leg1: 8, leg2: 8, plate2Corner: at(0, 2) }));
    expect(Object.keys(measure(fitUp).values).sort()).toEqual(
      ['dihedralAngle', 'rootGap', 't1', 't2', 'tMax', 'tMin'].sort(),
    );
    expect(valueOf(fitUp, 'dihedralAngle')).toBeCloseTo(75, 12);
    const turn = (75 * Math.PI) / 180;
    expect(read(fitUp, 'dihedralAngle').witness).toEqual({
      kind: 'angle',
      to: at(Math.cos(turn), Math.sin(turn)),
      vertex: at(0, 0),
      from: at(1, 0),
    });
  });
});

describe('a section that lacks what others have', () => {
  it('has no throat where its surfaces never cross, but widths and areas still', () => {
    const fillet = handFillet({ leg1: 8, leg2: 8 });
    const [first] = fillet.face.surfaces;
    const { values } = measure({ ...fillet, face: { ...fillet.face, surfaces: [first, first] } });
    expect(values.leg1).toBeUndefined();
    expect(values.dihedralAngle).toBeUndefined();
    expect(values.chordLength?.value).toBeCloseTo(8 * Math.SQRT2, 12);
  });

  it('has no incomplete penetration where its edges were never known', () => {
    const { values } = measure({ ...handButt({ t1: 10, faceBead, rootBead }), groove: null });
    expect(values.incompletePenetration).toBeUndefined();
    expect(values.underfill?.value).toBeCloseTo(1, 12);
    expect(values.weldArea?.value).toBe(0);
  });

  it.each(['bead', 'toes', 'lips'] as const)('has nothing of a weld without its %s', (part) => {
    const section = handButt({ t1: 10, faceBead, rootBead });
    const { values } = measure({ ...section, face: { ...section.face, [part]: null } });
    for (const id of [
      'faceWidth',
      'toeAngle',
      'undercut1',
      'underfill',
      'rootConcavity',
    ] as const) {
      expect(values[id]).toBeUndefined();
    }
    expect(values.grooveAngle).toBeDefined();
    const fillet = handFillet({ leg1: 8, leg2: 8 });
    const bare = measure({ ...fillet, face: { ...fillet.face, [part]: null } });
    expect(bare.values.leg1).toBeUndefined();
    expect(bare.values.rootGap).toBeDefined();
  });

  it('has no root width where no root bead shows', () => {
    const { values } = measure(handButt({ t1: 10, faceBead }));
    expect(values.rootWidth).toBeUndefined();
    expect(values.rootUndercut1?.value).toBe(0);
  });

  it('has nothing of a root without a root side', () => {
    const { values } = measure({ ...handButt({ t1: 10, faceBead }), root: null });
    expect(values.rootConcavity).toBeUndefined();
    expect(values.jointThickness).toBeUndefined();
    expect(values['faceReinforcement.higher']?.value).toBe(0);
  });
});

describe('every measurement', () => {
  it('carries its own id and a section that is the one measured', () => {
    const section = handButt({ t1: 10, faceBead, rootBead });
    const measured = measure(section);
    expect(measured.section).toBe(section);
    for (const [id, one] of Object.entries(measured.values)) {
      expect(one.id).toBe(id);
      expect(measurementIds).toContain(id);
    }
  });
});
