import type { Point } from '../geometry/point.js'
import { writeNumber } from './number.js'

/**
 * One group: a code line, right-aligned in three places, and a value line. Lines end in CR LF, as in the files the
 * format comes from: every reader takes them, and some old ones on Windows take nothing else.
 */
export const tag = (code: number, value: string | number): string =>
  `${String(code).padStart(3)}\r\n${value}\r\n`

/** A real number always has its dot, for readers that tell reals from whole numbers by it. */
export const real = (code: number, value: number, decimals?: number): string => {
  const text = writeNumber(value, decimals)
  return tag(code, text.includes('.') ? text : `${text}.0`)
}

/** x and y in the two groups `code` and `code` + 10. */
export const flat = (code: number, { x, y }: Point): string => real(code, x) + real(code + 10, y)

/** A point of the plane z = 0. */
export const spatial = (code: number, at: Point): string => flat(code, at) + real(code + 20, 0)

export const section = (name: string, body: string): string =>
  tag(0, 'SECTION') + tag(2, name) + body + tag(0, 'ENDSEC')
