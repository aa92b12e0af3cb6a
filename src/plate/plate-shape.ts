import {
  type InsetShape,
  insetLimit,
  insetOutline,
  jointCovered,
  polygonOnJoints,
} from '../geometry/inset.js'
import type { Outline } from '../geometry/outline.js'
import { roundedCover, roundedInset, roundingLimit } from '../geometry/rounded-star.js'
import type { Star } from '../geometry/star.js'
import type { BackingOrder, BackingPlaces, Cutter } from '../order/order.js'
import type { Problem } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { type LengthStyle, showAtLeast, showAtMost, showGivenLength, showLength } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'

/** The plate's outline, one tip up, centre at the origin, and what it hides and holds. */
export interface PlateShape {
  readonly shape: InsetShape
  readonly outline: Outline
  /** At least so far inside the star's outline, chamfer included. */
  readonly margin: Mm
  /** How much of each joint it covers, from the centre outwards. */
  readonly covers: Mm
}

/** Less than this from centre to edge is no plate. */
const LEAST = mm(5)

type Asked = Pick<BackingOrder, 'shape' | 'inset' | 'cornerRadius' | 'covers'>

/** The inset as asked for, behind the chamfer: where that takes the star's edge away the plate must not show either. */
export const marginOf = ({ inset }: Pick<BackingOrder, 'inset'>, chamfer: Mm | undefined): Mm =>
  mm(inset + (chamfer ?? 0))

/** The margin at which nothing but a crumb is left of the shape. */
const marginLimit = (star: Star, shape: Asked['shape']): Mm =>
  mm((shape === 'auto' ? star.valleyRadius : insetLimit(star, shape)) - LEAST)

/** How much of each joint the largest plate covers that keeps the margin. */
export const coverOf = (star: Star, { shape, cornerRadius }: Asked, margin: Mm): Mm => {
  if (shape === 'auto') return mm(star.valleyRadius - margin)
  return shape === 'star' && cornerRadius !== undefined
    ? roundedCover(star, margin, cornerRadius)
    : jointCovered(star, shape, margin)
}

/** `asked` must have no {@link shapeProblems}. */
export const plateShape = (star: Star, asked: Asked, margin: Mm): PlateShape => {
  const { shape, cornerRadius } = asked
  if (shape === 'auto') return smallestPlate(star, mm(asked.covers ?? coverOf(star, asked, margin)))
  const outline =
    shape === 'star' && cornerRadius !== undefined
      ? roundedInset(star, margin, cornerRadius)
      : insetOutline(star, shape, margin)
  return { shape, outline, margin, covers: coverOf(star, asked, margin) }
}

/**
 * The polygon with its corners on the joints. A plate without dents that covers the joints so far holds these corners,
 * and so all between them: none is smaller. Its corners are what lies nearest to the star's outline.
 */
const smallestPlate = (star: Star, covers: Mm): PlateShape => ({
  shape: 'polygon',
  outline: polygonOnJoints(star.points, covers),
  margin: mm(star.valleyRadius - covers),
  covers,
})

/** What cannot be: a plate that vanishes, is rounded away, shows, or covers too little; each with what would do. */
export const shapeProblems = (
  star: Star,
  order: BackingOrder,
  at: BackingPlaces,
  chamfer: Mm | undefined,
  cutter: Cutter,
  lengths: LengthStyle,
): Problem[] => {
  const { shape, inset } = order
  const margin = marginOf(order, chamfer)
  const behind = chamfer === undefined ? '' : `, behind the chamfer of ${showLength(chamfer, lengths)}`
  const given = showLength(inset, lengths)
  const limit = mm(marginLimit(star, shape) - (chamfer ?? 0))
  if (inset > limit + SAME_POINT) {
    return [
      {
        ...at.inset,
        given,
        advice:
          limit > 0
            ? `Nothing would be left of the ${shape === 'auto' ? 'plate' : shape}. Allowed here: up to ${showAtMost(limit, lengths)}${behind}.`
            : `This star is too small for a backing of shape ${shape}. Leave the backing out, or make the star larger.`,
      },
    ]
  }
  // The bit leaves its own roundness in a sharp valley, as plateShape's rounding does.
  const rounded = mm(removedWidth(cutter) / 2)
  if (shape === 'star' && margin < rounded) {
    return [
      {
        ...at.inset,
        given,
        advice: `The bit leaves its roundness in the plate's valleys, and there it would show. Allowed with this bit: from ${showAtLeast(mm(rounded - (chamfer ?? 0)), lengths)}${behind}.`,
      },
    ]
  }
  return [
    ...roundingProblems(star, order, at, margin, lengths),
    ...coverProblems(star, order, at, margin, chamfer, lengths),
  ]
}

const roundingProblems = (
  star: Star,
  { shape, cornerRadius }: BackingOrder,
  at: BackingPlaces,
  margin: Mm,
  lengths: LengthStyle,
): Problem[] => {
  if (shape !== 'star' || cornerRadius === undefined) return []
  const limit = roundingLimit(star, margin)
  return cornerRadius < limit - SAME_POINT
    ? []
    : [
        {
          ...at.cornerRadius,
          given: showGivenLength(cornerRadius, lengths),
          advice: `Nothing straight would be left of the plate's edges. Allowed here: up to ${showAtMost(mm(limit - 2 * SAME_POINT), lengths)}, or a smaller inset.`,
        },
      ]
}

const coverProblems = (
  star: Star,
  order: BackingOrder,
  at: BackingPlaces,
  margin: Mm,
  chamfer: Mm | undefined,
  lengths: LengthStyle,
): Problem[] => {
  const { shape, covers } = order
  if (covers === undefined) return []
  const at0 = { ...at.covers, given: showGivenLength(covers, lengths) }
  const covered = coverOf(star, order, margin)
  if (shape === 'auto' && covers < LEAST)
    return [{ ...at0, advice: `That is no plate. Allowed: from ${showAtLeast(LEAST, lengths)}.` }]
  if (covers <= covered + SAME_POINT) return []
  const inset = widestInset(star, order, covers, chamfer ?? mm(0))
  const less = inset === undefined ? '' : `, or an inset of up to ${showAtMost(inset, lengths)}`
  const other = shape === 'auto' || shape === 'disc' ? '' : ', or another shape'
  return [
    {
      ...at0,
      advice: `With this inset the backing covers ${showAtMost(covered, lengths)} of each joint. Allowed: up to ${showAtMost(covered, lengths)}${less}${other}.`,
    },
  ]
}

/** The largest inset that still covers so much, by halving: the wider the inset, the less it covers. */
const widestInset = (star: Star, order: Asked, covers: Mm, chamfer: Mm): Mm | undefined => {
  const does = (inset: number): boolean => coverOf(star, order, mm(inset + chamfer)) >= covers
  if (!does(0)) return undefined
  let [works, fails] = [0, Number(order.inset)]
  for (let step = 0; step < 40; step++) {
    const middle = (works + fails) / 2
    if (does(middle)) works = middle
    else fails = middle
  }
  return mm(works)
}
