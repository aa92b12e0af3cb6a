import { createRequire } from 'node:module'
import { type Font, openSync } from 'fontkit'
import PDFDocument from 'pdfkit'
import { PLAIN_SIGNS } from '../../src/order/lettered-text.js'

/** The font that is embedded, as fontkit reads it. */
export const DEJAVU_FONT = openSync(
  createRequire(import.meta.url).resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'),
) as Font

/**
 * Every character of Windows code page 1252, as registered with IANA, without the control characters. In a stream, for
 * outside one Node 20 decodes that code page as Latin-1 (seen in 20.20.2: 0x80 gives U+0080).
 */
export const WINDOWS_1252: readonly string[] = Array.from({ length: 0x100 - 0x20 }, (_, index) =>
  new TextDecoder('windows-1252').decode(Uint8Array.of(index + 0x20), { stream: true }),
).filter((sign) => !/\p{Cc}/u.test(sign))

const LETTER_OR_DIGIT = /^[\p{L}\p{N}]$/u
const SCRIPT =
  /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Armenian}\p{Script=Georgian}0-9\u02bb\u02bc]$/u

/** Arrows and comparisons that a drawing of ours may use. */
const OWN_SIGNS = '←↑→↓≈≤≥'

const CODES = Array.from({ length: 0x1_0000 }, (_, code) => code).filter(
  (code) => code < 0xd800 || code > 0xdfff,
)

/** From here on come forms of letters that are letters elsewhere already, such as ligatures. */
const PRESENTATION_FORMS = 0xfb00

/** Letters and digits of the scripts that need no shaping, where the font has them and NFC keeps them. */
const letters = (): number[] =>
  CODES.filter((code) => {
    const sign = String.fromCodePoint(code)
    return (
      code < PRESENTATION_FORMS &&
      LETTER_OR_DIGIT.test(sign) &&
      (SCRIPT.test(sign) || WINDOWS_1252.includes(sign)) &&
      sign.normalize('NFC') === sign &&
      DEJAVU_FONT.hasGlyphForCodePoint(code)
    )
  })

const runs = (codes: readonly number[]): number[][] => {
  const found: number[][] = []
  for (const code of codes) {
    const run = found.at(-1)
    if (run?.at(-1) === code - 1) run.push(code)
    else found.push([code])
  }
  return found
}

const hex = (code = 0): string => code.toString(16).toUpperCase().padStart(4, '0')

const inRows = (words: readonly string[], most: number): string[] => {
  const rows: string[] = []
  for (const word of words) {
    const longer = `${rows.at(-1) ?? ''} ${word}`.trim()
    if (rows.length > 0 && longer.length <= most) rows[rows.length - 1] = longer
    else rows.push(word)
  }
  return rows
}

/** As kept in `shared/lettered-signs.json`. */
export const letteredSignsText = (): string =>
  `${JSON.stringify(
    {
      source:
        'dejavu-fonts-ttf 2.37, ttf/DejaVuSans.ttf: letters and digits of the Latin, Greek, Cyrillic, Armenian and Georgian scripts (Unicode property Script), and of Windows code page 1252, that have a glyph of their own, are no presentation forms, and are the same in normalisation form NFC. Drawn up by `npm run lettering`.',
      licence:
        'Bitstream Vera and Arev font licence (free to use, embed and pass on; not sold by itself); changes by DejaVu in the public domain.',
      seen: 'derived',
      letters: inRows(
        runs(letters()).map((run) => (run.length === 1 ? hex(run[0]) : `${hex(run[0])}-${hex(run.at(-1))}`)),
        100,
      ),
    },
    null,
    1,
  )}\n`

const inOrder = (signs: Iterable<string>): number[] =>
  [...new Set(signs)].map((sign) => sign.codePointAt(0) ?? 0).sort((a, b) => a - b)

const widthRuns = (signs: Iterable<string>, widthOf: (sign: string) => number): Record<string, string> =>
  Object.fromEntries(
    runs(inOrder(signs)).map((run) => [
      hex(run[0]),
      run.map((code) => widthOf(String.fromCodePoint(code))).join(' '),
    ]),
  )

/** In thousandths of the letter's size, as pdfkit sets it, kerning included. */
export const helveticaWidth = (text: string): number => {
  HELVETICA.font('Helvetica').fontSize(1000)
  return Math.round(HELVETICA.widthOfString(text))
}
const HELVETICA = new PDFDocument({ autoFirstPage: false })

/** What the font itself says of a sign's advance, in its own units. */
const dejavuWidth = (sign: string): number =>
  DEJAVU_FONT.glyphForCodePoint(sign.codePointAt(0) ?? 0).advanceWidth

/** Pairs that kerning sets wider apart than their widths: by the first sign, then the second. */
const apart = (): Record<string, Record<string, number>> =>
  Object.fromEntries(
    WINDOWS_1252.map((first): [string, Record<string, number>] => [first, apartAfter(first)]).filter(
      ([, seconds]) => Object.keys(seconds).length > 0,
    ),
  )

const apartAfter = (first: string): Record<string, number> =>
  Object.fromEntries(
    WINDOWS_1252.map((second): [string, number] => [
      second,
      helveticaWidth(first + second) - helveticaWidth(first) - helveticaWidth(second),
    ]).filter(([, more]) => more > 0),
  )

/** Every sign the embedded face may set. */
export const dejavuSigns = (): string[] =>
  [
    ...letters().map((code) => String.fromCodePoint(code)),
    ...WINDOWS_1252,
    ...PLAIN_SIGNS,
    ...OWN_SIGNS,
  ].filter((sign) => DEJAVU_FONT.hasGlyphForCodePoint(sign.codePointAt(0) ?? 0))

/** As kept in `shared/letter-widths.json`. */
export const letterWidthsText = (): string =>
  `${JSON.stringify(
    {
      source:
        'Advance widths by sign, run by run from the code point that stands before it. Helvetica: Adobe Font Metrics of the 14 standard fonts of PDF, as pdfkit 0.20.2 carries them, for the signs of WinAnsiEncoding (ISO 32000-1, Annex D); `apart` holds the pairs that its kerning sets further apart, by the first sign. DejaVu: dejavu-fonts-ttf 2.37, ttf/DejaVuSans.ttf, read by fontkit. Drawn up by `npm run lettering`.',
      licence:
        'Adobe Font Metrics: may be used, copied and passed on with their notice, Copyright (c) 1985, 1987, 1989, 1990, 1997 Adobe Systems Incorporated. All Rights Reserved. DejaVu: Bitstream Vera and Arev font licence; changes by DejaVu in the public domain.',
      seen: 'derived',
      helvetica: {
        perSize: 1000,
        capital: 718,
        widths: widthRuns(WINDOWS_1252, helveticaWidth),
        apart: apart(),
      },
      dejavu: {
        perSize: DEJAVU_FONT.unitsPerEm,
        capital: DEJAVU_FONT.glyphForCodePoint('H'.charCodeAt(0)).bbox.maxY,
        widths: widthRuns(dejavuSigns(), dejavuWidth),
        apart: {},
      },
    },
    null,
    1,
  )}\n`
