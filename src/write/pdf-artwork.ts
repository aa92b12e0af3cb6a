import { type ArtPath, MITER_LIMIT } from '../drawing/artwork.js'
import type { PlacedArtwork } from '../paper/page.js'
import { toPoints } from '../units/convert.js'
import type { Document } from './pdf-document.js'
import { letter } from './pdf-lettering.js'
import { type OnPage, takeDashes } from './pdf-shapes.js'

/** A piece of sheet furniture, its marks in their own order, colours and fills. */
export const drawArtwork = (document: Document, { artwork, at }: PlacedArtwork, page: OnPage): void => {
  const on: OnPage = { x: (x) => page.x(x + at.x), y: (y) => page.y(y + at.y) }
  for (const mark of artwork.marks) {
    if (mark.kind === 'path') drawPath(document, mark, on)
    else letter(document, mark, on.x(mark.at.x), on.y(mark.at.y))
  }
}

const drawPath = (document: Document, { steps, stroke, fill }: ArtPath, { x, y }: OnPage): void => {
  for (const step of steps) {
    if (step.to === 'move') document.moveTo(x(step.at.x), y(step.at.y))
    else if (step.to === 'line') document.lineTo(x(step.at.x), y(step.at.y))
    else if (step.to === 'start') document.closePath()
    else if (step.to === 'curve') {
      const { from, toward, at } = step
      document.bezierCurveTo(x(from.x), y(from.y), x(toward.x), y(toward.y), x(at.x), y(at.y))
    }
  }
  if (stroke) {
    document.lineWidth(toPoints(stroke.width)).strokeColor(stroke.colour)
    document.lineJoin(stroke.join).lineCap(stroke.cap).miterLimit(MITER_LIMIT)
    takeDashes(document, stroke.dashes)
  }
  const rule = fill?.rule === 'evenodd' ? 'even-odd' : 'non-zero'
  if (fill && stroke) document.fillAndStroke(fill.colour, stroke.colour, rule)
  else if (fill) document.fill(fill.colour, rule)
  else if (stroke) document.stroke()
}
