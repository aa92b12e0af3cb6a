import { didYouMean } from './did-you-mean.js'
import { plainText } from './lettered-text.js'
import { type Problem, sentences, showGiven } from './problem.js'
import { inLatin } from './romanise.js'

/** The star's written name, or the one it gets from its place in the order. */
export const starName = (star: unknown, index: number, count: number): string => {
  const name = typeof star === 'object' && star !== null ? (star as { name?: unknown }).name : undefined
  if (typeof name === 'string') return plainText(name)
  return count === 1 ? 'Star' : `Star ${index + 1}`
}

/** Names that Windows keeps for devices. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)$/

/**
 * A name as part of a file's name: lower-case a to z and digits, joined by hyphens. A name of letters that have no
 * Latin spelling goes by the star's place, as `star-2`; empty when there is neither letter nor digit.
 */
export const fileNameOf = (name: string, index: number): string => {
  const plain = plainLetters(name)
  if (plain === '') return /[\p{L}\p{N}]/u.test(name) ? `star-${index + 1}` : ''
  return DEVICE.test(plain) ? `${plain}-star` : plain
}

/** Some letters take four Latin ones; folder and file together stay within what file systems carry. */
const LONGEST = 60

const plainLetters = (name: string): string =>
  inLatin(name)
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replace(/^-/, '')
    .slice(0, LONGEST)
    .replace(/-$/, '')

/**
 * Does a person mean the star of this name, at this place? Capitals, accents, signs and script do not matter, as in
 * file names.
 */
export const isNamed = (name: string, index: number, wanted: string): boolean =>
  name === plainText(wanted) ||
  (plainLetters(wanted) !== '' && fileNameOf(name, index) === fileNameOf(wanted, index))

/** The refusal of a star name that the order does not have. */
export const noSuchStar = (wanted: string, names: readonly string[]): Problem => ({
  place: '--star',
  given: showGiven(wanted),
  advice: sentences(
    didYouMean(wanted, names),
    `Allowed: ${names.map((name) => showGiven(name)).join(', ')}.`,
  ),
})
