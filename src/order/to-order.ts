import { mm } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showAngle, showLength } from '../units/show.js'
import { regularPoints } from './checks.js'
import { DEFAULTS } from './defaults.js'
import { SIZE_KEYS } from './flags.js'
import { optional } from './optional.js'
import type {
  Board,
  JigStock,
  Order,
  Paper,
  PaperSheet,
  Saw,
  Shop,
  StarOrder,
  StarShape,
  Where,
} from './order.js'
import type { Path } from './read-yaml.js'
import { paperName, SINGLE, type WrittenOrder } from './schema.js'
import { fileNameOf, starName } from './star-name.js'
import { backingPlaces, toBacking, toCutter, toPanel } from './to-plate.js'
import { toClimate, toProducts, toWall, toWood } from './to-season.js'
import { usualScrew } from './wood-screw.js'

/**
 * The checked order in mm and degrees, with every default filled in.
 *
 * @param where tells the place of a key, for what is found out about it later
 */
export const toOrder = (
  written: WrittenOrder,
  units: { readonly written: Units; readonly shown: Units },
  overridden: readonly string[],
  where: (path: Path) => Where,
): Order => {
  const lengths = { units: units.shown, nearest: Number((written.nearest ?? DEFAULTS.nearest).slice(2)) }
  return {
    title: written.title ?? namesOf(written),
    lengths,
    ...optional('date', written.date),
    ...optional('creator', written.creator),
    shop: toShop(written.shop, units.written),
    climate: toClimate(written, units.shown),
    space: { ...optional('across', written.space?.across), ...optional('height', written.space?.height) },
    stars: written.stars.map((star, index) => ({
      ...toStar(star, index, written.stars.length, where),
      wall: toWall(star.wall, written.climate?.wall),
    })),
    jigs: { names: written.jigs ?? DEFAULTS.jigs, asked: written.jigs !== undefined },
    assumed: assumptions(written, (length) => showLength(length, lengths)),
    overridden,
  }
}

/** An order without a title goes by its stars. */
const namesOf = ({ stars }: WrittenOrder): string => {
  const names = stars.map((star, index) => starName(star, index, stars.length)).join(', ')
  return names.length > 60 ? `${names.slice(0, 57)}...` : names
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
      ...optional('bias', toBias(saw?.bias)),
      repeatsTo: saw?.['repeats-to'] ?? DEFAULTS.repeatsTo,
      trueTo: saw?.['true-to'] ?? DEFAULTS.trueTo,
    },
    stop: { repeatsTo: shop?.stop?.['repeats-to'] ?? DEFAULTS.stopRepeatsTo },
    acceptedGap: shop?.['accepted-gap'] ?? DEFAULTS.acceptedGap,
    boards: (shop?.boards ?? []).map((board) => toBoard(board, shop?.wood)),
    panels: (shop?.panels ?? []).map((panel) => toPanel(panel, cutter)),
    panelSeed: shop?.['panel-seed'] ?? DEFAULTS.panelSeed,
    cutter: toCutter(cutter),
    jigStock: toJigStock(shop?.['jig-stock']),
    paper: toPaper(shop?.paper, units),
    endAllowance: shop?.['end-allowance'] ?? DEFAULTS.endAllowance,
    wood: toWood(undefined, shop?.wood),
    ...toProducts(shop),
    sound: shop?.sound ?? DEFAULTS.sound,
    ...optional('ripKerf', shop?.['rip-kerf']),
  }
}

const toBias = (bias: NonNullable<NonNullable<WrittenShop>['saw']>['bias']): Saw['bias'] =>
  bias && { miter: bias.miter, uncertainty: bias.uncertainty ?? DEFAULTS.biasUncertainty }

const toBoard = (
  board: NonNullable<NonNullable<WrittenShop>['boards']>[number],
  wood: NonNullable<WrittenShop>['wood'],
): Board => ({
  width: board.width,
  length: board.length,
  defects: board.defects ?? [],
  wood: toWood(board.wood, wood),
  ...optional('name', board.name),
  ...optional('thickness', board.thickness),
  ...optional('price', board.price),
  ...optional('count', board.count),
})

