import type { Celsius, Hours, Kilograms, Percent } from './brand.js'
import {
  KG_PER_POUND,
  LITRES_PER_GALLON,
  MM_PER_INCH,
  MM2_PER_FT2,
  MM2_PER_M2,
  toFahrenheit,
} from './convert.js'
import * as maths from './maths.js'
import type { Units } from './read-length.js'
import { fixed, trimmed } from './show.js'

/** `20 °C`, or `68 °F` in an order in inches. */
export const showTemperature = (temperature: Celsius, units: Units): string =>
  units === 'mm' ? `${fixed(temperature, 0)} °C` : `${fixed(toFahrenheit(temperature), 0)} °F`

type ShownAir = { readonly humidity: Percent; readonly temperature: Celsius } | { readonly moisture: Percent }

/** `45 % humidity at 20 °C`, or `8.5 % wood moisture`. */
export const showAir = (air: ShownAir, units: Units): string =>
  'moisture' in air
    ? `${trimmed(air.moisture, 1)} % wood moisture`
    : `${trimmed(air.humidity, 0)} % humidity at ${showTemperature(air.temperature, units)}`

/** The same for a table: `45 %, 20 °C`, or `by meter`. */
export const showAirShort = (air: ShownAir, units: Units): string =>
  'moisture' in air ? 'by meter' : `${trimmed(air.humidity, 0)} %, ${showTemperature(air.temperature, units)}`

/** Two or three digits: `0.42 kg`, `12.4 kg`; `0.93 lb`. */
export const showMass = (mass: Kilograms, units: Units): string =>
  units === 'mm' ? `${threeDigits(mass)} kg` : `${threeDigits(mass / KG_PER_POUND)} lb`

/** An area in mm² as `61 cm²` or `0.45 m²`, in an order in inches as `26 in²` or `4.81 ft²`. */
export const showArea = (area: number, units: Units): string => {
  if (units === 'mm') {
    return area < MM2_PER_M2 / 10
      ? `${fixed(area / MM2_PER_CM2, 0)} cm²`
      : `${threeDigits(area / MM2_PER_M2)} m²`
  }
  return area < MM2_PER_FT2
    ? `${fixed(area / maths.square(MM_PER_INCH), 0)} in²`
    : `${threeDigits(area / MM2_PER_FT2)} ft²`
}

/** Litres, rounded up so that the tin does not run dry: `0.25 l`, or in fluid ounces, `8.5 fl oz`. */
export const showVolume = (litres: number, units: Units): string => {
  if (units === 'mm') return `${trimmed(Math.ceil(litres * 100) / 100, 2)} l`
  const ounces = (litres / LITRES_PER_GALLON) * OUNCES_PER_GALLON
  return ounces < OUNCES_PER_GALLON / 4
    ? `${trimmed(Math.ceil(ounces * 2) / 2, 1)} fl oz`
    : `${trimmed(Math.ceil((ounces / OUNCES_PER_GALLON) * 40) / 10, 1)} qt`
}

/** Fluid ounces in a US gallon. */
const OUNCES_PER_GALLON = 128

/** `30 min`, `24 h`, `3 days`. */
export const showTime = (time: Hours): string => {
  if (time < 1) return `${fixed(time * 60, 0)} min`
  return time < 48 ? `${trimmed(time, 1)} h` : `${trimmed(time / 24, 1)} days`
}

const MM2_PER_CM2 = 100

const threeDigits = (value: number): string => fixed(value, value < 1 ? 3 : value < 10 ? 2 : 1)
