import { posix } from 'node:path'
import { transformSync } from 'esbuild'
import { parseAst } from 'vitest/node'

/** A source file: its path from the project's root, with forward slashes, and its text. */
export interface SourceFile {
  readonly path: string
  readonly text: string
}

/** From the ground up: a file imports from its own room and from those before it. */
export const ROOMS = [
  'units',
  'tables',
  'geometry',
  'nest',
  'order',
  'cutter',
  'plate',
  'plan',
  'season',
  'fit',
  'panels',
  'stock',
  'choose',
  'jigs',
  'drawing',
  'furniture',
  'compose',
  'paper',
  'write',
  'make-files.ts',
  'drawing-content.ts',
  'make.ts',
  'index.ts',
  'page',
  'cli',
] as const

const LONGEST_FILE = 350

/** Types of the files that the build takes in; it holds no code and belongs to no room. */
const FILE_TYPES = 'src/files.d.ts'

/** Every broken rule of the house, one line each. */
export const brokenRules = (files: readonly SourceFile[]): string[] => [
  ...files.flatMap((file) => [...brokenNames(file), ...brokenMakerjs(file), ...brokenSize(file)]),
  ...files
    .filter(inSrc)
    .flatMap((file) => [
      ...brokenDirection(file),
      ...brokenPackages(file),
      ...brokenNumbers(file),
      ...brokenMaths(file),
    ]),
  ...brokenPdfkit(files),
]

const inSrc = ({ path }: SourceFile): boolean => path.startsWith('src/') && path !== FILE_TYPES

const roomOf = (path: string): string => path.split('/')[1] ?? ''

