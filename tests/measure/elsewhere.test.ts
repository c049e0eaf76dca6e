import { describe, expect, it } from 'vitest';
import type { Section, Side, SurfaceLine } from '../../src/joint/index.ts';
import type { Witness } from '../../src/measure/index.ts';
import { measure } from '../../src/measure/index.ts';
import { movedSection } from '../moved-section.ts';
import { at, handButt, handFillet, pathOf, polar, tilted } from '../section-fixtures.ts';

// A reading belongs to the shape, not to the frame that it is drawn in.

const sections: readonly (readonly [string, Section])[] = [
  [
    'a skewed fillet with gap, penetration and overhang',
    handFillet({
      dihedral: 70,
      leg1: 8,
      leg2: 11,
      bead: pathOf([at(8, 0), at(9, 0.4), at(5, 6), polar(11, 70)], [0, 0.2, -0.1]),
      lips: [at(9, 0), polar(11, 70)],
      plate2Corner: polar(1, 70),
      weldRoots: [polar(1, 70), at(-1.5, 0)],
      undercuts: [[], pathOf([polar(11, 70), polar(13, 70)], [-0.4])],
    }),
  ],
  [
    'a butt weld of offset, tilted plates with a dipped cap',
    tilted(
      handButt({
        t1: 10,
        t2: 12,
        step: 0.7,
        faceBead: pathOf(
          [at(-7, 10), at(-3, 12), at(0, 11), at(2, 13), at(6, 12.7)],
          [-0.2, 0, 0.1],
        ),
        rootBead: pathOf([at(-2, 0), at(2, 0.7)], [0.3]),
        unfused: [pathOf([at(-1, 0.2), at(-1, 0.9)]), []],
      }),
      4,
    ),
  ],
];
const motions = [
  { turn: 0, shift: { x: 30, y: -20 }, mirror: false },
  { turn: 130, shift: { x: 3, y: 40 }, mirror: false },
  { turn: -40, shift: { x: -15, y: 5 }, mirror: true },
] as const;

/** How long, or how wide in degrees, a witness is. */
function sizeOf(witness: Witness): number | null {
  if (witness.kind === 'distance') {
    return Math.hypot(witness.to.x - witness.from.x, witness.to.y - witness.from.y);
  }
  if (witness.kind !== 'angle') return null;
  const { vertex, from, to } = witness;
  const arm = (end: typeof to) => Math.atan2(end.y - vertex.y, end.x - vertex.x);
  return (((arm(to) - arm(from)) * 180) / Math.PI + 720) % 360;
}

describe.each(sections)('%s', (_name, section) => {
  it.each(motions)('reads the same turned $turn°, mirrored: $mirror', (motion) => {
    const here = measure(section).values;
    const there = measure(movedSection(section, motion)).values;
    expect(Object.keys(there)).toEqual(Object.keys(here));
    for (const { id, value } of Object.values(here)) {
      expect(Math.abs((there[id]?.value ?? NaN) - (value ?? NaN)), id).toBeLessThan(1e-9);
    }
  });

  it('reads the same wherever along itself a surface line is said to start', () => {
    const slid = (line: SurfaceLine): SurfaceLine => ({
      ...line,
      origin: at(line.origin.x + 5 * line.along.x, line.origin.y + 5 * line.along.y),
    });
    const side = (of: Side): Side => ({
      ...of,
      surfaces: [slid(of.surfaces[0]), slid(of.surfaces[1])],
    });
    const here = measure(section).values;
    const there = measure({
      ...section,
      face: side(section.face),
      root: section.root && side(section.root),
      plateSurfaces: [
        { face: slid(section.plateSurfaces[0].face), opposite: section.plateSurfaces[0].opposite },
        { face: section.plateSurfaces[1].face, opposite: slid(section.plateSurfaces[1].opposite) },
      ],
    }).values;
    for (const { id, value } of Object.values(here)) {
      expect(Math.abs((there[id]?.value ?? NaN) - (value ?? NaN)), id).toBeLessThan(1e-9);
    }
  });

  it.each(motions)('shows the same turned $turn°, mirrored: $mirror', (motion) => {
    const here = measure(section).values;
    const there = measure(movedSection(section, motion)).values;
    for (const { id, witness } of Object.values(here)) {
      const size = sizeOf(witness);
      if (size === null) continue;
      const now = there[id]?.witness ?? witness;
      expect(Math.abs((sizeOf(now) ?? NaN) - size), id).toBeLessThan(1e-9);
    }
  });
});
