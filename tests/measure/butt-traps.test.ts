import { describe, expect, it } from 'vitest';
import { at, handButt, pathOf } from '../section-fixtures.ts';
import { valueOf } from './reading.ts';

// Definitions: Toeline's vocabulary. Every section is put together by hand; the
// expected numbers are worked in the comments.

describe('plates that are offset', () => {
  // plate 2 stands 2 mm higher; edges at (-6, 10) and (6, 12); face straight from edge to edge
  const slope = handButt({ t1: 10, step: 2, faceBead: pathOf([at(-6, 10), at(6, 12)]) });

  it('have no underfill where the face slopes smoothly from edge to edge', () => {
    expect(valueOf(slope, 'underfill')).toBe(0);
  });

  it('still show how far that slope lies below the higher plate', () => {
    // the low end of the slope, at plate 1's edge, is 2 mm below plate 2's surface
    expect(valueOf(slope, 'underfillHigh')).toBeCloseTo(2, 12);
  });

  it('step by the offset on both sides, positive when plate 2 lies towards the face', () => {
    expect(valueOf(slope, 'faceStep')).toBeCloseTo(2, 12);
    expect(valueOf(slope, 'rootStep')).toBeCloseTo(2, 12);
    expect(valueOf(slope, 'centrelineOffset')).toBeCloseTo(2, 12);
  });

  it('read a cap higher from the low plate than from the high one, by the offset', () => {
    // crown at y = 13.5: 3.5 above plate 1's surface (10), 1.5 above plate 2's (12)
    const cap = handButt({
      t1: 10,
      step: 2,
      faceBead: pathOf([at(-7, 10), at(0, 13.5), at(7, 12)]),
    });
    expect(valueOf(cap, 'faceReinforcement.toPlate1')).toBeCloseTo(3.5, 12);
    expect(valueOf(cap, 'faceReinforcement.toPlate2')).toBeCloseTo(1.5, 12);
    expect(valueOf(cap, 'faceReinforcement.higher')).toBeCloseTo(1.5, 12);
    expect(valueOf(cap, 'faceReinforcement.lower')).toBeCloseTo(3.5, 12);
  });
});

describe('plates of unequal thickness', () => {
  // plate 1: 0..10, plate 2: -2..12, both centred on y = 5
  const centred = handButt({
    t1: 10,
    t2: 14,
    step: -2,
    faceBead: pathOf([at(-6, 10), at(6, 12)]),
  });

  it('are not misaligned when their mid-planes are level', () => {
    expect(valueOf(centred, 'centrelineOffset')).toBeCloseTo(0, 12);
  });

  it('step up on the face and down on the root', () => {
    expect(valueOf(centred, 'faceStep')).toBeCloseTo(2, 12);
    expect(valueOf(centred, 'rootStep')).toBeCloseTo(-2, 12);
  });

  it('give the thinner and the thicker', () => {
    expect(valueOf(centred, 'tMin')).toBe(10);
    expect(valueOf(centred, 'tMax')).toBe(14);
  });
});

describe('a cap with a dip', () => {
  // crests at (-3, 12) and (3, 12), bottom of the dip at (0, 11.5), plates at y = 10
  const dipped = handButt({
    t1: 10,
    faceBead: pathOf([at(-7, 10), at(-3, 12), at(0, 11.5), at(3, 12), at(7, 10)]),
  });

  it('shows the dip below its crests', () => {
    expect(valueOf(dipped, 'capDip')).toBeCloseTo(0.5, 12);
  });

  it('is not underfilled while the dip stays above the plates', () => {
    expect(valueOf(dipped, 'underfill')).toBe(0);
  });

  it('has no dip when it is one swell', () => {
    const swell = handButt({ t1: 10, faceBead: pathOf([at(-7, 10), at(7, 10)], [-0.2]) });
    expect(valueOf(swell, 'capDip')).toBe(0);
  });
});
