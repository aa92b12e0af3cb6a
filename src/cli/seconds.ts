import { done, type Outcome, refused, showGiven } from '../order/problem.js'

/** The flag --seconds, for how long to search. */
export const secondsOf = (given: unknown, usual: number, usually: string): Outcome<number> => {
  if (given === undefined) return done(usual)
  const seconds = typeof given === 'string' && /^\d{1,4}$/.test(given) ? Number(given) : Number.NaN
  return seconds >= 1 && seconds <= 3600
    ? done(seconds)
    : refused([
        {
          place: '--seconds',
          given: showGiven(given),
          advice: `Allowed: whole seconds from 1 to 3600. Left out: ${usually}.`,
        },
      ])
}
