import { describe, expect, it, test } from 'vitest'
import { type Choice, choicesFor, labelOf } from '../../src/choose/choices.js'
import { meant, panelUse } from '../../src/choose/compare.js'
import { RANKS, ranked, starPart } from '../../src/choose/ranks.js'
import { ALL_POINTS, shapesFor } from '../../src/choose/shapes.js'
import { insetOutline } from '../../src/geometry/inset.js'
import { boxOf } from '../../src/geometry/outline.js'
import { type Star, starOutline } from '../../src/geometry/star.js'
import type { Order } from '../../src/order/order.js'
import { showProblem } from '../../src/order/problem.js'
import { mm } from '../../src/units/convert.js'
import { areaOf, minus, region } from '../geometry/clipping.js'
import { planOf } from '../orders.js'
import { cos, saw, sin, tan } from '../plan/shop-orders.js'

const STAR = 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]'
const SHOP = `{ saw: { limit: 45, kerf: 2.4 }, boards: [{ width: 70, length: 2400 }, { width: 95, length: 3000 }] }`
const orderWith = (shop: string, rest = ''): Order => planOf(`shop: ${shop}\n${rest}\n${STAR}`).order
const ORDER = orderWith(SHOP)
const found = (order: Order, points?: number): readonly Choice[] =>
  choicesFor(order, { quantity: 1, own: false, ...(points === undefined ? {} : { points }) }).found
const ALL = found(ORDER)
const FIVES = found(ORDER, 5)

describe('the shapes', () => {
  const labels = (limit: number) => shapesFor(ALL_POINTS, saw(limit, 0.5)).map(labelOf)

  it('are every regular star from 5 to 24 points: 110 of them (n/k with 1 < k < n/2, Coxeter 1973, 2.8)', () => {
    const regular = labels(75).filter((label) => label.includes('/'))
    expect(regular).toHaveLength(110)
    expect(new Set(regular).size).toBe(110)
    expect(regular).toEqual(expect.arrayContaining(['5/2', '6/2', '7/2', '7/3', '24/11']))
  })

  it('come once, though they are slenderest, regular and on marks at the same time', () => {
    const eights = shapesFor([8], saw(45, 0.5)).filter(({ tipAngle }) => tipAngle === 45)
    expect(eights).toEqual([{ points: 8, tipAngle: 45, step: 3, slenderest: true, onMarks: true }])
  })

  it('name the slenderest star of each number of points: 45° for five on a saw of 45° (design: 90° less the limit)', () => {
    const slenderest = shapesFor([5], saw(45, 0.5)).filter((shape) => shape.slenderest)
    expect(slenderest.map(({ tipAngle }) => tipAngle)).toEqual([45])
  })

  it('those on marks close on them: both settings are multiples of the scale, by the angles of the arm', () => {
    const onMarks = shapesFor(ALL_POINTS, saw(50, 0.5)).filter((shape) => shape.onMarks)
    expect(onMarks.length).toBeGreaterThan(60)
    for (const { points, tipAngle } of onMarks) {
      for (const setting of [90 - tipAngle, 90 - tipAngle / 2 - 180 / points]) {
        expect(Math.abs(setting * 2 - Math.round(setting * 2))).toBeLessThan(1e-9)
      }
    }
  })

  it('are all of them where points are given: every half-degree pair of a 45° saw that makes a five-pointed star', () => {
    // First cut a from -45 to 45, tip 90 - a, joint cut 90 - tip / 2 - 36 = 9 + a / 2.
    const halves = Array.from({ length: 181 }, (_, index) => index / 2 - 45)
    const tips = halves.flatMap((first) =>
      halves.includes(9 + first / 2) && 9 + first / 2 >= 0 && first > -18 ? [90 - first] : [],
    )
    const offered = FIVES.filter(({ shape, board }) => shape.onMarks && board?.width === 70)
    const shown = offered.filter(({ wholeBoard }) => !wholeBoard).map(({ plan }) => plan.star.tipAngle)
    expect(tips.length).toBeGreaterThan(60)
    expect(shown.sort((a, b) => b - a)).toEqual(tips)
  })

  it('seven points fall on no half-degree marks: 360° / 7 never does', () => {
    expect(shapesFor([7], saw(60, 0.5)).filter((shape) => shape.onMarks)).toEqual([])
  })
})

