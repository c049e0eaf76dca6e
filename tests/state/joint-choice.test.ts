import { describe, expect, it } from 'vitest';
import { build, choicesOfKind, defaultJoint, type FilletJoint } from '../../src/joint/index.ts';
import { undercutShapes } from '../../src/state/flaw-shape.ts';
import { choicesOf, withChoice } from '../../src/state/joint-choice.ts';
import { addSpatter, hasRoomForSpatter, removeSpatter } from '../../src/state/spatter.ts';

const joints = [defaultJoint('fillet'), defaultJoint('butt')];

describe('choices of a joint', () => {
  it('always have an answer that can be built, whatever is chosen', () => {
    for (const joint of joints) {
      for (const { field, options } of choicesOf(joint)) {
        for (const value of options) {
          const answers = withChoice(joint, field, value);
          const built = answers.filter((answer) => {
            try {
              build(answer);
              return true;
            } catch {
              return false;
            }
          });
          expect(built.length, `${joint.kind} ${field} ${value}`).toBeGreaterThan(0);
        }
      }
    }
  });

  it('offer every value that the joint’s own table knows, and no other', () => {
    for (const joint of joints) {
      for (const { field, options } of choicesOf(joint)) {
        if (field === 'kind') continue;
        const table = choicesOfKind(joint.kind).find((choice) => choice.field === field);
        expect(options).toEqual(table?.values);
      }
    }
    expect(choicesOf(defaultJoint('fillet')).map(({ field }) => field)).toEqual([
      'kind',
      'arrangement',
      'endCut',
    ]);
  });

  it('don’t offer a cut of plate 2 in a lap, which has none', () => {
    const fieldsOf = (arrangement: FilletJoint['arrangement']) =>
      choicesOf(defaultJoint('fillet', arrangement)).map(({ field }) => field);
    expect(fieldsOf('lap')).toEqual(['kind', 'arrangement']);
    for (const other of ['tee', 'corner'] as const) expect(fieldsOf(other)).toContain('endCut');
    // why: at any angle the section of a lap is the same with either cut
    const lap = { ...defaultJoint('fillet', 'lap'), dihedralAngle: 105 };
    expect(build({ ...lap, endCut: 'square' })).toEqual(build({ ...lap, endCut: 'fitted' }));
  });

  it('keep plates and stage when the kind changes', () => {
    const joint = { ...defaultJoint('fillet'), t1: 10, stage: 'fitUp' as const };
    expect(withChoice(joint, 'kind', 'butt')[0]).toMatchObject({
      kind: 'butt',
      t1: 10,
      stage: 'fitUp',
    });
  });

  it('are the joint itself when its own kind is chosen again', () => {
    for (const joint of joints) expect(withChoice(joint, 'kind', joint.kind)).toEqual([joint]);
  });
});

describe('spatter', () => {
  it('is added clear of what is there, and taken away by its place in the list', () => {
    const two = addSpatter(addSpatter(defaultJoint('fillet'), 1), 1);
    expect(() => build(two)).not.toThrow();
    expect(two.spatter[0]?.place).not.toBe(two.spatter[1]?.place);
    expect(removeSpatter(two, 0).spatter).toEqual([two.spatter[1]]);
  });

  it('ends at the most that a joint may carry', () => {
    let joint = defaultJoint('fillet');
    for (let bump = 0; bump < 20; bump += 1) joint = addSpatter(joint, 2) as typeof joint;
    expect(hasRoomForSpatter(joint)).toBe(false);
  });
});

describe('the shape of an undercut', () => {
  it('is offered only for an undercut that is there', () => {
    const joint = { ...defaultJoint('butt'), undercut2Depth: 0.5, rootUndercut1Depth: 0.3 };
    expect(undercutShapes(joint).map(({ field }) => field)).toEqual([
      'undercut2Shape',
      'rootUndercut1Shape',
    ]);
    expect(undercutShapes({ ...joint, stage: 'fitUp' })).toEqual([]);
  });
});
