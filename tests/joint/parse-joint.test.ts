import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  defaultJoint,
  jointFaults,
  JointError,
  jointSchema,
  parametersFor,
  parseJoint,
  type Joint,
} from '../../src/joint/index.ts';
import { runs } from '../runs.ts';
import { anyJoint } from './any-joint.ts';
import { accepts } from './json-schema.ts';

const kinds = ['fillet', 'butt'] as const;

/** A joint as it comes from a file, with some fields changed. */
const written = (joint: Joint, changes: Readonly<Record<string, unknown>> = {}): unknown => ({
  ...(JSON.parse(JSON.stringify(joint)) as object),
  ...changes,
});

const tee = defaultJoint('fillet');

/** What a fault-finder says of a tee with these changes: field and reason of every fault. */
const faultsOf = (changes: Readonly<Record<string, unknown>>): string[] =>
  jointFaults(written(tee, changes)).map(({ field, reason }) => `${field} ${reason.key}`);

describe('A joint is read', () => {
  test('as it was written, whatever its kind and numbers', () => {
    for (const kind of kinds) {
      fc.assert(
        fc.property(anyJoint(kind), (joint) => {
          const json = JSON.stringify(joint);
          expect(JSON.stringify(parseJoint(JSON.parse(json)))).toBe(json);
        }),
        { numRuns: runs(2_000) },
      );
    }
  });

  test('with every number at either bound, but not beyond it', () => {
    for (const kind of kinds) {
      const joint = defaultJoint(kind);
      for (const { field, min, max } of parametersFor(kind)) {
        expect(jointFaults(written(joint, { [field]: min }))).toEqual([]);
        expect(jointFaults(written(joint, { [field]: max }))).toEqual([]);
        for (const [value, bound] of [
          [min - 1e-6, min],
          [max + 1e-6, max],
        ] as const) {
          const [fault] = jointFaults(written(joint, { [field]: value }));
          expect(fault?.field).toBe(field);
          expect(fault?.bound).toBe(bound);
          expect(fault?.reason.key).toBe('joint_error_out_of_range');
        }
      }
    }
  });
});

describe('What is no joint is refused by field and reason', () => {
  test('when it is no object at all', () => {
    for (const value of [null, undefined, 8, 'fillet', [], [tee], true]) {
      expect(jointFaults(value).map(({ reason }) => reason.key)).toEqual([
        'joint_error_not_an_object',
      ]);
    }
  });

  test('when its kind or version is another', () => {
    expect(faultsOf({ kind: 'plug' })).toEqual(['kind joint_error_kind']);
    expect(faultsOf({ kind: undefined })).toEqual(['kind joint_error_kind']);
    expect(faultsOf({ version: 2 })).toEqual(['version joint_error_version']);
    expect(faultsOf({ version: '1' })).toEqual(['version joint_error_version']);
  });

  test('when a field is missing or is none of its own', () => {
    const rest = Object.entries(tee).filter(([field]) => field !== 'leg1');
    expect(jointFaults(Object.fromEntries(rest)).map(({ field }) => field)).toEqual(['leg1']);
    expect(faultsOf({ bevelAngle1: 30 })).toEqual(['bevelAngle1 joint_error_unknown_field']);
    expect(faultsOf({ toString: 1 })).toEqual(['toString joint_error_unknown_field']);
  });

  test('when a number is text, null, NaN or infinite', () => {
    for (const value of ['8', null, Number.NaN, Infinity, -Infinity, [8], {}]) {
      expect(faultsOf({ leg1: value })).toEqual(['leg1 joint_error_not_a_number']);
    }
  });

  test('when a choice is none of those there are', () => {
    expect(faultsOf({ arrangement: 'plug' })).toEqual(['arrangement joint_error_unknown_choice']);
    expect(faultsOf({ undercut1Shape: 1 })).toEqual(['undercut1Shape joint_error_unknown_choice']);
  });

  test('when its spatter is no list, too much, or has a bad bump', () => {
    expect(faultsOf({ spatter: {} })).toEqual(['spatter joint_error_not_a_list']);
    const bump = { plate: 1, place: 5, height: 1 };
    expect(faultsOf({ spatter: Array.from({ length: 21 }, () => bump) })).toEqual([
      'spatter joint_error_too_much_spatter',
    ]);
    expect(faultsOf({ spatter: [bump, 3] })).toEqual(['spatter.1 joint_error_not_an_object']);
    expect(faultsOf({ spatter: [{ plate: 1, place: 5 }] })).toEqual([
      'spatter.0.height joint_error_missing_field',
    ]);
    expect(faultsOf({ spatter: [{ ...bump, plate: 3, height: 9 }] })).toEqual([
      'spatter.0.plate joint_error_unknown_choice',
      'spatter.0.height joint_error_out_of_range',
    ]);
    expect(faultsOf({ spatter: [{ ...bump, colour: 'red' }] })).toEqual([
      'spatter.0.colour joint_error_unknown_field',
    ]);
  });

  test('when it tries to smuggle a prototype in', () => {
    const hostile: unknown = JSON.parse(
      JSON.stringify(tee).replace('{', '{"__proto__":{"leg1":8},'),
    );
    expect(jointFaults(hostile).map(({ field, reason }) => `${field} ${reason.key}`)).toEqual([
      '__proto__ joint_error_unknown_field',
    ]);
    // what isn't its own isn't there
    const borrowed: unknown = Object.create(tee);
    expect(jointFaults(borrowed).map(({ reason }) => reason.key)).toEqual(['joint_error_kind']);
  });

  test('with all its faults at once, and the first of them thrown', () => {
    const value = written(tee, { leg1: 'x', t1: 99, colour: 1 });
    expect(jointFaults(value)).toHaveLength(3);
    try {
      parseJoint(value);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(JointError);
      expect((error as JointError).field).toBe('colour');
    }
  });

  test('with a name no longer than a reader can take in', () => {
    const [fault] = jointFaults(written(tee, { ['x'.repeat(5000)]: 1 }));
    expect(fault?.field).toHaveLength(41);
  });
});

describe('The published schema', () => {
  test('accepts every joint that is read, over every kind', () => {
    for (const kind of kinds) {
      fc.assert(
        fc.property(anyJoint(kind), (joint) => {
          expect(accepts(jointSchema, written(joint))).toBe(true);
        }),
        { numRuns: runs(1_000) },
      );
    }
  });

  test('and the reader agree on joints with one field mangled', () => {
    const rubbish = fc.oneof(
      fc.constantFrom(null, true, '8', [], {}, -1e9, 1e9, 'tee', [{}], 1.5),
      fc.double({ noNaN: true, noDefaultInfinity: true }),
    );
    for (const kind of kinds) {
      const fields = [...Object.keys(defaultJoint(kind)), 'colour'];
      fc.assert(
        fc.property(anyJoint(kind), fc.constantFrom(...fields), rubbish, (joint, field, value) => {
          const mangled = written(joint, { [field]: value });
          expect(accepts(jointSchema, mangled)).toBe(jointFaults(mangled).length === 0);
        }),
        { numRuns: runs(2_000) },
      );
    }
  });

  test('is plain JSON under the 2020-12 draft', () => {
    expect(JSON.parse(JSON.stringify(jointSchema))).toEqual(jointSchema);
    expect(jointSchema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
  });
});
