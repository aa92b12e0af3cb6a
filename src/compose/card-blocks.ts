import type { LayerName } from '../drawing/layers.js'
import { reach, TAIL, wrapText } from '../drawing/lettering.js'
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
/** Least white between tails and the accents below them, in the same measure. */
const CLEAR = 0.1

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

/** Lines of text, one below the other; accents stay inside the block and clear of the line above. */
export const lineBlock = (lines: readonly string[], height: number, layer: LayerName = 'NOTE'): Block => {
  const baselines: number[] = []
  lines.forEach((text, row) => {
    const above = lines[row - 1]
    const before = baselines[row - 1]
    const { above: top } = reach(text)
    baselines.push(
      above === undefined || before === undefined
        ? Math.max(1, top)
        : before + Math.max(LINE_SPACING, reach(above).below + top + CLEAR),
    )
  })
  return {
    height: lines.length === 0 ? 0 : height * ((baselines.at(-1) ?? 0) + reach(lines.at(-1) ?? '').below),
    shapes: lines.map((text, row) =>
      label(text, point(0, -height * (baselines[row] ?? 0)), { height, layer }),
    ),
  }
}

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

/** The second block to the right of the first, from `x` on. */
export const beside = (left: Block, right: Block, x: number): Block => ({
  height: Math.max(left.height, right.height),
  shapes: [...left.shapes, ...movedShapes(right.shapes, point(x, 0))],
})

/** White between two blocks side by side. */
export const BETWEEN_COLUMNS = 4

/** Shares of the width that the left one of two blocks may take. */
const SHARES = [0.33, 0.36, 0.4, 0.44, 0.48]

/** Two blocks side by side, so that they take the least height. */
export const sideBySide = (
  inside: number,
  left: (width: number) => Block,
  right: (width: number) => Block,
): Block => {
  const bands = SHARES.map((share): Block => {
    const width = (inside - BETWEEN_COLUMNS) * share
    return beside(left(width), right(inside - BETWEEN_COLUMNS - width), width + BETWEEN_COLUMNS)
  })
  return bands.reduce((least, each) => (each.height < least.height ? each : least))
}

/** Blocks in their order in two columns, split where that takes the least height. */
export const inTwoColumns = (
  inside: number,
  blocks: (width: number) => readonly Block[],
  gap: number,
): Block => {
  const width = (inside - BETWEEN_COLUMNS) / 2
  const all = blocks(width)
  const splits = all.map((_, index) =>
    beside(
      stacked(all.slice(0, index + 1), gap),
      stacked(all.slice(index + 1), gap),
      width + BETWEEN_COLUMNS,
    ),
  )
  return splits.reduce((least, each) => (each.height < least.height ? each : least))
}
