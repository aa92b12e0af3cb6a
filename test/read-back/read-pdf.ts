import { getDocument, OPS, VerbosityLevel } from 'pdfjs-dist/legacy/build/pdf.mjs'
import type { Point } from '../../src/geometry/point.js'

/** A stroked line as an independent reader (pdf.js) sees it: mm from the page's lower left corner, y up. */
export interface ReadStroke {
  readonly points: readonly Point[]
  readonly closed: boolean
  readonly colour: string
}

export interface ReadPage {
  readonly strokes: readonly ReadStroke[]
  readonly texts: readonly string[]
  /** Each piece of text with the width it is set in, in mm. */
  readonly lines: readonly { readonly text: string; readonly width: number }[]
}

const MM_PER_POINT = 25.4 / 72

/** Path codes of pdfjs-dist 5.6.205, which is pinned because they change from version to version. */
const MOVE = 0
const LINE = 1
const CURVE = 2
const CLOSE = 4

type Matrix = readonly [number, number, number, number, number, number]

const multiply = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
]

export const readPdf = async (bytes: Uint8Array): Promise<ReadPage[]> => {
  const task = getDocument({ data: bytes.slice(), verbosity: VerbosityLevel.ERRORS, useSystemFonts: false })
  const document = await task.promise
  const pages: ReadPage[] = []
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number)
    const { items } = await page.getTextContent()
    const texts = items.flatMap((item) => ('str' in item && item.str !== '' ? [item.str] : []))
    const lines = items.flatMap((item) =>
      'str' in item && item.str !== '' ? [{ text: item.str, width: item.width * MM_PER_POINT }] : [],
    )
    pages.push({ strokes: strokesOf(await page.getOperatorList()), texts, lines })
  }
  await task.destroy()
  return pages
}

const strokesOf = ({ fnArray, argsArray }: { fnArray: number[]; argsArray: unknown[] }): ReadStroke[] => {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0]
  let colour = ''
  const saved: { matrix: Matrix; colour: string }[] = []
  const strokes: ReadStroke[] = []
  fnArray.forEach((operator, index) => {
    const args = argsArray[index] as unknown[]
    if (operator === OPS.save) saved.push({ matrix, colour })
    else if (operator === OPS.restore) ({ matrix, colour } = saved.pop() ?? { matrix, colour })
    else if (operator === OPS.transform) matrix = multiply(matrix, args as unknown as Matrix)
    else if (operator === OPS.setStrokeRGBColor) colour = String(args[0])
    else if (operator === OPS.constructPath && (args[0] === OPS.stroke || args[0] === OPS.closeStroke)) {
      strokes.push(...subpaths((args[1] as Float32Array[])[0] ?? new Float32Array(), matrix, colour))
    }
  })
  return strokes
}

const subpaths = (codes: Float32Array, m: Matrix, colour: string): ReadStroke[] => {
  const found: { points: Point[]; closed: boolean; colour: string }[] = []
  const at = (x = Number.NaN, y = Number.NaN): Point => ({
    x: (m[0] * x + m[2] * y + m[4]) * MM_PER_POINT,
    y: (m[1] * x + m[3] * y + m[5]) * MM_PER_POINT,
  })
  for (let index = 0; index < codes.length; ) {
    const code = codes[index++]
    const current = found.at(-1)
    if (code === MOVE) found.push({ points: [at(codes[index], codes[index + 1])], closed: false, colour })
    else if (code === LINE) current?.points.push(at(codes[index], codes[index + 1]))
    else if (code === CURVE) current?.points.push(at(codes[index + 4], codes[index + 5]))
    else if (code === CLOSE && current) current.closed = true
    else throw new Error(`path code ${code} is not known to this reader`)
    index += code === CURVE ? 6 : code === CLOSE ? 0 : 2
  }
  return found
}
