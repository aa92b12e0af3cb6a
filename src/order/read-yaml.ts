import { isMap, isNode, isPair, isSeq, LineCounter, type Node, parseDocument } from 'yaml'
import { done, type Outcome, type Problem, refused } from './problem.js'

/** Keys and list positions from the top of the order down to one value. */
export type Path = readonly (string | number)[]

/** An order file as plain values, with the way back to its lines. */
export interface Source {
  readonly root: unknown
  /** The line of a key, counted from 1; that of the nearest group around it when the key is missing. */
  readonly lineOf: (path: Path) => number | undefined
}

/** An order of 100 stars takes half of it; the parser's work grows with the square of the number of keys. */
const LARGEST_FILE = 64 * 1024
const DEEPEST = 20

/** Reads YAML 1.2 or JSON (which is YAML), refusing tags, repeated keys, deep nesting and runaway aliases. */
export const readYaml = (text: string): Outcome<Source> => {
  if (text.length > LARGEST_FILE) {
    return refused([
      whole(`${text.length} characters`, `Allowed: up to ${LARGEST_FILE}. Is this the right file?`),
    ])
  }
  if (nestsTooDeep(text)) {
    return refused([whole('lists within lists', `Allowed: ${DEEPEST} levels. An order needs six.`)])
  }

  const lines = new LineCounter()
  const document = parseDocument(text, { lineCounter: lines, prettyErrors: false, version: '1.2' })
  const complaints = [...document.errors, ...document.warnings]
  if (complaints.length > 0) {
    return refused(
      complaints.slice(0, 20).map(({ message, pos }) => ({
        place: 'order file',
        line: lines.linePos(pos[0]).line,
        given: 'text that is not YAML or JSON',
        advice: `${message.replace(/[\n.]+$/g, '').replaceAll('\n', ' ')}.`,
      })),
    )
  }
  try {
    const root: unknown = document.toJS({ maxAliasCount: 50 })
    const { contents } = document
    return done({ root, lineOf: (path) => lineOf(contents, path, lines) })
  } catch (error) {
    if (!(error instanceof ReferenceError)) throw error
    const given = error.message.startsWith('Excessive')
      ? 'too many repeated aliases'
      : 'an alias without its anchor'
    return refused([whole(given, 'Write the values out instead of repeating them with *.')])
  }
}

const whole = (given: string, advice: string): Problem => ({ place: 'order file', given, advice })

/** Lists and groups nest by brackets, and by indentation with `-`, `?` and `:`; the parser recurses at each level. */
const nestsTooDeep = (text: string): boolean => {
  let depth = 0
  let deepest = 0
  for (const sign of text) {
    if (sign === '[' || sign === '{') deepest = Math.max(deepest, ++depth)
    else if (sign === ']' || sign === '}') depth--
  }
  return deepest > DEEPEST || /^[ \t:?-]{80,}[^\s#]/m.test(text)
}

const lineOf = (contents: unknown, path: Path, lines: LineCounter): number | undefined => {
  let node: unknown = contents
  let offset = isNode(node) ? node.range?.[0] : undefined
  for (const step of path) {
    let found: Node | null | undefined
    let start: number | undefined
    if (isMap(node)) {
      const pair = node.items.find((item) => isPair(item) && isNode(item.key) && String(item.key) === step)
      start = isNode(pair?.key) ? pair.key.range?.[0] : undefined
      found = isNode(pair?.value) ? pair.value : undefined
    } else if (isSeq(node) && typeof step === 'number') {
      const entry = node.items[step]
      found = isNode(entry) ? entry : undefined
      start = found?.range?.[0]
    }
    if (start === undefined) break
    offset = start
    node = found
  }
  return offset === undefined ? undefined : lines.linePos(offset).line
}
