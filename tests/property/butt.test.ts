import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contourArea,
  contourEnd,
  contourStart,
  intersectLine,
  isSimpleOutline,
  line,
  nearPoint,
  pointInRegion,
  polyline,
  reverseContour,
} from '../../src/geometry/index.ts';
import type { Contour, Region } from '../../src/geometry/index.ts';
import { build, JointError } from '../../src/joint/index.ts';
import type { ButtJoint, Groove, Section, Side } from '../../src/joint/index.ts';
import { runs } from '../runs.ts';
import { buttJoints, everydayButt } from './butt-joints.ts';

/** The section, or null when the joint is refused by name; anything else that is thrown fails the test. */
function built(joint: ButtJoint): Section | null {
  try {
    return build(joint);
  } catch (error) {
    if (!(error instanceof JointError)) throw error;
    expect(error.reason.key).toMatch(/^joint_error_[a-z_]+$/);
    expect(error.bound === null || Number.isFinite(error.bound)).toBe(true);
    return null;
  }
}

/** Few flaws at once, many, and nearly everything at once. */
const anyButt = fc.oneof(buttJoints(0.1), buttJoints(0.3), buttJoints(0.6));

describe('Over the whole domain of butt joints', () => {
  test('every outline is simple, closed and counter-clockwise, or the joint is refused by name', () => {
    let kept = 0;
    const asked = runs(20_000);
    fc.assert(
      fc.property(anyButt, (joint) => {
        const section = built(joint);
        if (section === null) return;
        kept += 1;
        for (const region of regionsOf(section)) {
          expect(isSimpleOutline(region)).toBe(true);
          expect(contourArea(region)).toBeGreaterThan(0);
        }
        expect(isSimpleOutline(airOver(section.face, 300))).toBe(true);
        expect(isSimpleOutline(airOver(rootOf(section), -300))).toBe(true);
      }),
      { numRuns: asked },
    );
    // a domain that is nearly all refused would prove nothing
    expect(kept / asked).toBeGreaterThan(0.3);
  });

  test('no coordinate and no bulge is anything but a number', () => {
    fc.assert(
      fc.property(anyButt, (joint) => {
        const numbers: number[] = [];
        collectNumbers(built(joint), numbers);
        expect(numbers.every(Number.isFinite)).toBe(true);
      }),
      { numRuns: runs(5_000) },
    );
  });

  test('the two outlines enclose the metal, and what lies shut in between it, and nothing else', () => {
    fc.assert(
      fc.property(buttJoints(0.25), (joint) => {
        const section = built({ ...joint, stage: 'welded' });
        if (section === null) return;
        const [face, root] = [section.face.outline, rootOf(section).outline];
        const enclosed = [
          ...root,
          line(contourEnd(root), contourEnd(face)),
          ...reverseContour(face),
          line(contourStart(face), contourStart(root)),
        ];
        const strip = section.backing === null ? [] : [section.backing];
        const metal = [...section.plates, ...section.welds, ...section.spatter, ...strip];
        const open = contourArea(enclosed) - total(metal) - shutIn(section);
        expect(Math.abs(open)).toBeLessThan(1e-7);
      }),
      { numRuns: runs(10_000) },
    );
  });

  test('metal is neither made nor lost where no hollow and no step eats into a plate', () => {
    fc.assert(
      fc.property(buttJoints(0.25), (joint) => {
        const level = { t2: joint.t1, offset: 0, angularMisalignment: 0 };
        const full = {
          capHeight: Math.abs(joint.capHeight),
          capDip: 0,
          capDrop1: 0,
          capDrop2: 0,
          rootHeight: Math.abs(joint.rootHeight),
        };
        const section = built({ ...joint, ...level, ...full, stage: 'welded' });
        if (section?.backing !== null) return;
        const now = total(section.plates) + total(section.welds);
        const added = total(section.deposits) - gougedArea(section);
        expect(Math.abs(now - total(preparedPlates(section)) - added)).toBeLessThan(1e-8);
      }),
      { numRuns: runs(10_000) },
    );
  });

  test('along any upright line the deposit is the weld metal outside the plates as prepared', () => {
    fc.assert(
      fc.property(buttJoints(0.25), share, (joint, across) => {
        const section = built({ ...joint, stage: 'welded' });
        if (section === null) return;
        const before = [...preparedPlates(section), ...stripAsSupplied(section)];
        const parts = [...section.plates, ...section.welds, ...section.deposits, ...before];
        const [left, right] = widthOf(section);
        const x = left + across * (right - left);
        const heights = parts
          .flatMap((region) => intersectLine({ x, y: 0 }, { x: 0, y: 1 }, region))
          .map(({ along }) => along)
          .sort((one, two) => one - two);
        heights.forEach((height, i) => {
          const next = heights[i + 1] ?? height;
          const at = { x, y: (height + next) / 2 };
          // on an upright boundary, or as thin as rounding, a point belongs to neither side
          if (next - height < 1e-6) return;
          if (parts.some((region) => pointInRegion(at, region) === 'edge')) return;
          const count = (regions: readonly Region[]): number =>
            regions.filter((region) => pointInRegion(at, region) === 'inside').length;
          const [weld, base, was] = [count(section.welds), count(section.plates), count(before)];
          expect(weld + base).toBeLessThanOrEqual(1);
          expect(was).toBeLessThanOrEqual(1);
          expect(base).toBeLessThanOrEqual(was);
          expect(count(section.deposits)).toBe(weld === 1 && was === 0 ? 1 : 0);
        });
      }),
      { numRuns: runs(20_000) },
    );
  });

  test('toes stand where the joint says, and lips level with them or farther out', () => {
    fc.assert(
      fc.property(buttJoints(0.3), (joint) => {
        const section = built({ ...joint, stage: 'welded' });
        if (section === null) return;
        const { toes, lips, grooveEdges, surfaces } = section.face;
        for (const plate of [1, 2] as const) {
          const [i, past] = [plate === 1 ? 0 : 1, joint[`capPast${plate}`]] as const;
          const [toe, lip, edge] = [toes?.[i], lips?.[i], grooveEdges?.[i]];
          if (!toe || !lip || !edge) throw new Error('a welded face has toes and lips');
          const { along, normal } = surfaces[i];
          const drop = orNothing(joint[`capDrop${plate}`]);
          const [dx, dy] = [toe.x - edge.x, toe.y - edge.y];
          expect(dx * normal.x + dy * normal.y).toBeCloseTo(-drop, 9);
          if (drop === 0) expect(dx * along.x + dy * along.y).toBeCloseTo(orNothing(past), 9);
          const out = (lip.x - toe.x) * along.x + (lip.y - toe.y) * along.y;
          expect(out).toBeGreaterThanOrEqual(0);
          const overlap = joint[`overlap${plate}`];
          if (overlap > 1e-6) expect(out).toBeCloseTo(overlap, 9);
        }
      }),
      { numRuns: runs(5_000) },
    );
  });

  test('the same joint welded keeps the surfaces, edges and void of its fit-up', () => {
    fc.assert(
      fc.property(buttJoints(0.3), (joint) => {
        const welded = built({ ...joint, stage: 'welded' });
        if (welded === null) return;
        const fitUp = build({ ...joint, stage: 'fitUp' });
        expect(welded.plateSurfaces).toEqual(fitUp.plateSurfaces);
        expect(grooveOf(welded).preparedEdges).toEqual(grooveOf(fitUp).preparedEdges);
        expect(grooveOf(welded).void).toEqual(grooveOf(fitUp).void);
        expect(fitUp.welds).toEqual([]);
        expect(grooveOf(fitUp).unfused).toEqual(grooveOf(fitUp).preparedEdges);
      }),
      { numRuns: runs(5_000) },
    );
  });
});

