import { describe, expect, test } from 'vitest'
import table from '../../shared/wood-species.json' with { type: 'json' }
import {
  COEFFICIENTS_HOLD,
  SOFTWOOD_COEFFICIENT,
  SPECIES,
  speciesNamed,
  woodDensity,
} from '../../src/tables/species.js'

/** USDA Wood Handbook (FPL-GTR-190, 2010), Table 13-5, hardwood part, as looked up: C_R and C_T. */
const TABLE_13_5: readonly (readonly [string, number, number])[] = [
  ['red alder', 0.00151, 0.00256],
  ['quaking aspen', 0.00119, 0.00234],
  ['white ash', 0.00169, 0.00274],
  ['American basswood', 0.0023, 0.0033],
  ['American beech', 0.0019, 0.00431],
  ['yellow birch', 0.00256, 0.00338],
  ['black cherry', 0.00126, 0.00248],
  ['red maple', 0.00137, 0.00289],
  ['sugar maple', 0.00165, 0.00353],
  ['red oak', 0.00158, 0.00369],
  ['white oak', 0.0018, 0.00365],
  ['black walnut', 0.0019, 0.00274],
]

describe('Wood Handbook, Table 13-5', () => {
  test.each(TABLE_13_5)('%s', (name, radial, tangential) => {
    expect(speciesNamed(name)).toMatchObject({
      radial,
      tangential,
      seen: { radial: 'looked-up', tangential: 'looked-up' },
    })
  })

  /*
   * The handbook's own rule (footnote of Table 13-5): a straight line from fibre saturation to oven-dry, referred to
   * the dimension at 10 % moisture, gives the coefficients from the shrinkage of Table 4-3. The softwood rows are from
   * memory; this is what they are held against.
   */
  const rows = table.species.flatMap(({ name, shrinkage_pct: [radial, tangential], ...row }) =>
    typeof radial === 'number' && typeof tangential === 'number'
      ? [{ ...row, name, radial, tangential }]
      : [],
  )
  test.each(rows)('$name follows from its shrinkage to the fifth decimal', (row) => {
    const fromShrinkage = (shrinkage: number) =>
      shrinkage / (100 * row.fibre_saturation_pct - (row.fibre_saturation_pct - 10) * shrinkage)
    const species = speciesNamed(row.name)
    expect(Math.abs((species?.radial ?? 0) - fromShrinkage(row.radial))).toBeLessThanOrEqual(5.01e-6)
    expect(Math.abs((species?.tangential ?? 0) - fromShrinkage(row.tangential))).toBeLessThanOrEqual(5.01e-6)
  })

  test('every row but the two groups of oak is held against it', () => {
    expect(SPECIES.length - rows.length).toBe(2)
  })

  test('holds from 6 to 14 % moisture', () => {
    expect(COEFFICIENTS_HOLD).toEqual({ from: 6, to: 14 })
  })
})

describe('EN 1313-1:2010, clause 5: softwoods change by 0.25 % of their size per 1 % moisture', () => {
  test('that is the coefficient of a softwood without a name', () => {
    expect(SOFTWOOD_COEFFICIENT).toBe(0.0025)
  })

  test('our softwoods lie around it: less across the rings, as much along them', () => {
    const softwoods = SPECIES.filter(({ softwood }) => softwood)
    expect(softwoods.length).toBeGreaterThan(10)
    for (const { name, radial, tangential } of softwoods) {
      expect(radial, name).toBeLessThan(0.0025)
      // A third on either side, for one figure stands for all softwoods.
      expect(tangential, name).toBeGreaterThan((0.0025 * 2) / 3)
      expect(tangential, name).toBeLessThan((0.0025 * 4) / 3)
    }
    const mean = softwoods.reduce((sum, { tangential }) => sum + tangential, 0) / softwoods.length
    expect(mean).toBeGreaterThan(0.9 * 0.0025)
    expect(mean).toBeLessThan(1.1 * 0.0025)
  })
})

describe('the table', () => {
  test('of every species the rings move more along than across', () => {
    for (const { name, radial, tangential } of SPECIES) expect(tangential, name).toBeGreaterThan(radial)
  })

  test('says of each value how it was seen; softwood coefficients are marked as from memory', () => {
    const remembered = SPECIES.filter(({ seen }) => seen.radial === 'memory').map(({ name }) => name)
    expect(remembered).toContain('western larch')
    expect(remembered).toContain('coast Douglas-fir')
    expect(speciesNamed('white fir')?.seen).toMatchObject({ radial: 'memory', tangential: 'looked-up' })
  })

  // Specific gravities of well-known woods, Table 5-3a as looked up.
  test.each([
    ['white ash', 0.6],
    ['black walnut', 0.55],
    ['sugar maple', 0.63],
    ['ponderosa pine', 0.4],
    ['yellow-poplar', 0.42],
  ])('%s has a specific gravity of %f', (name, gravity) => {
    expect(speciesNamed(name)?.specificGravity).toBe(gravity)
  })

  test('names are found in any capitals, and no others', () => {
    expect(speciesNamed(' Western Larch')?.name).toBe('western larch')
    expect(speciesNamed('larch')).toBeUndefined()
  })
})

/*
 * Wood Handbook, Table 4-6b (from memory): density in kg/m³ by specific gravity (based on the volume at the given
 * moisture) and moisture content.
 */
test.each([
  [0.4, 12, 448],
  [0.5, 12, 560],
  [0.6, 12, 672],
  [0.4, 8, 432],
])('wood of specific gravity %f at %i %% moisture has %i kg/m³', (gravity, moisture, density) => {
  expect(woodDensity(gravity, moisture)).toBeCloseTo(density, 9)
})
