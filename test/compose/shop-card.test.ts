import { describe, expect, it } from 'vitest'
import { shopCard } from '../../src/compose/shop-card.js'
import { drawingExtents, shapeExtents } from '../../src/drawing/bounds.js'
import { layerOf } from '../../src/drawing/layers.js'
import type { Drawing, Label, Path } from '../../src/drawing/model.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'
import { planOf } from '../orders.js'

/*
 * The card over stars of all regimes and orders of every length of word. Oracles: the sheet (ISO 216 A4 and ANSI Letter
 * with 10 mm margins leave 190.0 x 277.0 mm and 195.9 x 259.4 mm); ISO 129-1, figures are not crossed by lines; ISO 3098 for
 * the heights of lettering; the kite's angles for what the drawn blades must show.
 */

interface Card {
  readonly drawing: Drawing
  readonly labels: readonly Label[]
  readonly paths: readonly Path[]
}

const drawnCards = (text: string): Card[] => {
  const order = parseOrder({ text })
  if (!order.ok) throw new Error(JSON.stringify(order.problems))
  const plan = planOrder(order.value)
  // Some stars of the sweep are too small for a saw; they are refused in words, which is tested elsewhere.
  if (!plan.ok) return []
  return plan.value.stars.map((star) => {
    const drawing = shopCard(star, plan.value.order)
    return {
      drawing,
      labels: drawing.shapes.filter((shape) => shape.kind === 'label'),
      paths: drawing.shapes.filter((shape) => shape.kind === 'path'),
    }
  })
}

/** The cards of each order, drawn once for all tests. */
const known = new Map<string, Card[]>()
const cardsOf = (text: string): Card[] => {
  const cards = known.get(text) ?? drawnCards(text)
  known.set(text, cards)
  return cards
}

/** Two lines of 2.5 mm under the card, 1.3 times as far apart, tails and some white. */
const FOOTER = 2.5 * (1.3 + 1 + 207 / 718) + 1

const PLAIN = 'shop: { saw: { limit: 75, kerf: 3 mm, reads-to: 0.5 } }'
/** Wedges, warnings of every kind, boards to rip and to buy. */
const RICH = `shop: { saw: { limit: 45, kerf: 3 mm, reads-to: 0.5, crosscut: 50 mm },
  boards: [{ width: 30 mm, length: 2000 mm }, { width: 400 mm, length: 3000 mm, count: 1 }],
  panels: [{ length: 50 mm, width: 50 mm }],
  wood: { species: white oak }, glue: { clamp: 45 min, cures: 24 h }, stain: { coverage: 100 ft2/qt, dries: 2 h },
  finish: { coverage: 400 ft2/gal, coats: 12, dries: 6 h, cures: 14 days } }`
const WORDY = 'The lantern star over the long wood jetty by the old stop'
const WIDE = 'W'.repeat(60)
const NOTE = 'By the lake, '.repeat(15).slice(0, -2)

const ORDERS = [3, 4, 5, 6, 7, 8, 9, 12, 16, 24].flatMap((points) =>
  [10, 20, 36, 45, 60, 72, 90, 110, 135, 160]
    .filter((tip) => tip < 178 - 360 / points)
    .flatMap((tip, row) =>
      ['across: 60 mm', 'across: 11 13/16 in', 'radius: 700 mm', 'across: 3000 mm'].flatMap((size, column) =>
        (row + column) % 2 === 0
          ? [`units: mm\nstars: [{ name: Jetty, points: ${points}, tip-angle: ${tip}, ${size} }]\n${PLAIN}`]
          : [
              `units: in\nstars: [{ name: ${column === 0 ? WIDE : WORDY}, quantity: 300, points: ${points}, tip-angle: ${tip}, ${size}, thickness: 19 mm, chamfer: 0.3 mm, backing: { inset: 0.4 mm, thickness: 4 mm } }]\n${RICH}`,
            ],
      ),
    ),
)

/** The longest note, on top of all else. */
const NOTED = ORDERS.filter((text) => text.includes('quantity: 300')).map((text) =>
  text.replace('quantity: 300', `note: "${NOTE}", quantity: 300`),
)

