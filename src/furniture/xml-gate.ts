import { SaxesParser, type SaxesTagNS } from 'saxes'
import { done, type Outcome, type Problem, refused, showGiven } from '../order/problem.js'

/** An element as the strict reader met it, in document order. */
export interface GatedElement {
  readonly name: string
  /** Where it begins, counted from 1. */
  readonly line: number
  readonly origin: Origin
  readonly attributes: ReadonlyMap<string, Origin>
}

/** `editor`: of a namespace that no SVG reader draws; `other`: of one that some do, or of none. */
export type Origin = 'svg' | 'editor' | 'other'

/** The longest drawing that is read, in characters; ours have a twentieth of it. */
export const LONGEST_DRAWING = 200_000
export const DEEPEST_ELEMENT = 16
export const MOST_ELEMENTS = 2000

const SVG = 'http://www.w3.org/2000/svg'
/** Whose namespaces may act or be drawn: SVG, XHTML, XLink, MathML, events. */
const OF_THE_WEB = /^http:\/\/www\.w3\.org\//

/** Other names, such as `__proto__`, are never SVG's, and the tree's reader loses them. */
const PLAIN_NAME = /^[a-z][\w.:-]*$/i

/** Thrown to stop the parser at the first mistake. */
const STOP = new Error('the XML is refused')

/**
 * Lets through only well-formed XML 1.0 within the limits, without document type, entities of its own, processing
 * instructions or CDATA. Reading stops at the first thing that is refused: what follows it cannot be trusted.
 */
export const gateXml = (file: string, text: string): Outcome<readonly GatedElement[]> => {
  if (text.length > LONGEST_DRAWING) {
    const advice = `Allowed: up to ${LONGEST_DRAWING}. Is this the right file?`
    return refused([{ place: file, given: `${text.length} characters`, advice }])
  }
  const elements: GatedElement[] = []
  let problem: Problem | undefined
  let [depth, line] = [0, 1]
  const parser = new SaxesParser({ xmlns: true, position: true })
  const stop = (given: string, advice: string, at = parser.line): never => {
    problem = { place: file, line: at, given, advice }
    throw STOP
  }
  parser.on('xmldecl', ({ version, encoding }) => {
    if (version !== '1.0') stop('another version of XML', 'Allowed: version="1.0".')
    if (encoding !== undefined && !/^(?:utf-8|us-ascii)$/i.test(encoding))
      stop('another encoding', 'Save the file as UTF-8.')
  })
  parser.on('doctype', () => stop('a document type (<!DOCTYPE>)', 'Take it out: a drawing needs none.'))
  parser.on('processinginstruction', () => stop('a processing instruction (<?...?>)', 'Take it out.'))
  parser.on('cdata', () => stop('a CDATA section', 'Write the text itself, with &lt; for < and &amp; for &.'))
  parser.on('error', ({ message }) => stop(...complaint(message)))
  parser.on('opentagstart', () => {
    line = parser.line
    depth += 1
    if (depth > DEEPEST_ELEMENT)
      stop('elements within elements', `Allowed: ${DEEPEST_ELEMENT} levels. Ungroup the drawing.`)
    if (elements.length >= MOST_ELEMENTS)
      stop('a further element', `Allowed: ${MOST_ELEMENTS} elements in a drawing. Join lines into paths.`)
  })
  parser.on('opentag', (tag) => {
    const odd = [tag.name, ...Object.keys(tag.attributes)].find((name) => !PLAIN_NAME.test(name))
    if (odd !== undefined)
      stop(`the name ${showGiven(odd)}`, 'Allowed: names that begin with a letter.', line)
    elements.push(gated(tag, line))
  })
  parser.on('closetag', () => {
    depth -= 1
  })
  try {
    parser.write(text).close()
  } catch (error) {
    if (error !== STOP || !problem) throw error
    return refused([problem])
  }
  return done(elements)
}

const gated = ({ name, prefix, uri, attributes }: SaxesTagNS, line: number): GatedElement => ({
  name,
  line,
  origin: prefix === '' ? (uri === SVG ? 'svg' : 'other') : OF_THE_WEB.test(uri) ? 'other' : 'editor',
  attributes: new Map(
    Object.values(attributes).map((attribute) => [attribute.name, originOf(attribute.name, attribute.uri)]),
  ),
})

const originOf = (name: string, uri: string): Origin => {
  if (/^xmlns(?::|$)/.test(name) || name === 'xml:lang') return 'editor'
  if (!name.includes(':') || name === 'xml:space') return 'svg'
  return OF_THE_WEB.test(uri) || uri === '' || name.startsWith('xml:') ? 'other' : 'editor'
}

const LONGEST_MESSAGE = 120

/** What the parser's complaint means; it begins with line and column. */
const complaint = (message: string): [given: string, advice: string] => {
  const says = message.replace(/^(?:.*?:)?\d+:\d+: /, '').replace(/\.$/, '')
  if (/entity/.test(says)) {
    return [
      'an entity',
      'Allowed: &amp; &lt; &gt; &quot; &apos; and numbers such as &#233;, each with its semicolon.',
    ]
  }
  return ['text that is not XML', `${says.slice(0, 1).toUpperCase()}${says.slice(1, LONGEST_MESSAGE)}.`]
}
