import { describe, expect, test } from 'vitest';
import { build, type ButtJoint } from '../../../src/joint/index.ts';
import { butt, cornersOf, grooveOf, rootOf } from './plain-butt.ts';

const fitUp = (changes: Partial<ButtJoint> = {}) => build(butt({ ...changes, stage: 'fitUp' }));

describe('at fit-up', () => {
  test('the outline of either side goes round the groove and straight across its far end', () => {
    const section = fitUp();
    expect(cornersOf(section.face.outline)).toEqual([
      [-69, 10],
      [-9, 10],
      [-1, 2],
      [-1, 0],
      [1, 0],
      [1, 2],
      [9, 10],
      [69, 10],
    ]);
    expect(cornersOf(rootOf(section).outline)).toEqual([
      [-69, 0],
      [-1, 0],
      [-1, 2],
      [-9, 10],
      [9, 10],
      [1, 2],
      [1, 0],
      [69, 0],
    ]);
  });

  test('it goes down to where the edges touch', () => {
    const section = fitUp({ rootOpening: 0, offset: 1 });
    // root faces at heights 0 to 2 and 1 to 3 on x = 0
    expect(cornersOf(section.face.outline).slice(1, -1)).toEqual([
      [-8, 10],
      [0, 2],
      [0, 3],
      [8, 11],
    ]);
    expect(cornersOf(rootOf(section).outline).slice(1, -1)).toEqual([
      [0, 0],
      [0, 1],
    ]);
  });

  test('there is nothing welded, and the edges are unfused from end to end', () => {
    const section = fitUp();
    const groove = grooveOf(section);
    expect(section.welds).toEqual([]);
    expect(section.deposits).toEqual([]);
    expect(section.face.bead).toBeNull();
    expect(section.face.toes).toBeNull();
    expect(section.face.lips).toBeNull();
    expect(groove.unfused).toEqual(groove.preparedEdges);
  });

  test('what only the weld would refuse does not matter yet', () => {
    const impossible = { capDrop1: 2, capPast1: 3, incompletePenetration: 15, capHeight: -6 };
    expect(fitUp(impossible).plates).toEqual(fitUp().plates);
  });

  test('a groove over a backing strip is seen down to the strip, and the root round it', () => {
    const section = fitUp({ backing: 'strip', offset: 1 });
    expect(cornersOf(section.face.outline).slice(1, -1)).toEqual([
      [-9, 10],
      [-1, 2],
      [-1, 0],
      [1, 0],
      [1, 1],
      [1, 3],
      [9, 11],
    ]);
    expect(cornersOf(rootOf(section).outline).slice(1, -1)).toEqual([
      [-15, 0],
      [-15, -6],
      [15, -6],
      [15, 0],
      [1, 0],
      [1, 1],
    ]);
  });
});
