import type { Extents } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'
import { type Motion, moveBy } from '../paper/motion.js'
import type { GreyImage } from './read-pgm.js'
import { along, type Darkness, type Mask } from './taped-image.js'

export const DOTS_PER_INCH = 400
export const DOTS_PER_MM = DOTS_PER_INCH / 25.4

/** Half the width of a line's profile, in mm, and its step. */
const REACH = 1.2
const STEP = 0.02

/** Middles and widths of ink across lines, every millimetre, where nothing of the sheets' furniture is near. */
export const profiles = (
  figure: readonly (readonly Point[])[],
  onTaped: Darkness,
  onSingle: Darkness,
  masks: readonly Mask[],
) => {
  let [displaced, wider, narrower, count] = [0, 0, 0, 0]
  for (const { at, across } of figure.flatMap((chain) => [...along(chain, 1)])) {
    const spots = Array.from({ length: (2 * REACH) / STEP + 1 }, (_, index) => index * STEP - REACH).map(
      (off) => ({
        off,
        spot: { x: at.x + off * across.x, y: at.y + off * across.y },
      }),
    )
    if (spots.some(({ spot }) => masks.some((mask) => mask.hides(spot)))) continue
    const [one, two] = [onTaped, onSingle].map((image) => {
      const dark = spots.map(({ spot }) => image(spot))
      const ink = dark.reduce((sum, value) => sum + value * STEP, 0)
      const middle =
        dark.reduce((sum, value, index) => sum + value * STEP * (spots[index]?.off ?? 0), 0) / ink
      return { ink, middle }
    })
    // Between dashes there is nothing to measure, beside other lines it cannot be told which is measured.
    if (!one || !two || two.ink < 0.05 || !isAlone(spots, onSingle)) continue
    count++
    // Where there is no ink at all it has no middle.
    const off = one.ink < 0.01 ? REACH : Math.abs(one.middle - two.middle)
    displaced = Math.max(displaced, off)
    wider = Math.max(wider, one.ink - two.ink)
    narrower = Math.max(narrower, two.ink - one.ink)
  }
  return { displaced, wider, narrower, count }
}

const isAlone = (
  spots: readonly { readonly off: number; readonly spot: Point }[],
  image: Darkness,
): boolean => spots.every(({ off, spot }) => Math.abs(off) < 0.5 || image(spot) < 0.01)

/** The longest stretch of a line, in mm, that the single page shows and the taped ones do not, nor anything beside it. */
export const longestBreak = (
  figure: readonly (readonly Point[])[],
  onTaped: Darkness,
  onSingle: Darkness,
): number => {
  const step = 0.02
  let longest = 0
  for (const chain of figure) {
    const places = [...along(chain, step)].map((place) => ({ ...place, wanted: onSingle(place.at) }))
    const dark = places.map(({ wanted }) => (wanted > 0.2 ? 1 : 0))
    let run = 0
    places.forEach(({ at, across, wanted }, index) => {
      // Ends of dashes are no breaks; at a seam the edge's own line, light blue, lies on the drawing's.
      const solid = dark.slice(Math.max(0, index - 15), index + 16).every((one) => one === 1)
      const found = [-0.08, -0.04, 0, 0.04, 0.08].map((off) =>
        onTaped({ x: at.x + off * across.x, y: at.y + off * across.y }),
      )
      run = solid && Math.max(...found) < Math.min(wanted / 2, 0.3) ? run + step : 0
      longest = Math.max(longest, run)
    })
  }
  return longest
}

/** A picture's dots, where they come to lie, and which of them are seen there. */
export interface Laid {
  readonly dots: GreyImage
  readonly onTable: Motion
  readonly frame: Extents
  readonly isSeen: (at: Point) => boolean
}

/** Dark dots inside a frame that have nothing dark within 0.1 mm on the other picture. */
export const strayInk = (
  { dots, onTable, frame, isSeen }: Laid,
  other: Darkness,
  masks: readonly Mask[],
): Point[] => {
  const found: Point[] = []
  const [left, right] = [frame.min.x, frame.max.x].map((x) => Math.round(x * DOTS_PER_MM))
  const [top, low] = [frame.max.y, frame.min.y].map((y) => Math.round(dots.down - y * DOTS_PER_MM))
  for (let row = top ?? 0; row < (low ?? 0); row++) {
    for (let column = left ?? 0; column < (right ?? 0); column++) {
      if (dots.at(column, row) > LIGHT) continue
      const at = moveBy(onTable, {
        x: (column + 0.5) / DOTS_PER_MM,
        y: (dots.down - row - 0.5) / DOTS_PER_MM,
      })
      if (other(at) > 0.1 || masks.some((mask) => mask.hides(at)) || !isSeen(at)) continue
      if (!AROUND.some((by) => other({ x: at.x + by.x, y: at.y + by.y }) > 0.1)) found.push(at)
    }
  }
  return found
}

/** The palest layer, light blue, is 150 in grey. */
const LIGHT = 178

const AROUND = [0.05, 0.1].flatMap((radius) =>
  Array.from({ length: 8 }, (_, step) => ({
    x: radius * Math.cos((step * Math.PI) / 4),
    y: radius * Math.sin((step * Math.PI) / 4),
  })),
)
