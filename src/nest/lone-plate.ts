import type { Outline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { isEmpty, type Panel, type Placed, roomFor, turned } from './panel.js'
import { containing } from './polygon.js'

/** Ways a plate is turned over half a turn, a half degree apart. */
const TURNS = 360

/** One plate alone on a panel, turned as little as lets it go on; undefined where it goes on by none of the turns tried. */
export const lonePlate = (outline: Outline, panel: Panel): Omit<Placed, 'plate'> | undefined => {
  const polygon = containing(outline)
  for (let step = 0; step < TURNS; step++) {
    const turn = (step * Math.PI) / TURNS
    const room = roomFor(turned(polygon, turn), panel)
    if (!isEmpty(room)) return { turn, at: point(room.left, room.bottom) }
  }
  return undefined
}
