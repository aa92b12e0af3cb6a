import type { Plan, StarPlan } from '../plan/plan.js'
import { longestFastenerOf } from './backing-words.js'

/**
 * The plan for programs, a public contract: lengths in mm, angles in degrees, unrounded. Additions are allowed;
 * nothing that stands here changes its name or meaning.
 */
export const planJson = (plan: Plan): string =>
  `${JSON.stringify({ title: plan.order.title, stars: plan.stars.map(starJson) }, undefined, 2)}\n`

const starJson = (plan: StarPlan) => {
  const { order, star, blank, firstCut, jointCut, boardUse, backing } = plan
  return {
    name: order.name,
    note: order.note ?? null,
    quantity: order.quantity,
    points: star.points,
    tipAngle: star.tipAngle,
    sideAngle: star.sideAngle,
    centreAngle: star.centreAngle,
    tipEdge: star.tipEdge,
    jointEdge: star.jointEdge,
    radius: star.radius,
    valleyRadius: star.valleyRadius,
    across: star.across,
    height: star.height,
    /** Beyond the straight line between tips `valleyLineApart` apart; negative inside it. */
    valleyDip: star.valleyLine.dip,
    valleyLineApart: star.valleyLine.apart,
    kiteWidth: plan.kite.width,
    kiteArea: plan.kite.area,
    boardNeeded: star.armStrip,
    blank: { miter: firstCut.miter, side: blank.side, pitch: blank.pitch, firstTrim: blank.firstTrim },
    joint: { miter: jointCut.miter, stop: plan.stop },
    settings: {
      first: settingJson(firstCut),
      joint: settingJson(jointCut),
    },
    boardPerStar: plan.boardPerStar,
    boardForQuantity: plan.boardForQuantity,
    blanksPerBoard: boardUse?.blanksPerBoard ?? null,
    boardsNeeded: boardUse?.boardsNeeded ?? null,
    yield: plan.yield,
    feasible: plan.feasible,
    tipAngles: plan.tipAngles ?? null,
    markPairs: plan.markPairs,
    gapPerTenthDegree: plan.gapPerTenth,
    backing: backing
      ? {
          shape: backing.shape,
          inset: backing.order.inset,
          margin: backing.margin,
          across: backing.across,
          height: backing.height,
          thickness: plan.plateThickness ?? null,
          covers: backing.covers,
          hanging: hangingJson(backing.hanging),
          fixing: backing.fixing ?? null,
          longestFastener: longestFastenerOf(plan) ?? null,
        }
      : null,
    wood: plan.wood,
    thickness: plan.thickness ?? null,
    /** Volumes in mm³, areas in mm², of one star. */
    body: plan.body ?? null,
    /** In kg, of one star. */
    weight: plan.weight ?? null,
    warnings: plan.warnings,
  }
}

const hangingJson = (hanging: NonNullable<StarPlan['backing']>['hanging']) =>
  hanging
    ? { kind: hanging.kind, height: hanging.height, apart: hanging.apart ?? null, wall: hanging.wall }
    : null

const settingJson = ({ reading, wedge, mark, closureAtMark, withinLimit, bias }: StarPlan['firstCut']) => ({
  reading,
  wedge: wedge?.angle ?? null,
  mark,
  closureAtMark,
  withinLimit,
  /** What the cut comes out at less what the scale reads; the reading makes it good. */
  bias: bias ?? 0,
})
