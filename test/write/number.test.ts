import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { writeNumber, writtenLength } from '../../src/write/number.js'

describe('a number in a file', () => {
  it.each([
    [0, '0'],
    [-0, '0'],
    [-0.00001, '0'],
    [0.00005001, '0.0001'],
    [2e-7, '0'],
    [149.2, '149.2'],
    [100, '100'],
    [-1200.5, '-1200.5'],
    [1 / 3, '0.3333'],
    [-2 / 3, '-0.6667'],
    [0.99999, '1'],
    [1e20, '100000000000000000000'],
  ])('%d is written as %s', (given, expected) => {
    expect(writeNumber(given)).toBe(expected)
  })

  it.each([Number.NaN, Infinity, -Infinity, 1e21, -1e308])('%d is refused', (given) => {
    expect(() => writeNumber(given)).toThrow(RangeError)
  })

  it('names the number it refuses', () => {
    expect(() => writeNumber(Number.NaN)).toThrow('NaN cannot be written to a file')
  })

  it('keeps whole numbers whole when no decimals are wanted', () => {
    expect(writeNumber(1200, 0)).toBe('1200')
  })

  it('is plain, and within half of the last digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.integer({ min: 0, max: 10 }),
        (value, decimals) => {
          const text = writeNumber(value, decimals)
          expect(text).toMatch(/^(?!-0$)-?\d+(\.\d*[1-9])?$/)
          expect(text.split('.')[1]?.length ?? 0).toBeLessThanOrEqual(decimals)
          expect(Math.abs(Number(text) - value)).toBeLessThanOrEqual(
            0.5 * 10 ** -decimals + Math.abs(value) * 1e-15,
          )
        },
      ),
      { seed: 42, numRuns: 1000 },
    )
  })

  it('leaves nothing to round in a written length', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e5, max: 1e5, noNaN: true }), (value) => {
        const written = writtenLength(value)
        expect(Number(writeNumber(written))).toBe(written + 0)
      }),
      { seed: 42, numRuns: 1000 },
    )
  })
})
