import { describe, expect, it } from 'vitest'
import { chamferChain, kite } from '../../src/geometry/kite.js'
import { circle, signedArea } from '../../src/geometry/outline.js'
import { distance, point } from '../../src/geometry/point.js'
import { solveStar } from '../../src/geometry/star.js'
import { starBody } from '../../src/plan/body.js'
import { degrees, massOf, mm } from '../../src/units/convert.js'
import { SHAPES, showShape, twoStarsOf } from '../geometry/sweep.js'

const THICKNESS = mm(19)

describe.each(SHAPES)('$points points, tip angle $tipAngle:', (shape) => {
  it.each(twoStarsOf(shape).map((star) => [showShape(shape), star] as const))(
    'the chamfer takes off what its prisms hold',
    (_, star) => {
      const chamfer = mm(Math.min(3, star.edgeDistance / 2))
      const { tip, nearValley } = kite(star)
      const [near, insetTip] = chamferChain(star, chamfer)
      // Along each tip edge lies a triangular prism with slanting ends: the edge L outside, L' inside. Its volume is the
      // integral of depth (c - s) times length L + (L' - L) s/c for s from 0 to c.
      const [outside, inside] = [distance(tip, nearValley), distance(insetTip, near)]
      const prism = chamfer ** 2 * (outside / 2 + (inside - outside) / 6)
      const face = ((outside + inside) / 2) * chamfer * Math.SQRT2
      const edges = 2 * star.points
      const plain = starBody(star, { thickness: THICKNESS })
      const chamfered = starBody(star, { thickness: THICKNESS, chamfer })
      expect((plain.armsVolume - chamfered.armsVolume) / (edges * prism)).toBeCloseTo(1, 9)
      expect(chamfered.coated.chamfers / (edges * face)).toBeCloseTo(1, 9)
      expect(plain.coated.chamfers).toBe(0)
      // n kites, each half the product of its diagonals (design, section 3).
      const area = (star.points * star.radius * distance(nearValley, kite(star).farValley)) / 2
      expect(plain.armsVolume / (area * THICKNESS)).toBeCloseTo(1, 9)
      expect(plain.coated.front / area).toBeCloseTo(1, 9)
      expect(plain.coated.edges).toBeCloseTo(edges * star.tipEdge * THICKNESS, 3)
    },
  )
})

describe('a square, as the star of four points whose arms fill it', () => {
  // Four kites with tip angles just under 90° fill a square of side 2 x tip edge: a body everybody can reckon.
  const star = solveStar(4, degrees(90 - 1e-9), 'tip-edge', mm(50))
  const body = starBody(star, {
    thickness: mm(20),
    plate: { outline: circle(point(0, 0), 40), thickness: mm(4) },
  })

  it('has the volume, faces, edges and joints of a board of 100 x 100 x 20 mm with a disc behind it', () => {
    expect(body.armsVolume).toBeCloseTo(100 * 100 * 20, 2)
    expect(body.plateVolume).toBeCloseTo(Math.PI * 40 ** 2 * 4, 6)
    expect(body.coated.front).toBeCloseTo(100 * 100, 3)
    // The disc hides as much of the back as it shows of its own.
    expect(body.coated.back).toBeCloseTo(100 * 100, 3)
    expect(body.coated.edges).toBeCloseTo(400 * 20 + 2 * Math.PI * 40 * 4, 3)
    expect(body.coated.all).toBeCloseTo(2 * 100 * 100 + 400 * 20 + 2 * Math.PI * 40 * 4, 2)
    expect(body.glue.joints).toBeCloseTo(4 * 50, 6)
    expect(body.glue.jointArea).toBeCloseTo(4 * 50 * 20, 4)
    expect(body.glue.plateArea).toBeCloseTo(Math.PI * 40 ** 2, 6)
  })

  it('weighs 100 g of wood of 500 kg/m³', () => {
    expect(massOf(body.armsVolume, 500)).toBeCloseTo(0.1, 9)
  })

  it('says nothing of a plate whose thickness nobody knows', () => {
    const outline = circle(point(0, 0), 40)
    const thin = starBody(star, { thickness: mm(20), plate: { outline } })
    expect(thin.plateVolume).toBeUndefined()
    expect(thin.glue.plateArea).toBe(signedArea(outline))
  })
})
