import type { Extents } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Paper, PrintedCheck } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { STRIP_WIDTH, stripHeight } from './strip-room.js'

/** File length over true length, both ways: more than 1 for a printer that prints too small. */
export interface Stretch {
  readonly x: number
  readonly y: number
}

/** A sheet to print on; lengths are true, as a rule measures them on the print. */
export interface Sheet {
  readonly across: Mm
  readonly along: Mm
  readonly stretch: Stretch
  readonly margin: Mm
  /** The part that shows drawings; below it lies the strip with the sheet's furniture. */
  readonly window: Extents
}

const NO_STRETCH: Stretch = { x: 1, y: 1 }

/** What makes up for a printer that prints short or long: file length over true length on an upright sheet. */
export const stretchFor = (printed: PrintedCheck | undefined): Stretch =>
  printed === undefined
    ? NO_STRETCH
    : {
        x: printed.across.of / printed.across.measured,
        y: printed.along.of / printed.along.measured,
      }

/** Paper as a printer takes it when nothing is made up for. */
export const uncorrected = ({ printed: _, ...paper }: Paper): Paper => paper

/** A sheet of a size, upright or on its side: then the printer's two ways change places. */
export const sheetOfSize = (paper: Paper, size: { across: Mm; along: Mm }, onItsSide: boolean): Sheet => {
  const upright = stretchFor(paper.printed)
  const stretch = onItsSide ? { x: upright.y, y: upright.x } : upright
  const [across, along] = onItsSide ? [size.along, size.across] : [size.across, size.along]
  return sheetWith(paper, mm(across / stretch.x), mm(along / stretch.y), stretch)
}

/** A page whose window is as large as asked for, or larger where its furniture needs the width. */
export const sheetAround = (paper: Paper, windowAcross: number, windowAlong: number): Sheet => {
  const across = mm(Math.max(windowAcross, STRIP_WIDTH) + 2 * paper.margin)
  const along = mm(windowAlong + furnitureAlong(paper, across))
  const upright = stretchFor(paper.printed)
  // Like any sheet, it goes through the printer along its longer side.
  return sheetWith(paper, across, along, across > along ? { x: upright.y, y: upright.x } : upright)
}

/** A piece of a roll, cut to hold a window of the given length; its file is as wide as the roll. */
export const pieceOfRoll = (paper: Paper, roll: Mm, windowAlong: number): Sheet =>
  pieceAcross(paper, trueRoll(paper, roll), windowAlong)

/** What a roll's width, or a length of it, measures on the print of a corrected page. */
const trueRoll = ({ printed }: Paper, roll: Mm): Mm => mm(roll / stretchFor(printed).x)

/** The longest piece as it measures on the print of a corrected page, less its furniture and margins. */
export const longestWindow = (paper: Paper, roll: Mm, longest: Mm): number =>
  longest / stretchFor(paper.printed).y - furnitureAlong(paper, trueRoll(paper, roll))

const pieceAcross = (paper: Paper, across: Mm, windowAlong: number): Sheet => {
  const along = mm(windowAlong + furnitureAlong(paper, across))
  return sheetWith(paper, across, along, stretchFor(paper.printed))
}

/** How much of a sheet's length its furniture and margins take. */
export const furnitureAlong = (paper: Paper, across: Mm): number =>
  2 * paper.margin + stripHeight(across - 2 * paper.margin, paper.printed !== undefined)

const sheetWith = (paper: Paper, across: Mm, along: Mm, stretch: Stretch): Sheet => {
  const { margin } = paper
  const strip = stripHeight(across - 2 * margin, paper.printed !== undefined)
  return {
    across,
    along,
    stretch,
    margin,
    window: { min: point(margin, margin + strip), max: point(across - margin, along - margin) },
  }
}

/** Width and height of what a sheet shows. */
export const windowSize = ({ window: { min, max } }: Sheet): { across: number; along: number } => ({
  across: max.x - min.x,
  along: max.y - min.y,
})
