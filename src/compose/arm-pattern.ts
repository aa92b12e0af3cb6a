import { dimension } from '../drawing/dimension.js'
import { MEDIUM, SMALL } from '../drawing/lettering.js'
import type { Drawing, Label, Path, Shape } from '../drawing/model.js'
import { firstClear, labelIsClear } from '../drawing/place-label.js'
import { arc, centredLabel, chain, label, line, path, ring } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { blankCorners, blankIsArm, chamferChain, kite, kiteOutline } from '../geometry/kite.js'
import { extentsOf } from '../geometry/outline.js'
import {
  add,
  between,
  direction,
  distance,
  leftOf,
  type Point,
  point,
  polar,
  scale,
} from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { degrees, mm, radians } from '../units/convert.js'
import { showAngle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { armNotes } from './arm-notes.js'
import { noteBlock } from './note-block.js'

/** How far a cut line is drawn past the board's edge. */
const OVERRUN = 6
const BALLOON = 3.2
const NARROWEST_NOTES = 165

/**
 * One arm on its board, as it lies at the saw: the lower edge is the fence's. The tip is at the origin, the board
 * runs along x. The finished kite, its blank, the three cuts in order, the waste on the blade's side.
 */
export const armPattern = (plan: StarPlan, order: Order): Drawing => {
  const { star, blank } = plan
  const arm = kiteOutline(kite(star))
  const extents = extentsOf([arm])
  if (!extents) throw new Error('a kite has extents')
  const trueSize = { across: mm(extents.max.x - extents.min.x), height: mm(extents.max.y - extents.min.y) }

  const lines = [...boardLines(plan), ...wasteLines(plan), ...kerfLines(plan, order.shop.saw.kerf)]
  const outline = path('PATTERN', arm)
  const corners = blankCorners(star, blank.side)
  const left = Math.min(...corners.map(({ x }) => x)) - OVERRUN
  const right = Math.max(...corners.map(({ x }) => x)) + OVERRUN
  const dimensions = armDimensions(plan, order, left)
  const drawn = [outline, ...lines, ...chamferLine(plan), ...angleArcs(plan), ...dimensions]
  const balloons = cutBalloons(plan, drawn)
  const lettered = armLettering(plan, order, [...drawn, ...balloons])
  const shapes = [...drawn, ...balloons, ...lettered]

  const width = mm(Math.max(NARROWEST_NOTES, right - left))
  const bottom = Math.min(
    ...dimensions.flatMap((shape) => (shape.kind === 'path' ? shape.vertices.map(({ y }) => y) : [])),
  )
  const notes = noteBlock(
    `${plan.order.name}: arm, ${plan.arms} to cut`,
    armNotes(plan, order, trueSize),
    point(left, bottom - 4),
    width,
  )
  return {
    kind: 'arm-pattern',
    title: `${plan.order.name}: arm pattern`,
    trueSize,
    shapes: [...shapes, ...notes],
  }
}

/** The board's edges, the ends of the blank and the cuts beyond the kite; nothing lies on another line. */
const boardLines = ({ star, blank }: StarPlan): Path[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const top = star.armStrip
  const left = Math.min(0, highLeft.x) - OVERRUN
  const right = Math.max(lowRight.x, highRight.x) + OVERRUN
  const slope = direction(tip, farValley)
  const [near, far] = jointExits({ star, blank })
  return [
    line('GUIDE', point(left, 0), tip),
    line('GUIDE', nearValley, point(right, 0)),
    line('GUIDE', point(left, top), point(right, top)),
    ...cutLine(farValley, highLeft, slope),
    ...cutLine(tip, tip, scale(slope, -1)),
    ...cutLine(lowRight, highRight, slope),
    ...cutLine(lowRight, lowRight, scale(slope, -1)),
    ...(blankIsArm(star)
      ? []
      : [
          ...cutLine(centre, near, direction(nearValley, centre)),
          ...cutLine(nearValley, nearValley, direction(centre, nearValley)),
          ...cutLine(centre, far, direction(farValley, centre)),
        ]),
  ]
}

/** From `from` through `to`, the last point on the wood, and a little past it. */
const cutLine = (from: Point, to: Point, along: Point): Path[] => [
  line('GUIDE', from, add(to, scale(along, OVERRUN)), 'double-chain'),
]

/** Where the two joint cuts, drawn from the valleys through the centre, leave the blank. */
const jointExits = ({ star, blank }: Pick<StarPlan, 'star' | 'blank'>): readonly [Point, Point] => {
  const { nearValley, centre, farValley } = kite(star)
  const corners = blankCorners(star, blank.side)
  return [
    exit(centre, direction(nearValley, centre), corners),
    exit(centre, direction(farValley, centre), corners),
  ]
}

/** The point where a ray from inside (or on) a counter-clockwise parallelogram leaves it. */
const exit = (from: Point, along: Point, corners: readonly Point[]): Point => {
  let reach = Infinity
  corners.forEach((a, index) => {
    const b = corners[(index + 1) % corners.length] ?? a
    const inward = leftOf(direction(a, b))
    const room = inward.x * (from.x - a.x) + inward.y * (from.y - a.y)
    const speed = -(inward.x * along.x + inward.y * along.y)
    if (speed > 1e-9) reach = Math.min(reach, Math.max(0, room) / speed)
  })
  return add(from, scale(along, reach))
}

const wasteLines = ({ star, blank }: StarPlan): Path[] => {
  const { nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const spacing = Math.max(4, star.armStrip / 40)
  return hatch(
    [nearValley, lowRight, highRight, highLeft, farValley, centre],
    radians(-Math.PI / 4),
    spacing,
  ).map(([from, to]) => line('GUIDE', from, to))
}

/** The far side of the blade's slot, on the waste side of each cut. */
const kerfLines = ({ star, blank }: StarPlan, kerf: number): Path[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, lowRight, highRight, highLeft] = blankCorners(star, blank.side)
  const [near, far] = jointExits({ star, blank })
  const beside = (a: Point, b: Point, toward: Point): Path => {
    const shift = scale(toward, kerf)
    return line('GUIDE', add(a, shift), add(b, shift), 'dashed')
  }
  return [
    beside(tip, highLeft, leftOf(direction(tip, farValley))),
    beside(lowRight, highRight, leftOf(direction(farValley, tip))),
    ...(blankIsArm(star)
      ? []
      : [
          beside(nearValley, near, leftOf(direction(centre, nearValley))),
          beside(farValley, far, leftOf(direction(farValley, centre))),
        ]),
  ]
}

const chamferLine = ({ star, order }: StarPlan): Path[] =>
  order.chamfer === undefined ? [] : [chain('PATTERN', chamferChain(star, order.chamfer), 'dashed')]

interface Corner {
  readonly at: Point
  readonly from: number
  readonly to: number
  readonly text: string
}

/** Tip, side and centre angle, each between the directions of its edges. */
const angledCorners = ({ star }: StarPlan): Corner[] => {
  const { tip, nearValley, centre, farValley } = kite(star)
  const toward = (a: Point, b: Point) => Math.atan2(b.y - a.y, b.x - a.x)
  const fullTurn = (start: number, end: number) => (end > start ? end : end + 2 * Math.PI)
  const corner = (at: Point, first: Point, last: Point, text: string): Corner => {
    const from = toward(at, first)
    return { at, from, to: fullTurn(from, toward(at, last)), text }
  }
  return [
    corner(tip, nearValley, farValley, showAngle(star.tipAngle)),
    corner(nearValley, centre, tip, showAngle(star.sideAngle)),
    corner(centre, farValley, nearValley, showAngle(star.centreAngle)),
  ]
}

const arcRadius = ({ star }: StarPlan): number => Math.min(10, star.tipEdge / 4, star.jointEdge / 4)

const angleArcs = (plan: StarPlan): Path[] =>
  angledCorners(plan).map(({ at, from, to }) => arc('DIM', at, arcRadius(plan), from, to))

const armDimensions = ({ star, blank }: StarPlan, order: Order, left: number): Shape[] => {
  const show = (length: typeof blank.side) => showLength(length, order.lengths)
  const [tip, low] = blankCorners(star, blank.side)
  const near = point(star.tipEdge, 0)
  const oneLength = blank.side - star.tipEdge < SHOP
  const upright = dimension(point(left, 0), point(left, star.armStrip), 'up', left - 8, show(star.armStrip))
  return oneLength
    ? [...dimension(tip, near, 'across', -13, `stop and blank side ${show(star.tipEdge)}`), ...upright]
    : [
        ...dimension(tip, near, 'across', -13, `stop ${show(star.tipEdge)}`),
        ...dimension(tip, low, 'across', -21, `blank side ${show(blank.side)}`),
        ...upright,
      ]
}

/** The cuts' numbers in rings at the lines' ends, each with its angle from square beside it. */
const cutBalloons = (plan: StarPlan, drawn: readonly Shape[]): Shape[] => {
  const { star, blank, firstCut, jointCut } = plan
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, , , highLeft] = blankCorners(star, blank.side)
  const [near, far] = jointExits(plan)
  const cuts = [
    { number: '1', end: highLeft, along: direction(tip, farValley), setting: firstCut },
    ...(blankIsArm(star)
      ? []
      : [
          { number: '2', end: near, along: direction(nearValley, centre), setting: jointCut },
          { number: '3', end: far, along: direction(farValley, centre), setting: jointCut },
        ]),
  ]
  const rings: Shape[] = []
  const middles = cuts.map(({ number, end, along }) => {
    const foot = add(end, scale(along, OVERRUN))
    const others = drawn.filter((shape) => !endsAt(shape, foot))
    const middleAt = (further: number) => add(foot, scale(along, further + BALLOON))
    const extension = (further: number) =>
      line('GUIDE', foot, add(foot, scale(along, further)), 'double-chain')
    const numbers = rings.filter((shape) => shape.kind === 'label')
    const reach = [0, 8, 16, 24, 32, 40, 48].find(
      (further) =>
        labelIsClear(centredLabel('00', middleAt(further), { height: MEDIUM * 1.4 }), [
          ...others,
          ...rings,
        ]) && numbers.every((number) => labelIsClear(number, [extension(further)])),
    )
    const middle = middleAt(reach ?? 56)
    if (reach !== 0) rings.push(extension(reach ?? 56))
    rings.push(ring('NOTE', middle, BALLOON), centredLabel(number, middle, { height: 2.8 }))
    return middle
  })
  const angles: Label[] = []
  cuts.forEach(({ setting }, index) => {
    const text = showAngle(degrees(Math.abs(setting.miter)))
    const middle = middles[index] ?? point(0, 0)
    const found = firstClear(besideBalloon(text, middle), [...drawn, ...rings, ...angles])
    if (found) angles.push(found)
  })
  return [...rings, ...angles]
}

