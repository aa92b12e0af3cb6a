import type { GenericSchema } from 'valibot'
import { didYouMean } from './did-you-mean.js'
import { ORDER_FLAGS } from './flags.js'
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

const unknownKey = (path: Path, value: unknown, allowed: readonly string[]): PathProblem => {
  const key = String(path.at(-1))
  // In { width: 70,5 mm } YAML takes `5 mm` for a key without a value.
  const cutByComma = /^\d/.test(key) && value === null
  return {
    path,
    given: `the unknown key ${showGiven(key)}`,
    advice: cutByComma
      ? 'Between braces a comma ends the value: write a decimal point, or put quotes around the value.'
      : [belongsTo(key), didYouMean(key, allowed), keysAllowed(allowed)].filter(Boolean).join(' '),
  }
}

/** A flag's word used as a key: where its key stands. */
const belongsTo = (key: string): string | undefined => {
  const flag = ORDER_FLAGS.find(({ name, path }) => name === key && path.at(-1) !== key)
  return flag && `As a key it is ${[...(flag.of === 'star' ? ['stars'] : []), ...flag.path].join(': ')}.`
}

/** What a group of keys takes, as a refusal tells it. */
export const keysAllowed = (keys: readonly string[]): string =>
  `Allowed here: ${keys.filter((key) => key !== '$schema').join(', ')}.`
