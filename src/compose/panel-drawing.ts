import { textWidth } from '../drawing/lettering.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { movedShape, turnedShapes } from '../drawing/moved.js'
import { centredLabel, path } from '../drawing/shapes.js'
import { closedOutline, type Outline } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { FilledPanel, PanelPlan } from '../panels/plan-panels.js'
import type { Plan, StarPlan } from '../plan/plan.js'
import { radians } from '../units/convert.js'
import { plateCuts } from './plate-cuts.js'

/** Height of a star's name on its plates. */
const NAME = 5

/** One panel as the cutter gets it, its lower left corner at the origin: all holes and outlines, and the panel's edge. */
export const panelDrawing = (filled: FilledPanel, title: string, { order }: Plan): Drawing => {
  const { panel, plates } = filled
  const cuts = new Map<StarPlan, readonly Shape[]>()
  const cutsOf = ({ star, plate }: FilledPanel['plates'][number]): readonly Shape[] => {
    const known = cuts.get(star)
    if (known) return known
    const made = [...plateCuts(plate, order.shop.cutter), ...nameOf(star)]
    cuts.set(star, made)
    return made
  }
  const shapes: Shape[] = [
    path('GUIDE', box(0, 0, panel.length, panel.width)),
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

export const box = (left: number, bottom: number, right: number, top: number): Outline =>
  closedOutline([point(left, bottom), point(right, bottom), point(right, top), point(left, top)])

/** To read, below the plate's middle; left out where it is longer than a joint is covered. */
const nameOf = ({ order, backing }: StarPlan): Shape[] =>
  textWidth(order.name, NAME as never) < (backing?.covers ?? 0)
    ? [centredLabel(order.name, point(0, -2 * NAME), { height: NAME })]
    : []

/** `Winter fair: panel 2 of 3`, for each of the panels that are cut alike together. */
export const panelTitles = ({ plan, panels }: PanelPlan): string[] => {
  const count = panels.reduce((sum, { times }) => sum + times, 0)
  let first = 1
  return panels.map(({ times }) => {
    const last = first + times - 1
    const numbers = times === 1 ? `panel ${first}` : `panels ${first} to ${last}`
    first += times
    return `${plan.order.title}: ${numbers} of ${count}`
  })
}