/** Right, left, above and below a balloon. */
const besideBalloon = (text: string, middle: Point): Label[] => [
  label(text, add(middle, point(BALLOON + 1.5, -MEDIUM / 2))),
  label(text, add(middle, point(-BALLOON - 1.5, -MEDIUM / 2)), { anchor: 'end' }),
  centredLabel(text, add(middle, point(0, BALLOON + 3.5))),
  centredLabel(text, add(middle, point(0, -BALLOON - 3.5))),
]

const endsAt = (shape: Shape, end: Point): boolean =>
  shape.kind === 'path' && shape.vertices.some((vertex) => distance(vertex, end) < SHOP)

/** Grain, angles, lengths and name inside the kite, each where it is clear; what finds no room stands in the notes. */
const armLettering = (plan: StarPlan, order: Order, drawn: readonly Shape[]): Shape[] => {
  const { star } = plan
  const { tip, nearValley, centre, farValley } = kite(star)
  const placed: Shape[] = []
  const place = (candidates: readonly Label[]): void => {
    const found = firstClear(candidates, [...drawn, ...placed])
    if (found) placed.push(found)
  }
  placed.push(...grainArrow(plan, drawn))
  for (const corner of angledCorners(plan)) place(angleCandidates(corner, arcRadius(plan)))
  const jointText = `joint edge ${showLength(star.jointEdge, order.lengths)}`
  place([
    ...alongside(nearValley, centre, farValley, jointText),
    ...alongside(farValley, centre, nearValley, jointText),
  ])
  place(alongside(tip, farValley, centre, `tip edge ${showLength(star.tipEdge, order.lengths)}`))
  return placed
}

