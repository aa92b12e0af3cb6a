import { labelBox } from '../drawing/bounds.js'
import { textWidth } from '../drawing/lettering.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { movedShape, turnedShapes } from '../drawing/moved.js'
import { boxIsClear } from '../drawing/place-label.js'
import { centredLabel, path } from '../drawing/shapes.js'
import { rectangle } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { FilledPanel, PanelPlan } from '../panels/panel-plan.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import { mm, radians } from '../units/convert.js'
import { plateCuts } from './plate-cuts.js'
import { sizeInName } from './size-text.js'

/** Height of a star's name on its plates. */
const NAME = mm(5)

/** One panel as the cutter gets it, its lower left corner at the origin: all holes and outlines, and the panel's edge. */
export const panelDrawing = ({ filled, title }: NumberedPanels, { order }: Plan): Drawing => {
  const { panel, plates } = filled
  const cuts = new Map<StarPlan, readonly Shape[]>()
  const cutsOf = ({ star }: FilledPanel['plates'][number]): readonly Shape[] => {
    const known = cuts.get(star)
    if (known) return known
    const plate = plateCuts(star.backing, order.shop.cutter)
    const made = [...plate, ...nameOf(star, plate)]
    cuts.set(star, made)
    return made
  }
  const shapes: Shape[] = [
    path('GUIDE', rectangle(0, 0, panel.length, panel.width)),
    ...plates.flatMap((laid) =>
      turnedShapes(cutsOf(laid), radians(laid.turn)).map((shape) => movedShape(shape, laid.at)),
    ),
  ]
  return {
    kind: 'panel',
    title,
    trueSize: { across: panel.length, height: panel.width },
    shapes,
    figure: shapes,
    asides: [],
    pieces: [],
  }
}

/** White around a name. */
const WHITE = 1

/** To read, below the plate's middle; left out where it is longer than a joint is covered, or has marks in its way. */
const nameOf = ({ order, backing }: StarPlan, cuts: readonly Shape[]): Shape[] => {
  const name = centredLabel(order.name, point(0, -2 * NAME), { height: NAME })
  const fits = textWidth(order.name, NAME) < (backing?.covers ?? 0)
  return fits && boxIsClear(labelBox(name), cuts, WHITE) ? [name] : []
}

/** Panels that are cut alike, with the numbers they have among all. */
export interface NumberedPanels {
  readonly filled: FilledPanel
  readonly first: number
  readonly last: number
  /** `2`, or `2 to 5`. */
  readonly numbers: string
  /** `Winter fair: panels 2 to 5 of 6`. */
  readonly title: string
  /** `panel-2-to-5-2440.0x1220.0mm`, without the ending. */
  readonly fileName: string
}

export const numberedPanels = ({ plan, panels }: PanelPlan): NumberedPanels[] => {
  const count = panels.reduce((sum, { times }) => sum + times, 0)
  let first = 1
  return panels.map((filled) => {
    const { panel, times } = filled
    const last = first + times - 1
    const numbers = times === 1 ? `${first}` : `${first} to ${last}`
    const size = sizeInName({ across: panel.length, height: panel.width })
    const numbered = {
      filled,
      first,
      last,
      numbers,
      title: `${plan.order.title}: ${times === 1 ? 'panel' : 'panels'} ${numbers} of ${count}`,
      fileName: `panel-${numbers.replaceAll(' ', '-')}-${size}`,
    }
    first = last + 1
    return numbered
  })
}
