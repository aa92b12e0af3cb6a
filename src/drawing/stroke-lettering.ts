import { add, type Point, point, turn } from '../geometry/point.js'
import { inLatin } from '../order/romanise.js'
import { STROKE_CAPITAL, STROKE_GLYPHS } from '../tables/single-stroke.js'
import type { Mm, Radians } from '../units/brand.js'
import { mm, radians } from '../units/convert.js'
import type { Path } from './model.js'
import { chain } from './shapes.js'

/** Signs the strokes do not have, by signs that mean the same. */
const STAND_INS: Readonly<Record<string, string>> = {
  '′': "'",
  '″': '"',
  '⌀': 'Ø',
  '−': '-',
  '⁄': '/',
  '…': '...',
  '„': '"',
  '‚': "'",
  '‘': "'",
  '’': "'",
  '§': 'par.',
  ʻ: "'",
  ʼ: "'",
}

/** What stands for a sign that has no strokes and no stand-in. */
const UNKNOWN = '?'

/**
 * The text in signs that have strokes. A sign without strokes gives way to its stand-in (`⅜` to `3/8`), a letter to the
 * one without its mark, a letter of another script to Latin ones; what is left becomes a question mark.
 */
export const inStrokes = (text: string): string =>
  // 3⅜ must not become thirty-three eighths.
  [...text.replaceAll(/(\d)(?=[⅓⅔⅛⅜⅝⅞])/g, '$1 ')]
    .map((sign) => (STROKE_GLYPHS.has(sign) ? sign : standIn(sign)))
    .join('')

const standIn = (sign: string): string => {
  const latin = inLatin(sign)
  const letters = sign === sign.toLowerCase() ? latin : latin.charAt(0).toUpperCase() + latin.slice(1)
  return [...(STAND_INS[sign] ?? letters)]
    .map((each) => STAND_INS[each] ?? each)
    .map((each) => ([...each].every((part) => STROKE_GLYPHS.has(part)) ? each : UNKNOWN))
    .join('')
}

const glyphsOf = (text: string) =>
  [...inStrokes(text)].flatMap((sign) => {
    const glyph = STROKE_GLYPHS.get(sign)
    return glyph ? [glyph] : []
  })

/** How far a line of strokes runs, for capitals of the given height. */
export const strokeWidth = (text: string, height: number): Mm =>
  mm((glyphsOf(text).reduce((sum, { width }) => sum + width, 0) * height) / STROKE_CAPITAL)

export interface StrokeText {
  readonly text: string
  /** Middle of the line: half of its width, half of a capital's height. */
  readonly middle: Point
  /** Height of a capital, in mm. */
  readonly height: number
  /** Direction of reading, counter-clockwise from +x. */
  readonly turn?: Radians
}

/** The text as single strokes on the layer MARK: open lines that any cutter can follow. */
export const strokeLettering = ({ text, middle, height, turn: reading = radians(0) }: StrokeText): Path[] => {
  const size = height / STROKE_CAPITAL
  let x = -strokeWidth(text, height) / 2
  return glyphsOf(text).flatMap(({ width, strokes }) => {
    const left = x
    x += width * size
    return strokes.map((stroke) =>
      chain(
        'MARK',
        stroke.map(([along, up]) =>
          add(middle, turn(point(left + along * size, up * size - height / 2), reading)),
        ),
      ),
    )
  })
}
