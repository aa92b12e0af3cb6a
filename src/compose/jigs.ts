import { blankIsArm } from '../geometry/kite.js'
import { angleGauge } from '../jigs/angle-gauge.js'
import { armCradle } from '../jigs/arm-cradle.js'
import { blankStop } from '../jigs/blank-stop.js'
import { type Jig, mirroredJig } from '../jigs/jig.js'
import type { JigName, Order } from '../order/order.js'
import { done, type Outcome, refused, showProblem } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { tooSmallForSaw } from '../plan/warnings.js'
import { SAME_ANGLE, SAME_POINT } from '../units/tolerance.js'
import { frameOf } from './frame-words.js'
import { type JigSheets, jigDrawing } from './jig-drawing.js'
import { at, jigRefusal } from './jig-refusal.js'
import { wedgeOf } from './wedge-words.js'
import { windowOf } from './window-words.js'

/**
 * The jig as the order wants it: its stock and hardware, its side of the blade. Refused when the star needs none, or
 * when it cannot be made.
 */
export const jigOf = (name: JigName, plan: StarPlan, order: Order): Outcome<Jig> => {
  const { jigStock, cutter } = order.shop
  const why = needless(name, plan)
  const refusal = why === undefined ? jigRefusal(name, plan, order) : { ...at(name), advice: why }
  if (refusal) return refused([refusal])
  const sided = (jig: Jig): Outcome<Jig> => done(jigStock.side === 'right' ? jig : mirroredJig(jig))
  switch (name) {
    case 'blank-stop':
      return sided(blankStop(plan, jigStock))
    case 'arm-cradle':
      return sided(armCradle(plan, jigStock))
    case 'first-cut-wedge':
    case 'joint-cut-wedge':
      return sided(wedgeOf(name, plan, order))
    case 'glue-up-frame':
      return done(frameOf(plan, order))
    case 'trial-window':
      return done(windowOf(plan, order))
    case 'angle-gauge':
      return done(angleGauge(plan, jigStock, cutter))
  }
}

/** Why this star has no use for the jig; undefined where it has. */
export const needless = (name: JigName, plan: StarPlan): string | undefined => {
  const { star, order, firstCut, jointCut } = plan
  const isBlank = `The blank of "${order.name}" is already the arm: there are no joint cuts to hold it for.`
  switch (name) {
    // Two jigs for one cut, each with its own stop, would be set against each other.
    case 'blank-stop':
      return firstCut.wedge && !tooSmallForSaw(plan)
        ? `Cut 1 of "${order.name}" is made on a fence wedge, and its heel is the stop: jigs: [first-cut-wedge] draws it.`
        : undefined
    case 'arm-cradle':
      return blankIsArm(star) ? isBlank : undefined
    case 'first-cut-wedge':
      return firstCut.wedge ? undefined : `The saw reaches cut 1 of "${order.name}" by itself.`
    case 'joint-cut-wedge':
      if (blankIsArm(star)) return isBlank
      return jointCut.wedge ? undefined : `The saw reaches cuts 2 and 3 of "${order.name}" by itself.`
    default:
      return undefined
  }
}

/** A jig and its drawing. */
export interface DrawnJig extends JigSheets {
  readonly jig: Jig
}

/** A jig the order wants: drawn, or refused; or why this star has no use for it. */
export type WantedJig = { readonly name: JigName } & (
  | { readonly drawn: Outcome<DrawnJig> }
  | { readonly needless: string }
)

export const drawJig = (name: JigName, plan: StarPlan, order: Order): Outcome<DrawnJig> => {
  const jig = jigOf(name, plan, order)
  return jig.ok ? drawn(jig.value, plan, order) : jig
}

const drawn = (jig: Jig, plan: StarPlan, order: Order): Outcome<DrawnJig> => {
  const drawing = jigDrawing(jig, plan, order)
  return drawing.ok ? done({ jig, ...drawing.value }) : drawing
}

/**
 * Every jig the order wants for a star.
 *
 * @param stars all of the order: those with the same blank share one blank stop, drawn for the first of them
 */
export const drawJigs = (plan: StarPlan, order: Order, stars: readonly StarPlan[]): WantedJig[] =>
  order.jigs.names.map((name) => {
    const why = needless(name, plan)
    if (why !== undefined) return { name, needless: why }
    const drawn = drawJig(name, plan, order)
    return name === 'blank-stop' && drawn.ok ? sharedStop(drawn.value, plan, order, stars) : { name, drawn }
  })

/** The same blank has the same stop, so where the star's own is drawn the others' could be too, unless it is refused. */
const sharedStop = (own: DrawnJig, plan: StarPlan, order: Order, stars: readonly StarPlan[]): WantedJig => {
  const { name } = own.jig
  const alike = stars.filter(
    (other) => other === plan || (sameBlank(other, plan) && jigOf(name, other, order).ok),
  )
  const [first = plan, ...others] = alike
  if (first !== plan)
    return {
      name,
      needless: `The blank stop of "${first.order.name}" serves "${plan.order.name}" too: their blanks are the same.`,
    }
  if (others.length === 0) return { name, drawn: done(own) }
  const serving = { ...own.jig, serves: others.map((other) => other.order.name) }
  return { name, drawn: drawn(serving, plan, order) }
}

const sameBlank = (a: StarPlan, b: StarPlan): boolean =>
  Math.abs(a.star.tipAngle - b.star.tipAngle) < SAME_ANGLE &&
  Math.abs(a.blank.side - b.blank.side) < SAME_POINT

/** Why there is no drawing of a jig, each reason in its own words; none where it is drawn. */
export const whyLeftOut = (wanted: WantedJig): string[] => {
  if ('needless' in wanted) return [`Not needed. ${wanted.needless}`]
  const { drawn } = wanted
  return drawn.ok
    ? []
    : drawn.problems.map(
        (problem) => `Left out. ${problem.place === 'jigs' ? problem.advice : showProblem(problem)}`,
      )
}

/** A jig's name as it is read: `arm cradle`. */
export const jigTitle = (name: JigName): string => name.replaceAll('-', ' ')
