import { readdirSync, readFileSync } from 'node:fs'
import makerjs from 'makerjs'
import { describe, expect, it } from 'vitest'
import titleFields from '../../shared/title-fields.json' with { type: 'json' }
import type { ArtText, Artwork } from '../../src/drawing/artwork.js'
import { FURNITURE, FURNITURE_NAMES, type FurnitureName } from '../../src/furniture/furniture-names.js'
import { readFurniture } from '../../src/furniture/read-furniture.js'
import { fillSlots, slotsIn } from '../../src/furniture/slots.js'
import { strangeSign } from '../../src/order/lettered-text.js'
import { showProblem } from '../../src/order/problem.js'
import { DEJAVU } from '../../src/tables/letter-widths.js'

const FOLDER = new URL('../../templates/', import.meta.url)
const source = (name: FurnitureName): string => readFileSync(new URL(`${name}.svg`, FOLDER), 'utf8')

const artwork = (name: FurnitureName): Artwork => {
  const outcome = readFurniture(`${name}.svg`, name, source(name))
  if (!outcome.ok) throw new Error(outcome.problems.map(showProblem).join('\n'))
  return outcome.value
}

const texts = (of: Artwork): ArtText[] => of.marks.flatMap((mark) => (mark.kind === 'text' ? [mark] : []))

it('the folder holds every piece, and its README names each', () => {
  expect(readdirSync(FOLDER).sort()).toEqual(
    ['README.md', ...FURNITURE_NAMES.map((name) => `${name}.svg`)].sort(),
  )
  const readme = readFileSync(new URL('README.md', FOLDER), 'utf8')
  for (const name of FURNITURE_NAMES) {
    const { across, height, slots } = FURNITURE[name]
    expect(readme).toContain(`| \`${name}.svg\` | ${across} x ${height} |`)
    for (const slot of slots) expect(readme).toContain(`{${slot}}`)
  }
})

it("the README's example of a workshop's mark is read", () => {
  const readme = readFileSync(new URL('README.md', FOLDER), 'utf8')
  const example = /```xml\n(<text [\s\S]*?)```/.exec(readme)?.[1] ?? ''
  const replaced = source('title-block').replace(/<text [^>]*>\{title\}<\/text>/, example)
  const outcome = readFurniture('title-block.svg', 'title-block', replaced)
  if (!outcome.ok) throw new Error(outcome.problems.map(showProblem).join('\n'))
  expect(outcome.value.marks).toHaveLength(artwork('title-block').marks.length + 2)
})

describe.each(FURNITURE_NAMES)('%s', (name) => {
  it('is as large as a page keeps free for it, in mm', () => {
    const { across, height } = FURNITURE[name]
    expect(source(name)).toContain(
      `width="${across}mm" height="${height}mm" viewBox="0 0 ${across} ${height}"`,
    )
    expect(artwork(name)).toMatchObject({ across, height })
  })

  it('has lines of ISO 128-2 and prints black on white', () => {
    // ISO 128-2: 0.13 and 0.18 from the older drawing standards, then the series with the factor root 2; from memory.
    for (const mark of artwork(name).marks) {
      if (mark.kind === 'path' && mark.stroke)
        expect([0.13, 0.18, 0.25, 0.35, 0.5]).toContain(mark.stroke.width)
      const colours = mark.kind === 'text' ? [mark.colour] : [mark.stroke?.colour, mark.fill?.colour]
      expect(colours.filter((colour) => colour !== undefined && colour !== '#000000')).toEqual([])
    }
  })

  it('is lettered no lower than 1.5 mm, values and cautions no lower than 1.8 mm (ISO 3098)', () => {
    for (const { height, text } of texts(artwork(name))) {
      const caption = name === 'title-block' && slotsIn(text).length === 0
      expect(height, text).toBeGreaterThan(caption ? 1.49 : 1.79)
    }
  })
})

