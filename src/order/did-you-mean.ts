import { closest, distance } from 'fastest-levenshtein'

/** `Did you mean kerf?`, when one of the words is close enough to what was written; otherwise undefined. */
export const didYouMean = (written: string, words: readonly string[]): string | undefined => {
  const plain = written.slice(0, 40).toLowerCase().replaceAll('_', '-')
  if (words.length === 0) return undefined
  const lower = words.map((word) => word.toLowerCase())
  const nearest = closest(plain, lower)
  const allowed = nearest.length < 4 ? 1 : Math.max(2, Math.floor(nearest.length / 3))
  const word = words[lower.indexOf(nearest)]
  return word !== undefined && distance(plain, nearest) <= allowed ? `Did you mean ${word}?` : undefined
}
