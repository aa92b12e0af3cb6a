import type { Path } from './read-yaml.js'

/** How a flag's value is written on the command line. */
export type FlagKind = 'value' | 'list' | 'switch'

/** A flag that says the same as one key of the order. */
export interface OrderFlag {
  readonly name: string
  /** From the top of the order, or from the star for star flags. */
  readonly path: Path
  readonly of: 'order' | 'star'
  readonly kind: FlagKind
}

const orderFlag = (name: string, path: Path, kind: FlagKind = 'value'): OrderFlag => ({
  name,
  path,
  of: 'order',
  kind,
})
const starFlag = (name: string, path: Path = [name], kind: FlagKind = 'value'): OrderFlag => ({
  name,
  path,
  of: 'star',
  kind,
})

/** Keys of a star that say its shape, and those that say its size: of each, a star has exactly one. */
export const SHAPE_KEYS = ['tip-angle', 'regular', 'slenderest'] as const
export const SIZE_KEYS = ['board-width', 'across', 'height', 'radius', 'tip-edge'] as const

/** Every flag that stands for a key of the order. The flag is the key's own word; a longer one where it needs company. */
export const ORDER_FLAGS: readonly OrderFlag[] = [
  starFlag('points'),
  starFlag('tip-angle'),
  starFlag('regular'),
  starFlag('slenderest', ['slenderest'], 'switch'),
  ...SIZE_KEYS.map((name) => starFlag(name)),
  starFlag('name'),
  starFlag('note'),
  starFlag('quantity'),
  starFlag('chamfer'),
  starFlag('thickness'),
  starFlag('backing', ['backing', 'shape']),
  starFlag('inset', ['backing', 'inset']),
  starFlag('backing-thickness', ['backing', 'thickness']),
  starFlag('corner-radius', ['backing', 'corner-radius']),
  starFlag('covers', ['backing', 'covers']),
  starFlag('hanging', ['backing', 'hanging', 'kind']),
  starFlag('fixing', ['backing', 'fixing', 'kind']),
  starFlag('fixing-length', ['backing', 'fixing', 'length']),
  starFlag('hardware'),
  orderFlag('title', ['title']),
  orderFlag('date', ['date']),
  orderFlag('creator', ['creator']),
  orderFlag('units', ['units']),
  orderFlag('nearest', ['nearest']),
  orderFlag('saw-limit', ['shop', 'saw', 'limit']),
  orderFlag('kerf', ['shop', 'saw', 'kerf']),
  orderFlag('reads-to', ['shop', 'saw', 'reads-to']),
  orderFlag('detents', ['shop', 'saw', 'detents'], 'list'),
  orderFlag('crosscut', ['shop', 'saw', 'crosscut']),
  orderFlag('saw-bias', ['shop', 'saw', 'bias', 'miter']),
  orderFlag('repeats-to', ['shop', 'saw', 'repeats-to']),
  orderFlag('true-to', ['shop', 'saw', 'true-to']),
  orderFlag('stop-repeats-to', ['shop', 'stop', 'repeats-to']),
  orderFlag('accepted-gap', ['shop', 'accepted-gap']),
  orderFlag('space-across', ['space', 'across']),
  orderFlag('space-height', ['space', 'height']),
  orderFlag('end-allowance', ['shop', 'end-allowance']),
  orderFlag('sound', ['shop', 'sound']),
  orderFlag('rip-kerf', ['shop', 'rip-kerf']),
  orderFlag('panel-seed', ['shop', 'panel-seed']),
  orderFlag('jigs', ['jigs'], 'list'),
  orderFlag('side', ['shop', 'jig-stock', 'side']),
  orderFlag('paper', ['shop', 'paper', 'size']),
  orderFlag('roll', ['shop', 'paper', 'roll']),
  orderFlag('longest', ['shop', 'paper', 'longest']),
  orderFlag('margin', ['shop', 'paper', 'margin']),
  orderFlag('overlap', ['shop', 'paper', 'overlap']),
  orderFlag('printed-across', ['shop', 'paper', 'printed', 'across']),
  orderFlag('printed-along', ['shop', 'paper', 'printed', 'along']),
  orderFlag('dxf', ['shop', 'cutter', 'dxf']),
  orderFlag('species', ['shop', 'wood', 'species']),
  orderFlag('rings', ['shop', 'wood', 'rings']),
  orderFlag('workshop-humidity', ['climate', 'workshop', 'humidity']),
  orderFlag('winter-humidity', ['climate', 'wall', 'winter', 'humidity']),
  orderFlag('summer-humidity', ['climate', 'wall', 'summer', 'humidity']),
]

/** Values of flags as typed: text, or true for a switch. */
export type FlagValues = Readonly<Record<string, string | true>>

/** Where a flag's key stands in an order; a star flag in its first star. */
export const orderPath = ({ of, path }: OrderFlag): Path => (of === 'star' ? ['stars', 0, ...path] : path)
