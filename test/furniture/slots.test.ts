import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { ArtText } from '../../src/drawing/artwork.js'
import { fillSlots, type SlotValues } from '../../src/furniture/slots.js'
import { mm, radians } from '../../src/units/convert.js'

// Adobe Font Metrics of Helvetica, in thousandths of the letter size: capital 718 high, i 222, m 833, space and dot 278.
const lettered = (text: string, values: SlotValues, room: number, height = 2.5): ArtText | undefined => {
  const mark: ArtText = {
    kind: 'text',
    text,
    at: { x: 0, y: 0 },
    anchor: 'start',
    height: mm(height),
    turn: radians(0),
    colour: '#000000',
    room: mm(room),
  }
  const [filled] = fillSlots({ across: mm(60), height: mm(10), marks: [mark] }, values).marks
  return filled?.kind === 'text' ? filled : undefined
}

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

it('what is far too wide is cut short at capitals of 1.5 mm', () => {
  // At 1.5 mm an m takes 1.740 mm and three dots 1.742 mm: ten m and the dots are 19.15 mm, eleven would be 20.9 mm.
  expect(lettered('{title}', { title: 'm'.repeat(50) }, 20)).toMatchObject({
    text: `${'m'.repeat(10)}...`,
    height: 1.5,
  })
  // No space before the dots.
  expect(lettered('{title}', { title: 'mmmmmmmmmm mmmmmmmmm' }, 20)?.text).toBe('mmmmmmmmmm...')
})

it('lettering that is drawn lower than that is not made higher', () => {
  expect(lettered('{title}', { title: 'm'.repeat(50) }, 20, 1.2)).toMatchObject({ height: 1.2 })
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
      const filled = lettered('{title}', { title }, room)
      const width = [...(filled?.text ?? '')].reduce((sum, sign) => sum + (widths[sign] ?? Number.NaN), 0)
      expect((width / 718) * (filled?.height ?? 0)).toBeLessThanOrEqual(room + 1e-9)
    }),
  )
})
