import polygonClipping, { type MultiPolygon, type Polygon } from 'polygon-clipping'
import type { Point } from '../../src/geometry/point.js'

/*
 * Areas and containment as an independent library sees them (polygon-clipping, Martinez-Rueda). The library works on
 * rings of number pairs and gives no areas, so the shoelace sum stands here. It loses its way among corners that
 * differ only by rounding noise, so corners are first put on a grid.
 */

/** 2^-28 mm, some 4 nm: a binary fraction, so that corners on the grid are exact numbers. */
export const GRID = 2 ** -28

export type Region = MultiPolygon

export const region = (corners: readonly Point[]): Region => [ring(corners)]

const ring = (corners: readonly Point[]): Polygon => [corners.map(({ x, y }) => [onGrid(x), onGrid(y)])]

const onGrid = (value: number): number => Math.round(value / GRID) * GRID + 0

export const union = (regions: readonly Region[]): Region => polygonClipping.union([], ...regions)

export const minus = (region: Region, taken: Region): Region => polygonClipping.difference(region, taken)

export const overlap = (a: Region, b: Region): Region => polygonClipping.intersection(a, b)

/** In mm²; holes are taken off. */
export const areaOf = (region: Region): number =>
  region.reduce(
    (sum, [outer = [], ...holes]) =>
      sum + shoelace(outer) - holes.reduce((taken, hole) => taken + shoelace(hole), 0),
    0,
  )

const shoelace = (corners: readonly (readonly [number, number])[]): number => {
  let twice = 0
  corners.forEach(([x, y], index) => {
    const [nextX, nextY] = corners[(index + 1) % corners.length] ?? [x, y]
    twice += x * nextY - nextX * y
  })
  return Math.abs(twice) / 2
}
