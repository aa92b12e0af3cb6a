import { expect, it, vi } from 'vitest'
import { blankCorners } from '../../src/geometry/kite.js'
import { closedOutline } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { blankStop } from '../../src/jigs/blank-stop.js'
import { areaBeyond, commonArea, fromEdge, inside, shrunk } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const PLANS = sweptPlans()
/** A hole of 6.5 mm with 12 mm of wood, the panel's thickness, on either side. */
const SPACER = 30.5

/** The board's slanted end: from the fence at the origin, w / sin of the tip angle long. */
const boardEnd = (tipAngle: number, strip: number, steps: number) =>
  Array.from({ length: steps + 1 }, (_, step) => {
    const y = (strip * step) / steps
    return point(y / Math.tan((tipAngle * Math.PI) / 180), y)
  })

it('meets the whole slanted end with its spacer, but for 3 mm of dust notch, and the spacer meets the whole face', () => {
  for (const { plan, order, name } of PLANS) {
    const { star } = plan
    const jig = blankStop(plan, order.shop.jigStock)
    const [plate, , spacer] = jig.parts.map(({ outer }) => inside(outer))
    if (!plate || !spacer) throw new Error('a stop has three parts')
    const thick = SPACER / Math.sin((star.tipAngle * Math.PI) / 180)
    for (const at of boardEnd(star.tipAngle, star.armStrip, 12)) {
      if (at.y >= 3) expect(fromEdge(at, spacer), name).toBeLessThan(1e-5)
      expect(fromEdge(point(at.x - thick, at.y), plate), name).toBeLessThan(1e-5)
    }
    const wood = inside(closedOutline(blankCorners(star, plan.blank.side)))
    expect(commonArea(shrunk(wood, 1e-4), spacer), name).toBeLessThan(1e-3)
    expect(commonArea(shrunk(wood, 1e-4), plate), name).toBeLessThan(1e-3)
    expect(commonArea(shrunk(spacer, 1e-4), plate), name).toBeLessThan(1e-3)
    const rail = inside(jig.parts[1]?.footprint ?? closedOutline([]))
    expect(areaBeyond(rail, plate), `${name}: the rail stands on the plate`).toBeLessThan(1e-3)
  }
})

it('leaves the blank free by the whole spacer once that is lifted out: its thickness square to the blade, nothing trapped', () => {
  for (const { plan, order, name } of PLANS) {
    const { star, blank } = plan
    const jig = blankStop(plan, order.shop.jigStock)
    const plate = inside(jig.parts[0]?.outer ?? closedOutline([]))
    const [sin, cos] = [Math.sin((star.tipAngle * Math.PI) / 180), Math.cos((star.tipAngle * Math.PI) / 180)]
    const pushed = (by: number) =>
      inside(closedOutline(blankCorners(star, blank.side).map(({ x, y }) => point(x - by / sin, y))))
    expect(commonArea(shrunk(pushed(SPACER - 0.01), 1e-3), plate), name).toBeLessThan(1e-3)
    expect(commonArea(shrunk(pushed(SPACER + 1), 1e-3), plate), name).toBeGreaterThan(0.5)
    // The blade's near side is the blank's own side away from the board's end.
    const [from] = jig.inUse?.blade ?? []
    expect(((from?.x ?? 0) - 0) * sin - (from?.y ?? 0) * cos, name).toBeCloseTo(star.armStrip, 6)
  }
})

it('has nothing in the way of the blade, and clamps 150 mm away or says how near they are', () => {
  for (const { plan, order, name } of PLANS) {
    const { star, blank } = plan
    const jig = blankStop(plan, order.shop.jigStock)
    const [sin, cos] = [Math.sin((star.tipAngle * Math.PI) / 180), Math.cos((star.tipAngle * Math.PI) / 180)]
    const away = ({ x, y }: { x: number; y: number }) => (blank.side - x) * sin + y * cos
    for (const { outer, footprint } of jig.parts)
      for (const at of (footprint ?? outer).vertices) expect(away(at), name).toBeGreaterThan(3)
    const clamps = jig.hands.find(({ place }) => place === "the rail's clamps")
    // The mark on the rail is where clamps may begin, 45 mm nearer than the middle of their room.
    const nearest = away({ x: (clamps?.at.x ?? 0) + 45, y: 0 })
    expect(nearest, name).toBeCloseTo(clamps?.fromBlade ?? 0, 6)
  }
  const usual = PLANS.filter(({ plan }) => plan.star.tipAngle >= 30)
  for (const { plan, order, name } of usual) {
    const clamps = blankStop(plan, order.shop.jigStock).hands[0]
    expect(clamps?.fromBlade, name).toBeGreaterThanOrEqual(150 - 1e-6)
  }
})

it('has its screws in the plate, under the rail', () => {
  for (const { plan, order, name } of PLANS) {
    const jig = blankStop(plan, order.shop.jigStock)
    const [plate, rail] = jig.parts
    if (!plate || !rail?.footprint) throw new Error('a stop has a plate and a rail')
    for (const hole of plate.inner) {
      const whole = commonArea(inside(hole), inside(hole))
      expect(commonArea(inside(hole), inside(plate.outer)), name).toBeCloseTo(whole, 3)
      expect(commonArea(inside(hole), inside(rail.footprint)), name).toBeCloseTo(whole, 3)
    }
  }
})
