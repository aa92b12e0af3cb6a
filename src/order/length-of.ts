import { readLength, type Units } from '../units/read-length.js'

/** A length of an order as it was written, in mm; undefined when it is none. */
export const lengthOf = (written: unknown, units: Units): number | undefined => {
  if (typeof written !== 'string' && typeof written !== 'number') return undefined
  const reading = readLength(written, units)
  return 'refused' in reading ? undefined : reading.length
}
