import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { path } from '../drawing/shapes.js'
import { rectangle } from '../geometry/outline.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { Block } from './card-blocks.js'
import type { CardSize } from './card-size.js'

/** White inside the frame. */
export const PADDING = 3

/** How wide a block may be inside the frame. */
export const insideFrame = (across: Mm): number => across - 2 * PADDING

/** A card: its frame, the lower left corner at the origin, and what stands in it. */
export const framedCard = (
  { kind, title }: Pick<Drawing, 'kind' | 'title'>,
  across: Mm,
  height: number,
  shapes: readonly Shape[],
): Drawing =>
  notedDrawing({
    kind,
    title,
    trueSize: { across, height: mm(height) },
    figure: [path('NOTE', rectangle(0, 0, across, height)), ...shapes],
    asides: [],
    pieces: [],
  })

/**
 * Blocks in their order on as few cards as hold them; one that is higher than a card has one of its own.
 *
 * @param heightOf what a card with these blocks takes, its padding included
 */
export const onCards = <B extends Block>(
  blocks: readonly B[],
  { height }: CardSize,
  heightOf: (blocks: readonly B[]) => number,
): B[][] => {
  const cards: B[][] = []
  for (const block of blocks) {
    const last = cards.at(-1)
    if (last && heightOf([...last, block]) <= height) last.push(block)
    else cards.push([block])
  }
  return cards
}
