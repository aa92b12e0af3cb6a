import { type Choice, type Choices, choicesFor } from '../choose/choices.js'
import { meant } from '../choose/compare.js'
import { RANKS, ranked } from '../choose/ranks.js'
import { hasRoom, nothingFound, readWish } from '../choose/wish.js'
import { choiceWords, comparisonRows, leftOutText, ON_MARKS } from '../compose/choice-words.js'
import { comparison } from '../compose/comparison.js'
import { choicesContent, type DrawingKind, drawingContent } from '../drawing-content.js'
import { type Furniture, furnitureWith } from '../furniture/furniture-set.js'
import { starOutline } from '../geometry/star.js'
import type { FileContent } from '../make-files.js'
import type { Order } from '../order/order.js'
import { parseOrder } from '../order/parse.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import { thicknessesOf } from '../plan/boards.js'
import { showAtMost, trimmed } from '../units/show.js'
import { writeSvg } from '../write/svg.js'
import type { ChosenStars, Given, ListedStar, WrittenWish } from './work.js'

/** The stars that the shop of an order can make, as `starwright choose ORDER` has them. */
interface Found {
  readonly order: Order
  readonly furniture: Furniture
  readonly listed: readonly Choice[]
  readonly more: number
  readonly choices: Choices
  readonly two?: readonly [Choice, Choice]
}

const foundFor = ({ text, furniture: own }: Given, written: WrittenWish): Outcome<Found> => {
  const read = parseOrder({ text })
  const wish = readWish({ ...written })
  const furniture = furnitureWith(own, read.ok ? read.value.lengths.units : 'mm')
  if (!read.ok || !wish.ok || !furniture.ok) return refused([read, wish, furniture].flatMap(problemsOf))
  const order = read.value
  const { points, quantity, most } = wish.value
  const [first] = order.stars
  const asked = {
    ...(points === undefined ? {} : { points }),
    quantity: quantity ?? 1,
    ...(first && !hasRoom(order) ? { size: first.size } : {}),
    own: true,
  }
  const choices = choicesFor(order, asked)
  if (choices.found.length === 0) return refused([nothingFound(order)])
  const all = ranked(choices.found, RANKS.find((each) => each === written.rank) ?? 'ease')
  const listed = all.slice(0, most)
  const found = {
    order,
    furniture: furniture.value,
    listed,
    more: all.length - listed.length,
    choices,
  }
  if (!written.compare) return done(found)
  const [one, other] = written.compare.map((word) => meant(word, all, order, asked))
  return one?.ok && other?.ok
    ? done({ ...found, two: [one.value, other.value] })
    : refused([one, other].flatMap((each) => (each ? problemsOf(each) : [])))
}

export const chosenStars = (given: Given, wish: WrittenWish): Outcome<ChosenStars> => {
  const outcome = foundFor(given, wish)
  if (!outcome.ok) return outcome
  const { order, listed, more, choices, two } = outcome.value
  return done({
    more,
    foot: [leftOutText(choices), ON_MARKS].join(' ').trim(),
    listed: listed.map((choice) => listedStar(choice, order)),
    ...(two ? { compared: comparedStars(...two, order) } : {}),
  })
}

/** Its name, and what is in it. */
export const choiceFile = async (
  given: Given,
  wish: WrittenWish,
  kind: DrawingKind,
): Promise<Outcome<{ readonly path: string; readonly content: FileContent }>> => {
  const outcome = foundFor(given, wish)
  if (!outcome.ok) return outcome
  const { order, furniture, listed, two } = outcome.value
  const content = two
    ? await drawingContent(kind, comparison(...two, order), order, furniture)
    : await choicesContent(kind, listed, order, furniture)
  const path = `${two ? 'two-stars-compared' : 'stars-to-choose-from'}${kind}`
  return content.ok ? done({ path, content: content.value }) : content
}

const listedStar = (choice: Choice, order: Order): ListedStar => {
  const { star } = choice.plan
  const isOwn = order.stars.includes(choice.plan.order)
  return {
    label: choice.label,
    words: choiceWords(choice, order.lengths),
    corners: starOutline(star)
      .vertices.map(({ x, y }) => `${(x / star.radius).toFixed(4)},${(-y / star.radius).toFixed(4)}`)
      .join(' '),
    ...(isOwn ? {} : { keys: keysOf(choice, order) }),
  }
}

/**
 * Sizes are rounded down, so that the star is on its board whole. The thickness stands where boards differ in it, or
 * the star would get that of the first that carries it.
 */
const keysOf = (
  { shape, plan, board }: Choice,
  { lengths, shop }: Order,
): NonNullable<ListedStar['keys']> => {
  const { points, tipAngle, step, slenderest } = shape
  const { by, length } = plan.order.size
  return {
    ...(step !== undefined
      ? { regular: `${points}/${step}` }
      : slenderest
        ? { points, slenderest }
        : { points, 'tip-angle': Number(trimmed(tipAngle, 4)) }),
    [by]: showAtMost(length, lengths),
    ...(board?.thickness !== undefined && thicknessesOf(shop.boards).length > 1
      ? { thickness: `${trimmed(board.thickness, 3)} mm` }
      : {}),
  }
}

const comparedStars = (one: Choice, other: Choice, order: Order): NonNullable<ChosenStars['compared']> => {
  const drawing = comparison(one, other, order)
  return {
    title: `${drawing.title}, the second dashed`,
    rows: [['', one.label, other.label], ...comparisonRows(one, other, order)],
    drawn: writeSvg({ ...drawing, shapes: drawing.figure }),
  }
}
