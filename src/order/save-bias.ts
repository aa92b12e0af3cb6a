import { isMap, isNode, isPair, isScalar, type Pair, parseDocument, type YAMLMap } from 'yaml'
import { fixed } from '../units/show.js'
import { asGroup } from './group.js'
import type { SawBias } from './order.js'
import { done, type Outcome, type Problem, refused } from './problem.js'
import { readYaml } from './read-yaml.js'

/** What stands in an order: `miter` and `uncertainty` to a hundredth of a degree, the uncertainty rounded up. */
export const writtenBias = ({ miter, uncertainty }: SawBias): { miter: number; uncertainty: number } => ({
  miter: Number(fixed(miter, 2)),
  uncertainty: Number(fixed(Math.ceil(uncertainty * 100 - 1e-9) / 100, 2)),
})

/** `{ miter: -0.2, uncertainty: 0.03 }`, to paste; for JSON with quoted keys. */
export const biasAsWritten = (bias: SawBias, quoted = false): string => {
  const { miter, uncertainty } = writtenBias(bias)
  const key = (name: string): string => (quoted ? `"${name}"` : name)
  return `{ ${key('miter')}: ${miter}, ${key('uncertainty')}: ${uncertainty} }`
}

const KEYS = ['shop', 'saw', 'bias'] as const

/**
 * The text of an order with the bias put in or replaced, and every other character left as it is: comments, columns,
 * quotes. The document's nodes tell where; writing the whole document anew would close up the columns.
 */
export const withBias = (text: string, bias: SawBias): Outcome<string> => {
  const changed = spliced(text, bias)
  return changed !== undefined && isSame(text, changed, bias) ? done(changed) : refused([byHand(bias)])
}

const byHand = (bias: SawBias): Problem => ({
  place: '--save',
  given: 'an order that cannot be changed safely',
  advice: `Write it yourself, under shop: saw: bias: ${biasAsWritten(bias)}`,
})

/** The innermost group that is there gets what is missing. */
const spliced = (text: string, bias: SawBias): string | undefined => {
  let map: unknown = parseDocument(text).contents
  for (const [depth, key] of KEYS.entries()) {
    if (!isMap(map)) return undefined
    const pair: Pair | undefined = map.items.find((item) => isScalar(item.key) && item.key.value === key)
    if (!pair) return inserted(text, map, KEYS.slice(depth), bias)
    const { value } = pair
    if (key === 'bias' && isNode(value) && value.range) {
      const figures = scalarsReplaced(text, value, bias)
      if (figures !== undefined) return figures
      const [from, to] = value.range
      // What follows a block, its last line break too, stays.
      const end = to - (/\s*$/.exec(text.slice(from, to))?.[0].length ?? 0)
      return text.slice(0, from) + biasAsWritten(bias, isQuoted(map)) + text.slice(end)
    }
    map = value
  }
  return undefined
}

/** A bias that has both figures keeps everything round them. */
const scalarsReplaced = (text: string, value: unknown, bias: SawBias): string | undefined => {
  if (!isMap(value)) return undefined
  const written = writtenBias(bias)
  const places = (['miter', 'uncertainty'] as const).map((name) => {
    const pair = value.items.find((item) => isScalar(item.key) && item.key.value === name)
    return isScalar(pair?.value) && pair.value.range ? { name, range: pair.value.range } : undefined
  })
  if (places.includes(undefined)) return undefined
  return places
    .flatMap((place) => (place ? [place] : []))
    .sort((a, b) => b.range[0] - a.range[0])
    .reduce(
      (now, { name, range: [from, to] }) => now.slice(0, from) + String(written[name]) + now.slice(to),
      text,
    )
}

const isQuoted = (map: YAMLMap): boolean => {
  const [first] = map.items
  return isPair(first) && isScalar(first.key) && first.key.type === 'QUOTE_DOUBLE'
}

const inserted = (text: string, map: YAMLMap, keys: readonly string[], bias: SawBias): string | undefined => {
  const quoted = isQuoted(map)
  const key = (name: string): string => (quoted ? `"${name}"` : name)
  const [outer = '', ...inner] = keys
  const flow = inner.reduceRight((inside, name) => `{ ${key(name)}: ${inside} }`, biasAsWritten(bias, quoted))
  const [first, last] = [map.items[0], map.items.at(-1)]
  if (!map.range || !isNode(first?.key) || !first.key.range || !last) return undefined
  if (map.flow) {
    const ends = isNode(last.value) && last.value.range ? last.value.range[1] : undefined
    if (ends === undefined) return undefined
    return `${text.slice(0, ends)}, ${key(outer)}: ${flow}${text.slice(ends)}`
  }
  // Before the first key of the block, in its column: nothing that belongs to another key stands between.
  const [at] = first.key.range
  const column = text.slice(text.lastIndexOf('\n', at - 1) + 1, at)
  if (!/^ *$/.test(column)) return undefined
  return `${text.slice(0, at)}${key(outer)}: ${flow}${text.includes('\r\n') ? '\r\n' : '\n'}${column}${text.slice(at)}`
}

/** Is the changed order the old one, but for the bias? */
const isSame = (text: string, changed: string, bias: SawBias): boolean => {
  const [before, after] = [readYaml(text), readYaml(changed)]
  if (!before.ok || !after.ok) return false
  const [old, now] = [asGroup(before.value.root), asGroup(after.value.root)]
  const shop = asGroup(old?.shop)
  const expected = { ...old, shop: { ...shop, saw: { ...asGroup(shop?.saw), bias: writtenBias(bias) } } }
  return plain(expected) === plain(now)
}

/** Groups as text with their keys in one order. */
const plain = (value: unknown): string =>
  JSON.stringify(value, (_, inside: unknown) => {
    const group = asGroup(inside)
    return group ? Object.fromEntries(Object.entries(group).sort(([a], [b]) => (a < b ? -1 : 1))) : inside
  })
