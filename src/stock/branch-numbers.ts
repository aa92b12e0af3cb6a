import type { CutSupply, CuttingProblem } from './cutting-problem.js'
import { anyNumber, type BoardPrices, type Deadline, type Numbers, type Pricer } from './price-boards.js'

/** Numbers of boards that are still possible, and what they cost at least. */
interface Branch {
  readonly numbers: Numbers
  readonly bound: number
  /** How many of each supply the linear program takes, parts of boards too. */
  readonly taken: readonly number[]
}

/**
 * A better bound: boards are taken whole. Where the linear program takes part of a board, it is priced once with fewer
 * and once with more of that supply, and so on from the branch that costs least (branch and price: Barnhart and others,
 * Operations Research 46, 1998, 316-329). It ends when the cheapest branch takes whole numbers of every supply: only
 * their fillings are in parts then.
 *
 * @param root the prices for any number of boards
 * @param enough a bound that proves the cutting at hand
 * @returns the bound, and every way of cutting that was found good
 */
export const branchNumbers = (
  problem: CuttingProblem,
  root: BoardPrices,
  price: Pricer,
  enough: (bound: number) => boolean,
  deadline: Deadline,
): Pick<BoardPrices, 'bound' | 'cuts'> => {
  let cuts = root.cuts
  const open: Branch[] = [branchOf(anyNumber(problem), root, root.bound, problem)]
  for (;;) {
    const cheapest = open.reduce((least, branch) => (branch.bound < least.bound ? branch : least))
    const { numbers, bound, taken } = cheapest
    const split = dearestPart(taken, problem)
    if (split === undefined || enough(bound) || deadline.now() > deadline.until) return { bound, cuts }
    const whole = Math.floor(taken[split] ?? 0)
    const sides = [
      { ...numbers, most: numbers.most.with(split, whole) },
      { ...numbers, least: numbers.least.with(split, whole + 1) },
    ].map((side) => {
      const prices = price(side, enough, deadline)
      cuts = prices.cuts
      return branchOf(side, prices, bound, problem)
    })
    open.splice(open.indexOf(cheapest), 1, ...sides)
  }
}

/** @param atLeast the bound of the branch it comes from */
const branchOf = (
  numbers: Numbers,
  { cuts, quantities, bound }: BoardPrices,
  atLeast: number,
  { supplies }: CuttingProblem,
): Branch => ({ numbers, bound: Math.max(bound, atLeast), taken: takenBy(cuts, quantities, supplies.length) })

const takenBy = (
  cuts: readonly CutSupply[],
  quantities: readonly number[],
  supplies: number,
): readonly number[] => {
  const taken = new Array<number>(supplies).fill(0)
  cuts.forEach(({ supply }, index) => {
    taken[supply] = (taken[supply] ?? 0) + (quantities[index] ?? 0)
  })
  return taken.map((number) => (Math.abs(number - Math.round(number)) < NOISE ? Math.round(number) : number))
}

const NOISE = 1e-5

/** Where whole boards would change the cost most; undefined when every number is whole. */
const dearestPart = (taken: readonly number[], { supplies }: CuttingProblem): number | undefined => {
  let [dearest, most]: [number | undefined, number] = [undefined, 0]
  taken.forEach((number, supply) => {
    const part = number - Math.floor(number)
    const weight = part === 0 ? 0 : (supplies[supply]?.cost ?? 0) * (SMALL_PART + Math.min(part, 1 - part))
    if (weight > most) [dearest, most] = [supply, weight]
  })
  return dearest
}

/** Even a small part of a dear board counts. */
const SMALL_PART = 0.2
