import { describe, expect, test } from 'vitest'
import table from '../../shared/wood-moisture.json' with { type: 'json' }
import { humidityFor, moistureIn, moistureOf } from '../../src/season/moisture.js'
import { celsius, fahrenheit, percent } from '../../src/units/convert.js'

/*
 * USDA Wood Handbook, Table 4-2 (FPL-GTR-190, 2010, p. 4-4): moisture in % by temperature and humidity, printed to one
 * decimal. 0.07 is half of that last digit and what the equation's rounded coefficients leave: the Fahrenheit form of
 * the same equation misses the table by as much.
 */
const OFF = 0.07
const ROWS = Object.values(table.table_4_2)

describe.each(ROWS)('Table 4-2 at $temp_f °F', ({ temp_f, emc_pct }) => {
  test.each(table.table_rh_pct.map((humidity, column) => [humidity, emc_pct[column] ?? Number.NaN] as const))(
    'at a humidity of %i in 100 wood comes to %f in 100',
    (humidity, moisture) => {
      const ours = moistureIn(percent(humidity), fahrenheit(temp_f))
      expect(Math.abs(ours - moisture)).toBeLessThanOrEqual(OFF)
    },
  )
})

test('the whole table is checked: ten temperatures, nineteen humidities', () => {
  expect(ROWS.map(({ emc_pct }) => emc_pct.length)).toEqual(Array(10).fill(19))
})

// The figures every drying manual quotes; Table 4-2 again, typed from the page and not from our file.
test.each([
  [70, 30, 6.2],
  [70, 50, 9.2],
  [70, 65, 12.0],
  [70, 80, 16.0],
  [30, 20, 4.6],
  [90, 90, 19.8],
])('%i °F and %i in 100: %f in 100', (temperature, humidity, moisture) => {
  expect(Math.abs(moistureIn(percent(humidity), fahrenheit(temperature)) - moisture)).toBeLessThanOrEqual(OFF)
})

test('degrees Fahrenheit are not taken for Celsius: 21.1 °C and 65 % are 12.0 %, not 12.34', () => {
  expect(moistureIn(percent(65), celsius(21.1))).toBeCloseTo(12.0, 1)
})

describe('over all air an order may state', () => {
  const temperatures = Array.from({ length: 17 }, (_, step) => celsius(-30 + 5 * step))

  test.each(temperatures)('at %i °C damper air makes damper wood', (temperature) => {
    let before = 0
    for (let humidity = 5; humidity <= 95; humidity++) {
      const moisture = moistureIn(percent(humidity), temperature)
      expect(moisture).toBeGreaterThan(before)
      before = moisture
    }
    expect(before).toBeLessThan(30)
  })

  test.each(temperatures)('at %i °C the humidity for a moisture is the one that makes it', (temperature) => {
    for (const humidity of [5.5, 20, 42, 65, 94]) {
      const moisture = moistureIn(percent(humidity), temperature)
      expect(humidityFor(moisture, temperature)).toBeCloseTo(humidity, 6)
    }
    expect(humidityFor(percent(0.5), temperature)).toBeUndefined()
    expect(humidityFor(percent(29), temperature)).toBeUndefined()
  })
})

test('a meter is believed', () => {
  expect(moistureOf({ moisture: percent(9.5) })).toBe(9.5)
  expect(moistureOf({ humidity: percent(65), temperature: celsius(21.1) })).toBeCloseTo(12, 1)
})
