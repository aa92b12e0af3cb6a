import { expect, test } from 'vitest'
import { readLength, type Units } from '../../src/units/read-length.js'

// Oracle: the international inch is exactly 25.4 mm and a foot is 12 inches (international yard and pound agreement, 1959); the
// rest of each expectation is plain arithmetic, written out.
const READ: readonly (readonly [written: string | number, units: Units, expected: number])[] = [
  ['70', 'mm', 70],
  [70, 'mm', 70],
  [70.25, 'mm', 70.25],
  [0, 'mm', 0],
  [3.5, 'in', 3.5 * 25.4],
  ['70', 'in', 70 * 25.4],
  ['70mm', 'mm', 70],
  ['70 mm', 'in', 70],
  ['70,5 mm', 'mm', 70.5],
  ['70,5', 'mm', 70.5],
  ['70.5', 'mm', 70.5],
  ['  70.5  mm  ', 'mm', 70.5],
  ['70 MM', 'mm', 70],
  ['.5 mm', 'mm', 0.5],
  [',5 mm', 'mm', 0.5],
  ['0070 mm', 'mm', 70],
  ['1,2500 mm', 'mm', 1.25],
  ['12,75 cm', 'mm', 127.5],
  ['24 cm', 'in', 240],
  ['2.4 m', 'mm', 2400],
  ['2,4m', 'in', 2400],
  ['70\u00a0mm', 'mm', 70],
  ['70\u2009mm', 'mm', 70],
  ['70\u202fmm', 'mm', 70],
  ['70\tmm', 'mm', 70],
  ['3\u00a01/2\u00a0in', 'mm', 3.5 * 25.4],
  ['3 1/2 in', 'mm', 3.5 * 25.4],
  ['3-1/2"', 'mm', 3.5 * 25.4],
  ['3-1/2', 'in', 3.5 * 25.4],
  ['3 1/2', 'in', 3.5 * 25.4],
  ['3½', 'in', 3.5 * 25.4],
  ['3½"', 'mm', 3.5 * 25.4],
  ['½ in', 'mm', 12.7],
  ['½', 'in', 12.7],
  ['3/32 in', 'mm', (3 * 25.4) / 32],
  ['3/32', 'in', (3 * 25.4) / 32],
  ['3⁄32 in', 'mm', (3 * 25.4) / 32],
  ['7∕8"', 'mm', (7 * 25.4) / 8],
  ['4 7/8in', 'mm', 4.875 * 25.4],
  ['4⅞ in', 'mm', 4.875 * 25.4],
  ['4 ⅜ in', 'mm', 4.375 * 25.4],
  ['⅝ in', 'mm', 0.625 * 25.4],
  ['⅛ in', 'mm', 0.125 * 25.4],
  ['¼ in', 'mm', 0.25 * 25.4],
  ['¾ in', 'mm', 0.75 * 25.4],
  ['⅓ in', 'mm', 25.4 / 3],
  ['⅔ in', 'mm', (2 * 25.4) / 3],
  ['9/8 in', 'mm', 1.125 * 25.4],
  ['4.875 in', 'mm', 4.875 * 25.4],
  ['4,5"', 'mm', 4.5 * 25.4],
  ['3.5 INCHES', 'mm', 3.5 * 25.4],
  ['1 inch', 'mm', 25.4],
  ["3''", 'mm', 3 * 25.4],
  ['3″', 'mm', 3 * 25.4],
  ['3”', 'mm', 3 * 25.4],
  ['1\' 2 3/8"', 'mm', (12 + 2.375) * 25.4],
  ['1\'2-3/8"', 'mm', (12 + 2.375) * 25.4],
  ['1\' - 2"', 'mm', 14 * 25.4],
  ['1\'-2"', 'mm', 14 * 25.4],
  ['1′ 2 ⅜″', 'mm', (12 + 2.375) * 25.4],
  ['1’ 2”', 'mm', 14 * 25.4],
  ["1' 2", 'mm', 14 * 25.4],
  ["8'", 'mm', 96 * 25.4],
  ['8 ft', 'mm', 96 * 25.4],
  ['8ft', 'in', 96 * 25.4],
  ['1 foot', 'mm', 304.8],
  ['2 feet 6 inches', 'mm', 30 * 25.4],
  ['2 ft 6 1/2 in', 'mm', 30.5 * 25.4],
  ['1.5 ft', 'mm', 18 * 25.4],
]

test.each(READ)('%j in a %s order is %f mm', (written, units, expected) => {
  const reading = readLength(written, units)
  expect(reading).toHaveProperty('length')
  if ('length' in reading) expect(reading.length).toBeCloseTo(expected, 9)
})

