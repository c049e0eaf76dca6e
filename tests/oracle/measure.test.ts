/**
 * Measurements against `@flatten-js/core` 1.6.15, which keeps arcs as centre,
 * radius and angles. Sections with an arc flatter than it can hold (radius over
 * 1e4 mm, bulge under 1e-3) are passed over; below 1e-6 mm it calls any two
 * places one. Its intersections are not consulted.
 */
import Flatten from '@flatten-js/core';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Contour, Point, Segment } from '../../src/geometry/index.ts';
import { centre, radius } from '../../src/geometry/index.ts';
import type { Groove, Joint, Section } from '../../src/joint/index.ts';
import { build, JointError } from '../../src/joint/index.ts';
import type { MeasurementId } from '../../src/measure/index.ts';
import { measure } from '../../src/measure/index.ts';
import { anyJoint, everydayFillet } from '../joint/any-joint.ts';
import { buttJoints } from '../property/butt-joints.ts';
import { runs } from '../runs.ts';

const LENGTH = 1e-9;
const AREA = 1e-8;

const pointOf = ({ x, y }: Point) => new Flatten.Point(x, y);

function shapeOf(segment: Segment): Flatten.Segment | Flatten.Arc {
  const middle = centre(segment);
  if (middle === null) return new Flatten.Segment(pointOf(segment.a), pointOf(segment.b));
  const angleTo = (at: Point) => Math.atan2(at.y - middle.y, at.x - middle.x);
  return new Flatten.Arc(
    pointOf(middle),
    radius(segment),
    angleTo(segment.a),
    angleTo(segment.b),
    segment.bulge > 0,
  );
}

/** Lines, and arcs neither too flat nor too short for its own form of an arc. */
const holds = (segment: Segment): boolean =>
  segment.bulge === 0 ||
  (Math.abs(segment.bulge) > 1e-3 &&
    radius(segment) < 1e4 &&
    Math.hypot(segment.b.x - segment.a.x, segment.b.y - segment.a.y) > 1e-2);

/** A section all of whose measured outlines the oracle can hold; null when it can't, or can't be built. */
function sectionOf(joint: Joint): Section | null {
  try {
    const section = build(joint);
    const outlines = [
      section.face.outline,
      section.root?.outline ?? [],
      ...section.deposits,
      ...(section.groove?.void ?? []),
    ];
    return outlines.flat().every(holds) ? section : null;
  } catch (error) {
    if (error instanceof JointError) return null;
    throw error;
  }
}

const distanceFrom = (root: Point, contour: Contour): number =>
  Math.min(...contour.map((piece) => pointOf(root).distanceTo(shapeOf(piece))[0]));

const distanceBetween = (first: Contour, second: Contour): number =>
  Math.min(
    ...first.flatMap((one) => second.map((two) => shapeOf(one).distanceTo(shapeOf(two))[0])),
  );

/** Up one unfused edge, across the end of the weld, down the other; a joint welded from one side. */
function unfusedRoot(groove: Groove | null): Contour {
  const [edge1, edge2] = (groove?.unfused ?? [[], []]).map((pieces) => {
    const gap = pieces.findIndex(({ a }, i) => {
      const before = pieces[i - 1]?.b ?? a;
      return Math.hypot(a.x - before.x, a.y - before.y) > LENGTH;
    });
    return gap < 0 ? pieces : pieces.slice(0, gap);
  }) as [Contour, Contour];
  const [end1, end2] = [edge1.at(-1)?.b, edge2.at(-1)?.b];
  if (end1 === undefined || end2 === undefined) throw new Error('no weld metal shows on the root');
  const closed = Math.hypot(end2.x - end1.x, end2.y - end1.y) < 1e-6;
  return [...edge1, ...(closed ? [] : [{ a: end1, b: end2, bulge: 0 }]), ...edge2];
}

const areaOf = (regions: readonly Contour[]): number =>
  regions.reduce((sum, region) => sum + new Flatten.Polygon(region.map(shapeOf)).area(), 0);

/** Greatest height of a contour over the line through `origin` square to `normal`: the top of its upright box. */
function reachOf(contour: Contour, origin: Point, normal: Point): number {
  const upright = Math.PI / 2 - Math.atan2(normal.y, normal.x);
  const tops = contour.map(
    (piece) => shapeOf(piece).rotate(upright, pointOf(origin)).box.ymax - origin.y,
  );
  return Math.max(...tops);
}

const joints: fc.Arbitrary<Joint> = fc.oneof(
  everydayFillet,
  anyJoint('fillet', { plain: 5, any: 1 }),
  buttJoints(0.05),
  buttJoints(0.15),
);

test('distances and areas agree with an independent kernel', { timeout: 1_800_000 }, () => {
  let compared = 0;
  const asked = runs(60_000);
  fc.assert(
    fc.property(joints, (joint) => {
      const section = sectionOf(joint);
      if (section === null) return;
      compared += 1;
      const { values } = measure(section);
      const same = (id: MeasurementId, oracle: number, within: number): void => {
        expect(Math.abs((values[id]?.value ?? NaN) - oracle), id).toBeLessThan(within);
      };
      if (section.groove) same('grooveArea', areaOf(section.groove.void), AREA);
      const { face, root, filletRoot } = section;
      if (section.stage === 'fitUp' || face.bead === null || face.toes === null) return;
      same('weldArea', areaOf(section.deposits), AREA);
      same('chordLength', pointOf(face.toes[0]).distanceTo(pointOf(face.toes[1]))[0], LENGTH);
      if (filletRoot) {
        const { weldRoots, plate2Corner } = filletRoot;
        const bead = face.bead;
        same('actualThroat', Math.min(...weldRoots.map((at) => distanceFrom(at, bead))), LENGTH);
        const chord = [{ a: face.toes[0], b: face.toes[1], bulge: 0 }];
        same('effectiveThroat', distanceFrom(plate2Corner, [...chord, ...bead]), LENGTH);
        const bisector = {
          x: face.surfaces[0].along.x + face.surfaces[1].along.x,
          y: face.surfaces[0].along.y + face.surfaces[1].along.y,
        };
        const size = Math.hypot(bisector.x, bisector.y);
        const back = { x: -bisector.x / size, y: -bisector.y / size };
        same('isoscelesThroat', -reachOf(bead, { x: 0, y: 0 }, back), LENGTH);
      } else {
        for (const [i, plate] of ([1, 2] as const).entries()) {
          const { origin, normal } = face.surfaces[i as 0 | 1];
          const height = Math.max(0, reachOf(face.bead, origin, normal));
          same(`faceReinforcement.toPlate${plate}`, height, LENGTH);
        }
        if (root !== null && section.backing === null) {
          const onRoot = root.bead ?? unfusedRoot(section.groove);
          const through = Math.min(
            distanceBetween(face.bead, root.outline),
            distanceBetween(face.outline, onRoot),
          );
          same('jointThickness', through, LENGTH);
        }
      }
    }),
    { numRuns: asked },
  );
  // at least 20,000 sections at full count, 2,000 at a tenth
  expect(compared).toBeGreaterThanOrEqual(asked / 3);
});
