import { blankIsArm, kiteArea, kiteWidth } from '../geometry/kite.js'
import { regularTipAngle, type Star, solveStar } from '../geometry/star.js'
import type { Order, Shop, StarOrder } from '../order/order.js'
import { done, type Outcome, type Problem, problemsOf, refused } from '../order/problem.js'
import type { Wood } from '../order/season-order.js'
import { fastenerProblem } from '../plate/fixing.js'
import { type BackingPlan, planBacking } from '../plate/plan-backing.js'
import type { Degrees, Mm } from '../units/brand.js'
import { degrees, mm } from '../units/convert.js'
import {
  type LengthStyle,
  showAngle,
  showAtLeast,
  showAtMost,
  showGivenLength,
  showLength,
} from '../units/show.js'
import { SAME_ANGLE, SHOP } from '../units/tolerance.js'
import { type Blank, blankOf } from './blank.js'
import { type ArmBoards, armBoards, type BoardUse, boardUse } from './boards.js'
import { boardsTooFew, thickerBoards } from './boards-too-few.js'
import type { StarBody } from './body.js'
import { closureOfFirstCut, closureOfJointCut, closureOfRhombus, gapPerJointError } from './closure.js'
import { firstMiter, jointMiter, tipAnglesWithin } from './cuts.js'
import { type MarkPair, markPairs } from './mark-pairs.js'
import { type PlatePanels, platePanels, supposedThickness } from './plate-panels.js'
import { biasOf, type SawSetting, sawSetting, withinLimit } from './saw-setting.js'
import { type Warning, warningsFor } from './warnings.js'
import type { StarWeight } from './weight.js'
import { chamferTooDeep, woodOf } from './wood.js'

/** The whole cut plan of an order. */
export interface Plan {
  readonly order: Order
  readonly stars: readonly StarPlan[]
}

/** `thickness` is that of the arms. */
export interface StarPlan extends ArmBoards, PlatePanels {
  readonly order: StarOrder
  readonly star: Star
  readonly kite: KiteMeasures
  readonly blank: Blank
  readonly firstCut: PlannedCut
  /** Both joint cuts share one setting and one stop. */
  readonly jointCut: PlannedCut
  /** Tip to blade along the fence, for both joint cuts. */
  readonly stop: Mm
  readonly arms: number
  readonly boardPerStar: Mm
  /** For all stars, as if from one endless board. */
  readonly boardForQuantity: Mm
  readonly boardUse?: BoardUse
  /** Wood in the star over the wood of the board it takes, 0 to 1. */
  readonly yield: number
  /** Can this saw make both cuts, without a wedge and across the whole board? */
  readonly feasible: boolean
  /** Tip angles this saw can cut for these points, without a wedge. */
  readonly tipAngles?: { readonly least: Degrees; readonly most: Degrees }
  readonly markPairs: readonly MarkPair[]
  /** Gap at the last joint when every joint cut (of a rhombus arm: every first cut) is off by a tenth of a degree. */
  readonly gapPerTenth: Mm
  readonly backing?: BackingPlan
  /** What the arms are made of. */
  readonly wood: Wood
  /** Absent while the thickness is unknown. */
  readonly body?: StarBody
  /** Absent while thickness or density is unknown. */
  readonly weight?: StarWeight
  readonly warnings: readonly Warning[]
}

export interface KiteMeasures {
  /** Valley to valley. */
  readonly width: Mm
  /** In mm². */
  readonly area: number
}

export interface PlannedCut extends SawSetting {
  readonly withinLimit: boolean
  /** What the star's closure becomes when this cut is set to its nearest mark. */
  readonly closureAtMark: Degrees
}

/** Longest side of a star or blank that is planned; anything bigger is a slip of the pen. */
const LARGEST = mm(20_000)
/** Shortest edge that a saw can leave. */
const SMALLEST_EDGE = mm(5)

/** Plans every star of an order, or tells for which of them it cannot be done. */
export const planOrder = (order: Order): Outcome<Plan> => {
  const outcomes = order.stars.map((star) => planStar(star, order.shop, order.lengths))
  const problems = outcomes.flatMap((outcome) => (outcome.ok ? [] : outcome.problems))
  if (problems.length > 0) return refused(problems)
  const stars = outcomes.flatMap((outcome) => (outcome.ok ? [outcome.value] : []))
  const tooFew = boardsTooFew(stars, order.shop, (length) => showLength(length, order.lengths))
  return done({ order, stars: stars.map((star) => withWarning(star, tooFew.get(star))) })
}

/** Of a star whose size is refused. */
const NO_BOARDS: ArmBoards = { boards: [], otherThicknesses: [] }

/** Of a star without a backing, or whose backing is refused. */
const NO_PANELS: PlatePanels = { panels: [], otherPlateThicknesses: [] }

const withWarning = (star: StarPlan, warning: Warning | undefined): StarPlan =>
  warning ? { ...star, warnings: [...star.warnings, warning] } : star

