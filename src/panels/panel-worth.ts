import { signedArea } from '../geometry/outline.js'
import { areaBound, fewestPanels } from '../nest/area-bound.js'
import { inBoxes } from '../nest/in-boxes.js'
import type { Panel as Sheet } from '../nest/panel.js'
import { rowsOfBoxes } from '../nest/rows-of-boxes.js'
import type { Panel } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Backed, LaidPlate } from './panel-plan.js'

/** The stars whose plates share panels of one kind. */
export interface SharedPanels {
  readonly panel: Panel
  readonly stars: readonly StarPlan[]
  /** Panels to buy. */
  readonly count: number
  /** No layout takes fewer, by area. */
  readonly atLeast: number
  /** What all boxes in rows would take. */
  readonly inBoxes: number
  /** Plates over panels, in area, 0 to 1: of the panels bought, of the least there could be, of rows of boxes. */
  readonly yield: number
  readonly bestYield: number
  readonly boxYield: number
}

/** What a filled panel holds, and what that is worth. */
export interface PanelWorth {
  /** Plates over panel, in area, 0 to 1. */
  readonly yield: number
  readonly stars: readonly StarOnPanel[]
}

/** The plates of one star on a panel. */
export interface StarOnPanel {
  readonly star: StarPlan
  readonly count: number
  /** Where they are more than rows of boxes would hold: how many those hold, and how many the panel's area at most. */
  readonly beside?: { readonly inBoxes: number; readonly areaBound: number }
}

/** @param count panels that the nesting takes */
export const useOf = (stars: readonly Backed[], panel: Panel, sheet: Sheet, count: number): SharedPanels => {
  const plates = stars.map(({ backing, order }) => ({ ...backing, count: order.quantity }))
  const area = plates.reduce((sum, plate) => sum + plate.count * signedArea(plate.outline), 0)
  const yieldOf = (panels: number): number => area / (panels * panel.length * panel.width)
  const atLeast = fewestPanels(plates, sheet)
  const rows = rowsOfBoxes(plates, sheet)
  // A plate that just goes on has a panel to itself.
  const boxed = rows.unplaced.reduce((sum, more) => sum + more, rows.panels.length)
  return {
    panel,
    stars,
    count,
    atLeast,
    inBoxes: boxed,
    yield: yieldOf(count),
    bestYield: yieldOf(atLeast),
    boxYield: yieldOf(boxed),
  }
}

export const panelWorth = (plates: readonly LaidPlate[], sheet: Sheet): PanelWorth => {
  const area = plates.reduce((sum, { star }) => sum + signedArea(star.backing.outline), 0)
  const stars = [...new Set(plates.map(({ star }) => star))].map((star): StarOnPanel => {
    const count = plates.filter((laid) => laid.star === star).length
    const boxes = inBoxes(star.backing, sheet)
    return count > boxes
      ? { star, count, beside: { inBoxes: boxes, areaBound: areaBound(star.backing.outline, sheet) } }
      : { star, count }
  })
  return { yield: area / (sheet.width * sheet.height), stars }
}
