import { expect, test } from 'vitest'
import { readAngle } from '../../src/units/read-angle.js'

// Oracle: a degree is a degree; each expectation is the number as a person would say it.
const READ: readonly (readonly [written: string | number, expected: number])[] = [
  [45, 45],
  [22.5, 22.5],
  [0, 0],
  [360, 360],
  ['45', 45],
  ['45°', 45],
  ['45 °', 45],
  ['22.5', 22.5],
  ['22.5°', 22.5],
  ['31,5', 31.5],
  ['31,5°', 31.5],
  ['31,5 deg', 31.5],
  ['31.5deg', 31.5],
  ['1 degree', 1],
  ['45 degrees', 45],
  ['45 DEG', 45],
  ['  45  ', 45],
  ['045', 45],
  ['0.000001', 0.000001],
  ['128.571428571428', 128.571428571428],
  ['9999', 9999],
]

test.each(READ)('%j is %f degrees', (written, expected) => {
  expect(readAngle(written)).toEqual({ angle: expected })
})

const NO_ANGLE = 'it is not an angle in degrees'

const REFUSED: readonly (readonly [written: string | number, reason: string])[] = [
  ['', NO_ANGLE],
  ['   ', NO_ANGLE],
  ['°', NO_ANGLE],
  ['-45', NO_ANGLE],
  ['+45', NO_ANGLE],
  [-45, 'an angle has no sign'],
  [Number.NaN, 'it is not a finite number'],
  [Number.POSITIVE_INFINITY, 'it is not a finite number'],
  [Number.NEGATIVE_INFINITY, 'it is not a finite number'],
  ['NaN', NO_ANGLE],
  ['Infinity', NO_ANGLE],
  ['1e1', NO_ANGLE],
  ['1e400', NO_ANGLE],
  ['0x2d', NO_ANGLE],
  ['45.', NO_ANGLE],
  ['.5', NO_ANGLE],
  ['45..5', NO_ANGLE],
  ['45 30', NO_ANGLE],
  ["45° 30'", NO_ANGLE],
  ['45/2', NO_ANGLE],
  ['22 1/2', NO_ANGLE],
  ['0.785 rad', NO_ANGLE],
  ['50 grad', NO_ANGLE],
  ['45 mm', NO_ANGLE],
  ['45%', NO_ANGLE],
  ['forty-five', NO_ANGLE],
  ['12345', NO_ANGLE],
  ['45\u0000', NO_ANGLE],
  ['4\n5', NO_ANGLE],
  ['٤٥', NO_ANGLE],
  ['4'.repeat(2 ** 20), NO_ANGLE],
]

test.each(REFUSED.map(([written, reason]) => [String(written).slice(0, 20), reason, written] as const))(
  '%j is refused: %s',
  (_, reason, written) => {
    expect(readAngle(written)).toEqual({ refused: reason })
  },
)
