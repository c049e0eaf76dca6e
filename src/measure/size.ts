import type { Point } from '../geometry/index.ts';
import {
  add,
  dot,
  extremeFromLine,
  length,
  perpendicularRight,
  scale,
  subtract,
} from '../geometry/index.ts';
import type { Section } from '../joint/index.ts';
import { edgeNote } from './edge.ts';
import type { FilletLandmarks, FilletWeld } from './fillet-landmarks.ts';
import { filletLandmarks } from './fillet-landmarks.ts';
import type { Measurement, Witness } from './measurement.ts';
import type { Note } from './witness.ts';
import { measuredLength, span } from './witness.ts';

/** A triangle with its apex at O and two sides on the surface lines. */
export interface SizeTriangle {
  /** Sides on plate 1 and plate 2, mm. */
  readonly leg1: number;
  readonly leg2: number;
  /** Distance from O to the third side, carried on if need be, mm. */
  readonly throat: number;
  readonly apex: Point;
  readonly corner1: Point;
  readonly corner2: Point;
  /** Foot of the throat on the third side. */
  readonly foot: Point;
}

/**
 * The largest triangle with its apex at O, sides on both surface lines in the
 * ratio leg 1 : leg 2 = `ratio`, that fits in the weld: its third side slides
 * out until it touches the face (US Army TC 9-237, 6-8d; derived).
 */
function largestTriangle(
  { o, surfaces }: FilletLandmarks,
  { bead }: FilletWeld,
  ratio: number,
): SizeTriangle {
  const [along1, along2] = [surfaces[0].along, surfaces[1].along];
  const side = subtract(along2, scale(along1, ratio));
  const square = scale(perpendicularRight(side), 1 / length(side));
  const outward = dot(square, along1) < 0 ? scale(square, -1) : square;
  const throat = -extremeFromLine(bead, o, scale(outward, -1)).value;
  const leg1 = throat / dot(outward, along1);
  const leg2 = throat / dot(outward, along2);
  return {
    leg1,
    leg2,
    throat,
    apex: o,
    corner1: add(o, scale(along1, leg1)),
    corner2: add(o, scale(along2, leg2)),
    foot: add(o, scale(outward, throat)),
  };
}

/** The triangle of a size for a specified ratio of legs, with what bears on it. */
export interface SizeForRatio extends SizeTriangle {
  readonly witness: Witness;
  readonly note: Note | null;
}

/**
 * Size of a fillet weld for specified unequal legs: sides and throat of the
 * largest triangle at O with leg 1 : leg 2 = `ratio` that fits, mm. null for a
 * section without a fillet weld, or a ratio that is no positive number. Derived.
 */
export function sizeForRatio(section: Section, ratio: number): SizeForRatio | null {
  const landmarks = filletLandmarks(section);
  // no fillet weld to fit a triangle in
  if (!landmarks?.weld) return null;
  // no shape to fit
  if (!(ratio > 0 && Number.isFinite(ratio))) return null;
  const triangle = largestTriangle(landmarks, landmarks.weld, ratio);
  return { ...triangle, witness: triangleWitness(triangle), note: edgeNote(landmarks) };
}

/**
 * Sizes of a fillet weld, mm. sizeEqual: leg of the largest isosceles triangle
 * at O that fits (US Army TC 9-237, 6-8d(1)); isoscelesThroat: its height, the
 * throat a of the ISO rows (from memory, verify). sizePair: sides of the
 * largest triangle similar to the measured legs; theoreticalThroat: distance
 * from O to its third side.
 */
export function sizes(landmarks: FilletLandmarks, weld: FilletWeld): Measurement[] {
  const note = edgeNote(landmarks);
  const equal = largestTriangle(landmarks, weld, 1);
  const pair = largestTriangle(landmarks, weld, weld.legs[0] / weld.legs[1]);
  return [
    measuredLength('sizeEqual', equal.leg1, triangleWitness(equal), note),
    measuredLength('sizePair.1', pair.leg1, triangleWitness(pair), note),
    measuredLength('sizePair.2', pair.leg2, triangleWitness(pair), note),
    measuredLength('isoscelesThroat', equal.throat, throatOf(equal), note),
    measuredLength('theoreticalThroat', pair.throat, throatOf(pair), note),
  ];
}

const triangleWitness = ({ apex, corner1, corner2 }: SizeTriangle): Witness => ({
  kind: 'triangle',
  apex,
  corner1,
  corner2,
});

const throatOf = ({ apex, corner1, corner2, foot }: SizeTriangle): Witness =>
  span(
    apex,
    foot,
    [],
    [
      [apex, corner1],
      [corner1, corner2],
      [corner2, apex],
    ],
  );
