import { outlineSides } from '../drawing/sides.js'
import { crossingsAt } from '../geometry/crossings.js'
import { type Outline, turnedOutline } from '../geometry/outline.js'
import { type Point, point, subtract } from '../geometry/point.js'
import type { Degrees } from '../units/brand.js'
import { mm, toRadians } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import type { Bands, Row } from './bands.js'
import type { InkedPages } from './inked-pages.js'
import { PADDING } from './padding.js'

/** Where lines run inside one piece: in and out by turns, along each line. */
type Crossed = readonly (readonly number[])[]

/** A cut through tape and trimmed paper this near to an edge cannot be followed. */
const BESIDE = mm(2)

/** How many seams of some printed pages of a grid. */
type SeamCounter = (pages: InkedPages, x: Bands, y: Bands, most: number) => number

/**
 * Counts the seams between printed pages that run through pieces or close beside their edges, a piece and a seam at a
 * time; more than `most` are not counted on.
 *
 * @param pieces as they stand before the turn
 * @param corner lower left corner of the turned ink, from which the bands are measured
 */
export const seamCuts = (
  pieces: readonly Outline[],
  angle: Degrees,
  corner: Point,
  rowX: Row,
  rowY: Row,
): SeamCounter => {
  const turned = pieces.map((piece) =>
    outlineSides(turnedOutline(piece, toRadians(angle))).map(([from]) => subtract(from, corner)),
  )
  const level = turned
  const upright = turned.map((corners) => corners.map(({ x, y }) => point(y, x)))
  const across = remembered((bands) => seamLines(bands, rowX, -PADDING, upright))
  // The upper edge of the lower page is the one that is trimmed.
  const along = remembered((bands) => seamLines(bands, rowY, rowY.window - rowY.pitch + PADDING, level))
  return ({ printed }, x, y, most) => {
    let count = 0
    const both = (page: number, other: number): boolean => printed[page] === 1 && printed[other] === 1
    for (const [column, crossed] of across(x).entries()) {
      for (let row = 0; row < y.pages && count <= most; row++) {
        const page = row * x.pages + column
        if (both(page, page + 1)) count += crossedWithin(crossed, y, row, rowY)
      }
    }
    if (count > most) return count
    for (const [row, crossed] of along(y).entries()) {
      for (let column = 0; column < x.pages && count <= most; column++) {
        const page = row * x.pages + column
        if (both(page, page + x.pages)) count += crossedWithin(crossed, x, column, rowX)
      }
    }
    return count
  }
}

/** For the seam after each page but the last: where it runs inside pieces. */
const seamLines = (
  { start, pages }: Bands,
  { pitch }: Row,
  beyond: number,
  pieces: readonly (readonly Point[])[],
): Crossed[][] => {
  const lines: Crossed[][] = []
  for (let page = 1; page < pages; page++) {
    const line: Crossed[] = []
    for (const corners of pieces) {
      const seam = start + page * pitch + beyond
      const crossings = [seam - BESIDE, seam, seam + BESIDE].map((level) => crossingsAt(corners, level))
      if (crossings.some(({ length }) => length > 0)) line.push(crossings)
    }
    lines.push(line)
  }
  return lines
}

/** How many pieces the seam meets beside one page. */
const crossedWithin = (crossed: readonly Crossed[], { start }: Bands, page: number, row: Row): number => {
  const from = start + page * row.pitch - PADDING
  const to = from + row.window + 2 * PADDING
  return crossed.filter((lines) => lines.some((crossings) => runsInside(crossings, from, to))).length
}

const runsInside = (crossings: readonly number[], from: number, to: number): boolean => {
  for (let index = 0; index + 1 < crossings.length; index += 2) {
    const [enter, leave] = [crossings[index] as number, crossings[index + 1] as number]
    if (Math.min(to, leave) - Math.max(from, enter) > SHOP) return true
  }
  return false
}

const remembered = <Value>(work: (bands: Bands) => Value): ((bands: Bands) => Value) => {
  const known = new Map<Bands, Value>()
  return (bands) => {
    const found = known.get(bands) ?? work(bands)
    known.set(bands, found)
    return found
  }
}
