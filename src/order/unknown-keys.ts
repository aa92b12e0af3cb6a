import type { GenericSchema } from 'valibot'
import { didYouMean } from './did-you-mean.js'
import { ORDER_FLAGS, orderPath } from './flags.js'
import { isGroup } from './group.js'
import { type Problem, sentences, showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import { bareNode, groupsWith, type SchemaNode, schemaNode } from './schema-node.js'

/** A problem whose place is still a path. */
export interface PathProblem extends Omit<Problem, 'place' | 'line'> {
  readonly path: Path
}

/**
 * Every key of the order that no part of the schema knows, each with the key that was probably meant, and every list
 * that stands where a group of keys should: the schema takes a list for a group.
 */
export const unknownKeys = (schema: GenericSchema, root: unknown): PathProblem[] => {
  const order = schemaNode(schema)
  const walk = (node: SchemaNode, value: unknown, path: Path): PathProblem[] => {
    const { item, entries } = bareNode(node)
    if (item && Array.isArray(value)) {
      return value.flatMap((entry, index) => walk(item, entry, [...path, index]))
    }
    if (!entries || typeof value !== 'object' || value === null) return []
    if (Array.isArray(value)) return [{ path, given: 'a list', advice: keysAllowed(Object.keys(entries)) }]
    return Object.entries(value).flatMap(([key, inside]) => {
      const known = Object.hasOwn(entries, key) ? entries[key] : undefined
      const at = [...path, key]
      return known ? walk(known, inside, at) : [unknownKey(order, at, inside, Object.keys(entries))]
    })
  }
  return walk(order, root, [])
}

const unknownKey = (
  order: SchemaNode,
  path: Path,
  value: unknown,
  allowed: readonly string[],
): PathProblem => {
  const key = String(path.at(-1))
  const given = `the unknown key ${showGiven(key)}`
  // In { width: 70,5 mm } YAML takes `5 mm` for a key without a value.
  if (/^\d/.test(key) && value === null) {
    return {
      path,
      given,
      advice: 'Between braces a comma ends the value: write a decimal point, or put quotes around the value.',
    }
  }
  const hint = belongsTo(order, key, value) ?? didYouMean(key, allowed)
  return { path, given, advice: sentences(hint, keysAllowed(allowed)) }
}

/** A key, or a flag's word, that stands in the wrong place: where it belongs, when there is one such place. */
const belongsTo = (order: SchemaNode, key: string, value: unknown): string | undefined => {
  const flag = isGroup(value) ? undefined : ORDER_FLAGS.find(({ name }) => name === key)
  const groups = groupsWith(order, key)
  const path = flag
    ? orderPath(flag).filter((step) => typeof step === 'string')
    : groups.length === 1 && groups[0]
      ? [...groups[0], key]
      : undefined
  if (!path) return undefined
  return path.length === 1 ? 'It belongs at the top of the order.' : `As a key it is ${path.join(': ')}.`
}

/** What a group of keys takes, as a refusal tells it. */
export const keysAllowed = (keys: readonly string[]): string =>
  `Allowed here: ${keys.filter((key) => key !== '$schema').join(', ')}.`
