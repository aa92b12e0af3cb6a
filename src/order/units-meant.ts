import type { Units } from '../units/read-length.js'

/** Inches also when they are written out; the word itself is refused with the right one. */
export const unitsMeant = (written: unknown): Units => (/^(?:in|")/i.test(String(written)) ? 'in' : 'mm')
