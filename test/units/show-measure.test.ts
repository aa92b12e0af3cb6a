import { expect, test } from 'vitest'
import { celsius, hours, kilograms, mm, percent } from '../../src/units/convert.js'
import { showMovement } from '../../src/units/show.js'
import {
  showAir,
  showAirShort,
  showArea,
  showMass,
  showTemperature,
  showTime,
  showVolume,
} from '../../src/units/show-measure.js'

// Conversions by hand: 1 lb = 0.453 592 37 kg, 1 ft² = 929.0304 cm², 1 US gal = 3.785 411 784 l = 128 fl oz.

test.each([
  [showTemperature(celsius(20), 'mm'), '20 °C'],
  [showTemperature(celsius(20), 'in'), '68 °F'],
  [showTemperature(celsius(-0.2), 'mm'), '0 °C'],
  [showMass(kilograms(0.3441), 'mm'), '0.344 kg'],
  [showMass(kilograms(12.44), 'mm'), '12.4 kg'],
  [showMass(kilograms(0.453_592_37), 'in'), '1.00 lb'],
  [showArea(6123.4, 'mm'), '61 cm²'],
  [showArea(447_000, 'mm'), '0.447 m²'],
  [showArea(64_516, 'in'), '100 in²'],
  [showArea(2 * 92_903.04, 'in'), '2.00 ft²'],
  [showTime(hours(0.5)), '30 min'],
  [showTime(hours(24)), '24 h'],
  [showTime(hours(72)), '3 days'],
  [showMovement(mm(0.3), { units: 'mm', nearest: 32 }), '0.3 mm'],
  [showMovement(mm(0.3556), { units: 'in', nearest: 32 }), '0.014 in'],
  [showAir({ humidity: percent(45), temperature: celsius(18) }, 'mm'), '45 % humidity at 18 °C'],
  [showAir({ moisture: percent(8.5) }, 'mm'), '8.5 % wood moisture'],
  [showAirShort({ humidity: percent(45), temperature: celsius(18) }, 'in'), '45 %, 64 °F'],
  [showAirShort({ moisture: percent(8.5) }, 'in'), 'by meter'],
])('%s', (shown, expected) => {
  expect(shown).toBe(expected)
})

test('a volume to buy is never shown as less than it is', () => {
  expect(showVolume(0.0745, 'mm')).toBe('0.08 l')
  expect(showVolume(0.08, 'mm')).toBe('0.08 l')
  // 1 l is 33.81 fl oz; a quart is 32 of them.
  expect(showVolume(0.5, 'in')).toBe('17 fl oz')
  expect(showVolume(1, 'in')).toBe('1.1 qt')
})
