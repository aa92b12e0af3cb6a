import { expect, test } from 'vitest'
import table from '../../shared/lumber-sizes.json' with { type: 'json' }
import { BOARD_WIDTHS } from '../../src/tables/lumber.js'

/**
 * Oracle: the rule of the American Softwood Lumber Standard, DOC PS 20, as it is taught (from memory): a dry dressed
 * board is 1/2 in narrower than its name up to 7, and 3/4 in narrower from 8 on, up to 12.
 */
const dressed = (nominal: number): number => (nominal <= 7 ? nominal - 1 / 2 : nominal - 3 / 4)

const UP_TO_TWELVE = [2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]

const dryInches = (nominal: number): number =>
  (BOARD_WIDTHS.find((width) => width.nominal === nominal)?.dry ?? Number.NaN) / 25.4

test.each(UP_TO_TWELVE)('a board sold as %i in wide is dressed by the rule', (nominal) => {
  expect(dryInches(nominal)).toBeCloseTo(dressed(nominal), 12)
})

// The sizes on every American lumber rack; common knowledge of the trade, after PS 20.
test.each([
  ['1x4', 4, 3.5, 89],
  ['1x6', 6, 5.5, 140],
  ['1x8', 8, 7.25, 184],
  ['1x12', 12, 11.25, 286],
] as const)('a %s is what the rack carries', (_, nominal, inches, roundedMm) => {
  expect(dryInches(nominal)).toBeCloseTo(inches, 12)
  expect(Math.round(dryInches(nominal) * 25.4)).toBe(roundedMm)
})

test('the checks beside the table agree with it', () => {
  const oneInch = table.checks.filter(({ name }) => name.startsWith('1x'))
  expect(oneInch.map(({ name }) => name)).toEqual(['1x4', '1x6', '1x8', '1x12'])
  for (const { name, dry_in } of oneInch) {
    expect(dryInches(Number(name.slice(2))), name).toBeCloseTo(dry_in[1] ?? Number.NaN, 12)
  }
})

test('widths are listed once, from narrow to wide', () => {
  const nominals = BOARD_WIDTHS.map(({ nominal }) => nominal)
  expect(nominals).toEqual([...new Set(nominals)].sort((a, b) => a - b))
  const widths = BOARD_WIDTHS.map(({ dry }) => dry)
  expect(widths).toEqual([...widths].sort((a, b) => a - b))
})
