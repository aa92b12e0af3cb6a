import * as v from 'valibot'
import type { Units } from '../units/read-length.js'
import { showAngle, showLength } from '../units/show.js'
import { applyFlags, pathKey } from './apply-flags.js'
import { crossChecks, regularPoints } from './checks.js'
import { DEFAULTS } from './defaults.js'
import type { FlagValues } from './flags.js'
import type { Board, Order, Panel, Paper, Shop, StarOrder, StarShape } from './order.js'
import { done, type Outcome, type Problem, refused, showGiven } from './problem.js'
import { type Path, readYaml, type Source } from './read-yaml.js'
import { orderSchema, paperName, type WrittenOrder } from './schema.js'
import { fileNameOf, isNamed, noSuchStar, starName } from './star-name.js'
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
  if (text !== undefined && (written === undefined || written === null)) {
    return refused([
      {
        place: 'order file',
        given: 'an empty file',
        advice: 'An order needs at least stars: with one star.',
      },
    ])
  }
  const { root, flagAt, overridden, problems } = applyFlags(written, flags, star)
  const units = writtenUnits(root)
  const schema = orderSchema(units)
  const parsed = v.safeParse(schema, root)

  const locate = ({ path, given, advice }: PathProblem): Problem => {
    const flag = flagOf(path, flagAt)
    const line = flag === undefined ? source.value?.lineOf(path) : undefined
    return { place: flag ?? showPath(path), ...(line === undefined ? {} : { line }), given, advice }
  }
  const misplaced = unknownKeys(schema, root)
  const lists = misplaced.filter(({ given }) => given === 'a list')
  const others = [
    ...(parsed.issues ?? []).filter(({ expected }) => expected !== 'never').map(schemaProblem),
    ...crossChecks(root, units),
  ].filter(({ path }) => !lists.some((list) => isWithin(path, list.path)))
  const pathProblems = [...misplaced, ...others]
  if (problems.length + pathProblems.length > 0 || !parsed.success) {
    const located = pathProblems.slice(0, MOST_TOLD).map(locate)
    const untold = pathProblems.length - located.length
    return refused([...problems, ...inOrder(located), ...(untold > 0 ? [moreProblems(untold)] : [])])
  }
  return onlyStar(toOrder(parsed.output, units, overridden), star)
}

/** More than this nobody reads; the first ones are mended first. */
const MOST_TOLD = 60

const moreProblems = (count: number): Problem => ({
  place: 'order',
  given: `${count} more mistakes`,
  advice: 'Mend the ones above first.',
})

const isWithin = (path: Path, outer: Path): boolean => outer.every((step, index) => path[index] === step)

const writtenUnits = (root: unknown): Units =>
  typeof root === 'object' && root !== null && 'units' in root && root.units === 'in' ? 'in' : 'mm'

const schemaProblem = (issue: v.BaseIssue<unknown>): PathProblem => {
  const path = (issue.path ?? []).map(({ key }) => key as string | number)
  const missing = issue.input === undefined
  return {
    path: missing ? path.slice(0, -1) : path,
    given: missing && path.length > 0 ? `no ${path.at(-1)}` : showGiven(issue.input),
    advice: missing && path.length > 0 ? `Add ${path.at(-1)}. ${issue.message}` : issue.message,
  }
}

/** The flag a path belongs to, when the value there, or a part of it, came from one. */
const flagOf = (path: Path, flagAt: ReadonlyMap<string, string>): string | undefined => {
  for (let length = path.length; length > 0; length--) {
    const flag = flagAt.get(pathKey(path.slice(0, length)))
    if (flag !== undefined) return flag
  }
  return undefined
}

const showPath = (path: Path): string => {
  const shown = path.map((step) => (typeof step === 'number' ? `[${step}]` : `.${plainKey(step)}`)).join('')
  return shown === '' ? 'order' : shown.replace(/^\./, '')
}

const plainKey = (key: string): string => (/^[a-z$][a-z-]{0,40}$/i.test(key) ? key : showGiven(key))

/** By line where there is one; the others first, as they came. */
const inOrder = (problems: readonly Problem[]): Problem[] =>
  [...problems].sort((a, b) => (a.line ?? 0) - (b.line ?? 0))

const onlyStar = (order: Order, name: string | undefined): Outcome<Order> => {
  if (name === undefined) return done(order)
  const stars = order.stars.filter((star) => isNamed(star.name, name))
  return stars.length > 0
    ? done({ ...order, stars })
    : refused([
        noSuchStar(
          name,
          order.stars.map((star) => star.name),
        ),
      ])
}

const toOrder = (written: WrittenOrder, units: Units, overridden: readonly string[]): Order => {
  const lengths = { units, nearest: Number((written.nearest ?? DEFAULTS.nearest).slice(2)) }
  return {
    title: written.title ?? 'Stars',
    lengths,
    shop: toShop(written.shop, units),
    stars: written.stars.map((star, index) => toStar(star, index, written.stars.length)),
    assumed: assumptions(written, (length) => showLength(length, lengths)),
    overridden,
  }
}