export const planStar = (order: StarOrder, shop: Shop, lengths: LengthStyle): Outcome<StarPlan> => {
  const tipAngles = tipAnglesWithin(shop.saw, order.points)
  const tipAngle = tipAngleOf(order, tipAngles?.least)
  if (tipAngle === undefined) {
    return refused([
      {
        ...order.at.shape,
        given: 'true',
        advice: `A saw that stops at ${showAngle(shop.saw.limit)} cuts no ${order.points}-point star. Give a tip angle, and the plan will name the fence wedge for it.`,
      },
    ])
  }
  const star = solveStar(order.points, tipAngle, order.size.by, order.size.length)
  const blank = blankOf(star, shop.saw.kerf, shop.endAllowance)
  const arms = star.points * order.quantity
  const sized = sizeProblems(order, star, blank, lengths)
  const boards: ArmBoards =
    sized.length > 0 ? NO_BOARDS : armBoards(shop, star.armStrip, order.thickness, blank)
  const use = boardUse(boards, shop, star.armStrip, blank, arms)
  const tooWide = chamferProblems(order, star, lengths)
  const thicker = thickerBoards(boards, (length) => showLength(length, lengths))
  const tooDeep = chamferTooDeep(order, boards.thickness, thicker, lengths)
  const chamfer = tooWide.length > 0 ? undefined : order.chamfer
  const backing = order.backing
    ? planBacking(star, order.backing, order.at.backing, {
        chamfer,
        cutter: shop.cutter,
        lengths,
        name: order.name,
      })
    : done(undefined)
  const panels = backing.ok && backing.value ? platePanels(backing.value, shop.panels) : NO_PANELS
  const plateThickness = backing.ok ? panels.plateThickness : supposedThickness(order.backing, shop.panels)
  const fastener =
    order.backing &&
    fastenerProblem(order.backing, order.at.backing, plateThickness, boards.thickness, thicker, lengths)
  const problems = [
    ...sized,
    ...tooWide,
    ...(tooDeep ? [tooDeep] : []),
    ...problemsOf(backing),
    ...(fastener ? [fastener] : []),
  ]
  if (problems.length > 0 || !backing.ok) return refused(problems)

  const rhombus = blankIsArm(star)
  const bias = biasOf(shop.saw)
  const firstCut = plannedCut(shop, firstMiter(tipAngle), rhombus ? bias : degrees(0), (miter, set) =>
    rhombus ? closureOfRhombus(star.points, miter, set) : closureOfFirstCut(star.points, miter, set),
  )
  const jointCut = plannedCut(shop, jointMiter(star.points, tipAngle), bias, (miter, set) =>
    rhombus ? degrees(0) : closureOfJointCut(star.points, miter, set),
  )
  const area = kiteArea(star)
  const boardPerStar = mm(blank.firstTrim + star.points * blank.pitch)
  const reaches = shop.saw.crosscut === undefined || blank.longestCut <= shop.saw.crosscut + SHOP
  const plan = {
    order,
    star,
    ...boards,
    ...panels,
    kite: { width: kiteWidth(star), area },
    blank,
    firstCut,
    jointCut,
    stop: star.tipEdge,
    arms,
    boardPerStar,
    boardForQuantity: mm(blank.firstTrim + arms * blank.pitch),
    yield: (star.points * area) / (star.armStrip * boardPerStar),
    feasible: firstCut.withinLimit && jointCut.withinLimit && reaches,
    markPairs: markPairs(shop.saw, star.points, tipAngle),
    gapPerTenth: gapPerJointError(rhombus ? star.points / 2 : star.points, star.jointEdge, degrees(0.1)),
    ...(use ? { boardUse: use } : {}),
    ...(tipAngles ? { tipAngles } : {}),
    ...(backing.value ? { backing: backing.value } : {}),
  }
  const whole = { ...plan, ...woodOf(plan, shop) }
  return done({ ...whole, warnings: warningsFor(whole, shop, lengths) })
}

const tipAngleOf = ({ shape, points }: StarOrder, slenderest: Degrees | undefined): Degrees | undefined => {
  switch (shape.by) {
    case 'tip-angle':
      return shape.tipAngle
    case 'regular':
      return regularTipAngle(points, shape.step)
    case 'slenderest':
      return slenderest
  }
}

const plannedCut = (
  shop: Shop,
  miter: Degrees,
  bias: Degrees,
  closureAt: (miter: Degrees, set: Degrees) => Degrees,
): PlannedCut => {
  const setting = sawSetting(shop.saw, miter, bias)
  const closure = closureAt(miter, setting.miterAtMark)
  return {
    ...setting,
    withinLimit: withinLimit(shop.saw, degrees(miter - bias)),
    closureAtMark: Math.abs(closure) < SAME_ANGLE ? degrees(0) : closure,
  }
}

/** Is the star too large to be meant, or too small to be cut? */
const sizeProblems = (order: StarOrder, star: Star, blank: Blank, lengths: LengthStyle): Problem[] => {
  const at = { ...order.at.size, given: showGivenLength(order.size.length, lengths) }
  const largest = Math.max(star.across, star.height, blank.side, star.armStrip)
  if (largest > LARGEST) {
    return [
      {
        ...at,
        advice: `With a tip angle of ${showAngle(star.tipAngle)} that makes a piece ${showLength(mm(largest), lengths)} long; allowed: up to ${showAtMost(LARGEST, lengths)}. Give a smaller size or another shape.`,
      },
    ]
  }
  const smallest = Math.min(star.tipEdge, star.jointEdge)
  if (smallest < SMALLEST_EDGE) {
    return [
      {
        ...at,
        advice: `With ${star.points} points and a tip angle of ${showAngle(star.tipAngle)} that makes an edge of only ${showLength(mm(smallest), lengths)}; allowed: from ${showAtLeast(SMALLEST_EDGE, lengths)}. Give a larger size or another shape.`,
      },
    ]
  }
  return []
}

/** Does the chamfer fit inside the outline? */
const chamferProblems = (order: StarOrder, star: Star, lengths: LengthStyle): Problem[] => {
  const problems: Problem[] = []
  const { chamfer } = order
  if (chamfer !== undefined && chamfer >= star.edgeDistance) {
    problems.push({
      ...order.at.chamfer,
      given: showGivenLength(chamfer, lengths),
      advice: `Chamfers from both sides would meet: this star allows less than ${showAtMost(star.edgeDistance, lengths)}.`,
    })
  }
  return problems
}
