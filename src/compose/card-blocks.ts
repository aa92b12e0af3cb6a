import type { LayerName } from '../drawing/layers.js'
import { TAIL, wrapText } from '../drawing/lettering.js'
import type { Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { label, path } from '../drawing/shapes.js'
import { closedOutline } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import { mm } from '../units/convert.js'

/** Something laid out on the card: its upper left corner is the origin, it hangs `height` mm down from there. */
export interface Block {
  readonly height: number
  readonly shapes: readonly Shape[]
}

/** From baseline to baseline, over the height of a capital. */
const LINE_SPACING = 1.55

export const movedShapes = (shapes: readonly Shape[], by: Point): Shape[] =>
  shapes.map((shape) => movedShape(shape, by))

/** Blocks below one another, `gap` mm apart; empty ones take no room. */
export const stacked = (blocks: readonly Block[], gap: number): Block => {
  const shapes: Shape[] = []
  let height = 0
  for (const block of blocks.filter((each) => each.height > 0)) {
    if (height > 0) height += gap
    shapes.push(...movedShapes(block.shapes, point(0, -height)))
    height += block.height
  }
  return { height, shapes }
}

/** Height that a number of lines take, from the first capital to the last tail. */
export const linesHeight = (count: number, height: number): number =>
  count === 0 ? 0 : height * (LINE_SPACING * (count - 1) + 1 + TAIL)

/** Lines of text, one below the other. */
export const lineBlock = (lines: readonly string[], height: number, layer: LayerName = 'NOTE'): Block => ({
  height: linesHeight(lines.length, height),
  shapes: lines.map((text, row) =>
    label(text, point(0, -height * (1 + row * LINE_SPACING)), { height, layer }),
  ),
})

/** Paragraphs wrapped to the width. */
export const textBlock = (paragraphs: readonly string[], height: number, width: number): Block =>
  lineBlock(
    paragraphs.flatMap((text) => wrapText(text, mm(height), mm(width))),
    height,
  )

/** Text as large as it fits into the given number of lines; the last height takes as many lines as it needs. */
export const fittedText = (
  text: string,
  sizes: readonly { readonly height: number; readonly lines: number }[],
  width: number,
): Block => {
  for (const { height, lines } of sizes) {
    const wrapped = wrapText(text, mm(height), mm(width))
    if (wrapped.length <= lines) return lineBlock(wrapped, height, 'PATTERN')
  }
  return textBlock([text], sizes.at(-1)?.height ?? 0, width)
}

/** Each text behind a box to tick, under a heading. */
export const checkList = (
  heading: string,
  texts: readonly string[],
  height: number,
  width: number,
): Block => {
  const indent = 1.9 * height
  const box = path(
    'NOTE',
    closedOutline([point(0, -height), point(height, -height), point(height, 0), point(0, 0)]),
  )
  const items = texts.map((text): Block => {
    const words = textBlock([text], height, width - indent)
    return { height: words.height, shapes: [box, ...movedShapes(words.shapes, point(indent, 0))] }
  })
  return stacked([headingBlock(heading), stacked(items, 0.4 * height)], 1.5)
}

const HEADING = 3.5

export const headingBlock = (text: string): Block => lineBlock([text.toUpperCase()], HEADING, 'PATTERN')
