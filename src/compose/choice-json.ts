import type { Choice, Choices } from '../choose/choices.js'
import { panelUse } from '../choose/compare.js'
import { starPart } from '../choose/ranks.js'
import type { Order } from '../order/order.js'

/** The choices for programs, a public contract: mm, mm², degrees, chances from 0 to 1, unrounded; all of them, ranked. */
export const choiceJson = (
  ranked: readonly Choice[],
  { beyondSaw, ownLeftOut }: Choices,
  order: Order,
): string =>
  `${JSON.stringify({ stars: ranked.map((choice) => oneJson(choice, order)), leftOut: beyondSaw, ownLeftOut }, undefined, 2)}\n`

export const comparisonJson = (a: Choice, b: Choice, order: Order): string =>
  `${JSON.stringify({ compared: [oneJson(a, order), oneJson(b, order)] }, undefined, 2)}\n`

const oneJson = (choice: Choice, { shop }: Order) => {
  const { plan, shape, board, perBoard } = choice
  const { star, firstCut, jointCut } = plan
  return {
    label: choice.label,
    points: star.points,
    tipAngle: star.tipAngle,
    regular: shape.step === undefined ? null : `${shape.points}/${shape.step}`,
    slenderest: shape.slenderest,
    onMarks: shape.onMarks,
    wholeBoard: choice.wholeBoard,
    across: star.across,
    height: star.height,
    radius: star.radius,
    tipEdge: star.tipEdge,
    valleyDip: star.valleyLine.dip,
    settings: {
      first: { reading: firstCut.reading, mark: firstCut.mark },
      joint: { reading: jointCut.reading, mark: jointCut.mark },
    },
    gapAtMarks: choice.markGap,
    chanceOnMarks: choice.chance,
    boardNeeded: star.armStrip,
    boardWidth: board?.width ?? null,
    thickness: plan.thickness ?? null,
    boardPerStar: plan.boardPerStar,
    /** Board used by one star, in mm². */
    wood: choice.wood,
    starPart: starPart(choice),
    armsPerBoard: perBoard?.arms ?? null,
    leftOfBoard: perBoard?.left ?? null,
    arms: plan.arms,
    gapPerTenthDegree: plan.gapPerTenth,
    backing: panelUse(plan, shop.panels) ?? null,
  }
}
