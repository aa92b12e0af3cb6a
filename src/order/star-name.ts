import { didYouMean } from './did-you-mean.js'
import { type Problem, sentences, showGiven } from './problem.js'

/** The star's written name, or the one it gets from its place in the order. */
export const starName = (star: unknown, index: number, count: number): string => {
  const name = typeof star === 'object' && star !== null ? (star as { name?: unknown }).name : undefined
  if (typeof name === 'string') return name.normalize('NFC').replaceAll(/[‘’]/g, "'").trim()
  return count === 1 ? 'Star' : `Star ${index + 1}`
}

/** Names that Windows keeps for devices. */
const DEVICE = /^(?:con|prn|aux|nul|com\d|lpt\d)$/

/** A name as part of a file's name: lower-case a to z and digits, joined by hyphens; empty when nothing is left. */
export const fileNameOf = (name: string): string => {
  const plain = plainLetters(name)
  return DEVICE.test(plain) ? `${plain}-star` : plain
}

const plainLetters = (name: string): string =>
  name
    .replaceAll('ß', 'ss')
    .replaceAll(/[æÆ]/g, 'ae')
    .replaceAll(/[øØ]/g, 'o')
    .normalize('NFD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-|-$/g, '')

/** Does a person mean the star of this name? Capitals, accents and signs do not matter, as in file names. */
export const isNamed = (name: string, wanted: string): boolean => fileNameOf(name) === fileNameOf(wanted)

/** The refusal of a star name that the order does not have. */
export const noSuchStar = (wanted: string, names: readonly string[]): Problem => ({
  place: '--star',
  given: showGiven(wanted),
  advice: sentences(
    didYouMean(wanted, names),
    `Allowed: ${names.map((name) => showGiven(name)).join(', ')}.`,
  ),
})
