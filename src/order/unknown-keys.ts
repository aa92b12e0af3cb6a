import type { GenericSchema } from 'valibot'
import { didYouMean } from './did-you-mean.js'
import { ORDER_FLAGS } from './flags.js'
import { type Problem, showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import { bareNode, type SchemaNode } from './schema-node.js'

/** A problem whose place is still a path. */
export interface PathProblem extends Omit<Problem, 'place' | 'line'> {
  readonly path: Path
}

/**
 * Every key of the order that no part of the schema knows, each with the key that was probably meant, and every list
 * that stands where a group of keys should: the schema takes a list for a group.
 */
export const unknownKeys = (schema: GenericSchema, root: unknown): PathProblem[] =>
  walk(schema as unknown as SchemaNode, root, [])

const walk = (node: SchemaNode, value: unknown, path: Path): PathProblem[] => {
  const schema = bareNode(node)
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
      : [unknownKey([...path, key], inside, Object.keys(entries))]
  })
}

const unknownKey = (path: Path, value: unknown, allowed: readonly string[]): PathProblem => {
  const key = String(path.at(-1))
  // In { width: 70,5 mm } YAML takes `5 mm` for a key without a value.
  const cutByComma = /^\d/.test(key) && value === null
  return {
    path,
    given: `the unknown key ${showGiven(key)}`,
    advice: cutByComma
      ? 'Between braces a comma ends the value: write a decimal point, or put quotes around the value.'
      : [belongsTo(path), didYouMean(key, allowed), keysAllowed(allowed)].filter(Boolean).join(' '),
  }
}

/** A key, or a flag's word, that stands in the wrong place: where it belongs. */
const belongsTo = (path: Path): string | undefined => {
  const key = path.at(-1)
  const here = path.filter((step) => typeof step === 'string').join(': ')
  const flag = ORDER_FLAGS.find(({ name, path: own }) => name === key || own.at(-1) === key)
  const there = flag && [...(flag.of === 'star' ? ['stars'] : []), ...flag.path].join(': ')
  return there === undefined || there === here ? undefined : `As a key it is ${there}.`
}

/** What a group of keys takes, as a refusal tells it. */
export const keysAllowed = (keys: readonly string[]): string =>
  `Allowed here: ${keys.filter((key) => key !== '$schema').join(', ')}.`
