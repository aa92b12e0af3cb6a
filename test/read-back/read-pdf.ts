import { getDocument, OPS, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Extents } from '../../src/geometry/outline.js'
import type { Point } from '../../src/geometry/point.js'

/** A stroked line as an independent reader (pdf.js) sees it: mm from the page's lower left corner, y up. */
export interface ReadStroke {
  /** Its corners, and points along its curves. */
  readonly points: readonly Point[]
  readonly closed: boolean
  readonly colour: string
  /** Width of the pen in mm. */
  readonly width: number
  /** Nothing of it is seen outside of this box. */
  readonly clip?: Extents
}

/** A run of lettering: where its baseline begins, and its direction in radians. */
export interface ReadText {
  readonly text: string
  readonly at: Point
  readonly turn: number
  readonly clip?: Extents
}

export interface ReadPage {
  readonly across: number
  readonly along: number
  readonly strokes: readonly ReadStroke[]
  readonly lettering: readonly ReadText[]
  /** What a search or a screen reader finds, in order. */
  readonly texts: readonly string[]
  /** Each piece of text with the width it is set in, in mm. */
  readonly lines: readonly { readonly text: string; readonly width: number }[]
}

/** A bookmark and the page it leads to, counted from 0. */
export interface ReadBookmark {
  readonly title: string
  readonly page: number
  readonly children: readonly ReadBookmark[]
}

const MM_PER_POINT = 25.4 / 72

/** Path codes of pdfjs-dist 5.6.205, which is pinned because they change from version to version. */
const MOVE = 0
const LINE = 1
const CURVE = 2
const CLOSE = 4

type Matrix = readonly [number, number, number, number, number, number]

const IDENTITY: Matrix = [1, 0, 0, 1, 0, 0]

const multiply = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
]

const open = (bytes: Uint8Array) =>
  getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS, useSystemFonts: false })

export const readPdf = async (bytes: Uint8Array): Promise<ReadPage[]> => {
  const task = open(bytes)
  const document = await task.promise
  const pages: ReadPage[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number)
    const { items } = await page.getTextContent()
    const texts = items.flatMap((item) => ('str' in item && item.str !== '' ? [item.str] : []))
    const lines = items.flatMap((item) =>
      'str' in item && item.str !== '' ? [{ text: item.str, width: item.width * MM_PER_POINT }] : [],
    )
    const [left = 0, bottom = 0, right = 0, top = 0] = page.view
    pages.push({
      across: (right - left) * MM_PER_POINT,
      along: (top - bottom) * MM_PER_POINT,
      ...marksOf(await page.getOperatorList()),
      texts,
      lines,
    })
  }
  await task.destroy()
  return pages
}

/** The bookmarks of a file as its outline shows them. */
export const readBookmarks = async (bytes: Uint8Array): Promise<ReadBookmark[]> => {
  const task = open(bytes)
  const document = await task.promise
  type Node = NonNullable<Awaited<ReturnType<typeof document.getOutline>>>[number]
  const bookmark = async ({ title, dest, items }: Node): Promise<ReadBookmark> => {
    const [page] = (Array.isArray(dest) ? dest : ((await document.getDestination(String(dest))) ?? [])) as [
      Parameters<typeof document.getPageIndex>[0],
    ]
    return {
      title,
      page: await document.getPageIndex(page),
      children: await Promise.all(items.map((item: Node) => bookmark(item))),
    }
  }
  const found = await Promise.all((await document.getOutline()).map((node: Node) => bookmark(node)))
  await task.destroy()
  return found
}

/** What a page is drawn with at one moment. */
interface Pen {
  readonly matrix: Matrix
  readonly colour: string
  readonly width: number
  readonly clip?: Extents
}

