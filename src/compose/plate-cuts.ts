import { withTabs } from '../cutter/tabs.js'
import type { Shape } from '../drawing/model.js'
import { cross, path } from '../drawing/shapes.js'
import { boxOf } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { Cutter } from '../order/order.js'
import { removedWidth } from '../order/removed-width.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import { radians } from '../units/convert.js'
import { partLettering } from './jig-letters.js'

/** Arm of the cross where a nail or screw goes. */
const NAIL = 2
/** Arm of the centre cross, which is only to read. */
export const CENTRE_CROSS = 3

export const nailMarks = ({ fixing }: BackingPlan): Shape[] =>
  (fixing?.marks ?? []).flatMap((mark) => cross('MARK', mark, NAIL))

/**
 * What a cutter does to one plate: holes, then the outline with the order's tabs, then the marks: where nails go, and
 * which way is up.
 */
export const plateCuts = (plate: BackingPlan, cutter: Cutter): Shape[] => {
  const { outer, inner } = plate.cut
  const outlines =
    cutter.kind === 'router' && cutter.tabs ? withTabs(outer, cutter.tabs, removedWidth(cutter)) : [outer]
  return [
    ...inner.map((opening) => path('CUT-INSIDE', opening)),
    ...outlines.map((outline) => path('CUT-OUTSIDE', outline)),
    ...nailMarks(plate),
    ...upMark(plate),
  ]
}

/** The word UP above the plate's centre, or wherever on the plate it finds room; else an arrow; nothing where that has none. */
export const upMark = (plate: BackingPlan): Shape[] => {
  const crosses = [...nailMarks(plate), ...cross('GUIDE', point(0, 0), CENTRE_CROSS)]
  const marks = crosses.flatMap((mark) => (mark.kind === 'path' ? [mark] : []))
  const part = { ...plate.part, marks }
  const above = boxOf([plate.outline]).max.y / 2
  const lettered = (text: string, near?: Point): Shape[] =>
    partLettering(part, [{ text, turn: radians(0), ...(near ? { near } : {}) }])
  const tried = ['UP', '↑'].flatMap((text) => [() => lettered(text, point(0, above)), () => lettered(text)])
  for (const letter of tried) {
    const found = letter()
    if (found.length > 0) return found
  }
  return []
}
