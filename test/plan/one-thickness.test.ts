import { describe, expect, it } from 'vitest'
import { planPanels } from '../../src/panels/plan-panels.js'
import { briefStock } from '../../src/stock/stock.js'
import { planOf } from '../orders.js'
import { FAR_SAW, starPlan, tryStarPlan } from './shop-orders.js'

type Keys = Readonly<Record<string, unknown>>

const STAR = { points: 5, 'tip-angle': 45, 'board-width': 70, quantity: 4 }
const thick = { width: 70, thickness: 19, length: 2400, price: 9 }
const thin = { width: 70, thickness: 12, length: 2400, price: 4 }
const untold = { width: 70, length: 2400, price: 1 }

const planned = (star: Keys, ...boards: readonly Keys[]) =>
  starPlan({ ...STAR, ...star }, { saw: FAR_SAW, boards })

/** How thick the boards are that would be bought; or what is wrong with them. */
const bought = (star: Keys, ...boards: readonly Keys[]) => {
  const plan = planOf(JSON.stringify({ shop: { saw: FAR_SAW, boards }, stars: [{ ...STAR, ...star }] }))
  const stock = briefStock(plan, planPanels(plan))
  if (!stock.ok) return stock.problems.map(({ given, advice }) => `${given}: ${advice}`)
  return [...new Set(stock.value.boards.map(({ board }) => board.thickness))]
}

describe('a star has one thickness', () => {
  it('of the first board that carries it, whichever is cheaper', () => {
    expect(planned({}, thick, thin)).toMatchObject({ thickness: 19, boards: [thick], otherThicknesses: [12] })
    expect(planned({}, thin, thick)).toMatchObject({ thickness: 12, boards: [thin], otherThicknesses: [19] })
    expect(bought({}, thick, thin)).toEqual([19])
    expect(bought({}, thin, thick)).toEqual([12])
  })

  it('never that of a board which is too narrow or too short for an arm', () => {
    expect(planned({}, { ...thin, width: 60 }, { ...thin, length: 150 }, thick)).toMatchObject({
      thickness: 19,
      otherThicknesses: [],
    })
  })

  it('boards that tell none count as of it, also where they come first', () => {
    expect(planned({}, untold, thick, thin)).toMatchObject({ thickness: 19, boards: [untold, thick] })
    expect(planned({}, untold).thickness).toBeUndefined()
    expect(bought({}, thick, untold)).toEqual([undefined])
  })

  it('or the one that the order gives it, of boards so thick', () => {
    expect(planned({ thickness: 12 }, thick, thin)).toMatchObject({ thickness: 12, boards: [thin] })
    expect(bought({ thickness: 12 }, { ...thick, price: 1 }, thin)).toEqual([12])
  })

  it('of thicker boards, planed down, only where none is so thick', () => {
    expect(planned({ thickness: 18 }, thin, thick)).toMatchObject({
      thickness: 18,
      boards: [thick],
      otherThicknesses: [12],
    })
    expect(planned({ thickness: 20 }, thin, thick)).toMatchObject({ thickness: 20, boards: [] })
  })

  it('and boards a hair apart, as a rule cannot tell, are one', () => {
    const hair = { ...thick, thickness: 19.08 }
    expect(planned({}, thick, hair)).toMatchObject({ boards: [thick, hair], otherThicknesses: [] })
  })

  it('stars of different thickness do not lie on each other\u2019s boards', () => {
    const plan = planOf(
      JSON.stringify({
        shop: { saw: FAR_SAW, boards: [thick, thin] },
        stars: [
          { ...STAR, name: 'Thick' },
          { ...STAR, name: 'Thin', thickness: 12 },
        ],
      }),
    )
    const stock = briefStock(plan, planPanels(plan))
    const laid = stock.ok
      ? stock.value.boards.flatMap(({ board, strips }) =>
          strips.flatMap(({ blanks }) => blanks.map(({ kind }) => [kind.plan.order.name, board.thickness])),
        )
      : []
    expect(laid.length).toBeGreaterThan(0)
    for (const [name, thickness] of laid) expect(thickness).toBe(name === 'Thick' ? 19 : 12)
  })
})

/*
 * Plate and arm of 3 and 19 mm take nails of up to 3 + 19 - 2 = 20 mm, of 3 and 12 mm up to 13 mm: 2 mm stay under the
 * face. Common practice, no published source.
 */
describe('nails and chamfer are checked against that thickness', () => {
  const refusals = (star: Keys, ...boards: readonly Keys[]): readonly string[] => {
    const outcome = tryStarPlan(
      { ...STAR, ...star },
      { saw: FAR_SAW, boards, panels: [{ width: 600, length: 1200, thickness: 3 }] },
    )
    return outcome.ok ? [] : outcome.problems.map(({ place, advice }) => `${place}: ${advice}`)
  }
  const nailed = { backing: { shape: 'star', inset: 8, fixing: { kind: 'nails', length: 20 } } }

  it('20 mm nails come through the thin one, and no thin board is bought for the thick one', () => {
    expect(refusals(nailed, thick, thin)).toEqual([])
    expect(bought(nailed, { ...thick, count: 1 }, thin)).not.toContain(12)
    expect(refusals(nailed, thin, thick)).toEqual([
      'stars[0].backing.fixing.length: The nails would come through or lift the wood of the face: the plate is 3.0 mm thick, the arm 12.0 mm. Allowed: from 8.0 mm to 13.0 mm. Boards 19.0 mm thick would carry the arms too: give the star that thickness to use them.',
    ])
  })

  it('a chamfer of 14 mm goes through the thin one', () => {
    expect(refusals({ chamfer: 14 }, thick, thin)).toEqual([])
    expect(refusals({ chamfer: 14 }, thin, thick)).toEqual([
      "stars[0].chamfer: Allowed: less than the board's thickness, 12.0 mm. Boards 19.0 mm thick would carry the arms too: give the star that thickness to use them.",
    ])
  })
})
