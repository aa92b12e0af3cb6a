import { arrow } from '../drawing/dimension.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Shape } from '../drawing/model.js'
import { centredLabel, label, line, path } from '../drawing/shapes.js'
import type { DryFit } from '../fit/dry-fit.js'
import { hatch } from '../geometry/hatch.js'
import { boxOf, closedOutline } from '../geometry/outline.js'
import {
  add,
  between,
  direction,
  leftOf,
  type Point,
  point,
  polar,
  scale,
  subtract,
} from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { degrees, mm, radians, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { fixed, showMovement } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { SAW_CAUTION } from './cautions.js'
import { findings, outcomes, recutSteps } from './dry-fit-words.js'

/** Centre to tip, as drawn. */
const RADIUS = 62

/** A gap is drawn so many times as large: the most that stays a likely picture of a star. */
const FACTORS = [50, 20, 10, 5, 2, 1] as const
/** In degrees, of closure as drawn. */
const WIDEST = 14
/** Of the joint edge: the thickest slice as drawn. */
const THICKEST = 1 / 4

const WASTE_SPACING = 1.2
/** Across the face that comes off, whichever way it lies. */
const WASTE_SLANT = Math.PI / 4

/** One arm as drawn. */
interface DrawnArm {
  /** Its inner corner. */
  readonly apex: Point
  readonly tip: Point
  readonly left: Point
  readonly right: Point
}

/**
 * The star as measured, its last joint on top and gaping, the faces to recut marked: gap and slices exaggerated by one
 * factor that is stated, the star reduced.
 */
export const dryFitDrawing = (fit: DryFit, order: Order): Drawing => {
  const factor = factorOf(fit)
  const arms = drawnArms(fit, factor)
  const outlines = arms.map(({ apex, right, tip, left }) => closedOutline([apex, right, tip, left]))
  const { min, max } = boxOf(outlines)
  const figure: Shape[] = [
    ...outlines.map((outline) => path('PATTERN', outline)),
    ...(fit.verdict === 'turn' && fit.recut ? arms.flatMap((arm) => slices(fit, arm, factor)) : []),
    ...arms.map((arm, index) => armNumber(fit, arm, index)),
    ...arms.slice(-1).flatMap((last) => gapMark(fit, order, last, max.y)),
  ]
  return notedDrawing({
    kind: 'dry-fit',
    title: `${fit.plan.order.name}: dry fit`,
    trueSize: { across: mm(max.x - min.x), height: mm(max.y - min.y) },
    figure,
    asides: [],
    notes: { title: `${fit.plan.order.name}: dry fit`, lines: noteLines(fit, order, factor) },
    pieces: outlines,
  })
}

/** In the middle of the circle that touches all four edges, the slices' room left free. */
const armNumber = ({ arm }: DryFit, { apex, tip }: DrawnArm, index: number): Shape => {
  const halfTip = toRadians(arm.tipAngle) / 2
  const area = arm.radius * arm.tipEdge * maths.sin(halfTip)
  const inscribed = area / (arm.tipEdge + arm.jointEdge)
  const fromTip = inscribed / maths.sin(halfTip) / arm.radius
  const height = Math.min(5, (0.65 * inscribed * RADIUS) / arm.radius)
  return centredLabel(String(index + 1), between(tip, apex, fromTip), { layer: 'PATTERN', height })
}

const factorOf = ({ closure, arm, recut }: DryFit): number => {
  const thickest = Math.max(recut?.off.valley ?? 0, recut?.off.centre ?? 0)
  return (
    FACTORS.find(
      (factor) => factor * Math.abs(closure) <= WIDEST && factor * thickest <= THICKEST * arm.jointEdge,
    ) ?? 1
  )
}

/** Clockwise from the last joint, which stands upright. */
const drawnArms = ({ plan, arm, closure }: DryFit, factor: number): DrawnArm[] => {
  const { points } = plan.star
  const reduced = RADIUS / arm.radius
  const [joint, radius] = [arm.jointEdge * reduced, arm.radius * reduced]
  const open = toRadians(degrees(closure * factor))
  const centre = (2 * Math.PI - open) / points
  const first = Math.PI / 2 - Math.max(0, open) / 2
  return Array.from({ length: points }, (_, index): DrawnArm => {
    const left = first - index * centre
    // Too fat, the last arm slides out along its neighbour until its other face meets the first arm's valley.
    const slides = open < 0 && index === points - 1
    const out = slides ? (joint * maths.sin(-open)) / maths.sin(centre) : 0
    const apex = polar(out, radians(left))
    const at = (length: number, way: number): Point => add(apex, polar(length, radians(way)))
    return {
      apex,
      tip: at(radius, left - centre / 2),
      left: at(joint, left),
      right: at(joint, left - centre),
    }
  })
}

/** Both joint faces of an arm: the slice that comes off hatched, the new face dashed. */
const slices = ({ recut, arm }: DryFit, drawn: DrawnArm, factor: number): Shape[] => {
  if (!recut) return []
  const reduced = (RADIUS / arm.radius) * factor
  const { apex, tip } = drawn
  return [
    { valley: drawn.left, inward: -1 },
    { valley: drawn.right, inward: 1 },
  ].flatMap(({ valley, inward }) => {
    const into = scale(leftOf(direction(apex, valley)), inward)
    const inner = add(apex, scale(into, recut.off.centre * reduced))
    const outer = add(valley, scale(into, recut.off.valley * reduced))
    const newApex = meet(inner, outer, apex, tip)
    const newValley = meet(inner, outer, valley, tip)
    const slice = [apex, valley, newValley, newApex]
    const face = direction(apex, valley)
    const slant = radians(maths.atan2(face.y, face.x) + WASTE_SLANT)
    return [
      line('PATTERN', newApex, newValley, 'dashed'),
      ...hatch(slice, slant, WASTE_SPACING).map(([from, to]) => line('GUIDE', from, to)),
    ]
  })
}

/** Where the line through a and b crosses the one through c and d; they must not be parallel. */
const meet = (a: Point, b: Point, c: Point, d: Point): Point => {
  const [along, other, apart] = [subtract(b, a), subtract(d, c), subtract(c, a)]
  const cross = along.x * other.y - along.y * other.x
  return between(a, b, (apart.x * other.y - apart.y * other.x) / cross)
}

/** The gap's size over the star, and an arrow from there into the open end of the last joint. */
const gapMark = (
  { arm, closure, gap, verdict }: DryFit,
  order: Order,
  { apex }: DrawnArm,
  top: number,
): Shape[] => {
  if (verdict === 'unknown' || gap < SHOP) return []
  const joint = (arm.jointEdge * RADIUS) / arm.radius
  const from = point(0, top + 5)
  const foot = closure > 0 ? point(0, joint) : point(0.4 * apex.x, 0.15 * joint)
  const text = `gap ${showMovement(gap, order.lengths)} ${closure > 0 ? 'at the valley' : 'at the centre, or overlap at the valley'}`
  return [
    label(text, add(from, point(0, 1.5)), { layer: 'DIM', anchor: 'middle' }),
    line('DIM', from, foot),
    ...arrow(foot, direction(foot, from)),
  ]
}

const noteLines = (fit: DryFit, order: Order, factor: number): string[] => [
  `Not to scale: the star is reduced ${fixed(fit.arm.radius / RADIUS, 1)} times; against that the gap${fit.verdict === 'turn' && fit.recut ? ' and the slices that come off (hatched, new faces dashed) are' : ' is'} drawn ${factor === 1 ? 'as large as measured' : `${factor} times as large`}. Arm numbers clockwise from the last joint.`,
  ...findings(fit, order).map(({ heading, text }) => (heading === '' ? text : `${heading}: ${text}`)),
  ...recutSteps(fit, order).map((text, index) => `${index + 1}. ${text}`),
  ...outcomes(fit, order)
    .filter(({ heading }) => heading !== 'Saw bias')
    .map(({ heading, text }) => `${heading}: ${text}`),
  SAW_CAUTION,
]
