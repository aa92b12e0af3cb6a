import type { Board, Order, Panel } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'

/** `, 19.0 mm thick`; nothing while it is unknown. */
export const thickText = (thickness: Mm | undefined, lengths: LengthStyle): string =>
  thickness === undefined ? '' : `, ${showLength(thickness, lengths)} thick`

/** What the arms' thickness goes by where the order leaves it open: `19.0 mm, as board 1`. */
export const armsAs = (
  { order, thickness, boards }: StarPlan,
  { shop, lengths }: Order,
): string | undefined => {
  const board = boards.find((each) => each.thickness !== undefined)
  return order.thickness === undefined && thickness !== undefined && board
    ? `${showLength(thickness, lengths)}, as ${nameOf(board, shop.boards)}`
    : undefined
}

/** The same of the backing: `4.0 mm, as panel 1`. */
export const plateAs = (
  { backing, plateThickness, panels }: StarPlan,
  { shop, lengths }: Order,
): string | undefined => {
  const panel = panels.find((each) => each.thickness !== undefined)
  return backing && backing.thickness === undefined && plateThickness !== undefined && panel
    ? `${showLength(plateThickness, lengths)}, as panel ${shop.panels.indexOf(panel) + 1}`
    : undefined
}

const nameOf = (board: Board, boards: readonly Board[]): string =>
  board.name === undefined ? `board ${boards.indexOf(board) + 1}` : `"${board.name}"`

/** Thicknesses that were chosen among several, or taken for boards and panels that tell none; each once. */
export const thicknessesAssumed = (order: Order, stars: readonly StarPlan[]): string[] => {
  const { lengths } = order
  return [
    ...byNames(stars, (star) =>
      assumed(ARMS, star.thickness, armsAs(star, order), star.boards, star.otherThicknesses, lengths),
    ),
    ...byNames(stars, (star) =>
      assumed(
        PLATES,
        star.plateThickness,
        plateAs(star, order),
        star.panels,
        star.otherPlateThicknesses,
        lengths,
      ),
    ),
  ]
}

/** What is so thick, what it is cut from, and what to give for another thickness. */
const ARMS = ['arms', 'boards', 'thickness'] as const
const PLATES = ['backing', 'panels', "the backing's thickness"] as const

const assumed = (
  [what, sheets, key]: readonly [string, string, string],
  thickness: Mm | undefined,
  /** Absent where the order states the thickness. */
  as: string | undefined,
  used: readonly (Board | Panel)[],
  others: readonly Mm[],
  lengths: LengthStyle,
): string | undefined => {
  if (thickness === undefined) return undefined
  const untold = used.some((sheet) => sheet.thickness === undefined)
  const chosen = as !== undefined && others.length > 0
  if (!chosen && !untold) return undefined
  const shown = others.map((each) => showLength(each, lengths)).join(', ')
  return [
    `${what} ${as === undefined ? `${showLength(thickness, lengths)} thick` : as.replace(', ', ' thick, ')}`,
    ...(untold ? [`${sheets} that tell none are taken to be so too`] : []),
    ...(chosen ? [`give ${key} for another (${shown})`] : []),
  ].join('; ')
}

/** Stars of which the same is told stand together: `Jetty, Pier: ...`. */
const byNames = (stars: readonly StarPlan[], tell: (star: StarPlan) => string | undefined): string[] => {
  const names = new Map<string, string[]>()
  for (const star of stars) {
    const text = tell(star)
    if (text !== undefined) names.set(text, [...(names.get(text) ?? []), star.order.name])
  }
  return [...names].map(([text, told]) => `${told.join(', ')}: ${text}`)
}

/** A board that is thicker than the arms: `planed to 18.0 mm`. */
export const planedTo = (board: Board, { thickness }: StarPlan, lengths: LengthStyle): string | undefined =>
  thickness !== undefined && board.thickness !== undefined && board.thickness > thickness + SHOP
    ? `planed to ${showLength(thickness, lengths)}`
    : undefined