describe('An everyday butt joint', () => {
  test('is never refused', () => {
    fc.assert(
      fc.property(everydayButt, (joint) => {
        expect(() => build(joint)).not.toThrow();
      }),
      { numRuns: runs(5_000) },
    );
  });
});

/** Less than a millionth of a millimetre is taken as nothing. */
const orNothing = (length: number): number => (length < 1e-6 ? 0 : length);

const share = fc.double({ min: 0, max: 1, noNaN: true });

const total = (regions: readonly Region[]): number =>
  regions.reduce((sum, region) => sum + contourArea(region), 0);

function regionsOf(section: Section): readonly Region[] {
  return [
    ...section.plates,
    ...section.welds,
    ...section.deposits,
    ...section.spatter,
    ...(section.backing === null ? [] : [section.backing]),
    ...grooveOf(section).void,
  ];
}

function rootOf({ root }: Section): Side {
  if (root === null) throw new Error('a butt joint has a root side');
  return root;
}

function grooveOf({ groove }: Section): Groove {
  if (groove === null) throw new Error('a butt joint has a groove');
  return groove;
}

/** The air over a side, closed well away from it at height `sky`. */
function airOver({ outline }: Side, sky: number): Contour {
  const [start, end] = [contourStart(outline), contourEnd(outline)];
  const above = [end, { x: end.x + 1, y: sky }, { x: start.x - 1, y: sky }, start];
  return [...outline, ...polyline(above)];
}

