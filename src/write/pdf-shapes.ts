import { LAYERS, type Pen, penOf } from '../drawing/layers.js'
import type { Path, Shape } from '../drawing/model.js'
import { type Arc, edges } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import { toPoints } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { Document } from './pdf-document.js'
import { letter, lineOf } from './pdf-lettering.js'

/** Turns a place in mm into the page's points, y down. */
export interface OnPage {
  readonly x: (at: number) => number
  readonly y: (at: number) => number
}

/** A curve spans at most this much; the radial error of one Bezier is then below 1e-6 of the radius. */
const CURVE_SPAN = Math.PI / 8

/** What the pen is set to; a new setting is written only when it changes. */
interface PenState {
  pen: Pen | undefined
  colour: string
}

/** Layer by layer, paths with one pen as one stroke, lettering after the lines. */
export const drawShapes = (document: Document, shapes: readonly Shape[], { x, y }: OnPage): void => {
  const state: PenState = { pen: undefined, colour: '' }
  for (const { name, colour } of LAYERS) {
    const onLayer = shapes.filter(({ layer }) => layer === name)
    let open = false
    for (const shape of onLayer) {
      if (shape.kind !== 'path') continue
      const pen = penOf(shape)
      if (pen !== state.pen || colour !== state.colour) {
        if (open) document.stroke()
        takePen(document, pen, colour)
        Object.assign(state, { pen, colour })
      }
      tracePath(document, shape, x, y)
      open = true
    }
    if (open) document.stroke()
    for (const shape of onLayer) {
      if (shape.kind === 'label') letter(document, lineOf(shape), x(shape.at.x), y(shape.at.y))
    }
  }
}

const takePen = (document: Document, { width, dashes }: Pen, colour: string): void => {
  document.lineWidth(toPoints(width)).lineJoin('round').lineCap('butt').strokeColor(colour)
  takeDashes(document, dashes)
}

/** Dash and gap lengths by turns, in mm; pdfkit takes a list, its types do not know it. */
export const takeDashes = (document: Document, dashes: readonly number[]): void => {
  if (dashes.length === 0) document.undash()
  else document.dash(dashes.map((dash) => toPoints(dash)) as unknown as number, {})
}

const tracePath = (
  document: Document,
  shape: Path,
  x: (at: number) => number,
  y: (at: number) => number,
): void => {
  const [start] = shape.vertices
  if (!start) return
  document.moveTo(x(start.x), y(start.y))
  for (const { to, arc } of edges(shape)) {
    if (arc) traceArc(document, arc, x, y)
    else if (to !== start) document.lineTo(x(to.x), y(to.y))
  }
  if (shape.closed) document.closePath()
}

/** One Bezier per {@link CURVE_SPAN}: handles of 4/3 tan(span / 4) of the radius. */
const traceArc = (
  document: Document,
  { centre, radius, start, sweep }: Arc,
  x: (at: number) => number,
  y: (at: number) => number,
): void => {
  const steps = Math.ceil(Math.abs(sweep) / CURVE_SPAN)
  const span = sweep / steps
  const handle = radius * (4 / 3) * maths.tan(span / 4)
  const on = (direction: number): Point =>
    point(centre.x + radius * maths.cos(direction), centre.y + radius * maths.sin(direction))
  for (let step = 0; step < steps; step++) {
    const [from, to] = [start + step * span, start + (step + 1) * span]
    const [a, b] = [on(from), on(to)]
    document.bezierCurveTo(
      x(a.x - handle * maths.sin(from)),
      y(a.y + handle * maths.cos(from)),
      x(b.x + handle * maths.sin(to)),
      y(b.y - handle * maths.cos(to)),
      x(b.x),
      y(b.y),
    )
  }
}
