import { describe, expect, it, test } from 'vitest'
import table from '../../shared/wood-species.json' with { type: 'json' }
import { solveStar } from '../../src/geometry/star.js'
import { movedStar, sizeChange } from '../../src/season/season.js'
import { planSeason } from '../../src/season/season-plan.js'
import { speciesNamed } from '../../src/tables/species.js'
import { degrees, mm, percent } from '../../src/units/convert.js'
import { SHAPES, showShape, twoStarsOf } from '../geometry/sweep.js'
import { planOf } from '../orders.js'

describe('dimensional change', () => {
  // Wood Handbook, chapter 13, worked example: white fir, flat-grained, 232 mm wide, from 8 to 11 %.
  it('is that of the handbook: 1.705 mm', () => {
    const change = sizeChange(speciesNamed('white fir')?.tangential ?? Number.NaN, percent(8), percent(11))
    expect(232 * change).toBeCloseTo(table.worked_example.delta_mm, 3)
    expect(232 * (1 + change)).toBeCloseTo(233.7, 1)
  })

  // EN 1313-1:2010, clause 5: 0.25 % per 1 %; a 100 mm softwood board from 20 to 12 % loses 2 mm.
  it('is that of EN 1313-1 for a softwood without a name', () => {
    const [star] = planSeason(planOf('stars: [{ points: 5, tip-angle: 45, board-width: 100 }]')).stars
    expect(100 * sizeChange(star?.coefficient ?? Number.NaN, percent(20), percent(12))).toBeCloseTo(-2, 9)
  })
})

describe('a star of moved arms', () => {
  it('opens by 1.9° and 2.8 mm for 1 % of shrinkage: five points, 45°, a board of 3 1/2 in (derived by hand)', () => {
    const star = solveStar(5, degrees(45), 'board-width', mm(88.9))
    const { closure, gap } = movedStar(star, 'edge', -0.01)
    expect(closure).toBeCloseTo(1.9, 1)
    expect(gap).toBeCloseTo(2.8, 1)
  })

  /*
   * Derived by hand. A line at angle a to the grain turns by (change / 2) sin 2a to first order. The joint edges lie
   * symmetrically about the arm's axis, which is at half the tip angle to the grain (or on it), and their angles differ
   * by the centre angle: closure = -n change sin(centre) cos(tip), and without the cosine along the axis. So arms of a
   * 90° tip laid along an edge do not open at all, and fatter ones gape the other way.
   */
  it.each(SHAPES.map((shape) => [showShape(shape), shape] as const))(
    '%s: opens by the change times the sine of its centre angle, along an edge times the cosine of its tip',
    (_, shape) => {
      const change = 1e-5
      for (const star of twoStarsOf(shape)) {
        const radian = Math.PI / 180
        const along = (-star.points * change * Math.sin(star.centreAngle * radian)) / radian
        const dry = movedStar(star, 'axis', -change)
        expect(movedStar(star, 'axis', change).closure / along).toBeCloseTo(1, 3)
        expect(dry.closure / -along).toBeCloseTo(1, 3)
        // The shallower the tip's cosine, the more the second order shows beside it: it is left 1e-3 of the whole.
        const overEdge = along * Math.cos(star.tipAngle * radian)
        expect((movedStar(star, 'edge', change).closure - overEdge) / along).toBeCloseTo(0, 3)
        for (const grain of ['edge', 'axis'] as const) {
          expect(movedStar(star, grain, 0)).toMatchObject({ closure: 0, gap: 0 })
        }
      }
    },
  )

  it('the gap is what n arms laid edge to edge leave open: points turned one by one', () => {
    for (const [points, tip, change] of [
      [5, 45, -0.012],
      [5, 36, 0.008],
      [6, 60, -0.02],
      [8, 50, 0.01],
      [12, 30, -0.01],
    ] as const) {
      const star = solveStar(points, degrees(tip), 'radius', mm(200))
      for (const grain of ['edge', 'axis'] as const) {
        const { arm, gap, step } = movedStar(star, grain, change)
        const [near, far] = arm.jointEdges
        // The first arm's free joint edge lies along 0, the last one's at n centre angles.
        const end = ((points * arm.centreAngle) / 180) * Math.PI
        const onShorter = Math.min(near, far)
        const opened = Math.hypot(onShorter - onShorter * Math.cos(end), onShorter * Math.sin(end))
        // A step beside the gap is told apart; the gap is measured half-way between both edges' ends.
        expect(Math.abs(gap - opened)).toBeLessThanOrEqual((step / onShorter) * gap + 1e-9)
        expect(step).toBeCloseTo(Math.abs(near - far), 12)
      }
    }
  })
})

