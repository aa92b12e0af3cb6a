import fc from 'fast-check'
import PDFDocument from 'pdfkit'
import helvetica from 'pdfkit/standard-fonts/Helvetica'
import { describe, expect, it } from 'vitest'
import { faceName, letterSize, reach, textWidth, unlettered, wrapText } from '../../src/drawing/lettering.js'
import { unbroken } from '../../src/drawing/line-breaks.js'
import { PLAIN_SIGNS, strangeSign } from '../../src/order/lettered-text.js'
import { mm } from '../../src/units/convert.js'
import { DEJAVU_FONT, dejavuSigns, helveticaWidth, WINDOWS_1252 } from '../tables/lettering-font.js'

/** Every character that an order may hold. */
const ALLOWED = Array.from({ length: 0x11_0000 }, (_, code) => String.fromCodePoint(code)).filter(
  (sign) => strangeSign(sign, 'note') === undefined,
)

const EACH_SIGN = { liga: false, clig: false, rlig: false, calt: false, ccmp: false, kern: false }
const layout = (text: string) => DEJAVU_FONT.layout(text, EACH_SIGN)

/** The outline's lowest and highest point over the height of a capital. */
const ink = (sign: string): readonly [number, number] => {
  const { minY, maxY } = DEJAVU_FONT.glyphForCodePoint(sign.codePointAt(0) ?? 0).bbox
  return [minY / 1493, maxY / 1493]
}

describe('the face a line is set in', () => {
  it('is Helvetica for every character of Windows code page 1252 (IANA registry, read by the JS engine)', () => {
    // ISO 32000-1, Annex D.2: WinAnsiEncoding is that code page; 95 + 96 + 27 characters (from memory).
    expect(WINDOWS_1252).toHaveLength(218)
    expect(WINDOWS_1252.filter((sign) => faceName(sign) !== 'Helvetica')).toEqual([])
  })

  it('is Helvetica only for what pdfkit encodes as the byte of that code page', () => {
    const document = new PDFDocument({ autoFirstPage: false }).font('Helvetica')
    const { _font: font } = document as unknown as { _font: { encode: (text: string) => [string[]] } }
    const others = Array.from({ length: 0xe0 }, (_, index) => index + 0x20).filter((byte) => {
      const sign = new TextDecoder('windows-1252').decode(Uint8Array.of(byte), { stream: true })
      return faceName(sign) === 'Helvetica' && Number.parseInt(font.encode(sign)[0][0] ?? '', 16) !== byte
    })
    expect(others).toEqual([])
  })

  it('is DejaVu Sans for the whole line as soon as one sign leaves that code page', () => {
    const others = ALLOWED.filter((sign) => !WINDOWS_1252.includes(sign))
    expect(others.length).toBeGreaterThan(1500)
    expect(others.filter((sign) => faceName(`Jetty ${sign} 12 mm`) !== 'DejaVu Sans')).toEqual([])
  })

  it('has one capital height in both faces', () => {
    expect(helvetica).toMatchObject({ capHeight: 718 })
    expect(DEJAVU_FONT.glyphForCodePoint(0x48).bbox.maxY).toBe(1493)
    expect(letterSize('H', mm(5)) * 0.718).toBeCloseTo(5, 9)
    expect((letterSize('Ж', mm(5)) * 1493) / DEJAVU_FONT.unitsPerEm).toBeCloseTo(5, 9)
  })
})

