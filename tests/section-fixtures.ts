import type { Contour, Point, Region, Vector } from '../src/geometry/index.ts';
import type { Section, Side, SurfaceLine } from '../src/joint/index.ts';

/**
 * Sections put together by hand from points and bulges. What is measured on
 * them owes nothing to `build`: the shape is the only thing that both know.
 */

export const at = (x: number, y: number): Point => ({ x, y });

/** A contour from points; `bulges[i]` bends the piece that leaves point i (0 when left out). */
export function pathOf(points: readonly Point[], bulges: readonly number[] = []): Contour {
  return points.slice(1).map((b, i) => ({ a: points[i] as Point, b, bulge: bulges[i] ?? 0 }));
}

/** The closed contour through these points. */
export const regionOf = (points: readonly Point[]): Region =>
  pathOf([...points, points[0] as Point]);

export const polar = (length: number, degrees: number): Point => {
  const angle = (degrees * Math.PI) / 180;
  return { x: length * Math.cos(angle), y: length * Math.sin(angle) };
};

const lineAt = (origin: Point, along: Vector, normal: Vector): SurfaceLine => ({
  origin,
  along,
  normal,
});

const emptySide = (surfaces: readonly [SurfaceLine, SurfaceLine]): Side => ({
  outline: [],
  surfaces,
  grooveEdges: null,
  bead: null,
  toes: null,
  lips: null,
  beyond: [[], []],
  undercuts: [[], []],
});

export interface HandFillet {
  readonly dihedral?: number;
  readonly leg1: number;
  readonly leg2: number;
  /** Height of a one-arc face off the chord, positive convex. Not used with `bead`. */
  readonly sagitta?: number;
  /** The exposed weld metal from toe 1 to toe 2, instead of one arc. */
  readonly bead?: Contour;
  readonly lips?: readonly [Point, Point];
  readonly weldRoots?: readonly Point[];
  readonly plate2Corner?: Point;
  readonly edge?: Contour | null;
  readonly undercuts?: readonly [Contour, Contour];
  readonly deposits?: readonly Region[];
}

/** A welded tee (or lap, with `edge`) with O at the origin and plate 1's surface along +x. */
export function handFillet(fillet: HandFillet): Section {
  const { dihedral = 90, leg1, leg2, sagitta = 0 } = fillet;
  const o = at(0, 0);
  const along2 = polar(1, dihedral);
  const surfaces = [
    lineAt(o, at(1, 0), at(0, 1)),
    // out of plate 2: a quarter turn clockwise from its direction
    lineAt(o, along2, at(along2.y, -along2.x)),
  ] as const;
  const toe1 = at(leg1, 0);
  const toe2 = polar(leg2, dihedral);
  const chord = Math.hypot(toe2.x - toe1.x, toe2.y - toe1.y);
  // toe 1 to toe 2 has the air on its right, where a positive bulge bends to
  const bead = fillet.bead ?? pathOf([toe1, toe2], [(2 * sagitta) / chord]);
  const into1 = at(0, -10);
  const into2 = at(-10 * along2.y, 10 * along2.x);
  const far1 = at(60, 0);
  const far2 = polar(60, dihedral);
  const start = bead[0]?.a ?? toe1;
  const end = bead.at(-1)?.b ?? toe2;
  return {
    kind: 'fillet',
    stage: 'welded',
    form: fillet.edge ? 'lap' : 'tee',
    product: 'plate',
    plates: [
      regionOf([at(-20, 0), at(-20, -10), at(60, -10), far1]),
      regionOf([o, far2, at(far2.x + into2.x, far2.y + into2.y), into2]),
    ],
    plateSurfaces: [
      { face: surfaces[0], opposite: lineAt(into1, at(1, 0), at(0, -1)) },
      { face: surfaces[1], opposite: lineAt(into2, along2, at(-along2.y, along2.x)) },
    ],
    welds: [],
    deposits: fillet.deposits ?? [[...pathOf([o, start]), ...bead, ...pathOf([end, o])]],
    backing: null,
    spatter: [],
    face: {
      outline: [],
      surfaces,
      grooveEdges: null,
      bead,
      toes: [start, end],
      lips: fillet.lips ?? [start, end],
      beyond: [pathOf([start, far1]), pathOf([end, far2])],
      undercuts: fillet.undercuts ?? [[], []],
    },
    root: null,
    groove: null,
    filletRoot: {
      weldRoots: fillet.weldRoots ?? [o],
      plate2Corner: fillet.plate2Corner ?? o,
      edge: fillet.edge ?? null,
    },
  };
}

/** The same joint before welding. */
export function unwelded(section: Section): Section {
  return {
    ...section,
    stage: 'fitUp',
    welds: [],
    deposits: [],
    face: emptySide(section.face.surfaces),
  };
}

export interface HandButt {
  readonly t1: number;
  readonly t2?: number;
  /** Plate 2's root surface above plate 1's. */
  readonly step?: number;
  readonly opening?: number;
  /** Setback of each face groove edge from its nose. */
  readonly setback?: number;
  readonly rootFace?: number;
  /** Exposed face metal from toe 1 to toe 2; none leaves the joint at fit-up. */
  readonly faceBead?: Contour;
  readonly rootBead?: Contour;
  readonly faceLips?: readonly [Point, Point];
  readonly faceUndercuts?: readonly [Contour, Contour];
  readonly rootUndercuts?: readonly [Contour, Contour];
  readonly unfused?: readonly [Contour, Contour];
  readonly deposits?: readonly Region[];
}

