import type { Point } from '../../src/geometry/point.js'
import type { ReadPage } from '../read-back/read-pdf.js'

/** What a printer makes of a millimetre: across its path, the short side of a sheet, and along it. */
export interface Printer {
  readonly across: number
  readonly along: number
}

/** Sheets go through a printer upright, however they are written: on a sheet on its side the two ways are swapped. */
export const factorsOn = ({ across, along }: ReadPage, printer: Printer): Point =>
  across > along ? { x: printer.along, y: printer.across } : { x: printer.across, y: printer.along }

/** A page as a steel rule finds it after such a printer. */
export const printedBy = (page: ReadPage, printer: Printer): ReadPage => {
  const factors = factorsOn(page, printer)
  const out = ({ x, y }: Point): Point => ({ x: x * factors.x, y: y * factors.y })
  const clipped = <Mark extends Pick<ReadPage['strokes'][number], 'clip'>>(mark: Mark): Mark =>
    mark.clip ? { ...mark, clip: { min: out(mark.clip.min), max: out(mark.clip.max) } } : mark
  return {
    ...page,
    across: page.across * factors.x,
    along: page.along * factors.y,
    strokes: page.strokes.map((stroke) => clipped({ ...stroke, points: stroke.points.map(out) })),
    lettering: page.lettering.map((text) => clipped({ ...text, at: out(text.at) })),
  }
}
