import type { Board, Shop } from '../../src/order/order.js'
import type { Plan, StarPlan } from '../../src/plan/plan.js'

/*
 * The oracle: boards filled by trying every order of blanks, corner by corner, and boards chosen by trying every
 * choice. It shares no code with the solver and no formula beyond the corners of a kite.
 */

const TINY = 1e-6
const rad = (angle: number): number => (angle * Math.PI) / 180

interface Shape {
  readonly width: number
  readonly side: number
  readonly slot: number
  readonly cot: number
  /** Along the fence from the blank's first corner: where the arm begins and ends. */
  readonly arm: readonly [number, number]
}

const shapeOf = ({ star }: StarPlan, kerf: number): Shape => {
  const [half, centre] = [star.tipAngle / 2, 180 / star.points]
  const edge = star.tipEdge
  const radius = (edge * Math.sin(rad(half + centre))) / Math.sin(rad(centre))
  const corners = [
    [0, 0],
    [edge, 0],
    [radius * Math.cos(rad(half)), radius * Math.sin(rad(half))],
    [edge * Math.cos(rad(2 * half)), edge * Math.sin(rad(2 * half))],
  ] as const
  const width = Math.max(...corners.map(([, y]) => y))
  const side = width / Math.sin(rad(2 * half))
  // Over 90° the cuts lean to the other side: read from the board's other end they lean the same way.
  const xs = corners.map(([x]) => (2 * half <= 90 ? x : side - x))
  return {
    width,
    side,
    slot: kerf / Math.sin(rad(2 * half)),
    cot: Math.abs(1 / Math.tan(rad(2 * half))),
    arm: [Math.min(...xs), Math.max(...xs)],
  }
}

/** Every set of blanks that some order of them lays on one strip, as counts by star, none of which can take another. */
const fillingsOf = (
  board: Board,
  strip: number,
  shapes: readonly Shape[],
  demand: readonly number[],
  shop: Shop,
) => {
  const defects = [...board.defects].sort((a, b) => a.from - b.from)
  const found = new Map<string, number[]>()
  const reached = new Map<string, number>()
  const widestSlot = Math.max(...shapes.map(({ slot }) => slot))
  /** Clear of every defect, and begun on sound wood? */
  const isSound = (at: number, start: number, end: number): boolean =>
    defects.every(({ from, to }) => at + end <= from + TINY || at + start >= to - TINY) &&
    defects.every(({ from, to }) => at < from - TINY || at >= to - TINY)
  const lay = (
    left: number,
    lean: number,
    armEnd: number,
    counts: readonly number[],
    laid: boolean,
  ): void => {
    found.set(counts.join(), [...counts])
    // The same blanks with the same one last, and no further along the board: nothing new can come of these.
    const state = `${counts.join()} ${lean} ${(armEnd - left).toFixed(6)}`
    if ((reached.get(state) ?? Infinity) <= left) return
    reached.set(state, left)
    shapes.forEach((shape, index) => {
      if ((counts[index] ?? 0) >= (demand[index] ?? 0) || shape.width > strip + TINY) return
      const shift = strip * shape.cot
      // At once behind the last blank, where their slants touch; or behind a defect, with the slot of its own cut clear.
      const behind = defects
        .filter(({ from }) => from >= armEnd - TINY)
        .map(({ from, to }) => Math.max(to, from > shop.endAllowance ? from + widestSlot : to))
      const touching = laid ? Math.max(0, lean - shift) : 0
      const [start, end] = shop.sound === 'arm' ? shape.arm : [0, shape.side + shape.slot + shift]
      const at = [left + touching, ...behind.filter((each) => each >= shop.endAllowance)]
        .sort((a, b) => a - b)
        .find((each) => isSound(each, start, end))
      if (at === undefined || at + shape.side + shape.slot + shift > board.length + TINY) return
      const next = counts.map((count, each) => (each === index ? count + 1 : count))
      lay(at + shape.side + shape.slot, shift, at + shape.arm[1], next, true)
    })
  }
  lay(
    shop.endAllowance,
    0,
    0,
    demand.map(() => 0),
    false,
  )
  return [...found.values()]
}

/** The least cost of boards that give all arms; undefined when they are too few. */
export const leastCost = ({ order, stars }: Plan): number | undefined => {
  const { shop } = order
  const shapes = stars.map((star) => shapeOf(star, shop.saw.kerf))
  const demand = stars.map(({ arms }) => arms)
  const widths = [...new Set(shapes.map(({ width }) => width))]
  const options = shop.boards.map((board) => {
    const strips = widths.map((strip) => ({
      strip,
      fillings: undominated(fillingsOf(board, strip, shapes, demand, shop)),
    }))
    const ripped = (from: number, left: number): number[][] =>
      strips.flatMap(({ strip, fillings }, index) => {
        if (index < from || strip > left + 0.1) return []
        const more = shop.ripKerf === undefined ? [] : ripped(index, left - strip - shop.ripKerf)
        return [
          ...fillings,
          ...fillings.flatMap((filling) =>
            more.map((other) =>
              filling.map((count, blank) => Math.min(demand[blank] ?? 0, count + (other[blank] ?? 0))),
            ),
          ),
        ]
      })
    const fillings = undominated(unlike(ripped(0, board.width)))
    return { price: board.price ?? 0, count: board.count ?? Infinity, fillings }
  })
  const known = new Map<string, number>()
  const cheapest = (left: readonly number[], used: readonly number[]): number => {
    if (left.every((count) => count === 0)) return 0
    const key = `${left.join()} ${used.join()}`
    const before = known.get(key)
    if (before !== undefined) return before
    let best = Infinity
    options.forEach(({ price, count, fillings }, index) => {
      if ((used[index] ?? 0) >= count) return
      const next = used.map((each, other) => (other === index && count < Infinity ? each + 1 : each))
      for (const filling of fillings) {
        const rest = left.map((each, blank) => Math.max(0, each - (filling[blank] ?? 0)))
        if (rest.every((each, blank) => each === left[blank])) continue
        best = Math.min(best, price + cheapest(rest, next))
      }
    })
    known.set(key, best)
    return best
  }
  const least = cheapest(
    demand,
    options.map(() => 0),
  )
  return least === Infinity ? undefined : least
}

const undominated = (all: readonly number[][]): number[][] =>
  all.filter(
    (filling, index) =>
      !all.some(
        (other, at) =>
          at !== index &&
          other.every((count, blank) => count >= (filling[blank] ?? 0)) &&
          (at < index || other.some((count, blank) => count > (filling[blank] ?? 0))),
      ),
  )

const unlike = (all: readonly number[][]): number[][] => [
  ...new Map(all.map((filling) => [filling.join(), filling])).values(),
]
