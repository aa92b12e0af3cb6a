import type { Degrees, Kilograms, Mm, Points, Radians } from './brand.js'

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
