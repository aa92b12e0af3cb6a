import { type FlagValues, ORDER_FLAGS, type OrderFlag, SHAPE_KEYS, SIZE_KEYS } from './flags.js'
import { asList, type Group, isGroup } from './group.js'
import { harmless, type Problem, showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import { isNamed, noSuchStar, starName } from './star-name.js'

export interface Flagged {
  readonly root: unknown
  /** Which flag a value came from, by the joined path of its key. */
  readonly flagAt: ReadonlyMap<string, string>
  readonly overridden: readonly string[]
  readonly problems: readonly Problem[]
  /** The one star that is asked for, by its place in the list. */
  readonly only?: number
}

export const pathKey = (path: Path): string => JSON.stringify(path)

/**
 * Lays the flags over an order. A shape flag replaces the star's shape and a size flag its size, so that no
 * contradiction is left behind; each replaced value is noted in words.
 *
 * @param root the order as read, changed in place; undefined when there is no file
 * @param star name of the star that star flags are meant for, when the order has several
 */
export const applyFlags = (root: unknown, values: FlagValues, star: string | undefined): Flagged => {
  const fromFile = root !== undefined
  const order: unknown = fromFile ? root : { stars: [{}] }
  const given = ORDER_FLAGS.filter(({ name }) => values[name] !== undefined)
  const flagAt = new Map<string, string>()
  const overridden: string[] = []
  if (!isGroup(order)) return { root: order, flagAt, overridden, problems: [] }

  if (!fromFile && star !== undefined)
    return { root: order, flagAt, overridden, problems: [STAR_WITHOUT_FILE] }
  const forStar = given.some((flag) => flag.of === 'star')
  const target = forStar || star !== undefined ? targetStar(order, star) : { index: 0 }
  if ('problem' in target) return { root: order, flagAt, overridden, problems: [target.problem] }

  const before = { ...paperRoom(order, given), ...(forStar ? makeRoom(order, target.index, given) : {}) }
  for (const flag of given) {
    const path = flag.of === 'star' ? ['stars', target.index, ...flag.path] : flag.path
    const value = values[flag.name] ?? ''
    const replaced = setIn(order, path, flag.kind === 'list' ? listOf(String(value)) : value)
    flagAt.set(pathKey(path), `--${flag.name}`)
    if (fromFile) overridden.push(overrideNote(flag, value, replaced, before))
  }
  const only = star === undefined ? {} : { only: target.index }
  return { root: order, flagAt, overridden, problems: [], ...only }
}

const STAR_WITHOUT_FILE: Problem = {
  place: '--star',
  given: 'no order file',
  advice: 'It chooses a star of an order file. To name the star, use --name.',
}

const listOf = (written: string): string[] => written.split(',').map((part) => part.trim())

/** `--across 300 (instead of board-width 70)`; `before` is the star as the order has it. */
const overrideNote = (flag: OrderFlag, value: string | true, replaced: unknown, before: Group): string => {
  const shown = harmless(value === true ? `--${flag.name}` : `--${flag.name} ${value}`)
  if (before[flag.name] === undefined) {
    const group = ALTERNATIVES.find((keys) => keys.some((key) => key === flag.name))
    const gone = (group ?? []).filter((key) => before[key] !== undefined)
    if (gone.length > 0)
      return `${shown} (instead of ${gone.map((key) => `${key} ${plain(before[key])}`).join(', ')})`
    if (flag.name === 'points' && before.regular !== undefined) {
      return `${shown} (instead of regular ${plain(before.regular)})`
    }
  }
  return replaced === undefined
    ? `${shown} (the order leaves it open)`
    : `${shown} (the order says ${plain(replaced)})`
}

/** Keys of which a star, or the paper, has one. */
const ALTERNATIVES: readonly (readonly string[])[] = [SHAPE_KEYS, SIZE_KEYS, ['paper', 'roll']]

/** Takes a paper size away for a roll, and the reverse; gives what was there, by the flags' names. */
const paperRoom = (order: Group, given: readonly OrderFlag[]): Group => {
  const paper = isGroup(order.shop) && isGroup(order.shop.paper) ? order.shop.paper : undefined
  const [size, roll] = ['paper', 'roll'].map((name) => given.some((flag) => flag.name === name))
  if (!paper || size === roll) return {}
  const before = { paper: paper.size, roll: paper.roll }
  if (size) delete paper.longest
  delete paper[size ? 'roll' : 'size']
  return before
}

const plain = (value: unknown): string =>
  Array.isArray(value) ? value.map(showGiven).join(', ') : showGiven(value)

/** The star the star flags are for; an order that has none yet gets its first. */
const targetStar = (order: Group, star: string | undefined): { index: number } | { problem: Problem } => {
  order.stars ??= [{}]
  const stars = asList(order.stars)
  const names = stars.map((entry, position) => starName(entry, position, stars.length))
  if (star !== undefined) {
    const index = names.findIndex((name, position) => isNamed(name, position, star))
    return index < 0 ? { problem: noSuchStar(star, names) } : { index }
  }
  if (stars.length < 2) return { index: 0 }
  return {
    problem: {
      place: '--star',
      given: 'nothing',
      advice: `The order has ${stars.length} stars: say which one the flags are for, with --star and one of ${names.map((name) => showGiven(name)).join(', ')}.`,
    },
  }
}

/** Takes away what a shape or size flag replaces; gives the star as it was. */
const makeRoom = (order: Group, index: number, given: readonly OrderFlag[]): Group => {
  const stars = asList(order.stars)
  const star = stars[index]
  if (!isGroup(star)) return {}
  const before = { ...star }
  const names = new Set(given.map(({ name }) => name))
  if (SHAPE_KEYS.some((key) => names.has(key))) {
    const regularPoints = typeof star.regular === 'string' ? star.regular.split('/')[0]?.trim() : undefined
    if (names.has('regular')) delete star.points
    else star.points ??= regularPoints
    for (const key of SHAPE_KEYS) if (!names.has(key)) delete star[key]
  }
  if (SIZE_KEYS.some((key) => names.has(key))) {
    for (const key of SIZE_KEYS) if (!names.has(key)) delete star[key]
  }
  return before
}

/** Sets a value, making groups on the way; returns what stood there. Leaves malformed orders for the schema to refuse. */
const setIn = (root: Group, path: Path, value: unknown): unknown => {
  let at: unknown = root
  for (const step of path.slice(0, -1)) {
    if (Array.isArray(at) && typeof step === 'number') at = at[step]
    else if (isGroup(at)) at = at[step] ??= {}
    else return undefined
  }
  const last = path.at(-1)
  if (!isGroup(at) || typeof last !== 'string') return undefined
  const before = at[last]
  at[last] = value
  return before
}