describe('every character an order may hold', () => {
  it('is a letter, a digit or a sign of a script set from left to right (Unicode properties)', () => {
    const scripts =
      /^[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{Script=Armenian}\p{Script=Georgian}\p{Script=Common}]$/u
    expect(ALLOWED.filter((sign) => !scripts.test(sign))).toEqual([])
    expect(ALLOWED.filter((sign) => !/^[\p{L}\p{N}\p{P}\p{S} ]$/u.test(sign))).toEqual([])
    expect(ALLOWED.filter((sign) => /^[\p{M}\p{C}\p{Extended_Pictographic}]$/u.test(sign))).toEqual([
      ...'#*0123456789'.split('').filter((sign) => /^\p{Extended_Pictographic}$/u.test(sign)),
    ])
  })

  it('has a glyph of its own in the embedded font (fontkit), of exactly the width in our table', () => {
    const glyphs = new Map<number, string>()
    for (const sign of ALLOWED) {
      const { glyphs: set, advanceWidth } = layout(sign)
      expect(set, sign).toHaveLength(1)
      const id = set[0]?.id ?? 0
      expect(id, `${sign} is the empty box`).not.toBe(0)
      expect(glyphs.get(id), `${sign} would be copied as another character`).toBeUndefined()
      glyphs.set(id, sign)
      expect(unlettered(sign)).toBeUndefined()
      expect(textWidth(`${sign}Ж`, mm(1493)) - textWidth('Ж', mm(1493)), sign).toBeCloseTo(advanceWidth, 6)
    }
  })

  it('is there in all modern alphabets of the five scripts', () => {
    // The alphabets, from memory; the Czech, Polish, Vietnamese and Turkish letters stand for Latin ones.
    const alphabets = [
      'ÁČĎÉĚÍŇÓŘŠŤÚŮÝŽ áčďéěíňóřšťúůýž ĄĆĘŁŃÓŚŹŻ ąćęłńóśźż ĞİıŞğş ĂÂĐÊÔƠƯẰẮẴẶỞỠẶ ăâđêôơưằắẵặởỡặ ÅÆØåæø ÞÐþð ŐŰőű ĀĒĪŪāēīū Ŋŋ',
      'ΑΒΓΔΕΖΗΘΙΚΛΜΝΞΟΠΡΣΤΥΦΧΨΩ αβγδεζηθικλμνξοπρσςτυφχψω άέήίόύώϊϋΐΰ ἀἁᾳ',
      'АБВГДЕЁЖЗИЙКЛМНОПРСТУФХЦЧШЩЪЫЬЭЮЯ абвгдеёжзийклмнопрстуфхцчшщъыьэюя ҐЄІЇґєії ЂЈЉЊЋЏђјљњћџ ЃЌЅѓќѕ Ўў ӘҒҚҢӨҰҮҺәғқңөұүһ',
      'ԱԲԳԴԵԶԷԸԹԺԻԼԽԾԿՀՁՂՃՄՅՆՇՈՉՊՋՌՍՎՏՐՑՒՓՔՕՖ աբգդեզէըթժիլխծկհձղճմյնշոչպջռսվտրցւփքօֆև',
      'აბგდევზთიკლმნოპჟრსტუფქღყშჩცძწჭხჯჰ',
      '½ ¼ ¾ ⅛ ⅜ ⅝ ⅞ ° × − – — ⌀ Ø ± µ ′ ″ € % /',
    ]
    for (const text of alphabets) expect(strangeSign(text.normalize('NFC'), 'note')).toBeUndefined()
  })

  it('stays within the height its label is given', () => {
    for (const sign of dejavuSigns().filter((each) => !/\p{C}/u.test(each))) {
      const [low, high] = ink(sign)
      const { above, below } = reach(`${sign}Ж`)
      expect(high, sign).toBeLessThanOrEqual(above + 1e-9)
      expect(-low, sign).toBeLessThanOrEqual(below + 1e-9)
    }
    expect(helvetica).toMatchObject({ bbox: [-166, -225, 1000, 931] })
    expect(reach('Å ç')).toEqual({ above: 931 / 718, below: 225 / 718 })
  })
})

describe('the width of a line', () => {
  const line = (signs: readonly string[]) =>
    fc.array(fc.constantFrom(...signs), { minLength: 1, maxLength: 40 }).map((each) => each.join(''))

  it('is never less than pdfkit sets it in Helvetica, kerning included', () => {
    const set = (text: string): number => helveticaWidth(text) * (1 / 718)
    fc.assert(
      fc.property(line(WINDOWS_1252), (text) => textWidth(text, mm(1)) >= set(text) - 1e-9),
      { seed: 42, numRuns: 2000 },
    )
    for (const text of ['return turn', 'r:r;rtryrvrprnrm', 'f’f”', 'Winter fair by the lake']) {
      expect(textWidth(text, mm(1))).toBeGreaterThanOrEqual(set(text))
      expect(textWidth(text, mm(1))).toBeLessThan(set(text) * 1.04)
    }
  })

  it('is the width fontkit lays out in DejaVu Sans, sign by sign', () => {
    fc.assert(
      fc.property(line(ALLOWED), (text) => {
        const whole = `Ж${text}`
        expect(textWidth(whole, mm(1))).toBeCloseTo(layout(whole).advanceWidth / 1493, 9)
      }),
      { seed: 42, numRuns: 500 },
    )
  })

  it('is generous for signs that no face has', () => {
    const widest = Math.max(
      ...DEJAVU_FONT.characterSet.map((code) => DEJAVU_FONT.glyphForCodePoint(code).advanceWidth),
    )
    expect(textWidth('星', mm(1493))).toBeGreaterThanOrEqual(widest)
  })
})

describe('wrapping', () => {
  it('breaks at spaces, and within a word only when it is wider than the line', () => {
    const width = mm(50)
    const text = `a ${'Щ'.repeat(60)} b`
    const lines = wrapText(text, mm(2.5), width)
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
    expect(lines.filter((each) => textWidth(each, mm(2.5)) > width)).toEqual([])
    expect(wrapText('one two', mm(2.5), width)).toEqual(['one two'])
  })

  // Common practice, no published source: a figure and what belongs to it are read in one.
  it.each([
    ['Outline 300.0 × 346.4 mm.', 'Outline|300.0 × 346.4 mm.'],
    ['set 31 1/2 in from', 'set|31 1/2 in|from'],
    ['covers 67 % of', 'covers|67 %|of'],
  ])('leaves %s in its parts', (text, parts) => {
    expect(unbroken(text).join('|')).toBe(parts)
  })

  it('never loses a sign', () => {
    fc.assert(
      fc.property(
        fc.string({ unit: 'grapheme', maxLength: 60 }),
        fc.integer({ min: 1, max: 80 }),
        (text, width) => {
          const lines = wrapText(text, mm(2.5), mm(width))
          expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''))
        },
      ),
    )
  })
})

it('names signs that lie outside both faces', () => {
  expect(unlettered('Jetty 星')).toBe('星')
  expect([...PLAIN_SIGNS].map(unlettered).filter((sign) => sign !== undefined)).toEqual([])
})
