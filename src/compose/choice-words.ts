import type { Choice, Choices } from '../choose/choices.js'
import { panelUse } from '../choose/compare.js'
import type { RankName } from '../choose/ranks.js'
import { blankIsArm } from '../geometry/kite.js'
import type { Order } from '../order/order.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { fixed, type LengthStyle, showAngle, showLength, showNumber, showSmall } from '../units/show.js'
import { SHOP } from '../units/tolerance.js'
import { countOf, percent } from './chance-words.js'
import { settingText } from './cut-steps.js'
import { thickText } from './thickness-words.js'

/** What a list is ranked by. */
export const RANK_TEXTS: Readonly<Record<RankName, string>> = {
  ease: 'the likeliest to close on its marks first, each number of points in turn',
  marks: 'the smallest gap on the nearest marks first',
  size: 'the largest first',
  wood: 'the least wood wasted first',
}

/** `5 points, tip 45°`, with what the star is known by. */
const kindText = ({ shape, label, wholeBoard }: Choice): string => {
  const step = shape.step === undefined ? '' : ` (${shape.points}/${shape.step})`
  const named = label.includes('@') || label.includes('/') ? '' : `${label}: `
  return [
    `${named}${shape.points} points, tip ${showAngle(shape.tipAngle)}${step}`,
    ...(shape.slenderest ? ['slenderest'] : []),
    ...(wholeBoard ? ['whole boards'] : []),
  ].join(', ')
}

const sizeWords = ({ plan: { star } }: Choice, lengths: LengthStyle): string =>
  `${showNumber(star.across, lengths)} × ${showNumber(star.height, lengths)} ${lengths.units}`

/** Both settings, and what their nearest marks leave open. */
const sawWords = ({ plan, markGap }: Choice, lengths: LengthStyle): string => {
  const { firstCut, jointCut, star } = plan
  const settings = blankIsArm(star)
    ? settingText(firstCut)
    : `${settingText(firstCut)} and ${settingText(jointCut)}`
  return `saw ${settings}: ${markGap === 0 ? 'on marks' : `marks leave ${showSmall(markGap, lengths)}`}`
}

const woodWords = ({ plan, board, perBoard }: Choice, lengths: LengthStyle): string => {
  const show = (length: Mm) => showLength(length, lengths)
  const { thickness } = plan
  const wide = board?.width ?? plan.star.armStrip
  const size =
    thickness === undefined ? `board ${show(wide)} wide` : `${showNumber(wide, lengths)} × ${show(thickness)}`
  const arms = perBoard ? `; ${countOf(perBoard.arms, 'arm')} a board` : ''
  const left =
    perBoard?.left === undefined ? '' : perBoard.left < SHOP ? ', none left' : `, ${show(perBoard.left)} left`
  return `${show(plan.boardPerStar)} of ${size}${arms}${left}`
}

const difficultyWords = ({ plan, chance }: Choice, lengths: LengthStyle): string =>
  `${countOf(plan.star.points, 'arm')}; 0.1° opens ${showSmall(plan.gapPerTenth, lengths)}; ${percent(chance)} close on marks, scale true`

/** A choice in four lines: what it is, the saw, the wood, how hard it is. */
export const choiceWords = (choice: Choice, lengths: LengthStyle): string[] => [
  `${kindText(choice)}; ${sizeWords(choice, lengths)}`,
  sawWords(choice, lengths),
  woodWords(choice, lengths),
  difficultyWords(choice, lengths),
]

/** Why the list is not longer, and which stars of the order are not on it. */
export const leftOutText = ({ beyondSaw, ownLeftOut }: Pick<Choices, 'beyondSaw' | 'ownLeftOut'>): string =>
  [
    beyondSaw === 0
      ? ''
      : `${countOf(beyondSaw, 'kind')} of star left out: the saw without a wedge, the boards or the room do not allow them, or their arms are too small for a miter saw.`,
    ownLeftOut.length === 0 ? '' : `Left out for the same reasons, of your order: ${ownLeftOut.join(', ')}.`,
  ]
    .filter(Boolean)
    .join(' ')

export const ON_MARKS =
  '"Close on marks, scale true": set on the nearest marks of a saw whose scale has no error, with cuts that repeat as the order says; the risk counts the scale too.'

/** The comparison, row by row: what it is, of the first star, of the second. */
export const comparisonRows = (
  a: Choice,
  b: Choice,
  { lengths, shop }: Order,
): (readonly [string, string, string])[] => {
  const show = (length: Mm) => showLength(length, lengths)
  const row = (what: string, of: (choice: Choice) => string) => [what, of(a), of(b)] as const
  const panel = (of: (use: NonNullable<ReturnType<typeof panelUse>>) => string) => (choice: Choice) => {
    const use = panelUse(choice.plan, shop.panels)
    return use ? of(use) : 'too small'
  }
  return [
    row('Tip angle', ({ plan }) => showAngle(plan.star.tipAngle)),
    row('Width', ({ plan }) => show(plan.star.across)),
    row('Height', ({ plan }) => show(plan.star.height)),
    row('Valley line', ({ plan: { star } }) => dipText(star.valleyLine.dip, show)),
    row(
      'Board needed',
      ({ plan }) => `${show(plan.star.armStrip)} wide${thickText(plan.thickness, lengths)}`,
    ),
    row('Wood a star', ({ plan }) => `${show(plan.boardPerStar)} long`),
    row('Arms a board', ({ perBoard }) => (perBoard ? String(perBoard.arms) : '-')),
    row('Part used', ({ plan, wood }) => `${fixed((100 * plan.star.points * plan.kite.area) / wood, 0)} %`),
    row('First cut', ({ plan }) => settingText(plan.firstCut)),
    row('Joint cuts', ({ plan }) => (blankIsArm(plan.star) ? 'none' : settingText(plan.jointCut))),
    row('Marks leave', ({ markGap }) => (markGap === 0 ? 'nothing' : showSmall(markGap, lengths))),
    row('Arms a star', ({ plan }) => String(plan.star.points)),
    row('0.1° opens', ({ plan }) => showSmall(plan.gapPerTenth, lengths)),
    row('Closes, scale true', ({ chance }) => percent(chance)),
    row(
      'Backing',
      panel(({ across, height }) => `${show(across)} × ${show(height)}`),
    ),
    ...(shop.panels.length === 0
      ? []
      : [
          row(
            'Backings a panel',
            panel(({ perPanel }) => `${perPanel ?? 0} in plain rows`),
          ),
        ]),
  ]
}

const dipText = (dip: Mm, show: (length: Mm) => string): string =>
  Math.abs(dip) < SHOP ? 'straight' : `${show(mm(Math.abs(dip)))} ${dip > 0 ? 'outside' : 'inside'}`
