import { describe, expect, it } from 'vitest';
import { measure } from '../../src/measure/index.ts';
import type { Section } from '../../src/joint/index.ts';
import { at, handButt, pathOf, tilted } from '../section-fixtures.ts';
import { about, endsOf, read, valueOf } from './reading.ts';

// Readings decided by Toeline (derived); angular misalignment: ISO 6520-1, 508, from memory, verify.

/** The same section seen in a mirror, left for right: plate 1 then lies on the right. */
function mirrored(section: Section): Section {
  const flip = (value: unknown): unknown => {
    if (Array.isArray(value)) return value.map(flip);
    if (value === null || typeof value !== 'object') return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, of]) => [
        key,
        key === 'x' || key === 'bulge' ? -(of as number) : flip(of),
      ]),
    );
  };
  return flip(section) as Section;
}

describe('a plate that is turned', () => {
  it('reads positive when it is turned up towards the face', () => {
    expect(valueOf(tilted(handButt({ t1: 10 }), 3), 'angularMisalignment')).toBeCloseTo(3, 12);
  });

  it('reads negative when it is turned down', () => {
    expect(valueOf(tilted(handButt({ t1: 10 }), -3), 'angularMisalignment')).toBeCloseTo(-3, 12);
  });

  it('reads nothing, and shows nothing, when the plates are parallel', () => {
    const level = read(handButt({ t1: 10 }), 'angularMisalignment');
    expect(level.value).toBe(0);
    expect(level.witness).toEqual({ kind: 'none' });
  });

  it('keeps its sign in a mirror, because up towards the face is up in either', () => {
    const section = tilted(handButt({ t1: 10 }), 3);
    expect(valueOf(mirrored(section), 'angularMisalignment')).toBeCloseTo(3, 12);
  });

  it.each([
    ['up', 30, at(16, 10), at(6 + 10 * Math.cos(Math.PI / 6), 15)],
    ['down', -30, at(6 + 10 * Math.cos(Math.PI / 6), 5), at(16, 10)],
  ] as const)(
    'is shown counter-clockwise at the groove edge when turned %s',
    (_way, turn, from, to) => {
      const { witness } = read(tilted(handButt({ t1: 10 }), turn), 'angularMisalignment');
      expect(witness).toEqual({
        kind: 'angle',
        vertex: at(6, 10),
        from: { x: about(from.x), y: about(from.y) },
        to: { x: about(to.x), y: about(to.y) },
      });
    },
  );

  it('is shown at plate 2’s surface where the groove edges are not known', () => {
    const section = tilted(handButt({ t1: 10 }), 30);
    const unknown = { ...section, face: { ...section.face, grooveEdges: null } };
    expect(read(unknown, 'angularMisalignment').witness).toMatchObject({ vertex: at(6, 10) });
  });

  it('steps midway between the groove edges', () => {
    // edges 12 apart; plate 2 turned 10° about its own edge: 6 mm short of it the
    // line carried on has dropped 6 tan 10°
    const drop = -6 * Math.tan(Math.PI / 18);
    expect(valueOf(tilted(handButt({ t1: 10 }), 10), 'faceStep')).toBeCloseTo(drop, 12);
  });
});

describe('a plate that is offset', () => {
  const low = handButt({ t1: 10, step: -1.5 });

  it('steps down when plate 2 lies away from the face, on both sides alike', () => {
    expect(valueOf(low, 'faceStep')).toBeCloseTo(-1.5, 12);
    expect(valueOf(low, 'rootStep')).toBeCloseTo(-1.5, 12);
    expect(valueOf(low, 'centrelineOffset')).toBeCloseTo(-1.5, 12);
  });

  it('keeps that sign in a mirror', () => {
    expect(valueOf(mirrored(low), 'faceStep')).toBeCloseTo(-1.5, 12);
    expect(valueOf(mirrored(low), 'rootStep')).toBeCloseTo(-1.5, 12);
  });

  it('is shown from plate 1’s line to plate 2’s, both carried on to the middle', () => {
    expect(endsOf(low, 'faceStep')).toEqual([0, 10, 0, 8.5]);
    expect(read(low, 'faceStep').witness).toMatchObject({
      extensions: [
        [at(-6, 10), at(0, 10)],
        [at(6, 8.5), at(0, 8.5)],
      ],
    });
  });

  it('halves the difference of thickness on the centrelines', () => {
    // plate 1: 0..10, centre 5; plate 2: 0..14, centre 7
    const flushRoot = handButt({ t1: 10, t2: 14 });
    expect(valueOf(flushRoot, 'rootStep')).toBeCloseTo(0, 12);
    expect(valueOf(flushRoot, 'faceStep')).toBeCloseTo(4, 12);
    expect(valueOf(flushRoot, 'centrelineOffset')).toBeCloseTo(2, 12);
  });
});

describe('the step where the groove edges are not known', () => {
  const bead = pathOf([at(-7, 10), at(7, 11)]);
  const section = handButt({ t1: 10, step: 1, faceBead: bead });

  it('is taken between the toes', () => {
    const unknown = { ...section, face: { ...section.face, grooveEdges: null } };
    expect(endsOf(unknown, 'faceStep')).toEqual([0, 10, 0, 11]);
  });

  it('is not taken when there are no toes either', () => {
    const bare = { ...section.face, grooveEdges: null, toes: null, bead: null };
    const { values } = measure({ ...section, face: bare });
    expect(values.faceStep).toBeUndefined();
    expect(values.centrelineOffset).toBeUndefined();
    expect(values.rootStep).toBeDefined();
  });

  it('is not taken on a root side that is missing', () => {
    const { values } = measure({ ...section, root: null });
    expect(values.rootStep).toBeUndefined();
    expect(values.centrelineOffset).toBeUndefined();
    expect(values.faceStep).toBeDefined();
  });

  it('is not taken to a plate at a right angle to the other', () => {
    const [first] = section.face.surfaces;
    const upright = { origin: at(6, 10), along: at(0, 1), normal: at(1, 0) };
    const { values } = measure({
      ...section,
      face: { ...section.face, surfaces: [first, upright] },
    });
    expect(values.faceStep).toBeUndefined();
  });
});
