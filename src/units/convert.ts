import type { Celsius, Degrees, Hours, Kilograms, Mm, Percent, Points, Radians } from './brand.js'
import * as maths from './maths.js'

/** Exact by definition (international inch, 1959). */
export const MM_PER_INCH = 25.4
/** ISO 32000-1, 8.3.2.3: the default user-space unit is 1/72 inch. */
const POINTS_PER_INCH = 72

export const mm = (value: number): Mm => value as Mm
export const inches = (value: number): Mm => (value * MM_PER_INCH) as Mm
export const toInches = (length: Mm): number => length / MM_PER_INCH

export const points = (value: number): Points => value as Points
export const toPoints = (length: number): Points => ((length * POINTS_PER_INCH) / MM_PER_INCH) as Points
export const toMm = (size: Points): Mm => ((size * MM_PER_INCH) / POINTS_PER_INCH) as Mm

export const degrees = (value: number): Degrees => value as Degrees
export const radians = (value: number): Radians => value as Radians
export const toRadians = (angle: Degrees): Radians => ((angle * Math.PI) / 180) as Radians
export const toDegrees = (angle: Radians): Degrees => ((angle * 180) / Math.PI) as Degrees

export const kilograms = (value: number): Kilograms => value as Kilograms
/** Exact by definition (international pound, 1959). */
export const KG_PER_POUND = 0.453_592_37
/** A mass in kg of mm³ at a density in kg/m³. */
export const massOf = (volume: number, density: number): Kilograms => (volume * 1e-9 * density) as Kilograms

export const celsius = (value: number): Celsius => value as Celsius
export const fahrenheit = (value: number): Celsius => (((value - 32) * 5) / 9) as Celsius
export const toFahrenheit = (temperature: Celsius): number => (temperature * 9) / 5 + 32

export const percent = (value: number): Percent => value as Percent
export const hours = (value: number): Hours => value as Hours

/** mm² in a square metre, and in a square foot. */
export const MM2_PER_M2 = 1e6
export const MM2_PER_FT2 = maths.square(12 * MM_PER_INCH)
/** Litres in a US gallon of 231 cubic inches, exact by definition. */
export const LITRES_PER_GALLON = (231 * maths.pow(MM_PER_INCH, 3)) / 1e6
/** kg/m³ in one pound to the cubic foot. */
export const KG_M3_PER_LB_FT3 = (KG_PER_POUND / maths.pow(12 * MM_PER_INCH, 3)) * 1e9
