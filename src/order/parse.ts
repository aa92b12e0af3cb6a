import * as v from 'valibot'
import type { Units } from '../units/read-length.js'
import { applyFlags, pathKey } from './apply-flags.js'
import { crossChecks } from './checks.js'
import { type FlagValues, ORDER_FLAGS, orderPath } from './flags.js'
import { isGroup } from './group.js'
import type { Order, Where } from './order.js'
import { done, type Outcome, type Problem, refused, showGiven } from './problem.js'
import { type Path, readYaml, type Source } from './read-yaml.js'
import { orderSchema } from './schema.js'
import { showPath } from './show-path.js'
import { spellFlags } from './spell-flags.js'
import { toOrder } from './to-order.js'
import { unitsMeant } from './units-meant.js'
import { type PathProblem, unknownKeys } from './unknown-keys.js'

/** What an order is made from: a file's text, flags, or flags over a file. */
export interface OrderInput {
  /** YAML or JSON. */
  readonly text?: string
  readonly flags?: FlagValues
  /** Keep only the star of this name. */
  readonly star?: string
}

/** Reads an order, or tells everything that is wrong with it at once. */
export const parseOrder = ({ text, flags = {}, star }: OrderInput): Outcome<Order> => {
  const source: Outcome<Source | undefined> = text === undefined ? done(undefined) : readYaml(text)
  if (!source.ok) return source
  const written = source.value?.root
  if (text !== undefined && (written === undefined || written === null)) return refused([EMPTY_FILE])
  const overlong = longLists(written)
  if (overlong) return refused([overlong])

  // The order's numbers keep its own units; a flag for units changes what is shown, and how bare flags are read.
  const units = writtenUnits(text === undefined ? flags : written)
  const shown = writtenUnits(flags.units === undefined ? written : flags)
  const schema = orderSchema(units)
  const fileUnits = flags.units === undefined ? [] : unitsProblems(written, source.value)
  const spelt = shown === units ? flags : spellFlags(schema, flags, shown)
  const { root, flagAt, overridden, problems, only } = applyFlags(written, spelt, star)
  if (fileUnits.length + problems.length > 0) return refused([...fileUnits, ...problems])
  const parsed = v.safeParse(schema, root)
  const where = (path: Path): Where => {
    const flag = flagOf(path, flagAt)
    if (flag !== undefined) return { place: flag }
    if (!source.value) return { place: 'flags' }
    const line = source.value.lineOf(path)
    return { place: showPath(path), ...(line === undefined ? {} : { line }) }
  }
  const pathProblems = orderProblems(schema, parsed.issues ?? [], root, units)
  if (pathProblems.length > 0 || !parsed.success) return refused(located(pathProblems, where))
  const order = toOrder(parsed.output, { written: units, shown }, overridden, where)
  return done(only === undefined ? order : { ...order, stars: order.stars.slice(only, only + 1) })
}

const EMPTY_FILE: Problem = {
  place: 'order file',
  given: 'an empty file',
  advice: 'An order needs at least stars: with one star.',
}

/** No list of an order is longer; one that is would take long to check entry by entry. */
const LONGEST_LIST = 500

const longLists = (value: unknown, depth = 0): Problem | undefined => {
  if (typeof value !== 'object' || value === null || depth > 8) return undefined
  if (Array.isArray(value) && value.length > LONGEST_LIST) {
    return {
      place: 'order file',
      given: `a list of ${value.length} entries`,
      advice: `Allowed: up to ${LONGEST_LIST}, and less where a message says so. Split the order.`,
    }
  }
  for (const inside of Object.values(value)) {
    const found = longLists(inside, depth + 1)
    if (found) return found
  }
  return undefined
}

/** Everything wrong with the keys and values; what lies within a list that stands for a group is told once, as that. */
const orderProblems = (
  schema: v.GenericSchema,
  issues: readonly v.BaseIssue<unknown>[],
  root: unknown,
  units: Units,
): PathProblem[] => {
  const misplaced = unknownKeys(schema, root)
  const lists = misplaced.filter(({ given }) => given === 'a list')
  const others = [
    ...issues.filter(({ expected }) => expected !== 'never').map(schemaProblem),
    ...crossChecks(root, units),
  ]
  return [...misplaced, ...others.filter(({ path }) => !lists.some((list) => isWithin(path, list.path)))]
}

/** More than this nobody reads; the first ones are mended first. */
const MOST_TOLD = 60

/** By line where there is one; the others first, as they came. */
const located = (found: readonly PathProblem[], where: (path: Path) => Where): Problem[] => {
  const told = found
    .slice(0, MOST_TOLD)
    .map(({ path, ...told }): Problem => ({ ...where(path), ...told }))
    .sort((a, b) => (a.line ?? 0) - (b.line ?? 0))
  const untold = found.length - told.length
  const more = untold === 1 ? '1 more mistake' : `${untold} more mistakes`
  return untold > 0 ? [...told, { place: 'order', given: more, advice: 'Mend the ones above first.' }] : told
}

const isWithin = (path: Path, outer: Path): boolean => outer.every((step, index) => path[index] === step)

const writtenUnits = (root: unknown): Units => unitsMeant(isGroup(root) ? root.units : undefined)

/** Units the order itself states wrongly, which a flag would hide. */
const unitsProblems = (written: unknown, source: Source | undefined): Problem[] => {
  const stated = isGroup(written) ? written.units : undefined
  if (stated === undefined || stated === 'mm' || stated === 'in') return []
  const line = source?.lineOf(['units'])
  const at = { place: 'units', ...(line === undefined ? {} : { line }) }
  return [{ ...at, given: showGiven(stated), advice: 'Allowed: mm or in.' }]
}

const schemaProblem = (issue: v.BaseIssue<unknown>): PathProblem => {
  const path = (issue.path ?? []).map(({ key }) => key as string | number)
  const { input, message } = issue
  if (input === undefined && path.length > 0) {
    const key = String(path.at(-1))
    const flag = ORDER_FLAGS.find((each) => pathKey(orderPath(each)) === pathKey(path))
    const add = flag && flag.name !== key ? `Add ${key} (--${flag.name}).` : `Add ${key}.`
    return { path: path.slice(0, -1), given: `no ${key}`, advice: `${add} ${message}`, lacks: key }
  }
  const counted = /^(?:min|max)_length$/.test(issue.type) && Array.isArray(input)
  return { path, given: counted ? countOf(input) : showGiven(input), advice: message }
}

const countOf = (list: readonly unknown[]): string =>
  list.length === 0 ? 'an empty list' : `${list.length} entries`

/** The flag a path belongs to, when the value there, or a part of it, came from one. */
const flagOf = (path: Path, flagAt: ReadonlyMap<string, string>): string | undefined => {
  for (let length = path.length; length > 0; length--) {
    const flag = flagAt.get(pathKey(path.slice(0, length)))
    if (flag !== undefined) return flag
  }
  return undefined
}