describe.each(ORDERS)('the card of %s', (text) => {
  const cards = cardsOf(text)

  it('fills its box exactly, and nothing lies outside', () => {
    for (const { drawing } of cards) {
      const { min, max } = drawingExtents(drawing)
      const box = [min.x, min.y, max.x, max.y].map((value) => Number(value.toFixed(6)))
      const { across, height } = drawing.trueSize
      expect(box).toEqual([0, 0, across, Number(height.toFixed(6))])
      expect(across).toBeLessThanOrEqual(190)
      expect(height).toBeLessThanOrEqual(text.includes('units: in') ? 259.4 - FOOTER : 277 - FOOTER)
    }
  })

  it('has every label clear of all lines and of each other', () => {
    for (const { drawing, labels } of cards) {
      const crossed = labels.filter(
        (label) =>
          !labelIsClear(
            label,
            drawing.shapes.filter((other) => other !== label),
            0.2,
          ),
      )
      expect(crossed.map(({ text }) => text)).toEqual([])
    }
  })

  it('letters what must be read at the saw 3.5 mm or higher, settings 7 mm, and nothing below 2.5 mm', () => {
    for (const { labels } of cards)
      expect(Math.min(...labels.map(({ height }) => height))).toBeGreaterThanOrEqual(2.5)
    // A star too small for the saw has no settings.
    for (const { labels } of cards.filter((card) => !wordsOf(card).includes('SAW BY HAND'))) {
      const figures = labels.filter(({ height }) => height >= 7 && height <= 14).map(({ text }) => text)
      for (const { star, firstCut, jointCut } of planOf(text).stars) {
        const rhombus = Math.abs(star.tipAngle - star.centreAngle) < 1e-9
        const cuts = rhombus ? [firstCut] : [firstCut, jointCut]
        for (const { reading, wedge } of cuts) {
          expect(figures).toContain(`${Number(reading.toFixed(2))}°`)
          if (wedge) expect(figures).toContain(`${wedge.angle}°`)
        }
        expect(figures.filter((figure) => /(?:mm|in)$/.test(figure)).length).toBe(cuts.length)
      }
    }
  })
})

/** As much less as the steps of the drawings' scale can leave. */
const STEP = 1.25

it('draws the cuts as wide as their cell, or as high as is read from where the saw stands', () => {
  let counted = 0
  for (const [card] of [...ORDERS, ...NOTED].map(cardsOf)) {
    const headings = card?.labels.filter(({ text }) => /^Cut [123]: \d/.test(text)) ?? []
    const legend = card?.labels.find(({ text }) => text.startsWith('Seen from above'))
    if (!card || !legend) continue
    const cell = (190 - 6) / headings.length
    const sizes = headings.map(({ at }) => {
      const drawn = card.paths.filter((path) => {
        const { min, max } = shapeExtents([path])
        return max.y < at.y && min.y > legend.at.y && min.x >= at.x - 1 && max.x < at.x + cell
      })
      const { min, max } = shapeExtents(drawn)
      return { across: (max.x - min.x) / cell, high: (max.y - min.y) / 17 }
    })
    expect(Math.max(...sizes.flatMap(({ across, high }) => [across, high])) * STEP).toBeGreaterThanOrEqual(1)
    counted++
  }
  expect(counted).toBeGreaterThan(300)
})

const wordsOf = ({ labels }: Card): string => labels.map(({ text }) => text).join(' ')

it('sends the longest note elsewhere only from cards that are full without it', () => {
  const told = NOTED.map(cardsOf).flatMap((cards) => cards.map(wordsOf))
  const elsewhere = told.filter((words) => words.includes('Your note is on the arm pattern'))
  expect(elsewhere.length).toBeGreaterThan(0)
  expect(elsewhere.length).toBeLessThan(NOTED.length / 2)
  const whole = told.filter((words) => words.replaceAll(/\s+/g, ' ').includes(NOTE.slice(0, 30)))
  expect(whole.length + elsewhere.length).toBe(told.length)
})

it('most of the sweep is drawn', () => {
  const drawn = ORDERS.filter((text) => cardsOf(text).length > 0)
  expect(drawn.length / ORDERS.length).toBeGreaterThan(0.85)
}, 60_000)

