import * as maths from '../units/maths.js'

/**
 * What must be read stands out from what lies under it at least so far: WCAG 2.2, success criterion 1.4.11, for lines and
 * marks. On white paper a middle grey does, light grey and yellow do not.
 */
const LEAST_CONTRAST = 3

/** Is ink of one colour, `#rrggbb`, well seen on the other? */
export const standsOut = (ink: string, under: string): boolean => contrast(ink, under) >= LEAST_CONTRAST

/** From 1 for equal colours to 21 for black and white (WCAG 2.2, contrast ratio). */
export const contrast = (a: string, b: string): number => {
  const [dark = 0, light = 0] = [luminance(a), luminance(b)].sort((x, y) => x - y)
  return (light + 0.05) / (dark + 0.05)
}

/** Relative luminance of sRGB (WCAG 2.2). */
const luminance = (colour: string): number => {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const share = Number.parseInt(colour.slice(at, at + 2), 16) / 255
    return share <= 0.04045 ? share / 12.92 : maths.pow((share + 0.055) / 1.055, 2.4)
  })
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0)
}
