import { describe, expect, it } from 'vitest'
import table from '../../shared/star-geometry.json' with { type: 'json' }
import { kite, kiteArea, kiteWidth } from '../../src/geometry/kite.js'
import { signedArea } from '../../src/geometry/outline.js'
import { distance } from '../../src/geometry/point.js'
import { regularTipAngle, type Star, solveStar, starCorners, starOutline } from '../../src/geometry/star.js'
import { degrees, mm } from '../../src/units/convert.js'

// Source: Coxeter, Regular Polytopes (3rd ed., Dover 1973), chapters 2 and 6; how it was seen stands in the table.

const R = 250
const PHI = (1 + Math.sqrt(5)) / 2

const expectSame = (got: number, expected: number) =>
  expect(Math.abs(got / expected - 1), `${got} for ${expected}`).toBeLessThan(1e-12)

const regular = (points: number, step: number): Star =>
  solveStar(points, regularTipAngle(points, step), 'radius', mm(R))

/** Tip i stands at 2i, the valley after it at 2i + 1. */
const corner = (star: Star, index: number) => {
  const found = starCorners(star.points, star.radius, star.valleyRadius)[index]
  if (!found) throw new RangeError(`no corner ${index}`)
  return found
}

/** The regular n-gon through the tips. */
const hullArea = (points: number) => (points / 2) * R * R * Math.sin((2 * Math.PI) / points)

describe.each(table.stars)('the regular star {$n/$k} agrees with the table', (row) => {
  const star = regular(row.n, row.k)

  it('in its angles', () => {
    expectSame(star.tipAngle, row.tip_angle_deg)
    expectSame(star.centreAngle, row.kite_centre_angle_deg)
    expectSame(star.sideAngle, row.kite_side_angle_deg)
    // Two arms meet at a valley.
    expectSame(2 * star.sideAngle, row.reflex_interior_deg)
  })

  it('in its lengths', () => {
    expectSame(star.radius, R)
    expectSame(star.valleyRadius / R, row.inner_over_outer_radius)
    expectSame(star.jointEdge / R, row.inner_over_outer_radius)
    expectSame(star.tipEdge / R, row.outline_edge_over_R)
    expectSame(distance(corner(star, 0), corner(star, 1)) / R, row.outline_edge_over_R)
    expectSame(distance(corner(star, 0), corner(star, 2 * row.k)) / R, row.chord_over_R)
    expectSame(kiteWidth(star) / R, row.kite_max_width_over_R)
  })

  it('in its areas', () => {
    expectSame((row.n * kiteArea(star)) / R ** 2, row.area_over_R2)
    expectSame(signedArea(starOutline(star)) / R ** 2, row.area_over_R2)
    expectSame(signedArea(starOutline(star)) / hullArea(row.n), row.area_over_hull)
    expectSame((star.valleyRadius / R) ** 2, row.core_over_hull)
  })

  it('in its kite, measured corner to corner', () => {
    const { tip, nearValley, centre, farValley } = kite(star)
    expectSame(distance(tip, nearValley) / R, row.outline_edge_over_R)
    expectSame(distance(tip, farValley) / R, row.outline_edge_over_R)
    expectSame(distance(tip, centre) / R, 1)
    expectSame(distance(nearValley, centre) / R, row.inner_over_outer_radius)
    expectSame(distance(farValley, centre) / R, row.inner_over_outer_radius)
    expectSame(distance(nearValley, farValley) / R, row.kite_max_width_over_R)
  })
})