const toJigStock = (stock: NonNullable<WrittenShop>['jig-stock']): JigStock => {
  const thickness = stock?.thickness ?? DEFAULTS.jigThickness
  const screw = stock?.screw ?? usualScrew(thickness)
  return {
    thickness,
    side: stock?.side ?? DEFAULTS.jigSide,
    screw,
    pilot: stock?.pilot ?? mm(screw * DEFAULTS.pilotPart),
    bolt: stock?.bolt ?? DEFAULTS.boltHole,
    clampAcross: stock?.['clamp-across'] ?? DEFAULTS.clampAcross,
    clampAlong: stock?.['clamp-along'] ?? DEFAULTS.clampAlong,
    clampSlot: stock?.['clamp-slot'] ?? DEFAULTS.clampSlot,
    hands: stock?.hands ?? DEFAULTS.hands,
    register: stock?.register ?? DEFAULTS.register,
    tolerance: stock?.tolerance ?? DEFAULTS.tolerance,
    clearance: stock?.clearance ?? DEFAULTS.clearance,
    fit: stock?.fit ?? DEFAULTS.fit,
  }
}

const toPaper = (paper: NonNullable<WrittenShop>['paper'], units: Units): Paper => ({
  sheet: toSheet(paper, units),
  margin: paper?.margin ?? DEFAULTS.margin,
  overlap: paper?.overlap ?? DEFAULTS.overlap,
  ...optional('printed', paper?.printed),
})

const toSheet = (paper: NonNullable<WrittenShop>['paper'], units: Units): PaperSheet => {
  if (paper?.roll !== undefined) return { roll: paper.roll, longest: paper.longest ?? DEFAULTS.longest }
  if (paper?.size === SINGLE) return { single: true }
  return { size: paperName(paper?.size ?? '') ?? usualPaper(units) }
}

/** What the shops of the country sell. */
export const usualPaper = (units: Units) => (units === 'in' ? 'Letter' : 'A4')

const toStar = (
  star: WrittenStar,
  index: number,
  count: number,
  where: (path: Path) => Where,
): Omit<StarOrder, 'wall'> => {
  const name = starName(star, index, count)
  const { points, shape } = toShape(star)
  const size = toSize(star)
  const at = (...path: string[]): Where => where(['stars', index, ...path])
  return {
    at: { shape: at(shape.by), size: at(size.by), chamfer: at('chamfer'), backing: backingPlaces(at) },
    name,
    fileName: fileNameOf(name, index),
    ...optional('note', star.note),
    quantity: star.quantity ?? DEFAULTS.quantity,
    points,
    shape,
    size,
    ...optional('chamfer', star.chamfer),
    ...optional('thickness', star.thickness),
    ...optional('backing', star.backing && toBacking(star.backing)),
    ...optional('hardware', star.hardware),
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
  for (const by of SIZE_KEYS) {
    const length = star[by]
    if (length !== undefined) return { by, length }
  }
  throw new Error('a checked star has a size')
}

/** As large as it must be to cover so much of the joints: its inset only limits that. */
const goesByCovers = ({ shape, covers }: NonNullable<WrittenStar['backing']>): boolean =>
  shape === 'auto' && covers !== undefined

const assumptions = (
  { shop, stars }: WrittenOrder,
  show: (length: ReturnType<typeof toShop>['saw']['kerf']) => string,
): string[] => {
  const saw = shop?.saw
  const cutter = shop?.cutter
  return [
    ...(cutter?.kind === 'laser' && cutter.kerf === undefined
      ? [`the beam removes ${show(DEFAULTS.laserKerf)} (shop.cutter.kerf)`]
      : []),
    ...(cutter?.kind === 'router' && cutter.bit === undefined
      ? [`the router's bit is ${show(DEFAULTS.bit)} (shop.cutter.bit)`]
      : []),
    ...(saw?.limit === undefined ? [`the saw stops at ${showAngle(DEFAULTS.sawLimit)} (saw-limit)`] : []),
    ...(saw?.kerf === undefined ? [`the blade removes ${show(DEFAULTS.kerf)} (kerf)`] : []),
    ...(saw?.['reads-to'] === undefined
      ? [`the scale can be set to ${showAngle(DEFAULTS.readsTo)} (reads-to)`]
      : []),
    ...(stars.some(({ backing }) => backing && backing.inset === undefined && !goesByCovers(backing))
      ? [`the backing stays ${show(DEFAULTS.inset)} inside the star (inset)`]
      : []),
    ...(stars.some(({ backing }) => !backing)
      ? ['stars without a backing are carried by their glued joints alone (backing)']
      : []),
  ]
}