describe('what the card says of a star of five 70 mm arms, tip 45°', () => {
  const [card] = cardsOf(
    `stars: [{ name: Boathouse, quantity: 6, points: 5, tip-angle: 45, board-width: 70, thickness: 19, chamfer: 3, backing: { shape: star, inset: 12, thickness: 4 } }]
shop: { saw: { limit: 45, kerf: 2.4, reads-to: 0.5 }, boards: [{ width: 70, length: 2400 }] }`,
  )
  const text = card?.labels.map((label) => label.text).join(' ') ?? ''

  it.each([
    // Law of sines in the kite, by hand: tip edge 70 / sin 45°, joint edge 99.0 sin 22.5° / sin 36°.
    ['Tip 45°, sides 121.5°'],
    ['Centre 72°'],
    ['Tip edges 99.0 mm'],
    ['Across valleys 75.8 mm'],
    // 2n joint faces share the closure: 64.45 mm x 10 x 0.1° in radians.
    ['0.1° in every joint cut is 1.1 mm at the last joint.'],
    ['6 stars of 5 points, 30 arms to cut'],
    // (2400 - 70) / (99.0 + 2.4 / cos 45°) = 22.8 blanks a board, 30 arms.
    ['22 blanks from a board of 2400.0 mm'],
    ['Nearest mark 31.5°: leaves nothing open.'],
    // The plate behind is 4 mm and the arm 19 mm thick; the end stays 2 mm under the face, as in the cut plan.
    ['nails or screws up to 21.0 mm long'],
    // AS/NZS 62841.3.9:2020, safety warnings.
    ['Hands stay at least 100 mm (4 in) from both sides of the blade'],
    ['AS/NZS 62841.3.9:2020'],
    // NIOSH Pocket Guide, wood dust: REL 1 mg/m3, time-weighted average.
    ['NIOSH REL for wood dust: 1 mg/m³'],
    ["The saw's manual and local rules come first."],
    ['in a closed metal can'],
  ])('%s', (words) => {
    expect(text).toContain(words)
  })

  it.each([
    ['cord', 'for the knots', "by a cord through the backing's two holes"],
    ['keyhole', "for the screw's head", "by the backing's keyhole"],
    ['screws', undefined, "by a hanger on the backing's two screw holes"],
  ])('hangs by what the backing has: %s', (kind, hollow, by) => {
    const words = cardsOf(
      `stars: [{ name: Boathouse, points: 5, tip-angle: 45, board-width: 70, thickness: 19, backing: { inset: 12, thickness: 4, hanging: { kind: ${kind} }, fixing: { kind: nails } } }]\n${PLAIN}`,
    )
      .map(wordsOf)
      .join(' ')
    expect(words).toContain('nails on the marks up to 21.0 mm long')
    expect(words.includes('First hollow the top arm')).toBe(hollow !== undefined)
    if (hollow) expect(words).toContain(hollow)
    expect(words).toContain(by)
  })

  it("has the maker's own note, and the line where hands stay in black", () => {
    const [noted] = cardsOf(
      `stars: [{ name: Boathouse, points: 5, tip-angle: 45, board-width: 70, note: From the dark board }]\n${PLAIN}`,
    )
    expect(noted && wordsOf(noted)).toContain('Note: From the dark board')
    expect(text).not.toContain('Note:')
    const limits = noted?.paths.filter(({ pen }) => pen === 'double-chain') ?? []
    expect(limits.length).toBeGreaterThan(0)
    for (const { layer } of limits) expect(layerOf(layer).colour).toBe('#000000')
  })

  it('puts the steps after the saw in working order', () => {
    // Common practice, no published source.
    const steps = ['Dry fit', 'Glue-up', 'chamfer 3.0 mm', 'Backing', 'Finish', 'Hanging']
    const places = steps.map((step) => text.indexOf(step))
    expect(Math.min(...places)).toBeGreaterThan(0)
    expect(places).toEqual([...places].sort((a, b) => a - b))
  })

  it('draws the grain along the edge that lay on the fence: from the tip, the other edge is counter-clockwise', () => {
    // As the arm pattern and the operator have it: seen from the tip, the fence's edge turns counter-clockwise into the
    // other tip edge through the wood. In the star, tip up, that is the edge on the left.
    const outline = card?.paths.find(({ layer, vertices }) => layer === 'PATTERN' && vertices.length === 10)
    const [tip, left] = outline?.vertices ?? []
    if (!tip || !left) throw new Error('the star is drawn')
    expect(left.x).toBeLessThan(tip.x)
    const slope = Math.atan2(left.y - tip.y, left.x - tip.x)
    const top = card?.paths.filter(
      ({ layer, vertices: [from, to] }) =>
        layer === 'GUIDE' && from && to && (from.y + to.y) / 2 > left.y && Math.abs(from.x - tip.x) < 10,
    )
    expect(top?.length).toBeGreaterThan(1)
    for (const { vertices } of top ?? []) {
      const [from, to] = vertices
      if (!from || !to) continue
      expect(Math.sin(Math.atan2(to.y - from.y, to.x - from.x) - slope)).toBeCloseTo(0, 6)
    }
  })
})

