import { circle, type Outline, type Vertex } from '../geometry/outline.js'
import type { Point } from '../geometry/point.js'
import type { Radians } from '../units/brand.js'
import { mm, radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { LayerName, PenName } from './layers.js'
import { MEDIUM } from './lettering.js'
import type { Label, Path } from './model.js'

export const path = (layer: LayerName, outline: Outline, pen?: PenName): Path => ({
  kind: 'path',
  layer,
  vertices: outline.vertices,
  closed: outline.closed,
  ...(pen ? { pen } : {}),
})

/** Straight edges, or arcs where a vertex has a bulge, from the first to the last vertex. */
export const chain = (layer: LayerName, vertices: readonly Vertex[], pen?: PenName): Path =>
  path(layer, { vertices, closed: false }, pen)

export const line = (layer: LayerName, from: Point, to: Point, pen?: PenName): Path =>
  chain(layer, [from, to], pen)

export const ring = (layer: LayerName, centre: Point, radius: number, pen?: PenName): Path =>
  path(layer, circle(centre, radius), pen)

/** An upright cross of two strokes. */
export const cross = (layer: LayerName, { x, y }: Point, arm: number, pen?: PenName): Path[] => [
  line(layer, { x: x - arm, y }, { x: x + arm, y }, pen),
  line(layer, { x, y: y - arm }, { x, y: y + arm }, pen),
]

/** An arc from `start` to `end`, counter-clockwise, in radians from +x; less than a full turn. */
export const arc = (layer: LayerName, centre: Point, radius: number, start: number, end: number): Path => {
  const at = (direction: number): Point => ({
    x: centre.x + radius * maths.cos(direction),
    y: centre.y + radius * maths.sin(direction),
  })
  return chain(layer, [{ ...at(start), bulge: maths.tan((end - start) / 4) }, at(end)])
}

interface LabelStyle {
  readonly layer?: LayerName
  readonly height?: number
  readonly anchor?: Label['anchor']
  readonly turn?: Radians
}

export const label = (text: string, at: Point, style: LabelStyle = {}): Label => ({
  kind: 'label',
  layer: style.layer ?? 'NOTE',
  text,
  at,
  anchor: style.anchor ?? 'start',
  height: mm(style.height ?? MEDIUM),
  turn: style.turn ?? radians(0),
})

/** A label whose middle, not its baseline, lies on the point. */
export const centredLabel = (text: string, middle: Point, style: LabelStyle = {}): Label => {
  const height = style.height ?? MEDIUM
  const turn = style.turn ?? radians(0)
  const at = { x: middle.x + (maths.sin(turn) * height) / 2, y: middle.y - (maths.cos(turn) * height) / 2 }
  return label(text, at, { ...style, anchor: 'middle' })
}
