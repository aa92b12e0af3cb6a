import { degrees, mm, radians } from './convert.js'

/** Two points closer than this are one point: far below any tool, far above rounding noise at 10 m. */
export const SAME_POINT = mm(1e-6)

/** Digits written to a file: 0.1 µm, finer than any plotter, laser or router steps. */
export const WRITTEN = mm(1e-4)

/** What a person can see or set at the bench with a rule and a knife line. */
export const SHOP = mm(0.1)

/** A ratio closer than this to a whole number is that number: above rounding noise, far below any step. */
export const WHOLE = 1e-9

/**
 * Significant digits beyond which a worked-out value is noise: the sines of Node and browsers differ in the last bit, and
 * a value that lies halfway between two that can be shown must be shown alike in both.
 */
export const SOUND_DIGITS = 12

/** Two saw settings closer than this are one setting: far below any scale, far above rounding noise. */
export const SAME_ANGLE = degrees(1e-9)

/**
 * A measurement that lies outside what others tell by less than this share of itself tells nothing new: above rounding
 * noise, far below what any tool could make use of.
 */
export const TOLD_APART = 1e-6
/** Two edges that meet at less than this run on into each other: 0.0001 mm off over the longest jig. */
export const SAME_DIRECTION = radians(1e-7)
