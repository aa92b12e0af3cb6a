import type { CutBoard, CutStrip } from '../stock/cut-board.js'
import type { StarCost } from '../stock/quotation.js'
import type { StockPlan } from '../stock/stock.js'

/** The stock plan for programs: mm, mm² and the order's own currency, unrounded. Names and meanings never change. */
export const stockJson = (stock: StockPlan): string => {
  const { plan, kinds, boards, priced, cost, bound, proved } = stock
  const shown = {
    title: plan.order.title,
    units: 'mm',
    /** `money`, or `m²` of wood when no board has a price. */
    costIn: priced ? 'money' : 'm²',
    cost,
    bound,
    proved,
    yield: stock.yield,
    blanks: kinds.map(({ letter, stars, count, plan: { star, blank, firstCut, thickness } }) => ({
      mark: letter,
      stars: stars.map(({ order }) => order.name),
      count,
      width: star.armStrip,
      thickness: thickness ?? null,
      side: blank.side,
      slot: blank.slot,
      miter: firstCut.miter,
    })),
    boards: boards.map(boardJson),
    stars: stock.stars.map(starJson),
  }
  return `${JSON.stringify(shown, undefined, 2)}\n`
}

const boardJson = ({ board, number, times, strips, rippedOff }: CutBoard) => ({
  number,
  name: board.name ?? null,
  times,
  width: board.width,
  length: board.length,
  thickness: board.thickness ?? null,
  price: board.price ?? null,
  defects: board.defects,
  rippedOff,
  strips: strips.map(stripJson),
})

const stripJson = ({ width, blanks, cuts, offcut }: CutStrip) => ({
  width,
  blanks: blanks.map(({ kind, from, to, slant }) => ({ mark: kind.letter, from, to, slant })),
  /** The slot lies before or after the mark, seen from the first end. */
  cuts: cuts.map(({ at, slot, kind }) => ({ at, slot, miter: kind.plan.firstCut.miter })),
  offcut: {
    from: offcut.from,
    length: offcut.length,
    holds: offcut.holds.map(({ kind, count }) => ({ mark: kind.letter, count })),
  },
})

const starJson = ({ plan, wood, boards, panel, hardware, total }: StarCost) => ({
  name: plan.order.name,
  quantity: plan.order.quantity,
  wood,
  boards: boards ?? null,
  panel: panel ?? null,
  hardware: hardware ?? null,
  total,
})
