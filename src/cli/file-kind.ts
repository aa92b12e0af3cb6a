import { extname } from 'node:path'
import { listed } from '../order/fields.js'
import { done, type Outcome, refused, showGiven } from '../order/problem.js'

/** The ending of a file that is asked for with --to, in small letters; refused when it is none of those allowed. */
export const fileKind = <Kind extends string>(file: string, allowed: readonly Kind[]): Outcome<Kind> => {
  const ending = extname(file).toLowerCase()
  const kind = allowed.find((each) => each === ending)
  return kind === undefined
    ? refused([
        { place: '--to', given: showGiven(file), advice: `Allowed: a file that ends in ${listed(allowed)}.` },
      ])
    : done(kind)
}
