import { describe, expect, it, vi } from 'vitest'
import { jigWords } from '../../src/compose/jig-words.js'
import { jigOf } from '../../src/compose/jigs.js'
import { blankCorners, kite, kiteOutline } from '../../src/geometry/kite.js'
import { closedOutline, type Outline } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { pastBlade } from '../../src/jigs/uncut-wood.js'
import type { JigName } from '../../src/order/order.js'
import { areaBeyond, commonArea, grown, inside, shrunk } from '../cutter/swept.js'
import { type SweptPlan, sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

const drawn = (name: JigName, swept: SweptPlan[]) =>
  swept.flatMap(({ plan, order, name: star }) => {
    const jig = jigOf(name, plan, order)
    return jig.ok ? [{ star, plan, jig: jig.value, words: jigWords(jig.value, plan, order) }] : []
  })

const CRADLES = drawn('arm-cradle', sweptPlans())

const shifted = ({ vertices }: Outline, by: number, angle: number): Outline => {
  const way = (angle * Math.PI) / 180
  return closedOutline(vertices.map(({ x, y }) => point(x + by * Math.cos(way), y + by * Math.sin(way))))
}

it('every way that strip and block leave free is told, and no other: the arm is pushed there, by Clipper2', () => {
  let [off, along] = [0, 0]
  for (const { star, plan, jig, words } of CRADLES) {
    const { tipAngle } = plan.star
    // Within a fifth of a degree of square a push of 3 mm runs along the block, not into it.
    if (Math.abs(tipAngle - 90) < 0.2 && tipAngle !== 90) continue
    const walls = jig.parts
      .filter(({ word }) => word === 'fence strip' || word === 'tip block')
      .map(({ outer }) => inside(outer))
    const isFree = (angle: number): boolean => {
      const pushed = shrunk(inside(shifted(kiteOutline(kite(plan.star)), 3, angle)), 0.001)
      return walls.every((wall) => commonArea(pushed, wall) < 1e-4)
    }
    const told = words.steps.find((step) => step.startsWith('The arm can still move')) ?? ''
    expect(told.includes('along the strip towards the blade'), star).toBe(isFree(0))
    expect(told.includes('straight off the strip'), star).toBe(isFree(90))
    expect(told.includes('along the block'), star).toBe(isFree(tipAngle))
    // Nothing lies over it but the clamp, which takes all of these.
    expect(told, star).toMatch(/, and up: only the toggle clamp stops it\. Close it before every cut\.$/)
    if (told.includes('straight off')) off += 1
    else along += 1
  }
  expect(off).toBeGreaterThan(20)
  expect(along).toBeGreaterThan(100)
})

it('the uncut wood that sticks out 50 mm past base or blade is told, and that it wants a rest', () => {
  let [rests, none] = [0, 0]
  for (const { star, plan, jig, words } of CRADLES) {
    const told = words.steps.find((step) => step.startsWith('Cut 2: the uncut wood reaches')) ?? ''
    const far = (past: string): number =>
      Number(new RegExp(`([\\d.]+) mm past the ${past}`).exec(told)?.[1] ?? 0)
    const base = inside(jig.parts[0]?.outer ?? closedOutline([]))
    const uncut = inside(jig.inUse?.uncut ?? closedOutline([]))
    // Grown by what is told the base carries all of it; grown by less it does not.
    const beyond = (by: number): number => areaBeyond(uncut, grown(base, by))
    if (far('base') > 0) {
      expect(beyond(far('base') + 0.1), star).toBeLessThan(1e-3)
      expect(beyond(far('base') - 2), star).toBeGreaterThan(1e-3)
    } else expect(beyond(50.1), star).toBeLessThan(1e-3)
    // The blade's line by law of the kite: the joint edge leans by half of tip and centre angle from the fence.
    const { points, tipAngle, tipEdge } = plan.star
    const lean = ((180 - (360 - tipAngle - 360 / points) / 2) * Math.PI) / 180
    const waste = Math.max(
      ...blankCorners(plan.star, plan.blank.side).map(
        ({ x, y }) => (x - tipEdge) * Math.sin(lean) - y * Math.cos(lean),
      ),
    )
    expect(pastBlade(plan), star).toBeCloseTo(waste, 6)
    expect(Math.abs(far('blade') - (waste > 50 ? waste : 0)), star).toBeLessThan(0.051)
    if (told) rests += 1
    else none += 1
  }
  expect(Math.min(rests, none)).toBeGreaterThan(50)
})

describe.each([9, 12, 18, 25])('of panel of %s mm', (thickness) => {
  const stock = `jig-stock: { thickness: ${thickness}, hands: 180 }`
  const sizes = (text = ''): [number, number, number][] =>
    [...text.matchAll(/(\d+) (?:wood screws|bolts?) M?([\d.]+) × (\d+) mm/g)].map(([, ...each]) =>
      each.map(Number),
    ) as [number, number, number][]

  it('screws are counted, bite, and end within the wood; bolts reach through with room for their nuts', () => {
    for (const { star, jig, words } of drawn('arm-cradle', sweptPlans(stock).slice(0, 60))) {
      const pilots = jig.parts.flatMap(({ pilots = [] }) => pilots)
      const [[count = 0, wide = 0, long = 0] = []] = sizes(words.hardware[0])
      expect([count, wide], star).toEqual([pilots.length, 4])
      expect(long, star).toBeLessThanOrEqual(2 * thickness - 2)
      expect(long, star).toBeGreaterThan(1.3 * thickness)
      const [[feet = 0, bolt = 0, foot = 0] = []] = sizes(words.hardware[1])
      // M3 goes through 4 mm; M4 wants 4.3 mm (ISO 273, fine series, from memory).
      expect([feet, bolt], star).toEqual([4, 3])
      expect(foot, star).toBeGreaterThanOrEqual(thickness + 10)
      const [, bar = 0] = /a bolt M6 × (\d+) mm/.exec(words.hardware[2] ?? '')?.map(Number) ?? []
      expect(bar, star).toBeGreaterThanOrEqual(thickness + 10)
    }
    const wedged = sweptPlans(stock, 42).slice(0, 90)
    for (const [name, rails] of [
      ['blank-stop', 1],
      ['first-cut-wedge', 2],
    ] as const)
      for (const { star, jig, words } of drawn(name, wedged)) {
        const holes = jig.parts.filter(({ word }) => word.endsWith('plate')).flatMap(({ inner }) => inner)
        const [[count = 0, , long = 0] = []] = sizes(words.hardware[0])
        expect([count, count], star).toEqual([holes.length, 3 * rails])
        // Through the plate, and 15 to 30 mm into the rail, which stands 60 mm high.
        expect(long, star).toBeGreaterThanOrEqual(thickness + 15)
        expect(long, star).toBeLessThanOrEqual(thickness + 30)
        expect(words.hardware[1], star).toContain('1 for the board, 180.0 mm or more from the kerf')
      }
  })
})

it('the edge of the blank stop is told as it stands: slanted, square, leaning back', () => {
  const stops = drawn('blank-stop', sweptPlans())
  const told = (within: (tipAngle: number) => boolean): string[] =>
    stops.filter(({ plan }) => within(plan.star.tipAngle)).map(({ words }) => words.steps.join(' '))
  const [slanted, square, back] = [
    told((angle) => angle < 90),
    told((angle) => angle === 90),
    told((angle) => angle > 90),
  ]
  expect(Math.min(slanted.length / 20, square.length, back.length / 20)).toBeGreaterThanOrEqual(1)
  for (const steps of square) {
    expect(steps).toContain("the stop's square edge")
    expect(steps).not.toMatch(/slanted|leans/)
  }
  for (const steps of back) expect(steps).toContain('The slanted edge leans back')
  for (const steps of slanted) expect(steps).not.toContain('leans back')
})