/** What the file imports, types and lazy imports too. */
const importsOf = ({ text }: SourceFile): string[] =>
  [...withoutComments(text).matchAll(/\bfrom\s+['"]([^'"]+)['"]|\bimport\s*\(?\s*['"]([^'"]+)['"]/g)].map(
    (found) => found[1] ?? found[2] ?? '',
  )

const withoutComments = (text: string): string =>
  text.replaceAll(/^\s*\/\*[\s\S]*?\*\//gm, '').replaceAll(/^\s*\/\/.*$/gm, '')

const brokenDirection = (file: SourceFile): string[] => {
  const room = roomOf(file.path)
  const at = ROOMS.indexOf(room as (typeof ROOMS)[number])
  if (at < 0) return [`${file.path}: src/${room} is no room of the house`]
  return importsOf(file)
    .filter((specifier) => specifier.startsWith('.'))
    .flatMap((specifier) => {
      const target = posix.join(posix.dirname(file.path), specifier)
      if (/^(?:shared\/.+\.(?:json|yaml\?raw)|templates\/.+\.svg)$/.test(target)) return []
      if (!target.startsWith('src/')) return [`${file.path}: imports ${target}, outside src and shared`]
      const other = roomOf(target.replace(/\.js$/, '.ts'))
      const allowed =
        room === 'geometry'
          ? ['units', 'geometry']
          : room === 'nest'
            ? ['units', 'geometry', 'nest']
            : ROOMS.slice(0, at + 1)
      return (allowed as readonly string[]).includes(other)
        ? []
        : [`${file.path}: imports ${other}, which stands above it`]
    })
}

/** Packages that only one room may know. */
const KEPT_IN: readonly (readonly [RegExp, string])[] = [
  [/^node:/, 'cli'],
  [/^yargs(\/|$)/, 'cli'],
  [/^pdfkit(\/|$)/, 'write'],
  [/^clipper2-ts$/, 'nest'],
  [/^yaml(\/|$)/, 'order'],
  [/^valibot(\/|$)/, 'order'],
  [/^svgson(\/|$)/, 'furniture'],
  [/^saxes(\/|$)/, 'furniture'],
  [/^svgpath(\/|$)/, 'furniture'],
  [/^dejavu-fonts-ttf(\/|$)/, 'write'],
  [/^highs(\/|$)/, 'stock'],
  [/^@stdlib\//, 'units'],
]

/** They build the page and are no part of it. */
const PAGE_BUILD = /^src\/page\/(?:bundled-files|one-file|packed-parts|vite\.config)\.ts$/

const brokenPackages = (file: SourceFile): string[] =>
  importsOf(file).flatMap((specifier) =>
    KEPT_IN.filter(
      ([name, room]) => name.test(specifier) && roomOf(file.path) !== room && !PAGE_BUILD.test(file.path),
    ).map(([, room]) => `${file.path}: imports ${specifier}, which only src/${room} may`),
  )

const brokenPdfkit = (files: readonly SourceFile[]): string[] => {
  const knowing = files.filter((file) => inSrc(file) && importsOf(file).includes('pdfkit'))
  return knowing.length > 1
    ? [`${knowing.map(({ path }) => path).join(', ')}: import pdfkit, which only one file may`]
    : []
}

/** A named or star import of makerjs passes the compiler and the tests, and fails in plain Node. */
const brokenMakerjs = (file: SourceFile): string[] =>
  /\b(?:import|export)\b(?!\s+\w+\s+from\b)[^;'"()]*\bfrom\s+['"]makerjs['"]/.test(withoutComments(file.text))
    ? [`${file.path}: imports makerjs by name or star; take the default import`]
    : []

const brokenSize = ({ path, text }: SourceFile): string[] => {
  const lines = text.split('\n').length - 1
  return lines > LONGEST_FILE ? [`${path}: ${lines} lines, more than ${LONGEST_FILE}`] : []
}

const EMPTY_NAME = /(?:^|[-_./])(?:utils?|helpers?|managers?|misc|common)(?=[-_./]|$)/i

const brokenNames = ({ path }: SourceFile): string[] =>
  EMPTY_NAME.test(path) ? [`${path}: a name that says nothing of what it holds`] : []

const UNIT_NUMBERS = [25.4, 72]

/** 25.4 and 72 stand in src/units only; a 72 that is the group code of a DXF tag is another number. */
const brokenNumbers = ({ path, text }: SourceFile): string[] => {
  if (roomOf(path) === 'units') return []
  const { code } = transformSync(text, {
    loader: path.endsWith('x') ? 'tsx' : 'ts',
    format: 'esm',
    target: 'es2023',
  })
  return numbersIn(parseAst(code), path.startsWith('src/write/dxf'))
    .filter((value) => UNIT_NUMBERS.includes(value))
    .map((value) => `${path}: the number ${value} belongs in src/units`)
}

/** Two engines may return numbers of these that differ in the last bit; powers of two are exact. */
const UNSURE =
  /\bMath\.(?:a?(?:sin|cos|tan)h?|atan2|hypot|pow|exp|expm1|log|log10|log1p|log2|cbrt)\b|(?<!\b2) \*\* (?!\d)/g

/** So that every engine makes the same bytes. */
const brokenMaths = ({ path, text }: SourceFile): string[] =>
  [...withoutComments(text).matchAll(UNSURE)].map(
    ([found]) => `${path}: ${found.trim()} may differ from engine to engine; take it from src/units/maths.ts`,
  )

const numbersIn = (node: unknown, groupCodes: boolean): number[] => {
  if (Array.isArray(node)) return node.flatMap((each) => numbersIn(each, groupCodes))
  if (typeof node !== 'object' || node === null) return []
  const { type, value, callee, arguments: given } = node as Record<string, unknown>
  if (type === 'Literal') return typeof value === 'number' ? [value] : []
  const isTag = groupCodes && type === 'CallExpression' && (callee as { name?: unknown }).name === 'tag'
  return isTag && Array.isArray(given)
    ? numbersIn(given.slice(1), groupCodes)
    : Object.values(node).flatMap((inner) => numbersIn(inner, groupCodes))
}
