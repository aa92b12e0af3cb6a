import type { Degrees } from './brand.js'
import { degrees } from './convert.js'

export type AngleReading = { readonly angle: Degrees } | { readonly refused: string }

const WRITTEN_ANGLE = /^(\d{1,4}(?:[.,]\d{1,20})?) ?(?:°|deg|degrees?)?$/

/** Reads an angle in degrees: `45`, `22.5°`, `31,5 deg`. Signs, exponents and radians are refused. */
export const readAngle = (written: string | number): AngleReading => {
  if (typeof written === 'number') {
    if (!Number.isFinite(written)) return { refused: 'it is not a finite number' }
    return written < 0 ? { refused: 'an angle has no sign' } : { angle: degrees(written) }
  }
  const match = WRITTEN_ANGLE.exec(written.trim().toLowerCase())
  return match
    ? { angle: degrees(Number((match[1] ?? '').replace(',', '.'))) }
    : { refused: 'it is not an angle in degrees' }
}