describe('closed forms with the golden ratio and square roots', () => {
  // Each name and value stands under closed_forms in the table.
  const pentagram = regular(5, 2)
  const chord = distance(corner(pentagram, 0), corner(pentagram, 4))
  const cases: readonly (readonly [string, number, number])[] = [
    ['{5/2} inner over outer radius is 1 / phi^2', pentagram.valleyRadius / R, PHI ** -2],
    ['{5/2} area over hull is 2 / phi^3', (5 * kiteArea(pentagram)) / hullArea(5), 2 / PHI ** 3],
    ['{5/2} area over hull is 2 sqrt 5 - 4', (5 * kiteArea(pentagram)) / hullArea(5), 2 * Math.sqrt(5) - 4],
    ['{5/2} core over hull is 1 / phi^4', (pentagram.valleyRadius / R) ** 2, PHI ** -4],
    ['{5/2} tip edge over chord is 1 / phi^2', pentagram.tipEdge / chord, PHI ** -2],
    [
      '{5/2} middle of the chord is 1 / phi^3 of it',
      distance(corner(pentagram, 1), corner(pentagram, 3)) / chord,
      PHI ** -3,
    ],
    ['{6/2} inner over outer radius is 1 / sqrt 3', regular(6, 2).valleyRadius / R, 1 / Math.sqrt(3)],
    ['{6/2} area over hull is 2 / 3', (6 * kiteArea(regular(6, 2))) / hullArea(6), 2 / 3],
    [
      '{8/3} inner over outer radius is sqrt(2 - sqrt 2) / sqrt 2',
      regular(8, 3).valleyRadius / R,
      Math.sqrt(2 - Math.SQRT2) / Math.SQRT2,
    ],
    ['{8/3} area over hull is 2 - sqrt 2', (8 * kiteArea(regular(8, 3))) / hullArea(8), 2 - Math.SQRT2],
  ]
  it.each(cases)('%s', (_, got, expected) => expectSame(got, expected))

  const rhombi = [
    [6, 2, 60, 120],
    [8, 3, 45, 135],
    [10, 4, 36, 144],
    [12, 5, 30, 150],
  ] as const
  it.each(rhombi)('the arm of {%i/%i} is a rhombus of %i and %i degrees', (points, step, sharp, blunt) => {
    const star = regular(points, step)
    expectSame(star.tipAngle, sharp)
    expectSame(star.centreAngle, sharp)
    expectSame(star.sideAngle, blunt)
    expectSame(star.tipEdge, star.jointEdge)
  })
})

describe('the valley line of a regular star', () => {
  const stars = Array.from({ length: 20 }, (_, index) => index + 5).flatMap((points) =>
    Array.from({ length: Math.ceil(points / 2) - 2 }, (_, index) => [points, index + 2] as const),
  )

  // By definition of {n/k}: its edges are the straight lines between tips k apart.
  it.each(stars)('of {%i/%i} runs straight from tip to tip', (points, step) => {
    const { valleyLine } = regular(points, step)
    expect(valleyLine.apart).toBe(step)
    expect(Math.abs(valleyLine.dip)).toBeLessThan(1e-12 * R)
  })

  it.each(stars)(
    'of a star a little fatter than {%i/%i} passes outside it, of a slimmer one inside',
    (points, step) => {
      const tip = regularTipAngle(points, step)
      const [fatter, slimmer] = [1, -1].map((by) => solveStar(points, degrees(tip + by / 8), 'radius', mm(R)))
      if (!fatter || !slimmer) throw new Error('two stars were made')
      expect(fatter.valleyLine.dip).toBeGreaterThan(0)
      // Is there a slimmer regular star to compare with? Then the slimmer one is fatter than that.
      const slimmest = Math.ceil(points / 2) - 1
      expect(Math.sign(slimmer.valleyLine.dip)).toBe(step === slimmest ? -1 : 1)
      for (const star of [fatter, slimmer]) {
        const { apart, dip } = star.valleyLine
        const [from, to, valley] = [corner(star, 0), corner(star, 2 * apart), corner(star, 1)]
        const twice = (to.x - from.x) * (valley.y - from.y) - (to.y - from.y) * (valley.x - from.x)
        // The way from a tip counter-clockwise to another has the centre on its left.
        expect(-twice / distance(from, to)).toBeCloseTo(dip, 9)
      }
    },
  )
})
