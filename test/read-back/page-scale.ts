import type { ReadPage } from './read-pdf.js'

/** What a steel rule can tell apart at best, in mm. */
const SEEN = 0.001

/** The scale check's length: 4 in, or 101.6 mm; the longest level stroke of that kind begins it. */
const WHOLE = 101.6

/**
 * Distances of marks from the zero of a page's scale check, as a rule along its bar finds them; `ratio` is what the
 * printer makes of a millimetre across the page, so that the true marks stand at `ratio` times their figures.
 *
 * @returns for each figure what was found where it should be, or NaN where there is no mark
 */
export const scaleMarks = ({ strokes }: ReadPage, figures: readonly number[], ratio = 1): number[] => {
  const bar = strokes.find(
    ({ points: [a, b], closed }) => a && b && !closed && isLevel(a, b) && near(b.x - a.x, WHOLE * ratio),
  )
  const [zero] = bar?.points ?? []
  if (!zero) throw new Error('the scale check is missing')
  return figures.map((figure) => {
    const mark = strokes.find(
      ({ points: [a, b] }) =>
        a &&
        b &&
        near(a.x, b.x) &&
        near(a.x - zero.x, figure * ratio) &&
        Math.min(a.y, b.y) <= zero.y + SEEN &&
        Math.max(a.y, b.y) >= zero.y - SEEN,
    )
    return mark ? figure : Number.NaN
  })
}

const near = (a: number, b: number): boolean => Math.abs(a - b) < SEEN

const isLevel = (a: { readonly y: number }, b: { readonly y: number }): boolean => near(a.y, b.y)
