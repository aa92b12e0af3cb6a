import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { degrees, mm } from '../../src/units/convert.js'
import { readLength } from '../../src/units/read-length.js'
import { fixed, showAngle, showLength, showNumber, showSetting, trimmed } from '../../src/units/show.js'

const METRIC = { units: 'mm', nearest: 32 } as const
const INCH = { units: 'in', nearest: 32 } as const
const INCH_MM = 25.4
const RULES = [8, 16, 32, 64] as const

/** Oracle: try every numerator up to ten feet and keep the closest. */
const closestNumerator = (length: number, nearest: number): number => {
  let best = 0
  for (let numerator = 1; numerator <= 120 * nearest; numerator++) {
    const miss = Math.abs(length - (numerator * INCH_MM) / nearest)
    if (miss < Math.abs(length - (best * INCH_MM) / nearest)) best = numerator
  }
  return best
}

/** `5 3/8` as a count of inches, by hand rather than by our own reader. */
const inchesShown = (shown: string): number =>
  shown.split(' ').reduce((sum, part) => {
    const [over = '0', under = '1'] = part.split('/')
    return sum + Number(over) / Number(under)
  }, 0)

describe('lengths in inches', () => {
  test.each([
    [140, '5 1/2 in', 'a board sold as 140 mm: 5.5118 in'],
    [88.9, '3 1/2 in', 'exactly'],
    [19, '3/4 in', '0.748 in'],
    [99, '3 29/32 in', '3.8976 in; 29/32 = 0.90625'],
    [25.4, '1 in', 'no fraction'],
    [0, '0 in', 'nothing'],
    [-0, '0 in', 'no minus before nothing'],
    [0.3, '0.012 in', 'less than half of 1/32 = 0.397 mm, so in thousandths: 0.01181'],
    [-0.3, '-0.012 in', 'the same, the other way'],
    [-0.01, '0 in', 'no minus before nothing'],
    [0.5, '1/32 in', 'more than half of 1/32'],
    [25.3, '1 in', 'carried over to the whole inch'],
    [-88.9, '-3 1/2 in', 'the sign leads'],
    [2438.4, '96 in', 'eight feet'],
  ])('%f mm is %s (%s)', (length, shown) => {
    expect(showLength(mm(length), INCH)).toBe(shown)
  })

  test.each(RULES)('are the closest of all fractions of 1/%i, in lowest terms', (nearest) => {
    for (let step = 0; step < 400; step++) {
      const length = step * 6.173
      const shown = showNumber(mm(length), { units: 'in', nearest })
      const numerator = closestNumerator(length, nearest)
      expect(inchesShown(shown) * nearest, `${length} mm`).toBeCloseTo(numerator, 9)
      const [over, under] = (shown.split(' ').find((part) => part.includes('/')) ?? '').split('/')
      if (under !== undefined) {
        expect(Number(over) % 2, shown).toBe(1)
        expect(nearest % Number(under), shown).toBe(0)
        expect(Number(over), shown).toBeLessThan(Number(under))
      }
    }
  })

  test('are told with what the fraction leaves out, once that can be seen at the bench', () => {
    // 140 mm = 5.51181 in; 5 1/2 in leaves 0.01181 in = 0.3 mm.
    expect(showSetting(mm(140), INCH)).toBe('5 1/2 +0.012 in')
    // 99 mm = 3.89764 in; 3 29/32 = 3.90625 leaves -0.00861 in.
    expect(showSetting(mm(99), INCH)).toBe('3 29/32 -0.009 in')
    // 0.09 mm over 3 1/2 in cannot be seen, 0.11 mm can.
    expect(showSetting(mm(88.9 + 0.09), INCH)).toBe('3 1/2 in')
    expect(showSetting(mm(88.9 + 0.11), INCH)).toBe('3 1/2 +0.004 in')
    expect(showSetting(mm(88.9 - 0.11), INCH)).toBe('3 1/2 -0.004 in')
    expect(showSetting(mm(140), METRIC)).toBe('140.0 mm')
  })

  test('a setting is the fraction and its rest, to half a thousandth of an inch or what cannot be seen', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 3000, noNaN: true }),
        fc.constantFrom(...RULES),
        (length, nearest) => {
          const shown = showSetting(mm(length), { units: 'in', nearest })
          const [fraction = '', rest = '0'] = shown.split(' in').map((part) => part.trim())
          const told = (inchesShown(fraction) + Number(rest)) * INCH_MM
          const unseen = rest === '' || rest === '0' ? 0.1 : 0.0005 * INCH_MM
          expect(Math.abs(told - length), shown).toBeLessThanOrEqual(unseen + 1e-9)
        },
      ),
      { seed: 20 },
    )
  })

  test('read back, they differ by no more than half a fraction', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 20_000, noNaN: true }),
        fc.constantFrom(...RULES),
        (length, nearest) => {
          const reading = readLength(showLength(mm(length), { units: 'in', nearest }), 'mm')
          if ('refused' in reading) throw new Error(reading.refused)
          expect(Math.abs(reading.length - length)).toBeLessThanOrEqual(INCH_MM / nearest / 2 + 1e-9)
        },
      ),
      { seed: 21 },
    )
  })
})

