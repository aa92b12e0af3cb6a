import { isProperty, PROPERTY_NAMES } from './svg-properties.js'
import type { SvgElement } from './svg-tree.js'

const DESCRIBING = ['title', 'desc', 'metadata'] as const

/** What each element that draws takes besides properties, `id` and `data-*`. */
const OWN: ReadonlyMap<string, readonly string[]> = new Map([
  ['svg', ['width', 'height', 'viewBox', 'version']],
  ['g', ['transform']],
  ['path', ['d', 'transform']],
  ['line', ['x1', 'y1', 'x2', 'y2', 'transform']],
  ['polyline', ['points', 'transform']],
  ['polygon', ['points', 'transform']],
  ['rect', ['x', 'y', 'width', 'height', 'rx', 'ry', 'transform']],
  ['circle', ['cx', 'cy', 'r', 'transform']],
  ['text', ['x', 'y', 'transform']],
])

/** What may stand inside the outermost svg. */
export const ELEMENT_NAMES: readonly string[] = [...[...OWN.keys()].slice(1), ...DESCRIBING]

/** Does the element only describe? It draws nothing, whatever it holds. */
export const describes = ({ name, origin }: SvgElement): boolean =>
  origin === 'svg' && (DESCRIBING as readonly string[]).includes(name)

/** Why an attribute may not stand on the element; undefined when it may. */
export const attributeAdvice = ({ name }: SvgElement, attribute: string): string | undefined => {
  if (attribute === 'id' || attribute.startsWith('data-') || attribute === 'xml:space') return undefined
  const own = OWN.get(name)
  if (!own) return `Allowed on ${name}: id, data-*.`
  if (own.includes(attribute) || attribute === 'style' || isProperty(attribute)) return undefined
  return `Allowed on ${name}: ${[...own, 'style', 'id', 'data-*', ...PROPERTY_NAMES].join(', ')}.`
}
