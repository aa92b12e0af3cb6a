import { kite, kiteInscribed, kiteOutline } from '../geometry/kite.js'
import { boxOf, circle, closedOutline, moved, type Outline, rectangle } from '../geometry/outline.js'
import { type Point, point, scale, turn } from '../geometry/point.js'
import type { Cutter, JigStock } from '../order/order.js'
import { removedWidth } from '../order/removed-width.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { degrees, mm, toRadians } from '../units/convert.js'
import type { Jig } from './jig.js'

/** In mm: a window has at least so much room across, for its words, which stand in a strip below it. */
export const WORDS_ACROSS = 40
const WORDS_HIGH = 24

/** One opening of the window, by how much it is wider than the arm on every edge. */
export interface Window {
  readonly wider: Mm
  /** Where its words belong. */
  readonly words: Point
}

/**
 * A plate with the finished arm's opening three times, side by side: wider by the tolerance on every edge, as planned,
 * and narrower by it. A good arm drops through the first and not through the last. Between and around them the plate
 * is at least as wide as it is thick.
 *
 * @returns undefined when the tolerance leaves nothing of the narrowest opening
 */
export const trialWindow = (
  { star }: StarPlan,
  stock: JigStock,
  cutter: Cutter,
): (Jig & { readonly windows: readonly Window[] }) | undefined => {
  const upright = toRadians(degrees(-90 - star.tipAngle / 2))
  const lies = kiteOutline(kite(star)).vertices.map((corner) => turn(corner, upright))
  const wall = stock.thickness + 2 * removedWidth(cutter)
  // One circle touches all edges of a kite: moved by d, it is the same kite, larger by d over that circle's radius.
  const inscribed = kiteInscribed(star)
  if (stock.tolerance >= inscribed) return undefined
  const openings = [stock.tolerance, 0, -stock.tolerance].map((wider) => ({
    wider: mm(wider),
    outline: closedOutline(lies.map((corner) => scale(corner, 1 + wider / inscribed))),
  }))
  let x = wall
  const placed: (Window & { readonly outline: Outline })[] = []
  for (const { wider, outline } of openings) {
    const { min, max } = boxOf([outline])
    const across = Math.max(WORDS_ACROSS, max.x - min.x)
    const middle = x + across / 2
    placed.push({
      wider,
      outline: moved(outline, point(middle - (min.x + max.x) / 2, WORDS_HIGH + wall - min.y)),
      words: point(middle, (WORDS_HIGH + wall) / 2),
    })
    x += across + wall
  }
  const hangs = stock.bolt / 2 + stock.thickness
  const top = Math.max(...placed.map(({ outline }) => boxOf([outline]).max.y)) + wall
  const right = x + 2 * hangs
  const nominal = placed[1]
  return {
    name: 'trial-window',
    parts: [
      {
        name: 'trial window',
        word: 'window',
        outer: rectangle(0, 0, right, top),
        inner: [
          ...placed.map(({ outline }) => outline),
          circle(point(right - hangs, top - hangs), stock.bolt / 2),
        ],
        seats: placed.flatMap(({ outline }) => outline.vertices),
        marks: [],
      },
    ],
    ...(nominal ? { inUse: { wood: [nominal.outline] } } : {}),
    hands: [],
    windows: placed.map(({ wider, words }) => ({ wider, words })),
  }
}