describe('lengths in millimetres', () => {
  test.each([
    [99, '99.0 mm'],
    [99.04, '99.0 mm'],
    [99.06, '99.1 mm'],
    [0, '0.0 mm'],
    [-0, '0.0 mm'],
    [-0.04, '0.0 mm'],
    [-2.5, '-2.5 mm'],
    [12345.678, '12345.7 mm'],
  ])('%f mm is %s', (length, shown) => {
    expect(showLength(mm(length), METRIC)).toBe(shown)
  })

  test('read back, they differ by no more than half a tenth', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 20_000, noNaN: true }), (length) => {
        const reading = readLength(showLength(mm(length), METRIC), 'in')
        if ('refused' in reading) throw new Error(reading.refused)
        expect(Math.abs(reading.length - length)).toBeLessThanOrEqual(0.05 + 1e-9)
      }),
      { seed: 22 },
    )
  })
})

test.each([
  [31.5, '31.5°'],
  [45, '45°'],
  [0, '0°'],
  [-0, '0°'],
  [-0.001, '0°'],
  [-22.5, '-22.5°'],
  [128.5714, '128.57°'],
  [22.505, '22.5°'],
  [22.506, '22.51°'],
  [100, '100°'],
])('%f degrees is %s', (angle, shown) => {
  expect(showAngle(degrees(angle))).toBe(shown)
})

test('digits are rounded, and nothing is never negative', () => {
  expect(fixed(-0.04, 1)).toBe('0.0')
  expect(fixed(-0.06, 1)).toBe('-0.1')
  expect(fixed(2, 3)).toBe('2.000')
  expect(trimmed(2.5, 3)).toBe('2.5')
  expect(trimmed(-0.0004, 3)).toBe('0')
  expect(trimmed(1200, 2)).toBe('1200')
})

test('rounds what lies halfway but for the noise of sines alike, in Node and in browsers', () => {
  // 183.25 as two engines worked it out: one step of a double apart from it on either side.
  const noise = 2 ** -45
  expect([183.25 - noise, 183.25, 183.25 + noise].map((each) => fixed(each, 1))).toEqual([
    '183.3',
    '183.3',
    '183.3',
  ])
  expect([-183.25 - noise, -183.25 + noise].map((each) => fixed(each, 1))).toEqual(['-183.3', '-183.3'])
  const half = (25.4 * 33) / 64
  const shown = [half - noise, half + noise].map((each) => showLength(mm(each), { units: 'in', nearest: 32 }))
  expect(shown[0]).toBe(shown[1])
})
