import type { StarPlan } from '../plan/plan.js'
import { longestFastener } from '../plate/fixing.js'
import type { Mm } from '../units/brand.js'
import { type LengthStyle, showAtMost, showLength } from '../units/show.js'
import { thickText } from './thickness-words.js'

/** `star, 12.0 mm inside the star: 117.1 × 111.4 mm; covers ...` */
export const backingText = (
  { backing, order, star, plateThickness }: StarPlan,
  lengths: LengthStyle,
): string | undefined => {
  if (!backing) return undefined
  const show = (length: Mm) => showLength(length, lengths)
  const { shape, cornerRadius } = backing.order
  const included = order.chamfer === undefined ? '' : ', chamfer included'
  const name = shape === 'auto' ? `${backing.shape}, the smallest that will do` : shape
  const rounded =
    shape === 'star' && cornerRadius !== undefined ? `, corners rounded to ${show(cornerRadius)}` : ''
  return `${name}${rounded}, ${show(backing.margin)} inside the star${included}: ${show(backing.across)} × ${show(backing.height)}${thickText(plateThickness, lengths)}; covers ${showAtMost(backing.covers, lengths)} of each ${show(star.jointEdge)} joint`
}

/** `two cord holes, 5.0 mm, 40.0 mm apart, 61.3 mm above the centre; ...` */
export const hangingText = (plan: StarPlan, lengths: LengthStyle): string | undefined => {
  const { hanging, order } = plan.backing ?? {}
  if (!hanging || !order?.hanging) return undefined
  const show = (length: Mm) => showLength(length, lengths)
  const { hole, slot } = order.hanging
  const above = `${show(hanging.height)} above the centre`
  const apart = hanging.apart === undefined ? '' : `, ${show(hanging.apart)} apart`
  switch (hanging.kind) {
    case 'cord':
      return `two holes of ${show(hole)} for a cord${apart}, ${above}; hollow the arm behind them for the knots before the plate goes on`
    case 'screws':
      return `two holes of ${show(hole)} for a hanger's screws${apart}, ${above}; screws ${lengthAllowed(plan, lengths)}`
    case 'keyhole':
      return `a keyhole for a screw whose head passes ${show(hole)} and whose shank passes ${show(slot)}; the screw rests ${above}; hollow the arm behind it for the screw's head before the plate goes on`
  }
}

/** The longest nail or screw that does not come through; undefined while a thickness is unknown. */
export const longestFastenerOf = ({ backing, plateThickness, thickness }: StarPlan): Mm | undefined =>
  backing && plateThickness !== undefined && thickness !== undefined
    ? longestFastener(plateThickness, thickness)
    : undefined

const missingThickness = ({ thickness, plateThickness }: StarPlan): string => {
  if (thickness !== undefined) return "the backing's thickness"
  return plateThickness === undefined ? 'both thicknesses' : "the arms' thickness"
}

/** `up to 21.0 mm long, or they come through`. */
const lengthAllowed = (plan: StarPlan, lengths: LengthStyle): string => {
  const longest = longestFastenerOf(plan)
  return longest === undefined
    ? `shorter than plate and arm together: give ${missingThickness(plan)} to have it checked`
    : `up to ${showAtMost(longest, lengths)} long, or they come through`
}

/** `two nails in each arm, ...; up to 21.0 mm long`. */
export const fixingText = (plan: StarPlan, lengths: LengthStyle): string | undefined => {
  const fixing = plan.backing?.fixing
  if (!fixing) return undefined
  const own = fixing.length === undefined ? '' : ` ${showLength(fixing.length, lengths)} long`
  return `two ${fixing.kind}${own} in each arm, ${fixing.marks.length} in all, ${showAtMost(fixing.clear, lengths)} or more from edges, joints and holes; ${lengthAllowed(plan, lengths)}`
}