describe('every star that is offered can be made:', () => {
  it('the saw reaches both angles, and a board carries the arm', () => {
    expect(ALL.length).toBeGreaterThan(150)
    for (const { plan, board } of [...ALL, ...FIVES]) {
      const { star } = plan
      expect(Math.abs(90 - star.tipAngle)).toBeLessThanOrEqual(45 + 1e-9)
      expect(90 - star.tipAngle / 2 - 180 / star.points).toBeLessThanOrEqual(45 + 1e-9)
      // The arm's strip by the design's formula, from the star's radius.
      const strip = Math.max(star.tipEdge * sin(star.tipAngle), star.radius * sin(star.tipAngle / 2))
      expect(strip).toBeLessThanOrEqual((board?.width ?? 0) + 1e-6)
    }
  })

  it('on a wall, none is larger than the wall, and those that would be fill it', () => {
    const onWall = found(orderWith(SHOP, 'space: { across: 200, height: 250 }'))
    for (const { plan } of onWall) {
      expect(plan.star.across).toBeLessThanOrEqual(200 + 1e-6)
      expect(plan.star.height).toBeLessThanOrEqual(250 + 1e-6)
    }
    const five = onWall.find(({ label }) => label === '5@45')
    expect(five?.plan.star.across).toBeCloseTo(200, 6)
  })

  it('under a blade that reaches little, the cuts are as long as the reach at most', () => {
    const short = found(orderWith(SHOP.replace('kerf: 2.4', 'kerf: 2.4, crosscut: 80')))
    for (const { plan } of short) expect(plan.blank.longestCut).toBeLessThanOrEqual(80 + 1e-6)
    const five = short.find(({ label }) => label === '5@45')
    // The first cut goes through the strip at 45°.
    expect((five?.plan.star.armStrip ?? 0) / cos(45)).toBeCloseTo(80, 6)
  })

  it('none has an arm too small to clamp', () => {
    expect(found(orderWith('{ boards: [{ width: 20, length: 900 }] }'), 5)).toEqual([])
  })

  it('the rest are counted', () => {
    const { beyondSaw } = choicesFor(ORDER, { quantity: 1, own: false, points: 5 })
    expect(beyondSaw).toBe(1)
    expect(FIVES.map(({ label }) => label)).not.toContain('5/2')
  })
})

describe('stars that use a board without waste', () => {
  const whole = FIVES.filter(({ wholeBoard }) => wholeBoard)

  it('are offered where points are asked for', () => {
    expect(whole.length).toBeGreaterThan(10)
    expect(ALL.filter(({ wholeBoard }) => wholeBoard)).toEqual([])
  })

  it('take the whole length, slants, blade slots and all, in whole stars (the lengths added up again)', () => {
    for (const { plan, board, perBoard } of whole) {
      const { star } = plan
      const arms = perBoard?.arms ?? 0
      const side = star.armStrip / sin(star.tipAngle)
      const slot = 2.4 / sin(star.tipAngle)
      const used = star.armStrip * Math.abs(1 / tan(star.tipAngle)) + arms * (side + slot)
      expect(used).toBeCloseTo(board?.length ?? 0, 4)
      expect(arms % 5).toBe(0)
      expect(perBoard?.left).toBeLessThan(0.01)
    }
  })
})

