import { type INode, parseSync } from 'svgson'
import type { Point } from '../../src/geometry/point.js'
import type { ReadOutline, ReadText, ReadVertex } from './read-outline.js'

/** An SVG file as read: mm from its lower left corner, y up. */
export interface ReadSvg {
  readonly across: number
  readonly height: number
  readonly outlines: readonly ReadOutline[]
  readonly texts: readonly ReadText[]
  /** The name of every element, in the file's order. */
  readonly elements: readonly string[]
  readonly titles: readonly string[]
}

/** Height of a capital over the letter's size: Adobe Font Metrics, CapHeight 718; the outline of DejaVu's H. */
const CAPITAL = { Helvetica: 0.718, "'DejaVu Sans'": 1493 / 2048 } as const

export const readSvg = (text: string): ReadSvg => {
  const root = parseSync(text)
  const [across, height] = [millimetres(root.attributes.width), millimetres(root.attributes.height)]
  const [left, top, viewAcross, viewHeight] = (root.attributes.viewBox ?? '').split(' ').map(Number)
  if (left !== 0 || top !== 0 || viewAcross !== across || viewHeight !== height) {
    throw new Error(`${root.attributes.viewBox} does not show ${across} mm by ${height} mm at 1 : 1`)
  }
  const groups = root.children.filter(({ name }) => name === 'g')
  const inGroups = (name: string) =>
    groups.flatMap((group) => {
      const layer = group.attributes.id ?? ''
      return group.children.filter((child) => child.name === name).map((child) => ({ child, layer }))
    })
  return {
    across,
    height,
    outlines: inGroups('path').flatMap(({ child, layer }) =>
      readPath(child.attributes.d ?? '', layer, height),
    ),
    texts: inGroups('text').map(({ child, layer }) => readText(child, layer, height)),
    elements: allElements(root).map(({ name }) => name),
    titles: allElements(root)
      .filter(({ name }) => name === 'title')
      .map(words),
  }
}

const millimetres = (length = ''): number => {
  const [, value] = /^(\d+(?:\.\d+)?)mm$/.exec(length) ?? []
  if (value === undefined) throw new Error(`${length} is not a length in mm`)
  return Number(value)
}

const allElements = (node: INode): INode[] => [
  node,
  ...node.children.filter(({ type }) => type === 'element').flatMap(allElements),
]

const words = ({ children }: INode): string => decoded(children.map(({ value }) => value).join(''))

/** The parser leaves entities as they stand. */
const decoded = (text: string): string =>
  text.replace(
    /&(amp|lt|gt|quot);/g,
    (_, name: string) => ({ amp: '&', lt: '<', gt: '>', quot: '"' })[name] ?? '',
  )

const readText = (node: INode, layer: string, height: number): ReadText => {
  const {
    x = '',
    y = '',
    'font-size': size = '',
    'font-family': family = '',
    'text-anchor': anchor = 'start',
    transform,
  } = node.attributes
  if (anchor !== 'start' && anchor !== 'middle' && anchor !== 'end') throw new Error(`anchor ${anchor}`)
  const [, turn = '0', aboutX = x, aboutY = y] = /^rotate\((\S+) (\S+) (\S+)\)$/.exec(transform ?? '') ?? []
  if (aboutX !== x || aboutY !== y) throw new Error(`a text turns about ${aboutX} ${aboutY}, not its place`)
  return {
    layer,
    text: words(node),
    at: { x: Number(x), y: height - Number(y) },
    anchor,
    height: Number(size) * CAPITAL[family.split(',')[0] as keyof typeof CAPITAL],
    turn: -Number(turn),
  }
}

/** Path data of absolute M, L, A and Z (SVG 2, 9.3); anything else is refused. */
const readPath = (steps: string, layer: string, height: number): ReadOutline[] => {
  const outlines: { layer: string; closed: boolean; vertices: ReadVertex[] }[] = []
  for (const [, command = '', numbers = ''] of steps.matchAll(/([A-Za-z])([^A-Za-z]*)/g)) {
    const values = numbers.trim() === '' ? [] : numbers.trim().split(' ').map(plainNumber)
    const outline = outlines.at(-1)
    const at = { x: values.at(-2) ?? Number.NaN, y: height - (values.at(-1) ?? Number.NaN) }
    if (command === 'M' && values.length === 2) {
      outlines.push({ layer, closed: false, vertices: [{ ...at, bulge: 0 }] })
    } else if (command === 'L' && values.length === 2 && outline) {
      outline.vertices.push({ ...at, bulge: 0 })
    } else if (command === 'A' && values.length === 7 && outline) {
      const from = outline.vertices.pop()
      if (!from) throw new Error(`an arc without a start in ${steps}`)
      outline.vertices.push({ ...from, bulge: bulgeOf(from, at, values) }, { ...at, bulge: 0 })
    } else if (command === 'Z' && values.length === 0 && outline) {
      outline.closed = true
    } else throw new Error(`${command}${numbers} is not expected in ${steps}`)
  }
  return outlines.map((outline) =>
    outline.closed ? { ...outline, vertices: unrepeated(outline.vertices) } : outline,
  )
}

const plainNumber = (text: string): number => {
  if (!/^-?\d+(\.\d+)?$/.test(text) || text === '-0') throw new Error(`${text} is not a plain number`)
  return Number(text)
}

/** A closing arc ends on the first point; a closing straight edge must not repeat it. */
const unrepeated = (vertices: readonly ReadVertex[]): ReadVertex[] => {
  const [first, last, before] = [vertices[0], vertices.at(-1), vertices.at(-2)]
  if (!first || !last || first.x !== last.x || first.y !== last.y) return [...vertices]
  if (before?.bulge === 0) throw new Error('a closed path repeats its first point')
  return vertices.slice(0, -1)
}

/** Tangent of a quarter of the sweep, from radius and flags (SVG 2, B.2.4 and B.2.5: too small a radius is widened). */
const bulgeOf = (from: Point, to: Point, [rx, ry, , large, sweep]: readonly number[]): number => {
  if (rx === undefined || rx !== ry) throw new Error(`an arc of radii ${rx} and ${ry} is no circle`)
  const halfChord = Math.hypot(to.x - from.x, to.y - from.y) / 2
  const short = 2 * Math.asin(halfChord / Math.max(rx, halfChord))
  const turned = large === 1 ? 2 * Math.PI - short : short
  return Math.tan(turned / 4) * (sweep === 1 ? -1 : 1)
}
