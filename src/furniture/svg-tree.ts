import { type INode, parseSync } from 'svgson'
import { done, type Outcome, refused } from '../order/problem.js'
import { type GatedElement, gateXml, type Origin } from './xml-gate.js'

/** An element of a drawing, with the line it begins on. */
export interface SvgElement {
  readonly name: string
  readonly line: number
  readonly origin: Origin
  /** Without those that draw nothing: namespaces, languages and what an editor keeps for itself. */
  readonly attributes: ReadonlyMap<string, string>
  readonly children: readonly SvgElement[]
  /** The text directly in it. */
  readonly text: string
}

/** Reads a drawing into its elements, or tells why it is no drawing. */
export const readTree = (file: string, written: string): Outcome<SvgElement> => {
  const text = written.replace(/^\ufeff/, '')
  const gate = gateXml(file, text)
  if (!gate.ok) return gate
  const [root] = gate.value
  if (root?.name !== 'svg' || root.origin !== 'svg') {
    const advice = 'Allowed: <svg xmlns="http://www.w3.org/2000/svg" ...> around the whole drawing.'
    return refused([{ place: file, line: root?.line ?? 1, given: `<${root?.name ?? ''}>`, advice }])
  }
  return done(joined(parseSync(plainXml(text)), gate.value[Symbol.iterator]()))
}

/**
 * Without declaration and comments, of which the tree's reader takes a `>` for the end. In XML that came through the
 * gate `<!--` can begin nothing else.
 */
const plainXml = (text: string): string => text.replace(/^<\?xml[^>]*>/, '').replace(/<!--[\s\S]*?-->/g, '')

/** The tree's elements, each with what the gate met in its place. */
const joined = (node: INode, gated: Iterator<GatedElement>): SvgElement => {
  const { value: met } = gated.next() as IteratorResult<GatedElement, undefined>
  const attributes = Object.entries(node.attributes)
  if (met?.name !== node.name || met.attributes.size !== attributes.length)
    throw new Error(`two readers differ about <${node.name}>`)
  return {
    name: met.name,
    line: met.line,
    origin: met.origin,
    attributes: new Map(
      attributes
        .filter(([name]) => met.attributes.get(name) !== 'editor')
        .map(([name, value]) => [name, decoded(value.replace(/[\t\n\r]/g, ' '))]),
    ),
    children: node.children.filter(({ type }) => type === 'element').map((child) => joined(child, gated)),
    text: node.children.map(({ type, value }) => (type === 'text' ? decoded(value) : '')).join(''),
  }
}

const PREDEFINED: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" }

/** The tree's reader leaves references as they are written; the gate has made sure that each of them is one. */
const decoded = (text: string): string =>
  text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (_, hex?: string, decimal?: string, name = '') =>
    (hex ?? decimal)
      ? String.fromCodePoint(hex ? Number.parseInt(hex, 16) : Number(decimal))
      : (PREDEFINED[name] ?? ''),
  )
