import { describe, expect, it } from 'vitest'
import type { CutBoard, CutStrip, LaidBlank } from '../../src/stock/cut-board.js'
import type { StockPlan } from '../../src/stock/stock.js'
import { smallOrder } from './small-order.js'
import { stockOf, tryStock } from './stock-of.js'

const TINY = 1e-6
const rad = (angle: number): number => (angle * Math.PI) / 180

type Corner = readonly [x: number, y: number]

/** The arm's corners on the board, worked out from the star's angles; over 90° the tip stands at the blank's end. */
const armCorners = ({ kind, from, to }: LaidBlank): Corner[] => {
  const { points, tipAngle, tipEdge } = kind.plan.star
  const radius = (tipEdge * Math.sin(rad(tipAngle / 2 + 180 / points))) / Math.sin(rad(180 / points))
  const polar = (length: number, angle: number): Corner => [
    length * Math.cos(rad(angle)),
    length * Math.sin(rad(angle)),
  ]
  const corners: Corner[] = [[0, 0], [tipEdge, 0], polar(radius, tipAngle / 2), polar(tipEdge, tipAngle)]
  return corners.map(([x, y]): Corner => (tipAngle <= 90 ? [from + x, y] : [to - x, y]))
}

/** Where the slot of a cut lies at a height above the fence: from its near to its far side. */
const slotAt = (cut: CutStrip['cuts'][number], height: number): [number, number] => {
  const tip = cut.kind.plan.star.tipAngle
  const slot = cut.kind.plan.blank.slot
  const shift = Math.abs(height / Math.tan(rad(tip)))
  const near = (cut.slot === 'after' ? cut.at : cut.at - slot) + shift
  return [near, near + slot]
}

const checkStrip = (cut: CutBoard, strip: CutStrip, { plan }: StockPlan, where: string): void => {
  const { board } = cut
  const { shop } = plan.order
  const { blanks, cuts, offcut } = strip
  expect(strip.width, where).toBeLessThanOrEqual(board.width + 0.1)
  for (const blank of blanks) {
    const corners = armCorners(blank)
    const xs = corners.map(([x]) => x)
    const [low, high] = [Math.min(...xs), Math.max(...xs)]
    // Inside the strip, and the whole blank inside the board.
    expect(Math.max(...corners.map(([, y]) => y)), where).toBeLessThanOrEqual(strip.width + TINY)
    expect(Math.min(low, blank.from), where).toBeGreaterThanOrEqual(shop.endAllowance - TINY)
    expect(blank.to + blank.kind.plan.blank.slot + blank.slant, where).toBeLessThanOrEqual(
      board.length + TINY,
    )
    // On sound wood.
    const end = shop.sound === 'arm' ? high : blank.to + blank.kind.plan.blank.slot + blank.slant
    for (const { from, to } of board.defects)
      expect(end <= from + TINY || low >= to - TINY, `${where}: a defect at ${from}`).toBe(true)
    // No slot runs through an arm, up to the cut that sets it free.
    const free = cuts.findIndex(({ at }) => at >= blank.to - TINY)
    expect(free, where).toBeGreaterThanOrEqual(0)
    for (const saw of cuts.slice(0, free + 1)) {
      const sides = corners.map(([x, y]) => {
        const [near, far] = slotAt(saw, y)
        return x <= near + TINY ? -1 : x >= far - TINY ? 1 : 0
      })
      expect(new Set(sides).size === 1 && sides[0] !== 0, `${where}: the cut at ${saw.at} hits an arm`).toBe(
        true,
      )
    }
  }
  // Cuts in order; between them, blanks, slots and waste fill the board to its end.
  let at = 0
  let total = 0
  for (const saw of cuts) {
    const slot = saw.kind.plan.blank.slot
    const near = saw.slot === 'after' ? saw.at : Math.max(0, saw.at - slot)
    const far = saw.slot === 'after' ? saw.at + slot : saw.at
    // A trim may run in the slot of the cut before it.
    expect(far, where).toBeGreaterThanOrEqual(at - TINY)
    const piece = Math.max(0, near - at)
    total += piece + (Math.max(at, far) - Math.max(at, near))
    at = Math.max(at, far)
  }
  expect(offcut.from, where).toBeCloseTo(at, 6)
  expect(total + offcut.length, where).toBeCloseTo(board.length, 6)
}

