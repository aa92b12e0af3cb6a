import {
  isMap,
  isNode,
  isPair,
  isSeq,
  Lexer,
  LineCounter,
  type Node,
  parseDocument,
  type YAMLParseError,
  type YAMLWarning,
} from 'yaml'
import { done, type Outcome, type Problem, refused, showGiven } from './problem.js'
import { YAML_OPTIONS } from './yaml-options.js'

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
  const directive = /^%/m.exec(text)
  if (directive) {
    const line = text.slice(0, directive.index).split('\n').length
    const advice = 'Orders are YAML 1.2 without directives. Take the line out.'
    return refused([{ place: 'order file', line, given: 'a line that begins with %', advice }])
  }
  if (nestsTooDeep(text)) {
    return refused([whole('lists within lists', `Allowed: ${DEEPEST} levels. An order needs six.`)])
  }
  const lines = new LineCounter()
  const document = parseDocument(text, { ...YAML_OPTIONS, lineCounter: lines })
  const complaints = [...document.errors, ...document.warnings]
  if (complaints.length > 0)
    return refused(eachOnce(complaints.slice(0, 20).map((each) => complaint(each, text, lines))))
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

/** More than any order that is written by hand repeats. */
export const MOST_ALIASES = 20

const whole = (given: string, advice: string): Problem => ({ place: 'order file', given, advice })

const LONGEST_MESSAGE = 200

const KEY_OR_TEXT =
  'Lines that belong together must begin in the same column, a key needs a colon and a space after it, and a text with a colon in it needs quotes.'

/** What the parser's complaints mean to a person. */
const PLAIN_WORDS: Readonly<Record<string, string>> = {
  BAD_DQ_ESCAPE: 'In double quotes a backslash begins an escape: use single quotes.',
  BAD_INDENT: 'Lines that belong together must begin in the same column, and brackets must close.',
  BAD_SCALAR_START: 'A value cannot begin with this sign: put quotes around the value.',
  BLOCK_AS_IMPLICIT_KEY: KEY_OR_TEXT,
  BLOCK_IN_FLOW:
    'Between braces a comma must stand between the keys, and a text with a colon in it needs quotes.',
  MISSING_CHAR:
    'Something is missing here: a closing quote or bracket, a comma, or the colon after a key; or the line begins in the wrong column.',
  MULTILINE_IMPLICIT_KEY: KEY_OR_TEXT,
  TAB_AS_INDENT: 'Indent with spaces, not with tabs.',
  TAG_RESOLVE_FAILED: 'Take the tag (! or !!) out: an order needs none.',
  UNEXPECTED_TOKEN:
    'Something is left over after the value, or stands here twice. Put \' around the whole value; in a length write in for ".',
}

const complaint = (
  { code, message, pos: [from, to] }: YAMLParseError | YAMLWarning,
  text: string,
  lines: LineCounter,
): Problem => {
  const at = { place: 'order file', line: lines.linePos(from).line }
  if (code === 'DUPLICATE_KEY') {
    const key = /^["']?([^"':\n]{1,40})/.exec(text.slice(from, to + 40))?.[1] ?? ''
    return { ...at, given: `the key ${showGiven(key)} a second time`, advice: 'Keep one of the two.' }
  }
  if (code === 'MULTIPLE_DOCS') {
    return { ...at, given: 'a second document (---)', advice: 'Keep one order in a file.' }
  }
  const says = message.replaceAll('\n', ' ').replace(/[ .]+$/, '')
  const short = says.length > LONGEST_MESSAGE ? `${says.slice(0, LONGEST_MESSAGE)}...` : `${says}.`
  return { ...at, given: 'text that is not YAML or JSON', advice: PLAIN_WORDS[code] ?? short }
}

/** One line is often complained of twice, for one reason. */
const eachOnce = (problems: readonly Problem[]): Problem[] =>
  problems.filter(
    ({ line, given, advice }, index) =>
      problems.findIndex(
        (other) => other.line === line && other.given === given && other.advice === advice,
      ) === index,
  )

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