// The oracle is makerjs, which reads path data by itself; 1 in = 25.4 mm (international inch, 1959).
describe.each(['scale-check-mm', 'scale-check-in'] as const)('%s', (name) => {
  const marks = [...source(name).matchAll(/<path (?:id="([^"]*)" )?d="([^"]*)"/g)].flatMap(
    ([, id, data = '']) => {
      const { paths = {} } = makerjs.importer.fromSVGPathData(data)
      return Object.values(paths).map((path) => {
        const { origin, end } = path as makerjs.IPathLine
        return { id, from: origin as [number, number], to: end as [number, number] }
      })
    },
  )
  const upright = marks.filter(({ from, to }) => Math.abs(from[0] - to[0]) < 1e-9)
  const named = (id: string): number => upright.find((mark) => mark.id === id)?.from[0] ?? Number.NaN
  const zero = named('zero')

  it('has its marks at 100 mm and 4 in from one zero', () => {
    expect(named('mm-100') - zero).toBeCloseTo(100, 9)
    expect(named('in-4') - zero).toBeCloseTo(101.6, 9)
  })

  it('has every other mark at a whole part of its scale', () => {
    const parts = { mm: name === 'scale-check-mm' ? 1 : 5, in: 25.4 / (name === 'scale-check-in' ? 16 : 8) }
    const counts = { mm: 100 / parts.mm, in: 101.6 / parts.in }
    const level = marks.find(({ id }) => id === 'scale-line')?.from[1] ?? Number.NaN
    const first = name === 'scale-check-mm' ? 'mm' : 'in'
    for (const unit of ['mm', 'in'] as const) {
      // makerjs turns y up: what stands above the line is the scale that comes first.
      const side = unit === first ? 1 : -1
      const ticks = upright.filter(({ from, to }) => side * ((from[1] + to[1]) / 2 - level) > 0.3)
      const steps = ticks.map(({ from }) => (from[0] - zero) / parts[unit]).sort((a, b) => a - b)
      const ownEnd = steps.filter((step) => step > 0.5)
      expect(ownEnd).toHaveLength(counts[unit])
      ownEnd.forEach((step, index) => {
        expect(step).toBeCloseTo(index + 1, 3)
      })
    }
  })

  it('letters the scale that comes first above and larger', () => {
    const all = texts(artwork(name))
    const figure = (text: string) => all.find((each) => each.text === text)
    const [first, second] =
      name === 'scale-check-mm' ? [figure('100'), figure('4')] : [figure('4'), figure('100')]
    if (!first || !second) throw new Error('both scales have their figures')
    expect(first.at.y).toBeGreaterThan(second.at.y)
    expect(first.height).toBeGreaterThan(second.height)
  })
})

const CAPTIONS: readonly string[] = ['DOCUMENT TYPE', 'SHEET', 'SCALE', 'DATE', 'CREATOR']

describe('the title block', () => {
  const block = artwork('title-block')
  const slots = texts(block).flatMap(({ text }) => slotsIn(text))

  // ISO 7200:2004; second-hand, as shared/title-fields.json says. Our scale is no field of that standard.
  it('has the fields of ISO 7200 that an order can fill, and the scale', () => {
    const fields = titleFields.fields.flatMap((field) => ('slot' in field ? [field.slot] : []))
    expect([...slots].sort()).toEqual([...fields, 'scale'].sort())
    expect([...slots].sort()).toEqual([...FURNITURE['title-block'].slots].sort())
    expect(block.across).toBeLessThanOrEqual(titleFields.widest_title_block.mm)
  })

  it('has room for as many characters as ISO 7200 recommends', () => {
    // Common practice, no published source: what people write is as wide on the average as this.
    const words = 'Winter fair by the lake 2031 Hut'
    for (const field of titleFields.fields) {
      if (!('slot' in field) || !field.characters) continue
      const value = field.field.includes('sheet') ? '1234' : field.slot === 'date' ? '2031-11-28' : words
      const written = value.slice(0, field.characters)
      const lettered = texts(fillSlots(block, { [field.slot as string]: written }))
      expect(lettered.find(({ text }) => text.includes(written))?.text, field.field).toBeDefined()
    }
    const both = texts(fillSlots(block, { sheet: '1234', sheets: '1234' }))
    expect(both.map(({ text }) => text)).toContain('1234 / 1234')
  })

  // ISO 5455:1979: the designation is the word SCALE and the ratio.
  it('states the scale as ISO 5455 has it', () => {
    const { full_size, written } = titleFields.scale
    const lettered = texts(fillSlots(block, { scale: full_size }))
    const value = lettered.find(({ text }) => text === full_size)
    const word = lettered.find(({ text }) => text === 'SCALE')
    expect(`${word?.text} ${value?.text}`).toBe(written)
    expect(word?.at.x).toBe(value?.at.x)
  })

  /** Broken lines lose the space between them. */
  const unspaced = (text: string): string => text.replaceAll(' ', '')
  const expectWhole = (slot: 'title' | 'supplementary-title' | 'creator', value: string): void => {
    const lines = texts(fillSlots(block, { [slot]: value })).filter(({ text }) => !CAPTIONS.includes(text))
    expect(unspaced(lines.map(({ text }) => text).join(''))).toBe(unspaced(value))
  }

  // Capitals of ISO 3098 begin at 1.8 mm.
  it.each([
    'Workshop by the pier, Halyna Kovalenko',
    'The boathouse workshop, M. Lindqvist Jr.',
    'Майстерня біля озера, Галина Коваленко',
    'Jürgen-Maximilian von der Übersee-Brücke',
  ])('shows the creator %s whole, in capitals of 1.8 mm or more', (creator) => {
    const lines = texts(fillSlots(block, { creator })).filter(({ text }) => !CAPTIONS.includes(text))
    expect(lines.map(({ text }) => text).join(' ')).toBe(creator)
    for (const { height } of lines) expect(height).toBeGreaterThanOrEqual(1.8)
  })

  it('shows whole every creator that an order takes: 40 of the widest letters too', () => {
    const takes = [...DEJAVU.widths.keys()].filter((sign) => sign.trim() !== '')
    const taken = takes.filter((sign) => strangeSign(sign, 'name') === undefined)
    expect(taken.length).toBeGreaterThan(2000)
    for (const sign of taken) expectWhole('creator', sign.repeat(40))
  })

  it.each(['W', 'M', 'Щ', 'Ω'])('shows whole a title of 60 %s and what it is of', (sign) => {
    for (const what of ['arm pattern', 'left arm cradle', 'glue-up frame'])
      expectWhole('title', `${sign.repeat(60)}: ${what}`)
  })

  it('shows whole the title of an order in 60 capitals', () => {
    expectWhole('supplementary-title', 'STARS FOR THE WINTER FAIR OF THE VILLAGE BY THE LAKE IN 2031')
  })

  it('leaves empty cells to be filled by hand, and no braces', () => {
    const lettered = texts(fillSlots(block, {})).map(({ text }) => text)
    expect(lettered).toEqual(CAPTIONS)
  })
})

// Hand distance: AS/NZS 62841.3.9:2020, safety warnings; the rest is common practice, no published source.
it('the caution panel says what keeps fingers on, in two lines', () => {
  const lines = texts(artwork('caution')).map(({ text }) => text)
  expect(lines).toHaveLength(2)
  for (const needed of [
    /100 mm \(4 in\)/,
    /Clamp/,
    /jig/,
    /trapped between blade and stop/,
    /manual/,
    /local rules/,
  ])
    expect(lines.join(' ')).toMatch(needed)
})

it('the register mark has its point in the middle: lines through it and a ring around it', () => {
  const { marks } = artwork('register-mark')
  const spots = marks.flatMap((mark) =>
    mark.kind === 'path' ? mark.steps.flatMap((step) => (step.to === 'start' ? [] : [step.at])) : [],
  )
  for (const { x, y } of spots) {
    // As far from the middle on the other side.
    expect(spots.some((other) => Math.hypot(other.x + x - 8, other.y + y - 8) < 1e-9)).toBe(true)
  }
  expect(marks.every((mark) => mark.kind === 'path' && !mark.fill)).toBe(true)
})

it('the grain arrow points both ways, in lines and a word only', () => {
  const { marks } = artwork('grain-arrow')
  const spots = marks.flatMap((mark) =>
    mark.kind === 'path' ? mark.steps.flatMap((step) => (step.to === 'start' ? [] : [step.at])) : [],
  )
  for (const { x, y } of spots)
    expect(spots.some((other) => Math.hypot(other.x + x - 40, other.y - y) < 1e-9)).toBe(true)
  expect(texts(artwork('grain-arrow')).map(({ text }) => text)).toEqual(['GRAIN'])
})