const checkStock = (stock: StockPlan, where: string): void => {
  for (const cut of stock.boards) {
    for (const strip of cut.strips) checkStrip(cut, strip, stock, where)
    const widths = cut.strips.reduce((sum, { width }) => sum + width, 0)
    const rips = (cut.strips.length - 1) * (stock.plan.order.shop.ripKerf ?? 0)
    expect(widths + rips, where).toBeLessThanOrEqual(cut.board.width + 0.1)
  }
  for (const kind of stock.kinds) {
    const laid = stock.boards.reduce(
      (sum, { strips, times }) =>
        sum + times * strips.flatMap(({ blanks }) => blanks).filter((blank) => blank.kind === kind).length,
      0,
    )
    expect(laid, where).toBe(kind.count)
  }
  for (const { board, number } of stock.boards) {
    const taken = stock.boards
      .filter((each) => each.number === number)
      .reduce((sum, each) => sum + each.times, 0)
    expect(taken, where).toBeLessThanOrEqual(board.count ?? Infinity)
  }
}

describe('every planned blank', () => {
  it('lies on sound wood inside its board, clear of every slot, and distances add up to the board', async () => {
    for (let seed = 1; seed <= 60; seed++) {
      for (const ripKerf of [undefined, 3]) {
        const stock = await tryStock(smallOrder(seed, ripKerf))
        if (stock.ok) checkStock(stock.value, `seed ${seed}, ${ripKerf}`)
      }
    }
  }, 120_000)

  it('also with tip angles from 20 to 140 degrees on one board with defects', async () => {
    const stars = [20, 36, 45, 60, 75, 90, 100, 120, 140].map(
      (tip, index) =>
        `{ name: S${index}, points: 24, tip-angle: ${tip}, board-width: ${60 + 4 * (index % 4)} }`,
    )
    const defects = Array.from(
      { length: 12 },
      (_, index) => `{ from: ${300 * index + 250}, to: ${300 * index + 252 + index * 4} }`,
    )
    for (const sound of ['arm', 'blank']) {
      const stock = await stockOf(
        `{ shop: { saw: { limit: 75, kerf: 2.4 }, sound: ${sound}, boards: [{ width: 90, length: 4000, price: 9, defects: [${defects}] }, { width: 90, length: 1500, price: 4 }] }, stars: [${stars}] }`,
      )
      checkStock(stock, sound)
    }
  }, 60_000)
})

describe('an offcut', () => {
  it('is named when it holds arms: as many as then really fit', async () => {
    const order = (quantity: number) =>
      `{ shop: { saw: { kerf: 2.4 }, boards: [{ width: 70, length: 2400 }] }, stars: [{ points: 5, quantity: ${quantity}, tip-angle: 45, board-width: 70 }] }`
    const [board] = (await stockOf(order(3))).boards
    // 22 arms fit a board of 2400 mm: (2400 - 70) / (98.99 + 3.39) = 22.8.
    expect(board?.strips[0]?.offcut.holds.map(({ count }) => count)).toEqual([7])
    expect((await stockOf(order(4))).boards[0]?.strips[0]?.offcut.holds).toEqual([
      expect.objectContaining({ count: 2 }),
    ])
  })
})

describe('a blank', () => {
  it('serves any star of its width and tip angle', async () => {
    const stock = await stockOf(
      '{ shop: { boards: [{ width: 70, length: 2400 }] }, stars: [{ name: A, points: 5, tip-angle: 45, board-width: 70 }, { name: B, points: 6, tip-angle: 45, board-width: 70 }] }',
    )
    expect(stock.kinds).toHaveLength(1)
    expect(stock.kinds[0]?.count).toBe(11)
  })

  it('that is the arm itself lies on no wider strip, others do', async () => {
    const stock = await stockOf(
      '{ shop: { boards: [{ width: 110, length: 3000, price: 9 }] }, stars: [{ name: Rhombus, regular: 6/2, across: 300 }, { name: Wide, points: 5, tip-angle: 45, board-width: 100 }, { name: Slim, points: 5, tip-angle: 45, board-width: 60 }] }',
    )
    for (const { strips } of stock.boards)
      for (const { width, blanks } of strips)
        for (const { kind } of blanks) if (kind.exact) expect(width).toBeCloseTo(kind.plan.star.armStrip, 6)
    const strips = stock.boards.flatMap((board) => board.strips)
    expect(
      strips.some(({ width, blanks }) => blanks.some(({ kind }) => kind.plan.star.armStrip < width - 1)),
    ).toBe(true)
  })
})