/** Each plate as it was before welding: its prepared edge and its straight surfaces and end. */
function preparedPlates(section: Section): readonly Region[] {
  const { face } = section;
  return grooveOf(section).preparedEdges.map((edge, i) => {
    const far = [face, rootOf(section)].map(({ beyond }) => contourEnd(beyond[i as 0 | 1]));
    const back = polyline([contourEnd(edge), ...far, contourStart(edge)]);
    return i === 0 ? [...edge, ...back] : reverseContour([...edge, ...back]);
  });
}

/** The backing strip before it melted: its corners alone. */
function stripAsSupplied({ backing }: Section): readonly Region[] {
  if (backing === null) return [];
  const all = backing.map(({ a }) => a);
  const [xs, ys] = [all.map(({ x }) => x), all.map(({ y }) => y)];
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const corners = [
    { x: left, y: low },
    { x: right, y: low },
    { x: right, y: high },
    { x: left, y: high },
  ];
  return [polyline(corners, true)];
}

/** From a little left of everything welded to a little right of it. */
function widthOf(section: Section): readonly [number, number] {
  const [one, two] = grooveOf(section).preparedEdges.map((edge) => [
    contourStart(edge).x,
    contourEnd(edge).x,
  ]);
  return [Math.min(...(one ?? [])) - 12, Math.max(...(two ?? [])) + 12];
}

/** Base metal gouged out beside the toes: between each undercut and its surface. */
function gougedArea(section: Section): number {
  const grooves = [...section.face.undercuts, ...rootOf(section).undercuts];
  return grooves.reduce((sum, groove) => sum + Math.abs(contourArea(groove)), 0);
}

/** What the outlines pass by: unfused edges with no way in, and the closed gap over a strip. */
function shutIn(section: Section): number {
  const { unfused: bare, preparedEdges } = grooveOf(section);
  const [edge1, edge2] = [
    belowBareBevel(bare[0], preparedEdges[0]),
    belowBareBevel(bare[1], preparedEdges[1]),
  ];
  const { backing, welds } = section;
  const root = rootOf(section);
  const unfused = between(edge1, edge2);
  if (backing !== null) {
    // under a plate turned down, which rests on the strip's far corner alone: a triangle
    const nose = root.surfaces[1].origin;
    const corner = contourStart(root.beyond[1]);
    return nearPoint(nose, corner) ? 0 : ((corner.x - nose.x) * (nose.y - corner.y)) / 2;
  }
  if (welds.length === 2 || edge1.length === 0) return unfused;
  const [open1, open2] = root.beyond.map((beyond, i) => {
    const brim = root.surfaces[i as 0 | 1].origin;
    return reverseContour(
      beyond.slice(
        0,
        beyond.findIndex(({ a }) => nearPoint(a, brim)),
      ),
    );
  });
  return unfused - between(open1 ?? [], open2 ?? []);
}

/** What is unfused below the weld: all but a run that goes on to the groove edge of the face. */
function belowBareBevel(unfused: Contour, prepared: Contour): Contour {
  let next = contourEnd(prepared);
  let kept = unfused.length;
  for (const { a, b } of [...unfused].reverse()) {
    if (!nearPoint(b, next)) break;
    next = a;
    kept -= 1;
  }
  return unfused.slice(0, kept);
}

/** Area between two edges that climb side by side, closed by straight lines; 0 for none. */
function between(left: Contour, right: Contour): number {
  const pieces = [...right, ...reverseContour(left)];
  const loop = pieces.flatMap((piece, i) => {
    const next = pieces[(i + 1) % pieces.length] ?? piece;
    return [piece, line(piece.b, next.a)];
  });
  return contourArea(loop);
}

function collectNumbers(value: unknown, into: number[]): void {
  if (typeof value === 'number') into.push(value);
  else if (typeof value === 'object' && value !== null) {
    for (const inner of Object.values(value)) collectNumbers(inner, into);
  }
}
