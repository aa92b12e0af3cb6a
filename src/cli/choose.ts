import { type Choice, type ChoiceAsked, choicesFor } from '../choose/choices.js'
import { meant } from '../choose/compare.js'
import { RANKS, ranked } from '../choose/ranks.js'
import { hasRoom, nothingFound, readWish } from '../choose/wish.js'
import { choiceJson, comparisonJson } from '../compose/choice-json.js'
import { choiceList, comparisonTable } from '../compose/choice-list.js'
import { RANK_TEXTS } from '../compose/choice-words.js'
import { comparison } from '../compose/comparison.js'
import { choicesContent, DRAWING_KINDS } from '../drawing-content.js'
import type { FlagValues } from '../order/flags.js'
import { SIZE_KEYS } from '../order/flags.js'
import { done, type Outcome, type Problem, problemsOf, refused } from '../order/problem.js'
import { contentFor } from './content-for.js'
import { fileKind } from './file-kind.js'
import { writeDrawing } from './files.js'
import { type FurnishedOrder, furnishedOrder } from './furnished-order.js'
import type { Typed } from './order-flags.js'
import { EXIT, say, tellProblems } from './terminal.js'

/** The choice needs no star of the maker's own, but an order does. */
const ANY_STAR: FlagValues = { points: '5', 'tip-angle': '45', 'board-width': '70 mm' }

/** `starwright choose`: the stars that can be made with what the shop has, or two of them compared. */
export const choose = async (typed: Typed): Promise<number> => {
  const given = await shopAndWish(typed)
  if (!given.ok) return tellProblems(given.problems)
  const { order, furniture, asked, most } = given.value
  const by = RANKS.find((each) => each === typed.rank) ?? 'ease'
  const choices = choicesFor(order, asked)
  if (choices.found.length === 0) return tellProblems([nothingFound(order)])
  const all = ranked(choices.found, by)

  if (typed.compare !== undefined) return compareTwo(typed, all, given.value)
  const listed = all.slice(0, most)
  if (typed.to !== undefined) {
    const file = String(typed.to)
    const kind = fileKind(file, DRAWING_KINDS)
    const content = kind.ok ? await choicesContent(kind.value, listed, order, furniture) : kind
    const written = content.ok ? await writeDrawing(file, content.value, typed.replace === true) : content
    if (!written.ok) return tellProblems(written.problems)
  }
  if (typed.json === true) process.stdout.write(choiceJson(all, choices, order))
  else if (typed.quiet !== true) say(choiceList(listed, choices, order, RANK_TEXTS[by]))
  return EXIT.done
}

interface ShopAndWish extends FurnishedOrder {
  readonly asked: ChoiceAsked
  readonly most: number
}

/** Points and quantity ask for stars; they do not change those of the order. */
const shopAndWish = async (typed: Typed): Promise<Outcome<ShopAndWish>> => {
  const { points: askedPoints, quantity: askedQuantity, ...rest } = typed
  const own = typeof typed.ORDER === 'string'
  const sized = SIZE_KEYS.some((key) => typed[key] !== undefined)
  const { 'board-width': anyWidth, ...anyStar } = ANY_STAR
  const furnished = await furnishedOrder(
    own ? rest : sized ? { ...anyStar, ...rest } : { ...ANY_STAR, ...rest },
  )
  const wish = readWish({ points: askedPoints, quantity: askedQuantity, most: typed.most })
  if (!furnished.ok || !wish.ok) return refused([furnished, wish].flatMap(problemsOf))
  const { points, quantity, most } = wish.value
  const { order } = furnished.value
  const [star] = order.stars
  const only = typed.star === undefined ? undefined : star
  const wanted = points ?? only?.points
  const room = hasRoom(order)
  if (order.shop.boards.length === 0 && !sized && !room && !own) return refused([NOTHING_TO_GO_BY])
  return done({
    ...furnished.value,
    most,
    asked: {
      ...(wanted === undefined ? {} : { points: wanted }),
      quantity: quantity ?? only?.quantity ?? 1,
      ...(star && (sized || (own && !room)) ? { size: star.size } : {}),
      own,
    },
  })
}

const NOTHING_TO_GO_BY: Problem = {
  place: 'choose',
  given: 'neither boards nor a size nor a wall',
  advice:
    'Name an order file with your saw and boards; or give a size, such as --board-width 70mm, or the room, such as --space-across 600mm.',
}

const compareTwo = async (
  typed: Typed,
  all: readonly Choice[],
  { order, furniture, asked }: ShopAndWish,
): Promise<number> => {
  const words = Array.isArray(typed.compare) ? typed.compare.map(String) : []
  const [first, second] = words
  if (first === undefined || second === undefined || words.length > 2) {
    return tellProblems([
      {
        place: '--compare',
        given: `${words.length} stars`,
        advice: 'Allowed: two, such as --compare 5/2 5@45.',
      },
    ])
  }
  const [a, b] = [meant(first, all, order, asked), meant(second, all, order, asked)]
  if (!a.ok || !b.ok) return tellProblems([a, b].flatMap(problemsOf))
  if (typed.to !== undefined) {
    const file = String(typed.to)
    const content = await contentFor(file, comparison(a.value, b.value, order), order, furniture)
    const written = content.ok ? await writeDrawing(file, content.value, typed.replace === true) : content
    if (!written.ok) return tellProblems(written.problems)
  }
  if (typed.json === true) process.stdout.write(comparisonJson(a.value, b.value, order))
  else if (typed.quiet !== true) say(comparisonTable(a.value, b.value, order))
  return EXIT.done
}
