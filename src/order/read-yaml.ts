import {
  type DocumentOptions,
  isMap,
  isNode,
  isPair,
  isSeq,
  Lexer,
  LineCounter,
  type Node,
  type ParseOptions,
  parseDocument,
  type SchemaOptions,
  type YAMLParseError,
  type YAMLWarning,
} from 'yaml'
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
  if (/^%/m.test(text)) {
    return refused([
      whole('a line that begins with %', 'Orders are YAML 1.2 without directives. Take the line out.'),
    ])
  }
  if (nestsTooDeep(text)) {
    return refused([whole('lists within lists', `Allowed: ${DEEPEST} levels. An order needs six.`)])
  }
  const lines = new LineCounter()
  const document = parseDocument(text, { ...OPTIONS, lineCounter: lines })
  const complaints = [...document.errors, ...document.warnings]
  if (complaints.length > 0) return refused(complaints.slice(0, 20).map((each) => complaint(each, lines)))
  try {
    const root: unknown = document.toJS({ maxAliasCount: MOST_ALIASES })
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

/** The core schema without the numbers nobody writes on a rule: 0x46, 0o106 and 7e1 stay text and are refused. */
const OPTIONS: DocumentOptions & SchemaOptions & ParseOptions = {
  version: '1.2',
  prettyErrors: false,
  resolveKnownTags: false,
  logLevel: 'silent',
  customTags: (tags) =>
    tags.filter((tag) => typeof tag === 'string' || !['HEX', 'OCT', 'EXP'].includes(tag.format ?? '')),
}

const MOST_ALIASES = 20

const whole = (given: string, advice: string): Problem => ({ place: 'order file', given, advice })

const LONGEST_MESSAGE = 200

/** What the parser's commonest complaints mean to a person. */
const PLAIN_WORDS: Readonly<Record<string, string>> = {
  BLOCK_AS_IMPLICIT_KEY: 'A text with a colon in it needs quotes around the whole text.',
  TAB_AS_INDENT: 'Indent with spaces, not with tabs.',
  UNEXPECTED_TOKEN:
    'Something is left over here. For inches write in instead of ", or put \' around the whole value.',
}

const complaint = ({ code, message, pos }: YAMLParseError | YAMLWarning, lines: LineCounter): Problem => {
  const at = { place: 'order file', line: lines.linePos(pos[0]).line }
  if (code === 'MULTIPLE_DOCS') {
    return { ...at, given: 'a second document (---)', advice: 'Keep one order in a file.' }
  }
  if (code === 'DUPLICATE_KEY')
    return { ...at, given: 'a key that stands here already', advice: 'Keep one of the two.' }
  const known = PLAIN_WORDS[code]
  if (known) return { ...at, given: 'text that is not YAML or JSON', advice: known }
  const says = message.replaceAll('\n', ' ').replace(/[ .]+$/, '')
  const short = says.length > LONGEST_MESSAGE ? `${says.slice(0, LONGEST_MESSAGE)}...` : `${says}.`
  return { ...at, given: 'text that is not YAML or JSON', advice: short }
}

/**
 * Would the parser, which recurses at each level, go too deep? Brackets are counted as the lexer sees them, so that
 * those in comments and quotes do not count; indentation nests by spaces and by `-`, `?` and `:`.
 */
const nestsTooDeep = (text: string): boolean => {
  if (/^[ \t:?-]{80,}[^\s#]/m.test(text)) return true
  let depth = 0
  for (const token of new Lexer().lex(text)) {
    if (token === '[' || token === '{') depth++
    else if (token === ']' || token === '}') depth = Math.max(0, depth - 1)
    if (depth > DEEPEST) return true
  }
  return false
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
