import { SMALL, textWidth } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { label, line } from '../drawing/shapes.js'
import { point } from '../geometry/point.js'
import { radians } from '../units/convert.js'

/** A mark on the fence's edge and what stands above it. */
export interface Mark {
  readonly x: number
  readonly text: string
}

/** From one upright label to the next. */
const APART = SMALL * 1.45
/** Room for the lines that lead from the marks to their labels. */
const LEAD = 4

/**
 * Upright labels above marks on the line y = 0, each over its mark or, where they crowd, beside it with a line that leads
 * there. Undefined when the width does not hold them.
 *
 * @param marks from left to right
 */
export const markLabels = (
  marks: readonly Mark[],
  width: number,
): { readonly shapes: readonly Shape[]; readonly height: number } | undefined => {
  if (marks.length * APART > width) return undefined
  const places = spread(
    marks.map(({ x }) => x),
    width,
  )
  const shapes = marks.flatMap(({ x, text }, index): Shape[] => {
    const place = places[index] ?? x
    const foot = point(place, LEAD)
    return [
      line('DIM', point(x, 0), foot),
      label(text, point(place + SMALL / 2, LEAD + 0.8), {
        layer: 'DIM',
        height: SMALL,
        anchor: 'start',
        turn: radians(Math.PI / 2),
      }),
    ]
  })
  const longest = Math.max(0, ...marks.map(({ text }) => textWidth(text, SMALL)))
  return { shapes, height: LEAD + 1 + longest }
}

/** Moved to the right until each has room, and back to the left where the last ones leave the width. */
const spread = (wanted: readonly number[], width: number): number[] => {
  const places: number[] = []
  for (const x of wanted) places.push(Math.max(x, (places.at(-1) ?? -Infinity) + APART))
  let most = width
  for (let index = places.length - 1; index >= 0; index--) {
    places[index] = Math.min(places[index] ?? 0, most)
    most = (places[index] ?? 0) - APART
  }
  return places
}