const marksOf = ({ fnArray, argsArray }: { fnArray: number[]; argsArray: unknown[] }) => {
  let pen: Pen = { matrix: IDENTITY, colour: '', width: 0 }
  let clips = false
  let textMatrix = IDENTITY
  const saved: Pen[] = []
  const strokes: ReadStroke[] = []
  const lettering: ReadText[] = []
  fnArray.forEach((operator, index) => {
    const args = argsArray[index] as unknown[]
    if (operator === OPS.save) saved.push(pen)
    else if (operator === OPS.restore) pen = saved.pop() ?? pen
    else if (operator === OPS.transform)
      pen = { ...pen, matrix: multiply(pen.matrix, args as unknown as Matrix) }
    else if (operator === OPS.setStrokeRGBColor) pen = { ...pen, colour: String(args[0]) }
    else if (operator === OPS.setLineWidth) pen = { ...pen, width: Number(args[0]) * MM_PER_POINT }
    else if (operator === OPS.clip) clips = true
    else if (operator === OPS.setTextMatrix)
      textMatrix = Object.values(args[0] as object) as unknown as Matrix
    else if (operator === OPS.showText) lettering.push(textOf(args[0] as Glyphs, textMatrix, pen))
    else if (operator === OPS.constructPath) {
      const paths = subpaths((args[1] as Float32Array[])[0] ?? new Float32Array(), pen)
      if (args[0] === OPS.stroke || args[0] === OPS.closeStroke) strokes.push(...paths)
      if (clips) pen = { ...pen, clip: boxOf(paths.flatMap(({ points }) => points)) }
      clips = false
    }
  })
  return { strokes, lettering }
}

type Glyphs = readonly (number | { readonly unicode: string })[]

const textOf = (glyphs: Glyphs, textMatrix: Matrix, { matrix, clip }: Pen): ReadText => {
  const [a, b, , , x, y] = multiply(matrix, textMatrix)
  return {
    text: glyphs.map((glyph) => (typeof glyph === 'number' ? '' : glyph.unicode)).join(''),
    at: { x: x * MM_PER_POINT, y: y * MM_PER_POINT },
    turn: Math.atan2(b, a),
    ...(clip ? { clip } : {}),
  }
}

const boxOf = (points: readonly Point[]): Extents => {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  return {
    min: { x: Math.min(...xs), y: Math.min(...ys) },
    max: { x: Math.max(...xs), y: Math.max(...ys) },
  }
}

const subpaths = (codes: Float32Array, { matrix: m, ...pen }: Pen): ReadStroke[] => {
  const found: (ReadStroke & { points: Point[]; closed: boolean })[] = []
  const at = (x = Number.NaN, y = Number.NaN): Point => ({
    x: (m[0] * x + m[2] * y + m[4]) * MM_PER_POINT,
    y: (m[1] * x + m[3] * y + m[5]) * MM_PER_POINT,
  })
  for (let index = 0; index < codes.length; ) {
    const code = codes[index++]
    const current = found.at(-1)
    if (code === MOVE) found.push({ points: [at(codes[index], codes[index + 1])], closed: false, ...pen })
    else if (code === LINE) current?.points.push(at(codes[index], codes[index + 1]))
    else if (code === CURVE) current?.points.push(...alongCurve(at, cornersOf(codes, index)))
    else if (code === CLOSE && current) current.closed = true
    else throw new Error(`path code ${code} is not known to this reader`)
    index += code === CURVE ? 6 : code === CLOSE ? 0 : 2
  }
  return found
}

/** A curve of our files turns by 22.5° at most; between so many points it leaves their chords by 4e-5 of its radius. */
const CURVE_STEPS = 16

/** Where a curve begins, whatever comes before it, and its three further corners. */
const cornersOf = (codes: Float32Array, index: number): number[] => [
  ...codes.subarray(index - 3, index - 1),
  ...codes.subarray(index, index + 6),
]

/** Points of a Bézier curve after its start. */
const alongCurve = (at: (x: number, y: number) => Point, corners: readonly number[]): Point[] =>
  Array.from({ length: CURVE_STEPS }, (_, step) => {
    const t = (step + 1) / CURVE_STEPS
    const weights = [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t ** 2, t ** 3]
    const along = (axis: 0 | 1): number =>
      weights.reduce((sum, weight, corner) => sum + weight * (corners[2 * corner + axis] ?? Number.NaN), 0)
    return at(along(0), along(1))
  })
