import { closest, distance } from 'fastest-levenshtein'
import type { GenericSchema } from 'valibot'
import { type Problem, showGiven } from './problem.js'
import type { Path } from './read-yaml.js'

/** A schema node, as far as a walk needs to see into it. */
interface Walkable {
  readonly type?: string
  readonly entries?: Readonly<Record<string, Walkable>>
  readonly item?: Walkable
  readonly wrapped?: Walkable
  readonly pipe?: readonly Walkable[]
}

/** A problem whose place is still a path. */
export interface PathProblem extends Omit<Problem, 'place' | 'line'> {
  readonly path: Path
}

/**
 * Every key of the order that no part of the schema knows, each with the key that was probably meant, and every list
 * that stands where a group of keys should: the schema takes a list for a group.
 */
export const unknownKeys = (schema: GenericSchema, root: unknown): PathProblem[] =>
  walk(schema as unknown as Walkable, root, [])

const walk = (schema: Walkable, value: unknown, path: Path): PathProblem[] => {
  const inner = schema.wrapped ?? (schema.entries || schema.item ? undefined : schema.pipe?.[0])
  if (inner && inner !== schema) return walk(inner, value, path)
  if (schema.item && Array.isArray(value)) {
    const { item } = schema
    return value.flatMap((entry, index) => walk(item, entry, [...path, index]))
  }
  const { entries } = schema
  if (!entries || typeof value !== 'object' || value === null) return []
  if (Array.isArray(value)) return [{ path, given: 'a list', advice: keysAllowed(Object.keys(entries)) }]
  return Object.entries(value).flatMap(([key, inside]) => {
    const known = Object.hasOwn(entries, key) ? entries[key] : undefined
    return known
      ? walk(known, inside, [...path, key])
      : [unknownKey([...path, key], key, Object.keys(entries))]
  })
}

const unknownKey = (path: Path, key: string, allowed: readonly string[]): PathProblem => ({
  path,
  given: `the unknown key ${showGiven(key)}`,
  // In { width: 70,5 mm } YAML takes `5 mm` for a key.
  advice: /^\d/.test(key)
    ? 'Between braces a comma ends the value: write a decimal point, or put quotes around the value.'
    : `${didYouMean(key, allowed)}${keysAllowed(allowed)}`,
})

const keysAllowed = (keys: readonly string[]): string =>
  `Allowed here: ${keys.filter((key) => key !== '$schema').join(', ')}.`

/** `Did you mean kerf? `, when one of the words is close enough to what was written; otherwise nothing. */
export const didYouMean = (written: string, words: readonly string[]): string => {
  const plain = written.slice(0, 40).toLowerCase().replaceAll('_', '-')
  if (words.length === 0) return ''
  const best = closest(plain, [...words])
  return distance(plain, best) <= Math.max(1, Math.floor(best.length / 3)) ? `Did you mean ${best}? ` : ''
}