describe('the ranks', () => {
  const fields: Readonly<Record<string, (choice: Choice) => number>> = {
    marks: (choice) => choice.markGap,
    size: (choice) => -choice.plan.star.across,
    wood: (choice) => -starPart(choice),
  }

  test.each(Object.entries(fields))('%s: the best first, and nobody is lost', (name, of) => {
    const by = RANKS.find((each) => each === name) ?? 'ease'
    const order = ranked(ALL, by).map(of)
    expect(order).toEqual([...order].sort((a, b) => a - b))
    expect(new Set(ranked(ALL, by))).toEqual(new Set(ALL))
  })

  it('ease: within the same points no star stands before one that is likelier to close by a percent', () => {
    const order = ranked(ALL, 'ease')
    expect(new Set(order)).toEqual(new Set(ALL))
    for (const points of ALL_POINTS) {
      const chances = order.filter(({ plan }) => plan.star.points === points).map(({ chance }) => chance)
      chances.slice(1).forEach((chance, index) => {
        expect(chance).toBeLessThan((chances[index] ?? 0) + 0.01)
      })
    }
    expect(order.slice(0, 3).map(({ plan }) => plan.star.points)).toEqual([3, 4, 6])
  })

  it('the part of the wood that becomes star is that of the outline (polygon-clipping) over the board it takes', () => {
    for (const choice of [...ALL].filter((_, index) => index % 23 === 0)) {
      const { plan, board } = choice
      const outline = areaOf(region(starOutline(plan.star).vertices))
      expect(starPart(choice)).toBeCloseTo(outline / (plan.boardPerStar * (board?.width ?? 0)), 6)
      expect(starPart(choice)).toBeLessThan(1)
    }
  })
})

describe('the star a person means', () => {
  const listed = ranked(ALL, 'ease')
  const asked = { quantity: 1, own: false }
  const labelFor = (word: string) => {
    const outcome = meant(word, listed, ORDER, asked)
    return outcome.ok ? outcome.value.label : outcome.problems.map(showProblem).join()
  }

  it('is known by number, label, and any tip angle that can be cut', () => {
    expect(labelFor('2')).toBe(listed[1]?.label)
    expect(labelFor('6/2')).toBe('6/2')
    expect(labelFor(' 5@45 ')).toBe('5@45')
    expect(labelFor('5@46,25')).toBe('5@46.25')
  })

  it.each([
    '',
    '0',
    '9999',
    '5/1',
    '5/3',
    '2@40',
    '25@40',
    '5@0',
    '5@108',
    '5@1e1',
    '-5@40',
    '<b>',
    '__proto__',
    '../5',
  ])('%j is no star, and is told so on one harmless line', (word) => {
    expect(labelFor(word)).toMatch(/^--compare: given .*Allowed: a number from the list/)
    expect(labelFor(word)).not.toMatch(/\n/)
  })

  it('a star that this saw does not cut is refused with the way out', () => {
    expect(labelFor('5/2')).toContain('cannot be made with this saw')
  })

  it('a star of the order that this saw does not cut is told to be left out, not to be unknown', () => {
    // First cut 90° - 36° = 54°, past the saw's 45°.
    const { order } = planOf(
      `shop: ${SHOP}\nstars: [{ name: Steep, points: 5, tip-angle: 36, board-width: 70 }]`,
    )
    const asked = { quantity: 1, own: true }
    const { found: all, ownLeftOut } = choicesFor(order, asked)
    expect(ownLeftOut).toEqual(['Steep'])
    const outcome = meant('steep', all, order, asked)
    expect(outcome.ok ? '' : outcome.problems.map(showProblem).join()).toContain('without a wedge')
  })
})

