import { describe, expect, test } from 'vitest'
import {
  COEFFICIENT,
  COVERAGE,
  DENSITY,
  DURATION,
  type Measure,
  PERCENT,
  readMeasure,
  TEMPERATURE,
} from '../../src/units/read-measure.js'

// Oracles: definitions of the units (BIPM, NIST SP 811 App. B, from memory): 0 °C = 32 °F; 1 US gal = 3.785 411 784 l;
// 1 ft² = 0.092 903 04 m²; 1 lb/ft³ = 16.018 463 kg/m³.

const read = (written: string | number, measure: Measure, units: 'mm' | 'in' = 'mm') => {
  const reading = readMeasure(written, measure, units)
  return 'value' in reading ? reading.value : reading.refused
}

describe('reads as written', () => {
  test.each<[string | number, Measure, number]>([
    [45, PERCENT, 45],
    ['45', PERCENT, 45],
    ['45 %', PERCENT, 45],
    ['8,5%', PERCENT, 8.5],
    [20, TEMPERATURE, 20],
    [-4, TEMPERATURE, -4],
    ['-4 °C', TEMPERATURE, -4],
    ['−4 C', TEMPERATURE, -4],
    ['68 °F', TEMPERATURE, 20],
    ['32F', TEMPERATURE, 0],
    ['-40 °F', TEMPERATURE, -40],
    ['30 min', DURATION, 0.5],
    ['24 h', DURATION, 24],
    ['1 day', DURATION, 24],
    ['3 days', DURATION, 72],
    ['2 weeks', DURATION, 336],
    [12, COVERAGE, 12],
    ['12 m²/l', COVERAGE, 12],
    ['12 m2 / L', COVERAGE, 12],
    ['400 ft²/gal', COVERAGE, (400 * 0.09290304) / 3.785411784],
    ['100 sq ft/qt', COVERAGE, (400 * 0.09290304) / 3.785411784],
    ['680 kg/m³', DENSITY, 680],
    ['0.68 g/cm3', DENSITY, 680],
    ['42 lb/ft³', DENSITY, 42 * 16.018463],
    ['0.0025', COEFFICIENT, 0.0025],
    ['0.25 %', COEFFICIENT, 0.0025],
  ])('%j', (written, measure, value) => {
    expect(read(written, measure)).toBeCloseTo(value, 4)
  })

  test.each<[number, Measure, number]>([
    [68, TEMPERATURE, 20],
    [400, COVERAGE, (400 * 0.09290304) / 3.785411784],
    [42, DENSITY, 42 * 16.018463],
    [45, PERCENT, 45],
  ])('%f in an order in inches', (written, measure, value) => {
    expect(read(written, measure, 'in')).toBeCloseTo(value, 4)
  })
})

describe('refuses what can be meant in two ways, or acts', () => {
  test.each<[string | number, Measure, string]>([
    [24, DURATION, 'it needs its unit'],
    ['24', DURATION, 'it needs its unit'],
    ['24 m', DURATION, 'its unit is not known here'],
    ['45 h', PERCENT, 'its unit is not known here'],
    ['5 constructor', PERCENT, 'its unit is not known here'],
    ['5 __proto__', PERCENT, 'its unit is not known here'],
    [-5, PERCENT, 'it cannot lie below zero'],
    ['-5 %', PERCENT, 'it cannot lie below zero'],
    ['1,250 kg/m3', DENSITY, 'the comma can mean thousands or decimals: leave it out, or write a point'],
    ['1e3', DENSITY, 'its unit is not known here'],
    ['dry', PERCENT, 'it is not a number with its unit'],
    ['', PERCENT, 'it is not a number with its unit'],
    ['NaN', PERCENT, 'it is not a number with its unit'],
    [Number.NaN, PERCENT, 'it is not a finite number'],
    [Number.POSITIVE_INFINITY, PERCENT, 'it is not a finite number'],
    ['4'.repeat(5000), PERCENT, 'it is longer than 64 characters'],
    ['45 %\u001b[31m', PERCENT, 'its unit is not known here'],
  ])('%j', (written, measure, refusal) => {
    expect(read(written, measure)).toBe(refusal)
  })
})
