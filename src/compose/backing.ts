import { labelBox } from '../drawing/bounds.js'
import { reach, TAIL, wrapText } from '../drawing/lettering.js'
import type { Drawing, Label, Shape } from '../drawing/model.js'
import { cross, label, path } from '../drawing/shapes.js'
import { insetLimit } from '../geometry/inset.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { BackingPlan, StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import { showLength } from '../units/show.js'
import { sizeText } from './size-text.js'

/** Lettering as large as fits, from a title's height down to what a printer still renders. */
const HEIGHTS = [5, 3.5, 2.5, 1.8]

/** Arm of the centre cross. */
const CROSS = 3

/** White around the cross and inside the outline. */
const WHITE = 1

/** From line to line, over the height of a capital. */
const LINE_SPACING = 1.7

/**
 * The plate behind the star, one tip up, at true size: no allowance for the cutter's kerf. Its note lies inside the
 * outline, so that the file's overall size is the outline's own and can be compared with what the cutter's software
 * shows.
 */
export const backing = (plan: StarPlan, plate: BackingPlan, order: Order): Drawing => {
  const trueSize = { across: plate.across, height: plate.height }
  const lines = [
    sizeText(trueSize, order.lengths),
    `drawn in mm, inset ${showLength(plate.inset, order.lengths)}`,
    'true size, no kerf allowance',
  ]
  const title = `${plan.order.name}: backing`
  const plain: Shape[] = [path('CUT-OUTSIDE', plate.outline), ...cross('GUIDE', point(0, 0), CROSS)]
  const up = label('UP', point(0, CROSS + WHITE + TAIL * UP), { height: UP, anchor: 'middle' })
  return {
    kind: 'backing',
    title,
    trueSize,
    shapes: [...plain, ...noteInside(title, lines, insetLimit(plan.star, plate.shape) - plate.inset)],
    // On paper the note goes where no seam runs through it.
    figure: [...plain, up],
    notes: { title, lines },
    asides: [up],
    pieces: [plate.outline],
  }
}

/** Height of the word on paper that says which tip is the top one. */
const UP = mm(3.5)

/** From line to line where accents would meet tails otherwise. */
const tallSpacing = (text: string): number => reach(text).above + reach(text).below + 0.2

/**
 * Lines above and below the centre cross, inside the circle that the outline holds: as large as fits, the name broken
 * only where it finds no room otherwise. What finds none even so is left out, for a line outside would make the file
 * larger than the outline.
 */
const noteInside = (name: string, below: readonly string[], radius: number): Label[] => {
  const room = radius - WHITE
  const layOut = (names: readonly string[], height: number): Label[] => {
    const above = [...names, 'UP']
    const spacing = Math.max(LINE_SPACING, ...above.map(tallSpacing))
    return [
      ...above.map((text, row) => {
        const fromCross = above.length - 1 - row
        return label(text, point(0, CROSS + WHITE + (TAIL + fromCross * spacing) * height), {
          height,
          anchor: 'middle',
        })
      }),
      ...below.map((text, row) =>
        label(text, point(0, -CROSS - WHITE - height - row * LINE_SPACING * height), {
          height,
          anchor: 'middle',
        }),
      ),
    ]
  }
  const fits = (each: Label): boolean => labelBox(each).every(({ x, y }) => Math.hypot(x, y) < room)
  const whole = HEIGHTS.map((height) => layOut([name], height))
  const broken = HEIGHTS.map((height) => layOut(wrapText(name, mm(height), mm(1.6 * room)), height))
  return [...whole, ...broken].find((labels) => labels.every(fits)) ?? (whole.at(-1) ?? []).filter(fits)
}
