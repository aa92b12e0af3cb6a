import type { SizeName, Star } from '../geometry/star.js'
import type { Saw } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { MM_PER_INCH, mm } from '../units/convert.js'
import { type LengthStyle, showNumber } from '../units/show.js'
import { asTyped } from './field.js'

/** What a size is called, and what of the star it is. */
export interface StarSize {
  readonly value: SizeName
  readonly words: string
  readonly of: (star: Star) => Mm
}

const WORDS: Readonly<Record<SizeName, Omit<StarSize, 'value'>>> = {
  'board-width': { words: 'Board width it takes', of: (star) => star.armStrip },
  across: { words: 'Width across', of: (star) => star.across },
  height: { words: 'Height', of: (star) => star.height },
  radius: { words: 'Centre to tip', of: (star) => star.radius },
  'tip-edge': { words: 'Tip edge', of: (star) => star.tipEdge },
}

export const starSize = (name: SizeName): StarSize => ({ value: name, ...WORDS[name] })

export const STAR_SIZES = (Object.keys(WORDS) as SizeName[]).map(starSize)

/** What a pull moves a size by, in mm: a step that a rule shows. */
export const sizeStep = ({ units }: LengthStyle): number => (units === 'mm' ? 1 : MM_PER_INCH / 16)

/** Centre to tip of the largest star of this shape that the saw's crosscut takes, where that is known. */
export const largestRadius = ({ star, blank }: StarPlan, { crosscut }: Saw): Mm | undefined =>
  crosscut === undefined ? undefined : mm((star.radius * crosscut) / blank.longestCut)

/** A length as it is typed in the order's units. */
export const typedLength = (length: Mm, lengths: LengthStyle): string | number =>
  asTyped(showNumber(length, lengths).replace(/\.0$/, ''))
