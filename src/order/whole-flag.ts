import { done, type Outcome, refused, showGiven } from './problem.js'

/** A whole number as it was written for a flag of a command's own; `otherwise` when the flag is left out. */
export const wholeFlag = <Otherwise>(
  typed: Readonly<Record<string, unknown>>,
  name: string,
  {
    least,
    most,
    otherwise,
  }: { readonly least: number; readonly most: number; readonly otherwise: Otherwise },
): Outcome<number | Otherwise> => {
  const value = typed[name]
  if (value === undefined) return done(otherwise)
  const count = typeof value === 'string' && /^\d{1,9}$/.test(value.trim()) ? Number(value) : Number.NaN
  if (count >= least && count <= most) return done(count)
  return refused([
    {
      place: `--${name}`,
      given: Array.isArray(value) ? 'more than one value' : showGiven(value),
      advice: `Allowed: one whole number from ${least} to ${most}.`,
    },
  ])
}