const seasonOf = (keys: string, star = 'points: 5, tip-angle: 45, board-width: 90') => {
  const [first] = planSeason(planOf(`${keys}\nstars: [{ ${star} }]`)).stars
  if (!first) throw new Error('one star has one season')
  return first
}
const codes = (star: ReturnType<typeof seasonOf>) => star.advice.map(({ code }) => code)

describe('what the season rests on', () => {
  test('flat-sawn boards move by the tangential coefficient, quarter-sawn ones by the radial', () => {
    // Wood Handbook, Table 13-5: sugar maple.
    expect(seasonOf('shop: { wood: { species: sugar maple } }').coefficient).toBe(0.00353)
    expect(seasonOf('shop: { wood: { species: sugar maple, rings: quarter } }').coefficient).toBe(0.00165)
    expect(seasonOf('shop: { wood: { tangential: 0.30 %, radial: 0.14 % } }').coefficient).toBeCloseTo(
      0.003,
      12,
    )
  })

  test('the wood is that of the board the star is cut from', () => {
    const boards =
      'shop: { wood: { species: red oak }, boards: [{ width: 50, length: 2 m, wood: { species: white ash } }, { width: 95, length: 2 m, wood: { species: black cherry } }] }'
    expect(seasonOf(boards).wood.name).toBe('black cherry')
    expect(seasonOf(boards, 'points: 5, tip-angle: 45, board-width: 40').wood.name).toBe('white ash')
  })

  test('a star may hang elsewhere', () => {
    const { winter, summer } = seasonOf(
      'climate: { wall: { winter: { moisture: 7 }, summer: { moisture: 10 } } }',
      'points: 5, tip-angle: 45, board-width: 90, wall: { summer: { moisture: 13 } }',
    )
    expect([winter.moisture, summer.moisture]).toEqual([7, 13])
  })
})

