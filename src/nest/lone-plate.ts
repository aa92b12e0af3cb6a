import { boxOf, type Outline, turnedOutline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { radians } from '../units/convert.js'
import { SAME_POINT } from '../units/tolerance.js'
import { type Panel, type Placed, roomFor } from './panel.js'

/** Ways a plate is turned over half a turn, a half degree apart. */
const TURNS = 360

/** One plate alone on a panel, turned as little as lets it go on; undefined where it goes on by none of the turns tried. */
export const lonePlate = (outline: Outline, panel: Panel): Omit<Placed, 'plate'> | undefined => {
  for (let step = 0; step < TURNS; step++) {
    const turn = (step * Math.PI) / TURNS
    const { min, max } = boxOf([turnedOutline(outline, radians(turn))])
    const { left, right, bottom, top } = roomFor([min, max], panel)
    // A plate as large as the panel's free part goes on.
    if (left <= right + SAME_POINT && bottom <= top + SAME_POINT) return { turn, at: point(left, bottom) }
  }
  return undefined
}
