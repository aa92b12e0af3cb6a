import { describe, expect, it } from 'vitest'
import { cardSettings } from '../../src/compose/card-settings.js'
import { stepDrawings } from '../../src/compose/step-drawings.js'
import type { Path } from '../../src/drawing/model.js'
import { distance, type Point, point } from '../../src/geometry/point.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { toLine } from '../geometry/distances.js'
import { planOf } from '../orders.js'
import { sin } from '../plan/shop-orders.js'

/*
 * What is drawn, measured with protractor and rule as a reader of the card would. Oracles: miters by hand from the
 * kite's angles, 90° - tip and 90° - tip/2 - 180°/n; lengths by the law of sines; the hands' distance of 100 mm from
 * AS/NZS 62841.3.9:2020, safety warnings.
 */

const WIDTH = 180
const KERF = 3

/** Points, tip angle, saw limit. */
const STARS = [3, 4, 5, 6, 8, 12, 24].flatMap((points) =>
  [10, 36, 45, 60, 90, 110, 150]
    .filter((tip) => tip < 178 - 360 / points)
    .flatMap((tip) => [75, 45].map((limit) => [points, tip, limit] as const)),
)

const straight = (paths: readonly Path[]): (readonly [Point, Point])[] =>
  paths.flatMap(({ vertices: [from, to, further], closed }) =>
    from && to && !further && !closed ? [[from, to] as const] : [],
  )

const level = ([from, to]: readonly [Point, Point]): boolean => Math.abs(from.y - to.y) < 1e-9

const middle = ([from, to]: readonly [Point, Point]): Point => point((from.x + to.x) / 2, (from.y + to.y) / 2)

describe.each(STARS)('%d points, tip %d°, saw to %d°', (points, tip, limit) => {
  const { order, stars } = planOf(
    `stars: [{ points: ${points}, tip-angle: ${tip}, radius: 400 }]\nshop: { saw: { limit: ${limit}, kerf: ${KERF} } }`,
  )
  const [plan] = stars as [StarPlan]
  const { shapes } = stepDrawings(plan, order, WIDTH, 80)
  const paths = shapes.filter((shape) => shape.kind === 'path')
  const texts = shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))
  const rhombus = Math.abs(tip - 360 / points) < 1e-9
  const miters = [90 - tip, ...(rhombus ? [] : Array(2).fill(90 - tip / 2 - 180 / points))]
  const wedges = miters.map((miter) => Math.max(0, Math.ceil(Math.abs(miter) - limit - 1e-9)))
  /** Which of the drawings, from left to right, a place lies in. */
  const cell = ({ x }: Point): number => Math.floor((x / (WIDTH + 4)) * miters.length)
  const blades = straight(paths.filter(({ layer, pen }) => layer === 'PATTERN' && pen === undefined)).filter(
    (line) => !level(line),
  )
  const printed = texts.join(' ').match(/([\d.]+) : ([\d.]+)\. /)
  const reduction = Number(printed?.[2]) / Number(printed?.[1])

  it('draws one blade a cut, as far from square and to the side as the saw is set, and letters it so', () => {
    expect(blades.map((blade) => cell(middle(blade)))).toEqual(miters.map((_, index) => index))
    blades.forEach(([from, to], index) => {
      const miter = miters[index] ?? 0
      const reading = Math.abs(miter) - (wedges[index] ?? 0)
      const lean = (Math.atan2(from.x - to.x, from.y - to.y) * 180) / Math.PI
      expect(lean).toBeCloseTo(Math.sign(miter) * reading, 6)
      const wedge = wedges[index] ? ` + ${wedges[index]}° wedge` : ''
      // A setting with a wedge may take a second line.
      expect(texts.join(' ')).toContain(`Cut ${index + 1}: ${Number(reading.toFixed(2))}°${wedge} `)
    })
  })

  it('names every wedge it draws', () => {
    const wanted = wedges.filter((wedge) => wedge > 0).map((wedge) => `${wedge}° wedge`)
    expect(texts.filter((text) => /^\d+° wedge$/.test(text)).sort()).toEqual(wanted.sort())
  })

  it('measures the stops to the scale it prints', () => {
    const edge = (400 * sin(180 / points)) / sin(tip / 2 + 180 / points)
    const side = Math.max(edge * sin(tip), 400 * sin(tip / 2)) / sin(tip)
    const wanted = miters
      .map((_, index) => (index === 0 ? side : edge))
      .filter((_, index) => wedges[index] === 0)
    const drawn = straight(paths.filter(({ layer }) => layer === 'DIM'))
      .filter(level)
      .map(([from, to]) => distance(from, to) * reduction)
    expect(drawn.length).toBe(wanted.length)
    for (const [index, length] of wanted.entries()) expect(drawn[index]).toBeCloseTo(length, 6)
    const named = texts.filter((text) => /^stop \d/.test(text)).map((text) => text.slice(5))
    expect(named).toEqual(wanted.map((length) => `${length.toFixed(1)} mm`))
    // Along a wedge no dimension finds room: the settings have it, in figures.
    const { shapes } = cardSettings(plan, order, 7, 184)
    const set = shapes.flatMap((shape) => (shape.kind === 'label' ? [shape] : []))
    for (const [index, wedge] of wedges.slice(0, 2).entries()) {
      const caption = set.find(
        ({ text }) => text === `${index === 0 ? 'blank stop' : 'stop'}, along the wedge`,
      )
      expect(caption !== undefined).toBe(wedge > 0)
      const below = set.filter(({ at }) => at.x === caption?.at.x && at.y < caption.at.y)
      if (wedge > 0) expect(below[0]?.text).toBe(`${(index === 0 ? side : edge).toFixed(1)} mm`)
    }
  })

  it('draws the limits of the hands 100 mm from either side of the slot', () => {
    for (const limitLine of straight(paths.filter(({ pen }) => pen === 'double-chain'))) {
      const blade = blades[cell(middle(limitLine))]
      if (!blade) throw new Error('every limit has its blade')
      const apart = limitLine.map((end) => toLine(end, blade) * reduction)
      // The near side is the stop's, at the right: on the left hand when looking from the fence to the handle.
      const wanted = (apart[0] ?? 0) > 0 ? 100 : -100 - KERF
      for (const each of apart) expect(each).toBeCloseTo(wanted, 6)
    }
  })

  it('hatches waste beyond the blade only, at both joint cuts and never at cut 1', () => {
    const strokes = straight(paths.filter(({ layer, pen }) => layer === 'NOTE' && pen === undefined)).filter(
      ([from, to]) => Math.abs(from.x - to.x + from.y - to.y) < 1e-6,
    )
    // A blade at 45° runs the way the hatching does.
    const hatching = strokes.filter(([from, to]) => {
      const blade = blades[cell(middle([from, to]))]
      return blade === undefined || Math.abs(toLine(from, blade) - toLine(to, blade)) > 1e-6
    })
    const cells = new Set(hatching.map((stroke) => cell(middle(stroke))))
    expect([...cells].sort()).toEqual(rhombus ? [] : [1, 2])
    for (const stroke of hatching) {
      const blade = blades[cell(middle(stroke))]
      if (!blade) throw new Error('every waste has its blade')
      for (const end of stroke) expect(toLine(end, blade)).toBeLessThan(1e-6)
    }
  })
})
