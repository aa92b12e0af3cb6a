import { labelBox } from '../drawing/bounds.js'
import type { Shape } from '../drawing/model.js'
import { closedOutline, type Extents, type Outline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Paper } from '../order/order.js'
import { paperSize } from '../tables/paper.js'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { type Bands, bandChoices, pagesOver, type Row } from './bands.js'
import { type Ink, inkExtents, inkOf, inkRaster, turnedInk } from './ink.js'
import { type InkedPages, inkedPages } from './inked-pages.js'
import type { Layout } from './layout.js'
import { PADDING } from './padding.js'
import { seamCuts } from './seam-cuts.js'
import { longestWindow, pieceOfRoll, type Sheet, sheetOfSize, windowSize } from './sheet.js'

/*
 * The search for the fewest pages. It tries every turn of the figure in steps of 2 degrees, sheets upright and
 * on their side, and every offset of the page grid in steps of 5 mm, and of these is exact: pages without ink
 * are left out, and of the ways that take the fewest pages the one with the fewest seams through an arm is taken, then
 * the one with the fewest through words; then the shortest paper of a roll, then the smallest turn, then the most even margins.
 */
const FINE = { turn: 2, shift: 5 }
/** For figures that take very many pages, or whose raster is very large. */
const COARSE = { turn: 10, shift: 20 }
const VERY_MANY = 60
const isVeryLarge = ({ min, max }: Extents): boolean => Math.max(max.x - min.x, max.y - min.y) > 2_000

/** 0, 2, -2, 4 ... 90 degrees: a half turn more takes the same pages. */
const turnsBy = (step: number): Degrees[] =>
  Array.from({ length: 180 / step }, (_, index) =>
    degrees(step * Math.ceil(index / 2) * (index % 2 === 0 ? -1 : 1) + 0),
  )

interface Found {
  readonly sheet: Sheet
  readonly angle: Degrees
  readonly extents: Extents
  readonly x: Bands
  readonly y: Bands
  readonly pages: InkedPages
  /** Seams through pieces. */
  readonly cuts: number
  /** Seams through words and figures, half of which would stand beside a true line until the sheets are taped. */
  readonly wordCuts: number
  /** How far the grid is from lying evenly around the figure, in mm. */
  readonly uneven: number
}

/**
 * Lays a figure on the fewest pages; undefined when that takes more than `most`.
 *
 * @param pieces closed outlines that a seam should rather not run through
 */
export const fewestPages = (
  figure: readonly Shape[],
  pieces: readonly Outline[],
  paper: Paper,
  most = Infinity,
): Layout | undefined => {
  const ink = inkOf(figure)
  const words = figure.flatMap((shape) => (shape.kind === 'label' ? [closedOutline(labelBox(shape))] : []))
  const extents = inkExtents(ink)
  const steps = isVeryLarge(extents) || plainCount(extents, paper) > VERY_MANY ? COARSE : FINE
  let best: Found | undefined
  for (const angle of turnsBy(steps.turn)) {
    best = bestAtTurn({ ink, pieces, words }, paper, angle, steps.shift, most, best)
    if (best?.pages.count === 1 && !('roll' in paper.sheet)) break
  }
  return best && layoutOf(best, paper)
}

const bestAtTurn = (
  { ink, pieces, words }: Sought,
  paper: Paper,
  angle: Degrees,
  shiftStep: number,
  most: number,
  before: Found | undefined,
): Found | undefined => {
  const turned = turnedInk(ink, angle)
  const extents = inkExtents(turned)
  const [across, along] = [extents.max.x - extents.min.x, extents.max.y - extents.min.y]
  let raster: ReturnType<typeof inkRaster> | undefined
  let best = before
  for (const sheet of sheetsFor(paper, extents)) {
    const [rowX, rowY] = rowsOn(sheet, paper.overlap)
    // Pages that hang together and reach over c columns and r rows are at least c + r - 1.
    const least = pagesOver(across, 0, rowX) + pagesOver(along, 0, rowY) - 1
    if (least > most) continue
    if (best && (least > best.pages.count || (least === best.pages.count && isWhole(best) && least > 1)))
      continue
    raster ??= inkRaster(turned, extents)
    const choicesX = bandChoices(across, raster.columns, rowX, shiftStep)
    const choicesY = bandChoices(along, raster.rows, rowY, shiftStep)
    const cuts = seamCuts(pieces, angle, extents.min, rowX, rowY)
    const wordCuts = seamCuts(words, angle, extents.min, rowX, rowY)
    for (const x of choicesX) {
      for (const y of choicesY) {
        const pages = inkedPages(raster, x, y, best?.pages.count ?? most)
        if (!pages) continue
        const equal = best && pages.count === best.pages.count ? best : undefined
        const cut = cuts(pages, x, y, equal?.cuts ?? Infinity)
        if (equal && cut > equal.cuts) continue
        const mostWords = equal && cut === equal.cuts ? equal.wordCuts : Infinity
        const wordCut = wordCuts(pages, x, y, mostWords)
        if (wordCut > mostWords) continue
        const found = {
          sheet,
          angle,
          extents,
          x,
          y,
          pages,
          cuts: cut,
          wordCuts: wordCut,
          uneven: unevenness(x, choicesX, y, choicesY),
        }
        if (!best || isBetter(found, best, paper)) best = found
      }
    }
  }
  return best
}

