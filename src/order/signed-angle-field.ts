import * as v from 'valibot'
import type { Degrees } from '../units/brand.js'
import { degrees } from '../units/convert.js'
import { readAngle } from '../units/read-angle.js'
import { sentences } from './problem.js'

export interface SignedAngleRange {
  readonly most: number
  readonly says: string
  readonly wayOut: string
}

/** An angle in degrees from `-most` to `most`; a minus sign may be the hyphen or the sign itself. */
export const signedAngleField = ({ most, says, wayOut }: SignedAngleRange) => {
  const allowed = `Allowed: an angle from -${most} to ${most} degrees, written like -0.2 or 0,15°.`
  return v.pipe(
    v.union([v.string(), v.number()], sentences(allowed, wayOut)),
    v.description(says),
    v.rawTransform<string | number, Degrees>(({ dataset, addIssue, NEVER }) => {
      const text = String(dataset.value).trim()
      const reading = readAngle(text.replace(/^[-+−]/, ''))
      if ('refused' in reading || reading.angle > most) {
        addIssue({ message: sentences(allowed, wayOut) })
        return NEVER
      }
      return degrees(/^[-−]/.test(text) ? -reading.angle : reading.angle)
    }),
  )
}