/** A single-V butt joint of level plates: plate 1 to the left, its root surface on y = 0. */
export function handButt(butt: HandButt): Section {
  const { t1, t2 = t1, step = 0, opening = 2, setback = 5, rootFace = 1 } = butt;
  const half = opening / 2;
  const [up, down] = [at(0, 1), at(0, -1)];
  const [left, right] = [at(-1, 0), at(1, 0)];
  const root1 = at(-half, 0);
  const nose1 = at(-half, rootFace);
  const edge1 = at(-half - setback, t1);
  const root2 = at(half, step);
  const nose2 = at(half, step + rootFace);
  const edge2 = at(half + setback, step + t2);
  const face = [lineAt(edge1, left, up), lineAt(edge2, right, up)] as const;
  const root = [lineAt(root1, left, down), lineAt(root2, right, down)] as const;
  const welded = butt.faceBead !== undefined;
  return {
    kind: 'butt',
    stage: welded ? 'welded' : 'fitUp',
    form: 'singleV',
    product: 'plate',
    plates: [
      regionOf([root1, nose1, edge1, at(-60, t1), at(-60, 0)]),
      regionOf([root2, at(60, step), at(60, step + t2), edge2, nose2]),
    ],
    plateSurfaces: [
      { face: face[0], opposite: root[0] },
      { face: face[1], opposite: root[1] },
    ],
    welds: [],
    deposits: butt.deposits ?? [],
    backing: null,
    spatter: [],
    face: handSide(face, [edge1, edge2], butt.faceBead, butt.faceUndercuts, butt.faceLips),
    root: handSide(root, [root1, root2], butt.rootBead, butt.rootUndercuts),
    groove: {
      preparedEdges: [pathOf([root1, nose1, edge1]), pathOf([root2, nose2, edge2])],
      faceBevels: [pathOf([nose1, edge1]), pathOf([nose2, edge2])],
      rootBevels: [null, null],
      rootFaces: [pathOf([root1, nose1]), pathOf([root2, nose2])],
      unfused:
        butt.unfused ??
        (welded ? [[], []] : [pathOf([root1, nose1, edge1]), pathOf([root2, nose2, edge2])]),
      void: [regionOf([root1, root2, nose2, edge2, edge1, nose1])],
    },
    filletRoot: null,
  };
}

function handSide(
  surfaces: readonly [SurfaceLine, SurfaceLine],
  grooveEdges: readonly [Point, Point],
  bead: Contour | undefined,
  undercuts: readonly [Contour, Contour] = [[], []],
  lips?: readonly [Point, Point],
): Side {
  const far1 = at(-60, grooveEdges[0].y);
  const far2 = at(60, grooveEdges[1].y);
  const first = bead?.[0]?.a;
  const last = bead?.at(-1)?.b;
  if (bead === undefined || first === undefined || last === undefined) {
    const outline = [...pathOf([far1, grooveEdges[0]]), ...pathOf([grooveEdges[1], far2])];
    return { ...emptySide(surfaces), grooveEdges, outline };
  }
  const beyond = [pathOf([first, far1]), pathOf([last, far2])] as const;
  return {
    outline: [...pathOf([far1, first]), ...bead, ...pathOf([last, far2])],
    surfaces,
    grooveEdges,
    bead,
    toes: [first, last],
    lips: lips ?? [first, last],
    beyond,
    undercuts,
  };
}

/** The same butt joint with plate 2 turned up about its face groove edge, degrees. */
export function tilted(section: Section, degrees: number): Section {
  const [, pivot] = section.face.grooveEdges ?? [at(0, 0), at(0, 0)];
  const turn = polar(1, degrees);
  const spin = ({ x, y }: Vector): Vector => at(x * turn.x - y * turn.y, x * turn.y + y * turn.x);
  const move = (p: Point): Point => {
    const off = spin(at(p.x - pivot.x, p.y - pivot.y));
    return at(pivot.x + off.x, pivot.y + off.y);
  };
  const surface = ({ origin, along, normal }: SurfaceLine): SurfaceLine =>
    lineAt(move(origin), spin(along), spin(normal));
  const side = (of: Side): Side => ({
    ...of,
    surfaces: [of.surfaces[0], surface(of.surfaces[1])],
    grooveEdges: of.grooveEdges && [of.grooveEdges[0], move(of.grooveEdges[1])],
  });
  const path = (of: Contour): Contour =>
    of.map(({ a, b, bulge }) => ({ a: move(a), b: move(b), bulge }));
  const { groove, root, plateSurfaces } = section;
  return {
    ...section,
    plateSurfaces: [
      plateSurfaces[0],
      { face: surface(plateSurfaces[1].face), opposite: surface(plateSurfaces[1].opposite) },
    ],
    face: side(section.face),
    root: root && side(root),
    groove: groove && {
      ...groove,
      preparedEdges: [groove.preparedEdges[0], path(groove.preparedEdges[1])],
      faceBevels: [groove.faceBevels[0], groove.faceBevels[1] && path(groove.faceBevels[1])],
      rootFaces: [groove.rootFaces[0], path(groove.rootFaces[1])],
    },
  };
}
