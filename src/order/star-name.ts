import { type Problem, showGiven } from './problem.js'
import { didYouMean } from './unknown-keys.js'

/** The star's written name, or the one it gets from its place in the order. */
export const starName = (star: unknown, index: number, count: number): string => {
  const name = typeof star === 'object' && star !== null ? (star as { name?: unknown }).name : undefined
  if (typeof name === 'string') return name.normalize('NFC').trim()
  return count === 1 ? 'Star' : `Star ${index + 1}`
}

/** A name as part of a file's name: lower-case a to z and digits, joined by hyphens; empty when nothing is left. */
export const fileNameOf = (name: string): string =>
  name
    .replaceAll('ß', 'ss')
    .replaceAll(/[æÆ]/g, 'ae')
    .replaceAll(/[øØ]/g, 'o')
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')

/** Does a person mean the star of this name? Its file name will do as well. */
export const isNamed = (name: string, wanted: string): boolean =>
  name === wanted || fileNameOf(name) === wanted

/** The refusal of a star name that the order does not have. */
export const noSuchStar = (wanted: string, names: readonly string[]): Problem => ({
  place: '--star',
  given: showGiven(wanted),
  advice: `${didYouMean(wanted, names)}Allowed: ${names.map((name) => showGiven(name)).join(', ')}.`,
})
