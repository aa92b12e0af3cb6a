import { MEDIUM } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { firstClear, labelIsClear } from '../drawing/place-label.js'
import { centredLabel, label, line, ring } from '../drawing/shapes.js'
import { blankCorners, blankIsArm, kite } from '../geometry/kite.js'
import { add, direction, distance, type Point, point, scale, turn } from '../geometry/point.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import { radians } from '../units/convert.js'
import { SHOP } from '../units/tolerance.js'
import { jointExits, OVERRUN } from './arm-cuts.js'
import { settingText } from './cut-steps.js'

/** Radius of the ring round a cut's number. */
const RING = 3.2

/** How far past the end of its line a ring may move to find room. */
const FURTHER = [0, 6, 12, 18, 24, 36, 48]

/** How far, in radians, the line that leads to a ring may turn from its cut. */
const ASIDE = [0, 0.6, -0.6, 1.2, -1.2]

/** A cut with the ends of its line on the wood, the preferred one first. */
interface NumberedCut {
  readonly number: string
  readonly setting: PlannedCut
  readonly ends: readonly [LineEnd, ...LineEnd[]]
}

interface LineEnd {
  readonly at: Point
  /** Away from the wood. */
  readonly outward: Point
}

/** A ring that found its place, and the line that leads to it. */
interface PlacedRing {
  readonly middle: Point
  readonly shapes: readonly Shape[]
}

/** The cuts' numbers in rings at the ends of their lines, each with its angle from square beside it. */
export const cutNumbers = (plan: StarPlan, drawn: readonly Shape[]): Shape[] => {
  const rings: PlacedRing[] = []
  const cuts = numberedCuts(plan)
  for (const cut of cuts)
    rings.push(
      placeRing(
        cut,
        drawn,
        rings.flatMap(({ shapes }) => shapes),
      ),
    )
  const placed = rings.flatMap(({ shapes }) => shapes)
  const angles: Label[] = []
  cuts.forEach(({ setting }, index) => {
    const beside = besideRing(settingText(setting), rings[index]?.middle ?? point(0, 0))
    const found = firstClear(beside, [...drawn, ...placed, ...angles])
    // Without its setting a cut's number is worth nothing: rather on a line than not at all.
    angles.push(found ?? beside[0])
  })
  return [...placed, ...angles]
}

/** The joint cuts come first, for their lines have one free end only. */
const numberedCuts = (plan: StarPlan): NumberedCut[] => {
  const { star, blank, firstCut, jointCut } = plan
  const { tip, nearValley, centre, farValley } = kite(star)
  const [, , , highLeft] = blankCorners(star, blank.side)
  const [near, far] = jointExits(plan)
  const slope = direction(tip, farValley)
  const joint = (number: string, at: Point, valley: Point): NumberedCut => ({
    number,
    setting: jointCut,
    ends: [{ at, outward: direction(valley, centre) }],
  })
  const first: NumberedCut = {
    number: '1',
    setting: firstCut,
    ends: [
      { at: highLeft, outward: slope },
      { at: tip, outward: scale(slope, -1) },
    ],
  }
  const next: NumberedCut = { number: '1', setting: firstCut, ends: [{ at: centre, outward: slope }] }
  return blankIsArm(star) ? [first, next] : [joint('2', near, nearValley), joint('3', far, farValley), first]
}

/** Straight on where there is room, else further out, else aside; on the line's end when there is no room at all. */
const placeRing = (cut: NumberedCut, drawn: readonly Shape[], rings: readonly Shape[]): PlacedRing => {
  const lettered = [...drawn, ...rings].filter((shape) => shape.kind === 'label')
  for (const aside of ASIDE) {
    for (const further of FURTHER) {
      for (const end of cut.ends) {
        const { foot, lead, middle } = ringAt(end, further, aside)
        const others = [...drawn.filter((shape) => !endsAt(shape, foot)), ...rings]
        const room = centredLabel('00', middle, { height: MEDIUM * 1.4 })
        if (labelIsClear(room, others) && lettered.every((each) => labelIsClear(each, lead))) {
          return { middle, shapes: [...lead, ...numberedRing(cut, middle)] }
        }
      }
    }
  }
  const { middle } = ringAt(cut.ends[0], 0, 0)
  return { middle, shapes: numberedRing(cut, middle) }
}

/** A ring `further` out from the end of a line and turned `aside`, in radians, with the line that leads to it. */
const ringAt = ({ at, outward }: LineEnd, further: number, aside: number) => {
  const foot = add(at, scale(outward, OVERRUN))
  const toward = turn(outward, radians(aside))
  const lead = further === 0 ? [] : [line('GUIDE', foot, add(foot, scale(toward, further)), 'double-chain')]
  return { foot, lead, middle: add(foot, scale(toward, further + RING)) }
}

const numberedRing = ({ number }: NumberedCut, middle: Point): Shape[] => [
  ring('NOTE', middle, RING),
  centredLabel(number, middle, { height: 2.8 }),
]

const endsAt = (shape: Shape, end: Point): boolean =>
  shape.kind === 'path' && shape.vertices.some((vertex) => distance(vertex, end) < SHOP)

/** Right, left, above and below a ring, then aslant, then further away. */
const besideRing = (text: string, { x, y }: Point): readonly [Label, ...Label[]] => {
  const right = (dx: number, dy: number) => label(text, point(x + RING + dx, y - MEDIUM / 2 + dy))
  const left = (dx: number, dy: number) =>
    label(text, point(x - RING - dx, y - MEDIUM / 2 + dy), { anchor: 'end' })
  const over = (dy: number) => centredLabel(text, point(x, y + dy))
  return [
    right(1.5, 0),
    left(1.5, 0),
    over(RING + 3.5),
    over(-RING - 3.5),
    ...[4, -4, 7, -7].flatMap((dy) => [right(0, dy), left(0, dy)]),
    ...[6, 12].flatMap((dx) => [right(dx, 0), left(dx, 0)]),
  ]
}