/** What is laid on pages: its ink, and what a seam should rather not run through. */
interface Sought {
  readonly ink: Ink
  readonly pieces: readonly Outline[]
  readonly words: readonly Outline[]
}

const isWhole = ({ cuts, wordCuts }: Found): boolean => cuts === 0 && wordCuts === 0

const unevenness = (x: Bands, [centredX]: readonly Bands[], y: Bands, [centredY]: readonly Bands[]): number =>
  Math.abs(x.start - (centredX ?? x).start) + Math.abs(y.start - (centredY ?? y).start)

/**
 * Fewer pages; or as many, and fewer seams through pieces, then through words; or else a shorter roll, a smaller turn,
 * more even margins.
 */
const isBetter = (found: Found, best: Found, paper: Paper): boolean => {
  const paperLength = ({ pages, sheet }: Found) => ('roll' in paper.sheet ? pages.count * sheet.along : 0)
  const rank = (each: Found): readonly number[] => [
    each.pages.count,
    each.cuts,
    each.wordCuts,
    paperLength(each),
    Math.abs(each.angle),
    each.uneven,
  ]
  const [ours, theirs] = [rank(found), rank(best)]
  const first = ours.findIndex((value, index) => Math.abs(value - (theirs[index] ?? 0)) > RANK_NOISE)
  return first >= 0 && (ours[first] ?? 0) < (theirs[first] ?? 0)
}

const RANK_NOISE = 1e-6

/** Sheets of a plain grid: the figure as it stands, in a whole rectangle of sheets, upright or on their side. */
export const plainCount = (extents: Extents, paper: Paper): number => {
  if ('single' in paper.sheet) return 1
  const [across, along] = [extents.max.x - extents.min.x, extents.max.y - extents.min.y]
  return Math.min(
    ...sheetsFor(paper, extents).map((sheet) => {
      const [rowX, rowY] = rowsOn(sheet, paper.overlap)
      return pagesOver(across, 0, rowX) * pagesOver(along, 0, rowY)
    }),
  )
}

/** The sheets to try: a size upright and on its side, or even pieces of a roll. */
export const sheetsFor = (paper: Paper, { min, max }: Extents): readonly Sheet[] => {
  const { sheet } = paper
  if ('size' in sheet) {
    const size = paperSize(sheet.size)
    return [false, true].map((onItsSide) => sheetOfSize(paper, size, onItsSide))
  }
  if ('single' in sheet) throw new RangeError('a single page needs no search')
  const along = max.y - min.y + 2 * PADDING
  const longest = longestWindow(paper, sheet.roll, sheet.longest)
  const pieces = pagesOver(along, 0, { window: longest, pitch: longest - paper.overlap })
  const each = (along + (pieces - 1) * paper.overlap) / pieces
  return [pieceOfRoll(paper, sheet.roll, each)]
}

/** How pages lie side by side across and along. */
const rowsOn = (sheet: Sheet, overlap: number): readonly [Row, Row] => {
  const { across, along } = windowSize(sheet)
  const row = (window: number): Row => ({ window: window - 2 * PADDING, pitch: window - overlap })
  return [row(across), row(along)]
}

const layoutOf = ({ sheet, angle, extents, x, y, pages }: Found, { overlap }: Paper): Layout => {
  const [columns, rows] = [x.pages, y.pages]
  return {
    sheet,
    angle,
    columns,
    rows,
    overlap,
    firstRow: 0,
    origin: point(extents.min.x + x.start - PADDING, extents.min.y + y.start - PADDING),
    printed: Array.from({ length: columns * rows }, (_, index) => {
      const fromBelow = rows - 1 - Math.floor(index / columns)
      return pages.printed[fromBelow * columns + (index % columns)] === 1
    }),
  }
}