describe("the order's own stars", () => {
  const own = (text: string, asked = {}) => {
    const { order } = planOf(text)
    return choicesFor(order, { quantity: 1, own: true, points: 5, ...asked })
  }
  const OWN = '{ name: Boathouse, quantity: 3, points: 5, tip-angle: 45, board-width: 70'

  it('are left out where the wall has no room for them, and so are all others', () => {
    // Boathouse is 273.1 mm across.
    const { found: small, ownLeftOut } = own(`shop: ${SHOP}\nspace: { across: 273 }\nstars: [${OWN} }]`)
    expect(ownLeftOut).toEqual(['Boathouse'])
    expect(Math.max(...small.map(({ plan }) => plan.star.across))).toBeLessThanOrEqual(273 + 1e-6)
    expect(own(`shop: ${SHOP}\nspace: { across: 273.2 }\nstars: [${OWN} }]`).ownLeftOut).toEqual([])
  })

  it('are left out where the boards that there are do not give all their arms', () => {
    // A board of 1600 mm gives (1600 - 70) / 102.4 = 14 arms; three stars take 15.
    const with1600 = (count: number): string =>
      `shop: { saw: { limit: 45, kerf: 2.4 }, boards: [{ width: 70, length: 1600, count: ${count} }] }\nstars: [${OWN} }]`
    expect(own(with1600(1)).ownLeftOut).toEqual(['Boathouse'])
    expect(own(with1600(2)).ownLeftOut).toEqual([])
    expect(own(with1600(1), { quantity: 50 }).found).toEqual([])
  })

  it('nor are boards of another thickness counted, which no star would be mixed from', () => {
    const boards = (thin: number): string =>
      `shop: { saw: { limit: 45, kerf: 2.4 }, boards: [{ width: 70, thickness: 19, length: 1600, count: 1 }, { width: 70, thickness: 12, length: 1600, count: ${thin} }] }\nstars: [${OWN} }]`
    const asBoathouse = (thin: number) =>
      own(boards(thin), { quantity: 3 }).found.flatMap(({ plan }) =>
        plan.star.tipAngle === 45 && plan.star.armStrip > 69.9 ? [plan.thickness] : [],
      )
    expect(own(boards(2)).ownLeftOut).toEqual(['Boathouse'])
    expect(asBoathouse(2)).toEqual([12])
    expect(asBoathouse(1)).toEqual([])
  })

  it('are compared with the backing that they have', () => {
    const backed = `shop: ${SHOP}\nstars: [${OWN}, chamfer: 3, backing: { shape: polygon, inset: 10 } }]`
    const boathouse = own(backed).found.find(({ label }) => label === 'Boathouse')
    const use = boathouse && panelUse(boathouse.plan, [])
    expect([use?.across, use?.height]).toEqual([
      boathouse?.plan.backing?.across,
      boathouse?.plan.backing?.height,
    ])
    // Without one: the star's own shape, 12 mm behind the chamfer.
    const bare = own(`shop: ${SHOP}\nstars: [${OWN}, chamfer: 3 }]`).found.find(
      ({ label }) => label === 'Boathouse',
    )
    const { min, max } = boxOf([insetOutline(bare?.plan.star as Star, 'star', mm(15))])
    expect(bare && panelUse(bare.plan, [])?.across).toBeCloseTo(max.x - min.x, 9)
  })
})

describe('backings of a panel', () => {
  it('lie inside the star, and as many fit as boxes in rows', () => {
    const [choice] = FIVES
    if (!choice) throw new Error('five points can be cut')
    const { star } = choice.plan
    const inset = region(insetOutline(star, 'star', mm(12)).vertices)
    expect(areaOf(minus(inset, region(starOutline(star).vertices)))).toBeLessThan(1e-6)
    const panel = { length: mm(1500), width: mm(750), edge: mm(10), gap: mm(4) }
    const use = panelUse(choice.plan, [panel])
    const [across, height] = [use?.across ?? 0, use?.height ?? 0]
    const rows = [
      Math.floor(1484 / (across + 4)) * Math.floor(734 / (height + 4)),
      Math.floor(1484 / (height + 4)) * Math.floor(734 / (across + 4)),
    ]
    expect(use?.perPanel).toBe(Math.max(...rows))
    expect(panelUse(choice.plan, [])).not.toHaveProperty('perPanel')
  })
})
