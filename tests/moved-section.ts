import type { Contour, Point, Region, Segment, Vector } from '../src/geometry/index.ts';
import type { PlateSurfaces, Section, Side, SurfaceLine } from '../src/joint/index.ts';

export interface Motion {
  /** degrees, counter-clockwise */
  readonly turn?: number;
  readonly shift?: Point;
  readonly scale?: number;
  /** left for right, before the turn */
  readonly mirror?: boolean;
}

/** The same section somewhere else, turned, mirrored or at another size; plate 1 stays plate 1. */
export function movedSection(section: Section, motion: Motion): Section {
  const { turn = 0, shift = { x: 0, y: 0 }, scale = 1, mirror = false } = motion;
  const angle = (turn * Math.PI) / 180;
  const [c, s, flip] = [Math.cos(angle), Math.sin(angle), mirror ? -1 : 1];
  const direction = ({ x, y }: Vector): Vector => ({
    x: c * flip * x - s * y,
    y: s * flip * x + c * y,
  });
  const point = (at: Point): Point => {
    const { x, y } = direction(at);
    return { x: x * scale + shift.x, y: y * scale + shift.y };
  };
  const path = (contour: Contour): Contour =>
    contour.map(({ a, b, bulge }) => ({ a: point(a), b: point(b), bulge: flip * bulge }));
  const backwards = ({ a, b, bulge }: Segment): Segment => ({ a: b, b: a, bulge: -bulge });
  // metal stays on the left
  const region = (of: Region): Region => (mirror ? path(of).map(backwards).reverse() : path(of));
  const pair = <T, U>([first, second]: readonly [T, T], move: (one: T) => U): [U, U] => [
    move(first),
    move(second),
  ];
  const surface = ({ origin, along, normal }: SurfaceLine): SurfaceLine => ({
    origin: point(origin),
    along: direction(along),
    normal: direction(normal),
  });
  const surfaces = ({ face, opposite }: PlateSurfaces): PlateSurfaces => ({
    face: surface(face),
    opposite: surface(opposite),
  });
  const side = (of: Side): Side => ({
    outline: path(of.outline),
    surfaces: pair(of.surfaces, surface),
    grooveEdges: of.grooveEdges && pair(of.grooveEdges, point),
    bead: of.bead && path(of.bead),
    toes: of.toes && pair(of.toes, point),
    lips: of.lips && pair(of.lips, point),
    beyond: pair(of.beyond, path),
    undercuts: pair(of.undercuts, path),
  });
  const bevel = (of: Contour | null): Contour | null => of && path(of);
  const { groove, filletRoot } = section;
  return {
    ...section,
    plates: pair(section.plates, region),
    plateSurfaces: pair(section.plateSurfaces, surfaces),
    welds: section.welds.map(region),
    deposits: section.deposits.map(region),
    backing: section.backing && region(section.backing),
    spatter: section.spatter.map(region),
    face: side(section.face),
    root: section.root && side(section.root),
    groove: groove && {
      preparedEdges: pair(groove.preparedEdges, path),
      faceBevels: pair(groove.faceBevels, bevel),
      rootBevels: pair(groove.rootBevels, bevel),
      rootFaces: pair(groove.rootFaces, path),
      unfused: pair(groove.unfused, path),
      void: groove.void.map(region),
    },
    filletRoot: filletRoot && {
      weldRoots: filletRoot.weldRoots.map(point),
      plate2Corner: point(filletRoot.plate2Corner),
      edge: filletRoot.edge && path(filletRoot.edge),
    },
  };
}
