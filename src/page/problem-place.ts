import type { OrderPlace } from '../order/edit-text.js'
import type { Problem } from '../order/problem.js'
import { showPath } from '../order/show-path.js'

/** Where it is mended: a key that a group lacks has a place, though nothing is written there. */
export const placeOf = ({ place, lacks }: Problem): string =>
  lacks === undefined ? place : `${place}.${lacks}`

export const problemsAt = (problems: readonly Problem[], place: OrderPlace): Problem[] =>
  problems.filter((problem) => placeOf(problem) === showPath(place))

/** At its field, whose label says what is meant: in the words of the command line, or that nothing stands there. */
export const toldAtField = ({ given, advice, lacks }: Problem): string =>
  lacks === undefined ? `Given ${given}. ${advice}` : 'Nothing is given. This cannot be left empty.'