type WrittenShop = WrittenOrder['shop']
type WrittenStar = WrittenOrder['stars'][number]

const toShop = (shop: WrittenShop, units: Units): Shop => {
  const saw = shop?.saw
  const cutter = shop?.cutter
  return {
    saw: {
      limit: saw?.limit ?? DEFAULTS.sawLimit,
      kerf: saw?.kerf ?? DEFAULTS.kerf,
      readsTo: saw?.['reads-to'] ?? DEFAULTS.readsTo,
      detents: saw?.detents ?? [],
      ...optional('crosscut', saw?.crosscut),
    },
    boards: (shop?.boards ?? []).map(toBoard),
    panels: (shop?.panels ?? []).map(toPanel),
    cutter: {
      kind: cutter?.kind ?? DEFAULTS.cutter,
      dxf: cutter?.dxf ?? DEFAULTS.dxf,
      ...optional('kerf', cutter?.kerf),
      ...optional('bit', cutter?.bit),
    },
    paper: toPaper(shop?.paper, units),
    endAllowance: shop?.['end-allowance'] ?? DEFAULTS.endAllowance,
  }
}

const toBoard = (board: NonNullable<NonNullable<WrittenShop>['boards']>[number]): Board => ({
  width: board.width,
  length: board.length,
  defects: board.defects ?? [],
  ...optional('thickness', board.thickness),
  ...optional('price', board.price),
  ...optional('count', board.count),
})

const toPanel = (panel: NonNullable<NonNullable<WrittenShop>['panels']>[number]): Panel => ({
  length: panel.length,
  width: panel.width,
  edge: panel.edge ?? DEFAULTS.panelEdge,
  ...optional('thickness', panel.thickness),
  ...optional('price', panel.price),
})

const toPaper = (paper: NonNullable<WrittenShop>['paper'], units: Units): Paper => ({
  sheet:
    paper?.roll === undefined
      ? { size: paperName(paper?.size ?? '') ?? usualPaper(units) }
      : { roll: paper.roll },
  margin: paper?.margin ?? DEFAULTS.margin,
  overlap: paper?.overlap ?? DEFAULTS.overlap,
})

const usualPaper = (units: Units) => (units === 'in' ? 'Letter' : 'A4')

const toStar = (star: WrittenStar, index: number, count: number): StarOrder => {
  const name = starName(star, index, count)
  const { points, shape } = toShape(star)
  return {
    place: `stars[${index}]`,
    name,
    fileName: fileNameOf(name),
    quantity: star.quantity ?? DEFAULTS.quantity,
    points,
    shape,
    size: toSize(star),
    ...optional('chamfer', star.chamfer),
    ...optional('thickness', star.thickness),
    ...optional('backing', toBacking(star.backing)),
  }
}

const toShape = (star: WrittenStar): { points: number; shape: StarShape } => {
  const regular = regularPoints(star.regular)
  if (regular) return { points: regular.points, shape: { by: 'regular', step: regular.step } }
  const points = star.points ?? Number.NaN
  const tipAngle = star['tip-angle']
  return { points, shape: tipAngle === undefined ? { by: 'slenderest' } : { by: 'tip-angle', tipAngle } }
}

const toSize = (star: WrittenStar): StarOrder['size'] => {
  for (const by of ['board-width', 'across', 'height', 'radius', 'tip-edge'] as const) {
    const length = star[by]
    if (length !== undefined) return { by, length }
  }
  throw new Error('a checked star has a size')
}

const toBacking = (backing: WrittenStar['backing']): StarOrder['backing'] =>
  backing && {
    shape: backing.shape ?? 'star',
    inset: backing.inset ?? DEFAULTS.inset,
    ...optional('thickness', backing.thickness),
  }

/** `{ key: value }`, or nothing at all when there is no value. */
const optional = <Key extends string, Value>(key: Key, value: Value | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [K in Key]?: Value }

const assumptions = (
  { shop, stars }: WrittenOrder,
  show: (length: ReturnType<typeof toShop>['saw']['kerf']) => string,
): string[] => {
  const saw = shop?.saw
  return [
    ...(saw?.limit === undefined ? [`the saw stops at ${showAngle(DEFAULTS.sawLimit)} (saw-limit)`] : []),
    ...(saw?.kerf === undefined ? [`the blade removes ${show(DEFAULTS.kerf)} (kerf)`] : []),
    ...(saw?.['reads-to'] === undefined
      ? [`the scale can be set to ${showAngle(DEFAULTS.readsTo)} (reads-to)`]
      : []),
    ...(saw?.crosscut === undefined ? ['the blade reaches across the board (crosscut)'] : []),
    ...(stars.some(({ backing }) => backing && backing.inset === undefined)
      ? [`the backing stays ${show(DEFAULTS.inset)} inside the star (inset)`]
      : []),
  ]
}
