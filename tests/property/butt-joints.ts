import fc from 'fast-check';
import { buttChoices, buttParameters } from '../../src/joint/butt-parameters.ts';
import { defaultJoint, spatterBounds } from '../../src/joint/index.ts';
import type { ButtJoint, Preparation } from '../../src/joint/index.ts';

const preparations = buttChoices.find(({ field }) => field === 'preparation')
  ?.values as readonly Preparation[];

const spatter = fc.array(
  fc.record({
    plate: fc.constantFrom(1 as const, 2 as const),
    place: fc.double({ ...spatterBounds.place, noNaN: true }),
    height: fc.double({ ...spatterBounds.height, noNaN: true }),
  }),
  { maxLength: 2 },
);

/** The fields that take one of a few values. */
const choices = fc.record(
  Object.fromEntries(
    buttChoices
      .filter(({ field }) => field !== 'preparation')
      .map(({ field, values }) => [field, fc.constantFrom(...values)]),
  ),
) as unknown as fc.Arbitrary<Partial<ButtJoint>>;

/**
 * Joints over the whole of every range: each number is that of a plain joint of
 * its preparation, an end of its range, a whole step, or anywhere in between.
 * `bold` is the share of the numbers that are not those of the plain joint.
 */
export function buttJoints(bold: number): fc.Arbitrary<ButtJoint> {
  const odds = Math.round(bold * 100);
  const changes = fc.record(
    Object.fromEntries(
      buttParameters.map(({ field, min, max, step }) => [
        field,
        fc.oneof(
          { weight: 100 - odds, arbitrary: fc.constant(undefined) },
          { weight: odds * 0.2, arbitrary: fc.constantFrom(min, max, Math.max(0, min)) },
          {
            weight: odds * 0.4,
            arbitrary: fc
              .integer({ min: 0, max: Math.round((max - min) / step) })
              .map((n) => min + n * step),
          },
          { weight: odds * 0.4, arbitrary: fc.double({ min, max, noNaN: true }) },
        ),
      ]),
    ),
  );
  return fc
    .tuple(
      fc.constantFrom(...preparations),
      choices,
      changes,
      fc.oneof({ weight: 5, arbitrary: fc.constant([]) }, { weight: 1, arbitrary: spatter }),
    )
    .map(([preparation, chosen, changed, bumps]) => {
      const given = Object.entries(changed).filter(([, value]) => value !== undefined);
      const twoSided = preparation === 'doubleV' || preparation === 'doubleBevel';
      const { backing = 'none' } = chosen;
      return {
        ...defaultJoint('butt', preparation),
        ...chosen,
        ...Object.fromEntries(given),
        // a strip under a joint that is welded from both sides has a test of its own
        backing: twoSided ? 'none' : backing,
        spatter: bumps,
      };
    });
}

/** A butt joint as a fair welder leaves it: nothing beyond what a shop sees every week. */
export const everydayButt: fc.Arbitrary<ButtJoint> = fc
  .record({
    preparation: fc.constantFrom(...preparations),
    t: number(8, 25),
    unequal: number(0, 2),
    rootFace: number(0.8, 2.5),
    rootOpening: number(1, 4),
    offset: number(-1, 1),
    angularMisalignment: number(-3, 3),
    capHeight: number(0.5, 3),
    crownShift: number(-0.3, 0.3),
    capPast1: number(0.5, 3),
    capPast2: number(0.5, 3),
    rootHeight: number(0.3, 2),
    rootPast1: number(0.5, 2),
    rootPast2: number(0.5, 2),
    undercut1Depth: number(0, 0.8),
    rootUndercut2Depth: number(0, 0.5),
    fusionDepth: number(0.8, 2),
  })
  .map(({ preparation, t, unequal, rootFace, offset, ...rest }) => {
    // a U needs room for its radius; across a narrow square groove a step is soon too steep for a bead
    const hollow = preparation === 'singleU' || preparation === 'singleJ';
    const thick = hollow ? t + 4 : t;
    const narrow = preparation === 'square' ? 0.3 : 1;
    return {
      ...defaultJoint('butt', preparation),
      ...rest,
      t1: thick,
      t2: thick + unequal * narrow,
      offset: offset * narrow,
      rootFace1: rootFace,
      rootFace2: rootFace,
    };
  });

function number(min: number, max: number): fc.Arbitrary<number> {
  return fc.double({ min, max, noNaN: true });
}
