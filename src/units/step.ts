import { WHOLE } from './tolerance.js'

/**
 * A value moved to a multiple of `step`, up or down as `round` says (Math.floor or Math.ceil); one that is a multiple
 * but for rounding noise stays it.
 */
export const toStep = (value: number, step: number, round: (steps: number) => number): number => {
  const steps = value / step
  const whole = Math.round(steps)
  return (Math.abs(steps - whole) < WHOLE ? whole : round(steps)) * step
}
