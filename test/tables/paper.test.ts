import { describe, expect, test } from 'vitest'
import { PAPER_NAMES, PAPER_SIZES, type PaperName, paperSize } from '../../src/tables/paper.js'

// ISO 216:2007, table of the main series, trimmed sizes in mm. The figures are known by heart in every print shop;
// written here from memory and not copied from our own table.
const ISO: readonly (readonly [name: PaperName, across: number, along: number])[] = [
  ['A0', 841, 1189],
  ['A1', 594, 841],
  ['A2', 420, 594],
  ['A3', 297, 420],
  ['A4', 210, 297],
]

// ASME Y14.1, sizes A to E in inches; Letter is A, Tabloid is B. Legal is a trade size outside that standard. From memory.
const AMERICAN: readonly (readonly [name: PaperName, across: number, along: number])[] = [
  ['Letter', 8.5, 11],
  ['Legal', 8.5, 14],
  ['Tabloid', 11, 17],
  ['ANSI-C', 17, 22],
  ['ANSI-D', 22, 34],
  ['ANSI-E', 34, 44],
]

test.each(ISO)('%s is %i by %i mm', (name, across, along) => {
  expect(paperSize(name)).toEqual({ name, across, along })
})

test.each(AMERICAN)('%s is %f by %f in', (name, across, along) => {
  expect(paperSize(name).across).toBeCloseTo(across * 25.4, 9)
  expect(paperSize(name).along).toBeCloseTo(along * 25.4, 9)
})

test('there are no other sizes, and every size is listed by name', () => {
  const names = [...ISO, ...AMERICAN].map(([name]) => name).sort()
  expect([...PAPER_NAMES].sort()).toEqual(names)
  expect(PAPER_SIZES.map(({ name }) => name).sort()).toEqual(names)
})

test('an unknown size is a mistake of ours', () => {
  expect(() => paperSize('A9' as PaperName)).toThrow(new RangeError('no paper size is called A9'))
})

describe('the rules of ISO 216', () => {
  test('A0 has an area of one square metre, to the rounding of its sides', () => {
    const { across, along } = paperSize('A0')
    // Half a millimetre on either side moves the area by no more than (841 + 1189) / 2 + 0.25 mm².
    expect(Math.abs(across * along - 1e6)).toBeLessThanOrEqual((841 + 1189) / 2 + 0.25)
  })

  test.each(ISO)('%s: the sides are as 1 to √2, to the rounding of whole millimetres', (name) => {
    const { across, along } = paperSize(name)
    const widest = (along + 0.5) / (across - 0.5)
    const narrowest = (along - 0.5) / (across + 0.5)
    expect(widest).toBeGreaterThanOrEqual(Math.SQRT2)
    expect(narrowest).toBeLessThanOrEqual(Math.SQRT2)
  })

  test.each([
    ['A0', 'A1'],
    ['A1', 'A2'],
    ['A2', 'A3'],
    ['A3', 'A4'],
  ] as const)('%s folded once is %s, a half millimetre rounded down', (size, half) => {
    expect(paperSize(half).along).toBe(paperSize(size).across)
    expect(paperSize(half).across).toBe(Math.floor(paperSize(size).along / 2))
  })
})

describe('the rule of ASME Y14.1: each size is two of the one before, side by side', () => {
  test.each([
    ['Letter', 'Tabloid'],
    ['Tabloid', 'ANSI-C'],
    ['ANSI-C', 'ANSI-D'],
    ['ANSI-D', 'ANSI-E'],
  ] as const)('two of %s make %s', (half, size) => {
    expect(paperSize(size).across).toBeCloseTo(paperSize(half).along, 9)
    expect(paperSize(size).along).toBeCloseTo(2 * paperSize(half).across, 9)
  })
})

test('every sheet stands upright', () => {
  for (const { across, along } of PAPER_SIZES) expect(across).toBeLessThan(along)
})
