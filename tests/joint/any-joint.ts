import fc from 'fast-check';
import type { FilletJoint, Joint, SpatterBump } from '../../src/joint/index.ts';
import { choicesOfKind, parametersFor, spatterBounds } from '../../src/joint/ranges.ts';

/** How often a field keeps its plain value, so that not every joint has every flaw at once. */
interface Mix {
  readonly plain: number;
  readonly any: number;
}

/** Any joint of a kind over the whole of every range; most of its fields plain when `mix` says so. */
export function anyJoint(kind: 'fillet', mix?: Mix): fc.Arbitrary<FilletJoint>;
export function anyJoint(kind: Joint['kind'], mix?: Mix): fc.Arbitrary<Joint>;
export function anyJoint(
  kind: Joint['kind'],
  mix: Mix = { plain: 2, any: 1 },
): fc.Arbitrary<Joint> {
  const fields: Record<string, fc.Arbitrary<unknown>> = { spatter: anySpatter };
  for (const { field, values } of choicesOfKind(kind)) fields[field] = fc.constantFrom(...values);
  for (const { field, min, max, start } of parametersFor(kind)) {
    fields[field] = fc.oneof(
      { arbitrary: fc.constant(start), weight: mix.plain },
      { arbitrary: fc.double({ min, max, noNaN: true }), weight: mix.any },
    );
  }
  // four joints in five are welded: that is where the shapes are
  fields['stage'] = fc.constantFrom('welded', 'welded', 'welded', 'welded', 'fitUp');
  return fc.record(fields) as unknown as fc.Arbitrary<Joint>;
}

const anyBump: fc.Arbitrary<SpatterBump> = fc.record({
  plate: fc.constantFrom(1 as const, 2 as const),
  place: fc.double({ ...bounds(spatterBounds.place), noNaN: true }),
  height: fc.double({ ...bounds(spatterBounds.height), noNaN: true }),
});

const anySpatter = fc.oneof(
  { arbitrary: fc.constant([]), weight: 4 },
  { arbitrary: fc.array(anyBump, { maxLength: 3 }), weight: 1 },
);

/** A fillet as a fair welder leaves it: nothing beyond what a shop sees every week. */
export const everydayFillet: fc.Arbitrary<FilletJoint> = anyJoint('fillet').chain((joint) =>
  fc
    .record({
      t: number(11, 25),
      arrangement: fc.constantFrom('tee', 'lap', 'corner'),
      leg: number(4, 7.5),
      unequal: number(0, 1),
      dihedralAngle: number(75, 110),
      convexity: number(-0.6, 1),
      crownShift: number(-0.3, 0.3),
      rootGap: number(0, 1),
      rootPenetration: number(0, 1),
      depth: number(0, 0.8),
    })
    .map(({ t, leg, unequal, depth, ...weld }) => ({
      ...joint,
      ...weld,
      stage: 'welded' as const,
      endCut: 'fitted' as const,
      t1: t + 2,
      t2: t + 2,
      cornerOverlap: 1,
      leg1: leg,
      leg2: leg + unequal,
      reverseCurve: 0,
      undercut1Depth: depth,
      undercut1Width: 2,
      undercut2Depth: 0,
      overlap1: 0,
      overlap2: 0,
      spatter: [],
    })),
);

function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}

function bounds({ min, max }: { readonly min: number; readonly max: number }) {
  return { min, max };
}
