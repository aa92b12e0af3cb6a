import { describe, expect, it } from 'vitest'
import table from '../../shared/single-stroke.json' with { type: 'json' }
import { inStrokes, strokeLettering, strokeWidth } from '../../src/drawing/stroke-lettering.js'
import { boxOf } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { PLAIN_SIGNS } from '../../src/order/lettered-text.js'
import { STROKE_GLYPHS } from '../../src/tables/single-stroke.js'
import { radians } from '../../src/units/convert.js'

/** Each stroke's corners from the sign's leftmost and lowest place, sorted, as the tables print them. */
const drawn = (sign: string): string[] => {
  const strokes = STROKE_GLYPHS.get(sign)?.strokes ?? []
  const left = Math.min(...strokes.flat().map(([x]) => x))
  return strokes.map((stroke) => stroke.map(([x, y]) => `${x - left},${y}`).join(' '))
}

describe('the strokes of the simplex roman letters', () => {
  /** A. V. Hershey, Calligraphy for Computers (NWL Report 2101, 1967), simplex roman; from memory. */
  it.each([
    ['A', ['8,21 0,0', '8,21 16,0', '3,7 13,7']],
    ['H', ['0,21 0,0', '14,21 14,0', '0,11 14,11']],
    ['L', ['0,21 0,0', '0,0 12,0']],
    ['T', ['7,21 7,0', '0,21 14,21']],
    ['V', ['0,21 8,0', '16,21 8,0']],
    ['Z', ['14,21 0,0', '0,21 14,21', '0,0 14,0']],
  ])('%s', (sign, strokes) => {
    expect(drawn(sign)).toEqual(strokes)
  })

  it('ship with both acknowledgements their licence asks for', () => {
    expect(table.acknowledgements.join(' ')).toMatch(
      /originally created by Dr\. A\. V\. Hershey while working at the U\. S\. National Bureau of Standards\..*James Hurt, Cognition, Inc\., 900 Technology Park Drive, Billerica, MA 01821/,
    )
  })

  it('hold the letters of English, all digits, and the signs of measures', () => {
    for (const sign of 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789°±×½¼¾+-.,:/\'"()')
      expect(drawn(sign).length, sign).toBeGreaterThan(0)
  })
})

describe('a line of strokes', () => {
  it('stands on its middle, a capital high', () => {
    const { min, max } = boxOf(strokeLettering({ text: 'HEH', middle: point(40, 7), height: 6 }))
    expect((min.y + max.y) / 2).toBeCloseTo(7, 9)
    expect(max.y - min.y).toBeCloseTo(6, 9)
    expect(Math.abs((min.x + max.x) / 2 - 40)).toBeLessThan(1.5)
    expect(max.x - min.x).toBeLessThan(strokeWidth('HEH', 6))
  })

  it('reads upwards after a quarter turn', () => {
    const turned = boxOf(
      strokeLettering({ text: 'HILL', middle: point(0, 0), height: 5, turn: radians(Math.PI / 2) }),
    )
    expect(turned.max.x - turned.min.x).toBeCloseTo(5, 9)
    expect(turned.max.y - turned.min.y).toBeGreaterThan(10)
  })

  it('is open lines on the layer MARK, none of them filled', () => {
    const strokes = strokeLettering({ text: 'Stop 90.0 mm', middle: point(0, 0), height: 4 })
    expect(strokes.every(({ layer, closed }) => layer === 'MARK' && !closed)).toBe(true)
    expect(strokes.every(({ vertices }) => vertices.length > 1)).toBe(true)
  })
})

describe('signs without strokes', () => {
  it.each([
    ['3⅜ in', '3 3/8 in'],
    ['⌀ 8', 'Ø 8'],
    ['−5′ 3″', '-5\' 3"'],
    ['Łódź, Čakovec', 'Lódz, Cakovec'],
    ['Озеро', 'Ozero'],
    ['Θήρα', 'Thira'],
    ['a…b', 'a...b'],
    ['🌟', '?'],
  ])('%s becomes %s', (text, strokes) => {
    expect(inStrokes(text)).toBe(strokes)
  })

  it('never leave a plain sign of an order as a question mark, but for the mark itself', () => {
    const lost = [...PLAIN_SIGNS].filter((sign) => sign !== '?' && inStrokes(sign).includes('?'))
    expect(lost).toEqual([])
  })
})
