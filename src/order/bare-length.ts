import { readLength, type Units } from '../units/read-length.js'

/** A length that can still take a unit has none. */
export const isBareLength = (written: string, units: Units): boolean =>
  'length' in readLength(`${written} ${units}`, units)