/** A double arrow along the board with its word, at the first of several places in the kite that is clear. */
const grainArrow = ({ star, kite: { width } }: StarPlan, drawn: readonly Shape[]): Shape[] => {
  const half = Math.min(20, star.tipEdge / 8)
  if (half < 5) return []
  const { tip, centre } = kite(star)
  const aside = leftOf(direction(tip, centre))
  for (const share of [0.55, 0.65, 0.45, 0.75, 0.35]) {
    for (const shift of [-0.15, 0, 0.15]) {
      const middle = add(between(tip, centre, share), scale(aside, shift * width))
      const word = label('grain', point(middle.x, middle.y - SMALL - 1.6), {
        height: SMALL,
        anchor: 'middle',
      })
      const room = label('m'.repeat(Math.ceil(half * 0.75)), point(middle.x, middle.y - 1), {
        height: 2,
        anchor: 'middle',
      })
      if (labelIsClear(word, drawn) && labelIsClear(room, drawn)) return [...doubleArrow(middle, half), word]
    }
  }
  return []
}

const doubleArrow = ({ x, y }: Point, half: number): Path[] => {
  const head = half / 5
  return [
    line('NOTE', point(x - half, y), point(x + half, y)),
    ...[-1, 1].flatMap((end) =>
      [-1, 1].map((side) =>
        line('NOTE', point(x + end * half, y), point(x + end * (half - head), y + side * head * 0.4)),
      ),
    ),
  ]
}

/** Places for an angle's figure: inside its corner, nearest first, beside the middle before on it. */
const angleCandidates = ({ at, from, to, text }: Corner, radius: number): Label[] =>
  Array.from({ length: 24 }, (_, step) => radius + 2 + step * 2).flatMap((reach) =>
    [0.3, 0.7, 0.5, 0.2, 0.8].map((share) =>
      centredLabel(text, add(at, polar(reach, radians(from + (to - from) * share))), { layer: 'DIM' }),
    ),
  )

/** Places along an edge, on the side where `inside` lies, reading from the bottom or the right. */
const alongside = (a: Point, b: Point, inside: Point, text: string): Label[] => {
  const along = direction(a, b)
  const toward = leftOf(along)
  const side = Math.sign(toward.x * (inside.x - a.x) + toward.y * (inside.y - a.y))
  const reading = along.x < -1e-9 ? scale(along, -1) : along
  const turn = radians(Math.atan2(reading.y, reading.x))
  return [0.5, 0.4, 0.6, 0.3, 0.7].flatMap((share) =>
    [3.5, 5, 7].map((reach) =>
      centredLabel(text, add(between(a, b, share), scale(toward, side * reach)), {
        layer: 'DIM',
        height: SMALL,
        turn,
      }),
    ),
  )
}
