import {
  blanksOf,
  type CutSupply,
  type CuttingProblem,
  type Filling,
  fits,
  single,
} from './cutting-problem.js'

/**
 * The same blanks from no more boards, so that the saw is set anew less often: all blanks of a kind leave a board for
 * another that has some of the kind already and room for them, the fewest first.
 */
export const fewerSettings = (cuts: readonly CutSupply[], problem: CuttingProblem): CutSupply[] => {
  const boards = single(cuts)
  while (moveOne(boards, problem));
  return boards.filter(({ fillings }) => fillings.some((filling) => filling.some((count) => count > 0)))
}

const moveOne = (boards: CutSupply[], problem: CuttingProblem): boolean => {
  const held = boards.map((board) => blanksOf([board], problem))
  const moves = held
    .flatMap((counts, from) => counts.map((count, blank) => ({ from, blank, count })))
    .filter(({ count }) => count > 0)
    .sort((a, b) => a.count - b.count)
  for (const { from, blank, count } of moves) {
    for (const [to, board] of boards.entries()) {
      if (to === from || (held[to]?.[blank] ?? 0) === 0) continue
      const fuller = withMore(board, blank, count, problem)
      if (!fuller) continue
      boards[to] = fuller
      boards[from] = without(boards[from] as CutSupply, blank)
      return true
    }
  }
  return false
}

const without = (cut: CutSupply, blank: number): CutSupply => ({
  ...cut,
  fillings: cut.fillings.map((filling) => filling.with(blank, 0)),
})

/** The board with so many more of a blank, wherever its rooms have space; undefined when they have too little. */
const withMore = (
  cut: CutSupply,
  blank: number,
  count: number,
  { demands, supplies }: CuttingProblem,
): CutSupply | undefined => {
  const { rooms = [], ways = [] } = supplies[cut.supply] ?? {}
  let left = count
  const fillings = cut.fillings.map((filling, place): Filling => {
    const room = rooms[ways[cut.way]?.[place] ?? -1]
    if (!room?.placings.some((placing) => placing.blank === blank)) return filling
    let fuller = filling
    while (left > 0) {
      const more = fuller.with(blank, (fuller[blank] ?? 0) + 1)
      if (!fits(more, room, demands)) break
      fuller = more
      left -= 1
    }
    return fuller
  })
  return left === 0 ? { ...cut, fillings } : undefined
}
