import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { ArtText } from '../../src/drawing/artwork.js'
import { fillSlots, type SlotValues } from '../../src/furniture/slots.js'
import { mm, radians } from '../../src/units/convert.js'

// Adobe Font Metrics of Helvetica, in thousandths of the letter size: capital 718 high, i 222, m 833, space and dot 278.
const letteredLines = (
  text: string,
  values: SlotValues,
  room: number,
  height = 2.5,
  lines = 1,
): ArtText[] => {
  const mark: ArtText = {
    kind: 'text',
    text,
    at: { x: 0, y: 0 },
    anchor: 'start',
    height: mm(height),
    turn: radians(0),
    colour: '#000000',
    room: mm(room),
    lines,
  }
  const { marks } = fillSlots({ across: mm(60), height: mm(10), marks: [mark] }, values)
  return marks.flatMap((filled) => (filled.kind === 'text' ? [filled] : []))
}

const lettered = (...given: Parameters<typeof letteredLines>): ArtText | undefined =>
  letteredLines(...given)[0]

it('what fits is lettered as drawn', () => {
  expect(lettered('Sheet {sheet} of {sheets}', { sheet: '2B', sheets: '4' }, 40)).toMatchObject({
    text: 'Sheet 2B of 4',
    height: 2.5,
  })
})

it('what is a little too wide is set just as much smaller', () => {
  // Ten m of capitals 2.5 mm high are 10 × 833 / 718 × 2.5 = 29.0 mm wide.
  const height = lettered('{title}', { title: 'm'.repeat(10) }, 20)?.height
  expect(height).toBeCloseTo((20 * 718) / 8330, 9)
})

it('what is far too wide is cut short at capitals of 0.9 mm', () => {
  // At 0.9 mm an m takes 1.044 mm and three dots 1.045 mm: 18 m and the dots are 19.84 mm, 19 would be 20.9 mm.
  expect(lettered('{title}', { title: 'm'.repeat(50) }, 20)).toMatchObject({
    text: `${'m'.repeat(18)}...`,
    height: 0.9,
  })
  // No space before the dots.
  const spaced = `${'m'.repeat(18)} ${'m'.repeat(20)}`
  expect(lettered('{title}', { title: spaced }, 20)?.text).toBe(`${'m'.repeat(18)}...`)
})

it('lettering that is drawn lower than that is not made higher', () => {
  expect(lettered('{title}', { title: 'm'.repeat(50) }, 20, 0.8)).toMatchObject({ height: 0.8 })
})

// ISO 3098 begins at 1.8 mm: there an m takes 2.088 mm and a space 0.697 mm, so 9 m are 18.79 mm and 10 m 20.9 mm.
it('what is too wide at 1.8 mm is broken into the lines it may have, each 1.6 capitals below the one before', () => {
  const nine = 'm'.repeat(9)
  const [first, second, ...more] = letteredLines('{title}', { title: `${nine} ${nine}` }, 20, 2.5, 2)
  expect([first?.text, first?.height, second?.text, second?.height]).toEqual([nine, 1.8, nine, 1.8])
  expect(first?.at).toEqual({ x: 0, y: 0 })
  expect(second?.at.y).toBeCloseTo(-1.6 * 1.8, 9)
  expect(more).toEqual([])
  // Set smaller in one line first, while that is 1.8 mm or more.
  expect(letteredLines('{title}', { title: nine }, 20, 2.5, 2)).toHaveLength(1)
})

it('and only then smaller, in as many lines, with nothing lost', () => {
  const ten = 'm'.repeat(10)
  const filled = letteredLines('{title}', { title: `${ten} ${ten}` }, 20, 2.5, 2)
  expect(filled.map(({ text }) => text)).toEqual([ten, ten])
  // Ten m of 20 mm at most have capitals of 1.72 mm; lines are set lower in steps of 0.05 mm.
  expect(filled[0]?.height).toBeCloseTo(1.7, 9)
})

it('lines that are turned stand beside each other', () => {
  const [, second] = letteredLines('{title}', { title: 'm '.repeat(14).trim() }, 20, 2.5, 2)
  expect(second?.at.x).toBe(0)
  const art = { across: mm(60), height: mm(60) }
  const mark = { ...(lettered('{title}', { title: 'x' }, 20) as ArtText), text: '{title}', lines: 2 }
  const turned = { ...mark, turn: radians(Math.PI / 2) }
  const marks = fillSlots({ ...art, marks: [turned] }, { title: 'm '.repeat(14).trim() }).marks as ArtText[]
  // Reading upwards, the next line is to the right.
  expect(marks[1]?.at.x).toBeCloseTo(1.6 * 1.8, 9)
  expect(marks[1]?.at.y).toBeCloseTo(0, 9)
})

it('a text whose slots are all empty is left out, and one with words of its own stays', () => {
  expect(lettered('{sheet} / {sheets}', { sheet: '', title: 'Hut' }, 20)).toBeUndefined()
  expect(lettered('{sheet} / {sheets}', { sheet: '1A' }, 20)?.text).toBe('1A /')
  expect(lettered('SHEET', {}, 20)?.text).toBe('SHEET')
})

it('a value in braces is no slot', () => {
  expect(lettered('{title}', { title: '{sheet} $& $1', sheet: '1A' }, 40)?.text).toBe('{sheet} $& $1')
})

it('whatever the value, the text stays within its room', () => {
  const widths: Readonly<Record<string, number>> = { i: 222, m: 833, ' ': 278, '.': 278 }
  const value = fc.string({ unit: fc.constantFrom('i', 'm', ' '), minLength: 1, maxLength: 80 })
  fc.assert(
    fc.property(value, fc.double({ min: 2, max: 60, noNaN: true }), (title, room) => {
      for (const lines of [1, 2, 3])
        for (const filled of letteredLines('{title}', { title }, room, 2.5, lines)) {
          const width = [...filled.text].reduce((sum, sign) => sum + (widths[sign] ?? Number.NaN), 0)
          expect((width / 718) * filled.height).toBeLessThanOrEqual(room + 1e-9)
        }
    }),
  )
})