describe('advice', () => {
  const air = (workshop: number, winter: number, summer: number) =>
    `climate: { workshop: { moisture: ${workshop} }, wall: { winter: { moisture: ${winter} }, summer: { moisture: ${summer} } } }`

  test('outside 6 to 14 % the coefficients do not hold (Wood Handbook, Table 13-5), and every place is named', () => {
    const { advice, winter, summer, workshop } = seasonOf(air(9, 5.5, 14.5))
    expect([workshop.holds, winter.holds, summer.holds]).toEqual([true, false, false])
    expect(advice[0]).toEqual({
      code: 'coefficients-do-not-hold',
      text: 'The coefficients hold from 6 to 14 % of moisture only. They do not hold in winter (5.5 %) and in summer (14.5 %): take those figures for a hint, not for a measure.',
    })
    expect(codes(seasonOf(air(9, 6, 14)))).not.toContain('coefficients-do-not-hold')
    expect(codes(seasonOf(air(15, 8, 9)))).toContain('coefficients-do-not-hold')
  })

  test('below 30 °F the handbook has no table', () => {
    const cold = 'climate: { wall: { winter: { humidity: 80, temperature: -5 } } }'
    expect(
      seasonOf(cold)
        .advice.map(({ text }) => text)
        .join(' '),
    ).toContain("Below -1 °C the handbook prints no table: the moisture in winter is its equation's alone.")
    expect(codes(seasonOf('climate: { wall: { winter: { humidity: 80, temperature: 0 } } }'))).not.toContain(
      'equation-only',
    )
  })

  test('gluing at the mean halves what one dry season does', () => {
    const wet = seasonOf(air(12, 8, 12))
    const worst = Math.max(wet.winter.byGrain.edge.gap, wet.summer.byGrain.edge.gap)
    const at = seasonOf(air(10, 8, 12))
    const then = Math.max(at.winter.byGrain.edge.gap, at.summer.byGrain.edge.gap)
    expect(then / worst).toBeCloseTo(0.5, 1)
    const text = wet.advice.find(({ code }) => code === 'glue-at-mean')?.text
    expect(text).toContain(
      `10 % of moisture: ${then.toFixed(1)} mm at worst instead of ${worst.toFixed(1)} mm.`,
    )
    expect(at.advice.find(({ code }) => code === 'glue-at-mean')?.text).toContain('cut and glue as it is')
  })

  test('nobody is told to glue wood that is too damp for it', () => {
    const text = seasonOf(air(9, 18, 12)).advice.find(({ code }) => code === 'glue-at-mean')?.text
    expect(text).toContain('at 12 % of moisture, as damp as glue takes')
  })

  test('a star that hardly moves is left alone; one that does is offered calmer wood and another sawing', () => {
    expect(codes(seasonOf(air(9, 8.9, 9.1)))).toEqual(['calm', 'acclimatise', 'glue-at-mean'])
    const restless = seasonOf(`shop: { wood: { species: American beech } }\n${air(8, 6, 13)}`)
    expect(codes(restless)).toEqual(['acclimatise', 'glue-at-mean', 'quarter-sawn', 'calmer-wood'])
  })

  test('the calmest of Table 13-5 are named with what they do', () => {
    const beech = seasonOf(`shop: { wood: { species: American beech } }\n${air(8, 6, 13)}`)
    // Sugar pine has the smallest C_T of the softwoods here, quaking aspen of the hardwoods: 0.00194 and 0.00234.
    const gap = Math.max(beech.winter.byGrain.edge.gap, beech.summer.byGrain.edge.gap)
    const text = beech.advice.find(({ code }) => code === 'calmer-wood')?.text ?? ''
    const [pine, aspen] = [...text.matchAll(/([\d.]+) mm/g)].map(([, shown]) => Number(shown))
    // Gaps go with the coefficients, but for the bend of a few per cent over such a way.
    expect(pine).toBeCloseTo((gap * 0.00194) / 0.00431, 0)
    expect(aspen).toBeCloseTo((gap * 0.00234) / 0.00431, 0)
    expect(text).toContain('sugar pine')
    expect(text).toContain('quaking aspen')
  })

  test('a plate that is much wider than the wood moves is glued, else it floats', () => {
    const star = 'points: 5, tip-angle: 45, board-width: 90, backing: {}'
    expect(codes(seasonOf(air(9, 8.5, 9.5), star))).toContain('glue-backing')
    expect(codes(seasonOf(air(9, 6, 13), star))).toContain('float-backing')
  })

  test('every advice but the warnings tells the size of its effect', () => {
    const star = seasonOf(
      `shop: { wood: { species: red oak } }\n${air(12, 6, 11)}`,
      'points: 5, tip-angle: 45, board-width: 90, backing: {}',
    )
    expect(star.advice.length).toBeGreaterThan(4)
    for (const { text } of star.advice) expect(text).toMatch(/\d(?:\.\d)? mm/)
  })
})

describe('the other way to lay the kite', () => {
  it('takes the width from valley to valley, and cuts at 90° less half the angles', () => {
    const { layout, plan } = seasonOf('shop: { saw: { limit: 60 }, boards: [{ width: 95, length: 2 m }] }')
    // 2 L sin 22.5° with L = 90 / sin 45°, by hand.
    expect(layout.width).toBeCloseTo((2 * 90 * Math.sin(Math.PI / 8)) / Math.SQRT1_2, 9)
    expect(layout.length).toBeCloseTo(plan.star.radius + 2 * ((3 / 32) * 25.4), 6)
    expect([layout.tipMiter, layout.jointMiter]).toEqual([67.5, 54])
    expect(layout).toMatchObject({ sawReaches: false, boardAllows: false })
  })

  it('says nothing of boards when the order has none', () => {
    expect(seasonOf('').layout.boardAllows).toBeUndefined()
  })
})