it('has every warning in full, or those of the cut itself and a count of the others', () => {
  // Settings and steps say what the saw's limit and its marks say.
  const elsewhere = new Set(['saw-limit', 'marks-leave-gap'])
  const told = { all: 0, counted: 0 }
  for (const text of ORDERS) {
    const [card] = cardsOf(text)
    const [star] = card ? planOf(text).stars : []
    if (!card || !star) continue
    const words = wordsOf(card)
    const warnings = star.warnings.filter(({ code }) => !elsewhere.has(code))
    const missing = warnings.filter((warning) => !words.includes(warning.text))
    told[missing.length === 0 ? 'all' : 'counted'] += 1
    if (missing.length > 0) {
      expect(words).toMatch(new RegExp(`The cut plan has ${missing.length} more warnings? for this star`))
      for (const { code } of missing) expect(['short-arm', 'crosscut']).not.toContain(code)
    }
  }
  expect(Math.min(told.all, told.counted)).toBeGreaterThan(0)
})

describe("the working order has the products' own times", () => {
  const wordsFor = (shop: string, star = ''): string =>
    cardsOf(
      `stars: [{ points: 5, tip-angle: 45, board-width: 70, thickness: 19, backing: { thickness: 4 }${star} }]\nshop: { ${shop} }`,
    )[0]
      ?.labels.map((label) => label.text)
      .join(' ') ?? ''

  const told = wordsFor(
    'wood: { species: white ash }, panels: [{ length: 900, width: 600, thickness: 4, density: 680 }], glue: { clamp: 45 min, cures: 24 h }, stain: { dries: 2 h }, finish: { coats: 3, dries: 6 h, cures: 3 days }',
    ', chamfer: 3',
  )

  it.each([
    ['Sand, stain (dries in 2 h); joint faces stay bare.'],
    ['until it closes, no harder (45 min).'],
    ['When the glue has cured (24 h): chamfer 3.0 mm, bright through the stain.'],
    ['Finish, 3 coats 6 h apart: both faces and all edges alike, the backing too.'],
    ['Hanging after 3 days: above the centre, on the top arm; hanger for'],
  ])('%s', (words) => {
    expect(told).toContain(words)
  })

  it('in their order, common practice, no published source', () => {
    const steps = ['Dry fit', 'Sand, stain', 'Glue-up', 'has cured', 'Backing:', 'Finish,', 'Hanging after']
    const at = steps.map((step) => told.indexOf(step))
    expect(at).toEqual([...at].sort((a, b) => a - b))
    expect(at[0]).toBeGreaterThan(0)
  })

  it('refers to the labels where the order has none, and to no weight', () => {
    const silent = wordsFor('')
    expect(silent).toContain('When the glue has cured (see its label): sand.')
    expect(silent).toContain('Finish: both faces and all edges alike, the backing too.')
    expect(silent).not.toContain('hanger for')
  })

  it('lets the backing float where the arms move more than shows', () => {
    // White ash, C_T 0.00274 (Wood Handbook, Table 13-5), arms 75.8 mm across: 0.5 mm at 2.4 % of moisture.
    expect(wordsFor('wood: { species: white ash }', ', wall: { winter: { moisture: 6 } }')).toContain(
      'glued in the middle only, centred',
    )
    const calm = ', wall: { winter: { moisture: 8.5 }, summer: { moisture: 9 } }'
    expect(wordsFor('wood: { species: white ash }', calm)).toContain('glued on, centred')
  })
})
