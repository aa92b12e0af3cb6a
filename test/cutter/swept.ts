import {
  areaPathsD,
  differenceD,
  EndType,
  FillRule,
  inflatePathsD,
  intersectD,
  JoinType,
  type PathsD,
  unionD,
} from 'clipper2-ts'
import { edges, type Outline } from '../../src/geometry/outline.js'
import { type Point, point } from '../../src/geometry/point.js'

/*
 * What a disc takes away that is led along a line: the Minkowski sum of both, by an independent library (Clipper2) that
 * knows nothing of how the line was found. It works on integers of 10^-6 mm.
 */

const DECIMALS = 6
/** How far a disc's polygon may leave its circle, in mm. */
const ROUND = 0.0005

/** How far the pieces that stand for an arc may leave it, in mm; more on arcs that are larger than any tool's. */
const LEAVES = 0.001
const ON_LARGE = { radius: 20, leaves: 0.002 }
/** Of a line round the tip of a part less: a tip of 3° moves by 38 times as much. */
const AT_TIPS = 0.0003

const flat = (outline: Outline, least: number): PathsD => [
  edges(outline).flatMap(({ from, arc }) => {
    if (!arc) return [{ x: from.x, y: from.y }]
    const leaves = arc.radius > ON_LARGE.radius ? ON_LARGE.leaves : least
    const span = 2 * Math.acos(Math.max(0, 1 - leaves / arc.radius))
    const pieces = Math.ceil(Math.abs(arc.sweep) / span)
    return Array.from({ length: pieces }, (_, index) => {
      const angle = arc.start + (arc.sweep * index) / pieces
      return {
        x: arc.centre.x + arc.radius * Math.cos(angle),
        y: arc.centre.y + arc.radius * Math.sin(angle),
      }
    })
  }),
]

/** The region inside closed outlines, those of holes clockwise or not. */
export const inside = (...outlines: Outline[]): PathsD => regionOf(outlines, LEAVES)

const regionOf = (outlines: readonly Outline[], leaves: number): PathsD =>
  unionD(
    outlines.flatMap((outline) => flat(outline, leaves)),
    [],
    FillRule.EvenOdd,
    DECIMALS,
  )

/** What a disc led along the outline takes away. */
export const swept = (outline: Outline, radius: number): PathsD =>
  inflatePathsD(flat(outline, LEAVES), radius, JoinType.Round, EndType.Joined, 2, DECIMALS, ROUND)

/**
 * What stays within the line once a disc has been led along it. A place stays when the disc around it lies within the
 * line: the region inside, eroded by the disc.
 */
export const leftWithin = (outline: Outline, radius: number): PathsD =>
  inflatePathsD(regionOf([outline], AT_TIPS), -radius, JoinType.Round, EndType.Polygon, 2, DECIMALS, ROUND)

/**
 * The opening that is there once a disc has been led along it, and what was inside has fallen out: the sum of the
 * region inside and the disc.
 */
export const openedBy = (outline: Outline, radius: number): PathsD => grown(inside(outline), radius)

export const inBoth = (a: PathsD, b: PathsD): PathsD => intersectD(a, b, FillRule.NonZero, DECIMALS)

/** In mm². */
export const commonArea = (a: PathsD, b: PathsD): number =>
  Math.abs(areaPathsD(intersectD(a, b, FillRule.NonZero, DECIMALS)))

/** In mm², of what `a` has and `b` has not. */
export const areaBeyond = (a: PathsD, b: PathsD): number =>
  Math.abs(areaPathsD(differenceD(a, b, FillRule.NonZero, DECIMALS)))

/** The pieces that a sheet falls into when a disc has been led along lines, open or closed: the area of each, in mm². */
export const piecesLeft = (sheet: Outline, lines: readonly Outline[], radius: number): number[] =>
  differenceD(
    inside(sheet),
    unionD(
      lines.flatMap((line) => {
        const pieces = flat(line, LEAVES)
        const end = line.vertices.at(-1)
        // An open line ends at its last corner, from which no edge goes on.
        const led = line.closed || !end ? pieces : pieces.map((piece) => [...piece, { x: end.x, y: end.y }])
        return inflatePathsD(
          led,
          radius,
          JoinType.Round,
          line.closed ? EndType.Joined : EndType.Round,
          2,
          DECIMALS,
          ROUND,
        )
      }),
      [],
      FillRule.NonZero,
      DECIMALS,
    ),
    FillRule.NonZero,
    DECIMALS,
  )
    .map((piece) => areaPathsD([piece]))
    // Holes run the other way round.
    .filter((area) => area > 0)

/** The same, of each part that lies by itself. */
export const partsBeyond = (a: PathsD, b: PathsD): number[] =>
  differenceD(a, b, FillRule.NonZero, DECIMALS).map((part) => Math.abs(areaPathsD([part])))

/** The region without a seam of the given width along its edge. */
export const shrunk = (region: PathsD, by: number): PathsD =>
  inflatePathsD(region, -by, JoinType.Miter, EndType.Polygon, 2, DECIMALS)

/** The region with a seam of the given width around it, corners rounded. */
export const grown = (region: PathsD, by: number): PathsD =>
  inflatePathsD(region, by, JoinType.Round, EndType.Polygon, 2, DECIMALS, ROUND)

/** Do both regions' edges lie within `by` of each other, so that neither has anything the other has not but a seam? `except` where it does not matter. */
export const sameWithin = (a: PathsD, b: PathsD, by: number, except: PathsD = []): boolean =>
  [
    [a, b],
    [b, a],
  ].every(
    ([one = [], other = []]) =>
      areaBeyond(one, [...grown(other, by), ...except]) < BY_AREA &&
      areaBeyond(shrunk(one, by), [...other, ...except]) < BY_AREA,
  )

/** In mm²: crumbs of the integer grid. */
const BY_AREA = 1e-6

type Side = readonly [Point, Point]

const sidesOfPaths = (paths: PathsD): Side[] =>
  paths.flatMap((path) =>
    path.map(({ x, y }, index): Side => {
      const next = path[(index + 1) % path.length] ?? { x, y }
      return [point(x, y), point(next.x, next.y)]
    }),
  )

const toSide = ({ x, y }: Point, [a, b]: Side): number => {
  const [dx, dy] = [b.x - a.x, b.y - a.y]
  const share = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (dx * dx + dy * dy || 1)))
  return Math.hypot(x - a.x - share * dx, y - a.y - share * dy)
}

/** How far a point is from the region's edge, be it inside or outside. */
export const fromEdge = (at: Point, of: PathsD): number =>
  Math.min(...sidesOfPaths(of).map((side) => toSide(at, side)))

/** The farthest that a corner of either is from the other's edge (Hausdorff distance). */
export const farthestApart = (a: PathsD, b: PathsD): number => {
  const from = (of: PathsD, to: PathsD): number =>
    Math.max(...sidesOfPaths(of).map(([at]) => fromEdge(at, to)))
  return Math.max(from(a, b), from(b, a))
}
