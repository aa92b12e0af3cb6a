import { type Outcome, refused } from '../order/problem.js'

/** A backing was asked to be drawn where there is none. */
export const noBacking = (place: string): Outcome<never> =>
  refused([
    {
      place,
      given: 'no backing',
      advice: 'Ask for one: backing: { shape: star, inset: 12 mm } in the order, or --backing star.',
    },
  ])
