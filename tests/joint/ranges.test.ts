import { describe, expect, test } from 'vitest';
import {
  build,
  defaultJoint,
  jointFaults,
  parametersFor,
  parametersOf,
  type Joint,
} from '../../src/joint/index.ts';
import { choicesOfKind } from '../../src/joint/ranges.ts';
import { arrangements, preparations } from './forms.ts';

const fields = (joint: Joint): string[] => parametersOf(joint).map(({ field }) => field);

describe('The tables of parameters', () => {
  test('hold every field of a joint once, with its spatter', () => {
    for (const kind of ['fillet', 'butt'] as const) {
      const named = [
        ...parametersFor(kind).map(({ field }) => field),
        ...choicesOfKind(kind).map(({ field }) => field),
        'spatter',
      ];
      expect(new Set(named).size).toBe(named.length);
      expect(Object.keys(defaultJoint(kind)).sort()).toEqual(named.sort());
    }
  });

  test('start every parameter within its bounds, on one of its steps', () => {
    for (const kind of ['fillet', 'butt'] as const) {
      for (const { field, min, max, step, start } of parametersFor(kind)) {
        expect(min, field).toBeLessThan(max);
        expect(start, field).toBeGreaterThanOrEqual(min);
        expect(start, field).toBeLessThanOrEqual(max);
        expect((start / step) % 1, field).toBeCloseTo(0, 9);
      }
    }
  });

  test('give the ranges of thickness, leg, angle and flaw that the bench promises', () => {
    const range = (kind: Joint['kind'], field: string): readonly [number, number] | null => {
      const row = parametersFor(kind).find((parameter) => parameter.field === field);
      return row ? [row.min, row.max] : null;
    };
    expect(range('fillet', 'dihedralAngle')).toEqual([60, 135]);
    expect(range('fillet', 't1')).toEqual([3, 40]);
    expect(range('fillet', 'leg2')).toEqual([2, 30]);
    expect(range('fillet', 'rootGap')).toEqual([0, 6]);
    expect(range('fillet', 'rootPenetration')).toEqual([0, 5]);
    expect(range('butt', 't2')).toEqual([2, 40]);
    expect(range('butt', 'angularMisalignment')).toEqual([-10, 10]);
  });
});

describe('The parameters of a joint', () => {
  test('are only those that mean something for its form', () => {
    expect(fields(defaultJoint('fillet', 'tee'))).not.toContain('edgeMelt');
    expect(fields(defaultJoint('fillet', 'lap'))).toContain('edgeMelt');
    expect(fields(defaultJoint('fillet', 'lap'))).not.toContain('cornerOverlap');
    expect(fields(defaultJoint('fillet', 'corner'))).toContain('cornerOverlap');

    expect(fields(defaultJoint('butt', 'square'))).not.toContain('bevelAngle1');
    expect(fields(defaultJoint('butt', 'singleV'))).toContain('bevelAngle2');
    expect(fields(defaultJoint('butt', 'singleV'))).not.toContain('rootBevelAngle1');
    expect(fields(defaultJoint('butt', 'singleBevel'))).toContain('rootFace1');
    expect(fields(defaultJoint('butt', 'singleBevel'))).not.toContain('rootFace2');
    expect(fields(defaultJoint('butt', 'doubleBevel'))).toContain('rootBevelAngle1');
    expect(fields(defaultJoint('butt', 'doubleBevel'))).not.toContain('rootBevelAngle2');
    expect(fields(defaultJoint('butt', 'doubleV'))).toContain('rootBevelAngle2');
    expect(fields(defaultJoint('butt', 'singleJ'))).toContain('rootRadius');
    expect(fields(defaultJoint('butt', 'singleV'))).not.toContain('backingWidth');
    expect(fields({ ...defaultJoint('butt'), backing: 'strip' })).toContain('backingWidth');
  });

  test('before welding are those of the plates and their setting up', () => {
    const fitUp = { ...defaultJoint('fillet'), stage: 'fitUp' } as const;
    expect(fields(fitUp)).toEqual(['t1', 't2', 'dihedralAngle', 'rootGap']);
  });
});

describe('A plain joint', () => {
  test('of every form is within all bounds, of the form asked for, and can be built at both stages', () => {
    for (const joint of [
      ...arrangements.map((form) => defaultJoint('fillet', form)),
      ...preparations.map((form) => defaultJoint('butt', form)),
    ]) {
      expect(jointFaults(joint)).toEqual([]);
      const form = joint.kind === 'fillet' ? joint.arrangement : joint.preparation;
      expect(build(joint).form).toBe(form);
      expect(build({ ...joint, stage: 'fitUp' }).welds).toEqual([]);
    }
  });
});