const NO_LENGTH = 'it is not a length'
const SOLD_AS = 'it is what a board is sold as, not what it measures: lay a tape across yours'
const NO_SIGN = 'a length has no sign'
const NOT_FINITE = 'it is not a finite number'
const COMMA = 'the comma can mean thousands or decimals: leave it out, or write a point'
const TOO_LONG = 'it is longer than 64 characters'

const REFUSED: readonly (readonly [written: string | number, units: Units, reason: string])[] = [
  ['', 'mm', 'it is empty'],
  ['   ', 'mm', 'it is empty'],
  ['\u00a0\t', 'in', 'it is empty'],
  ['-70 mm', 'mm', NO_SIGN],
  ['+70 mm', 'mm', NO_SIGN],
  [-70, 'mm', NO_SIGN],
  [-0.001, 'in', NO_SIGN],
  ['−70 mm', 'mm', NO_LENGTH],
  [Number.NaN, 'mm', NOT_FINITE],
  [Number.POSITIVE_INFINITY, 'mm', NOT_FINITE],
  [Number.NEGATIVE_INFINITY, 'mm', NO_SIGN],
  [1e308, 'in', NOT_FINITE],
  ['NaN', 'mm', NO_LENGTH],
  ['Infinity mm', 'mm', NO_LENGTH],
  ['1e400', 'mm', NO_LENGTH],
  ['7e1 mm', 'mm', NO_LENGTH],
  ['0x46 mm', 'mm', NO_LENGTH],
  ['1,250 mm', 'mm', COMMA],
  ['1,250', 'in', COMMA],
  ['4,875"', 'mm', COMMA],
  ['12,345,678 mm', 'mm', COMMA],
  ['1.250,5 mm', 'mm', NO_LENGTH],
  ['1/0 in', 'mm', 'the fraction divides by zero'],
  ['3 1/0"', 'mm', 'the fraction divides by zero'],
  ['1\' 2 3/0"', 'mm', 'the fraction divides by zero'],
  ['3 1/2', 'mm', 'a fraction needs its unit here: write 3 1/2 in'],
  ['½', 'mm', 'a fraction needs its unit here: write 1/2 in'],
  ['5 1/2 6', 'in', NO_LENGTH],
  ['5 1/2 6 in', 'in', NO_LENGTH],
  ['½½ in', 'mm', NO_LENGTH],
  ['1/2/3 in', 'mm', NO_LENGTH],
  ['1/2 mm', 'mm', NO_LENGTH],
  ['3.5 1/2 in', 'mm', NO_LENGTH],
  ['1 cm 5 mm', 'mm', NO_LENGTH],
  ['70 mm 2 in', 'mm', NO_LENGTH],
  ["1' 20 mm", 'mm', NO_LENGTH],
  ['2 in 1 ft', 'mm', NO_LENGTH],
  ['70 km', 'mm', NO_LENGTH],
  ['1x4', 'in', SOLD_AS],
  ['5/4 × 6', 'in', SOLD_AS],
  ['1x', 'in', NO_LENGTH],
  ['70 yd', 'mm', NO_LENGTH],
  ['mm', 'mm', NO_LENGTH],
  ['seventy', 'mm', NO_LENGTH],
  ['70.', 'mm', NO_LENGTH],
  ['7..0', 'mm', NO_LENGTH],
  ['70 mm;', 'mm', NO_LENGTH],
  ['70\u0000mm', 'mm', NO_LENGTH],
  ['70\u001b[31m', 'mm', NO_LENGTH],
  ['70\nmm', 'mm', NO_LENGTH],
  ['\u202e07 mm', 'mm', NO_LENGTH],
  ['٧٠ mm', 'mm', NO_LENGTH],
  ['1'.repeat(65), 'mm', TOO_LONG],
  [`${'0'.repeat(62)}1 mm`, 'mm', TOO_LONG],
]

test.each(REFUSED)('%j in a %s order is refused: %s', (written, units, reason) => {
  expect(readLength(written, units)).toEqual({ refused: reason })
})

test('sixty-four characters are still read', () => {
  expect(readLength(`${'0'.repeat(59)}70 mm`, 'mm')).toEqual({ length: 70, units: 'mm' })
})

test('a megabyte of digits, spaces or fractions is refused for its size', () => {
  for (const part of ['7', '7 ', '1/2 ', '½', "1'", '7,777']) {
    expect(readLength(`x${part.repeat(2 ** 20 / part.length)}`, 'mm')).toEqual({ refused: TOO_LONG })
  }
})

test('a sign that would join a fraction to the digits around it is refused', () => {
  for (const written of ['3½5 in', '½5 in', '3½5"']) {
    expect(readLength(written, 'in'), written).toEqual({ refused: NO_LENGTH })
  }
})

test('one hyphen joins inches and a fraction; more than one does not', () => {
  for (const written of ['3--1/2 in', '3 - - 1/2 in', '3- -1/2 in']) {
    expect(readLength(written, 'in'), written).toEqual({ refused: NO_LENGTH })
  }
})
