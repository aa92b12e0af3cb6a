import { describe, expect, it } from 'vitest'
import { type SawScene, sawScenes } from '../../src/compose/saw-scene.js'
import { distance, type Point, point } from '../../src/geometry/point.js'
import type { StarPlan } from '../../src/plan/plan.js'
import { areaOf, minus, overlap, type Region, region } from '../geometry/clipping.js'
import { sides, toLine } from '../geometry/distances.js'
import { SHAPES, showShape } from '../geometry/sweep.js'
import { cos, FAR_SAW, sin, starPlan, tan, tryStarPlan } from '../plan/shop-orders.js'

/*
 * The drawings at the saw against wood that is cut as they show it. Oracles: the angles of a kite add up to 360°, so
 * first miter = 90° - tip and joint miter = 90° - tip/2 - 180°/n, by hand; polygon-clipping saws the drawn wood along
 * the drawn blade; the kite is built anew from its sides and angles by the law of sines. Which way a saw swings is a
 * fact of the trade (common practice, no published source): the operator stands across from the fence, the cut runs
 * from the fence to the handle.
 */

const KERF = FAR_SAW.kerf
const FAR = 1e5
/** Far below what can be drawn or sawn, in mm. */
const SAME = 1e-4
const SAWS = [FAR_SAW, { ...FAR_SAW, limit: 45 }]

const planned = (points: number, tipAngle: number, saw: object): StarPlan | undefined => {
  const outcome = tryStarPlan({ points, 'tip-angle': tipAngle, radius: 300 }, { saw })
  return outcome.ok ? outcome.value.stars[0] : undefined
}

/** Along the wood's edge from the stop, and from that edge toward the operator. */
const inWood =
  ({ measured: [tip, blade] }: SawScene) =>
  ({ x, y }: Point): Point => {
    const reach = distance(tip, blade)
    const along = point((blade.x - tip.x) / reach, (blade.y - tip.y) / reach)
    const [dx, dy] = [x - tip.x, y - tip.y]
    return point(dx * along.x + dy * along.y, -dx * along.y + dy * along.x)
  }

/** Everything on the stop's side of the blade's near side, in the wood's own directions. */
const stopSide = (scene: SawScene): Region => {
  const [from, to] = scene.blade.near.map(inWood(scene)) as [Point, Point]
  const reach = distance(from, to)
  const along = point((to.x - from.x) / reach, (to.y - from.y) / reach)
  const ends = [-FAR, FAR].map((by) => point(from.x + by * along.x, from.y + by * along.y))
  const toward = point(-along.y, along.x)
  const side = Math.sign(toward.x * (0 - from.x) + toward.y * (0 - from.y))
  const beyond = ends.map(({ x, y }) => point(x + side * FAR * toward.x, y + side * FAR * toward.y))
  return region([...ends, ...beyond.reverse()])
}

/** How far a corner of one convex piece lies outside the other, in mm, whichever is further. */
const differs = (a: Region, b: Region): number => Math.max(sticksOut(a, b), sticksOut(b, a))

const sticksOut = (a: Region, b: Region): number => {
  const [corners, others] = [cornersOf(a), cornersOf(b)]
  if (corners.length < 3 || others.length < 3) return Infinity
  const [x, y] = [({ x }: Point) => x, ({ y }: Point) => y].map(
    (pick) => others.reduce((sum, corner) => sum + pick(corner), 0) / others.length,
  )
  const middle = point(x ?? 0, y ?? 0)
  return Math.max(
    ...sides(others)
      .filter(([from, to]) => distance(from, to) > SAME)
      .flatMap((side) => corners.map((corner) => -Math.sign(toLine(middle, side)) * toLine(corner, side))),
  )
}

/** Of a piece in one part without holes, the repeated first corner left out. */
const cornersOf = ([[ring = []] = []]: Region): Point[] => {
  const corners = ring.map(([x, y]) => point(x, y))
  return corners.filter((corner, index) => distance(corner, corners.at(index - 1) ?? corner) > 1e-9)
}

const kiteOf = (points: number, tip: number, edge: number): Point[] => {
  const radius = (edge * sin(tip / 2 + 180 / points)) / sin(180 / points)
  return [
    point(0, 0),
    point(edge, 0),
    point(radius * cos(tip / 2), radius * sin(tip / 2)),
    point(edge * cos(tip), edge * sin(tip)),
  ]
}

/** The leaning angle of the blade from the fence's square; positive away from the stop, which stands at the right. */
const lean = ({ blade: { near } }: SawScene): number => {
  const [from, to] = near
  return (Math.atan2(from.x - to.x, from.y - to.y) * 180) / Math.PI
}

const FAR_AND_45 = SAWS.flatMap((saw) =>
  SHAPES.map((shape) => [`${showShape(shape)}, saw to ${saw.limit}°`, shape, saw] as const),
)

describe.each(FAR_AND_45)('%s', (_, { points, tipAngle }, saw) => {
  const plan = planned(points, tipAngle, saw)
  const scenes = plan ? sawScenes(plan, KERF) : []
  const rhombus = Math.abs(tipAngle - 360 / points) < 1e-9

  it('has one scene a cut, with the blade as far from square as the saw is set', () => {
    if (!plan) return
    expect(scenes.map(({ name }) => name)).toEqual(rhombus ? ['Cut 1'] : ['Cut 1', 'Cut 2', 'Cut 3'])
    scenes.forEach((scene, index) => {
      const miter = index === 0 ? 90 - tipAngle : 90 - tipAngle / 2 - 180 / points
      const wedge = Math.max(0, Math.ceil(Math.abs(miter) - saw.limit - 1e-9))
      expect(lean(scene)).toBeCloseTo(Math.sign(miter) * (Math.abs(miter) - wedge), 6)
      if (Math.abs(miter) > 0.01) {
        const handleAwayFromStop = scene.handle.x < scene.pivot.x
        expect(handleAwayFromStop).toBe(miter > 0)
      }
      expect(scene.wedge !== undefined).toBe(wedge > 0)
      const [thin, thick] = scene.wedge ?? []
      if (thin && thick) {
        const slope = (Math.atan2(thin.y - thick.y, thin.x - thick.x) * 180) / Math.PI
        expect(slope).toBeCloseTo(Math.sign(miter) * wedge, 6)
      }
    })
  })

  it('has fence, stop and wood where they can be', () => {
    for (const scene of scenes) {
      for (const [from, to] of scene.fence) expect([from.y, to.y]).toEqual([0, 0])
      expect(Math.max(...[...scene.wood, ...scene.stop].map(({ y }) => y))).toBeLessThan(1e-6)
      expect(scene.handle.y).toBeLessThan(Math.min(...scene.kept.map(({ y }) => y)) / 2)
      const [wood, stop] = [scene.wood, scene.stop].map((corners) => region(corners.map(inWood(scene))))
      if (!wood || !stop) throw new Error('both are drawn')
      expect(areaOf(overlap(wood, stop))).toBeLessThan(1e-3)
      expect(areaOf(minus(stop, stopSide(scene)))).toBeLessThan(1e-3)
      const [atStop, atBlade] = scene.measured
      expect(atStop.x).toBeGreaterThan(atBlade.x)
    }
  })

  it('measures the stop along the edge that lies on fence or wedge, to the near side of the blade', () => {
    if (!plan) return
    scenes.forEach((scene, index) => {
      const edge = plan.star.tipEdge
      const strip = Math.max(
        edge * sin(tipAngle),
        ((edge * sin(tipAngle / 2 + 180 / points)) / sin(180 / points)) * sin(tipAngle / 2),
      )
      const wanted = index === 0 ? strip / sin(tipAngle) : edge
      // Where the drawn blade meets the edge of the wood, and the stop's corner on that edge.
      const [from, to] = scene.blade.near.map(inWood(scene)) as [Point, Point]
      const meets = from.x - (from.y * (to.x - from.x)) / (to.y - from.y)
      const [far] = scene.blade.far.map(inWood(scene)) as [Point, Point]
      const corner = Math.max(
        ...scene.stop
          .map(inWood(scene))
          .filter(({ y }) => Math.abs(y) < 1e-6)
          .map(({ x }) => x),
      )
      expect(meets - corner).toBeCloseTo(wanted, 5)
      expect(scene.length).toBeCloseTo(wanted, 6)
      const slot =
        ((far.x - from.x) * (to.y - from.y) - (far.y - from.y) * (to.x - from.x)) / distance(from, to)
      expect(Math.abs(slot)).toBeCloseTo(KERF, 6)
      expect(far.x).toBeGreaterThan(from.x)
    })
  })

  it('leaves the arm when its wood is sawn as drawn, waste and arm making up the blank', () => {
    if (!plan) return
    const sawn = scenes.map((scene) => overlap(region(scene.wood.map(inWood(scene))), stopSide(scene)))
    const [blank, second, third] = sawn
    const [, cut2, cut3] = scenes
    const arm = region(kiteOf(points, tipAngle, plan.star.tipEdge))
    if (!blank) throw new Error('every star has a first cut')
    if (rhombus) {
      expect(differs(blank, arm)).toBeLessThan(SAME)
      return
    }
    if (!second || !third || !cut2 || !cut3) throw new Error('every other star has three cuts')
    expect(differs(third, arm)).toBeLessThan(SAME)
    // The blank of cut 1 is what lies at cut 2; turned over about the arm's axis, its rest is what lies at cut 3.
    expect(differs(blank, region(cut2.wood.map(inWood(cut2))))).toBeLessThan(SAME)
    const turnedOver = cut2.kept.map(inWood(cut2)).map((corner) => {
      const [reach, at] = [Math.hypot(corner.x, corner.y), Math.atan2(corner.y, corner.x)]
      const mirrored = (tipAngle * Math.PI) / 180 - at
      return point(reach * Math.cos(mirrored), reach * Math.sin(mirrored))
    })
    expect(differs(region(turnedOver), region(cut3.wood.map(inWood(cut3))))).toBeLessThan(SAME)
    const wastes = [cut2, cut3].map((scene) => areaOf(region(scene.waste.map(inWood(scene)))))
    expect(areaOf(arm) + (wastes[0] ?? 0) + (wastes[1] ?? 0)).toBeCloseTo(areaOf(blank), 2)
    for (const scene of [cut2, cut3]) {
      const [kept, waste] = [scene.kept, scene.waste].map((corners) => region(corners.map(inWood(scene))))
      if (kept && waste) expect(areaOf(overlap(kept, waste))).toBeLessThan(1e-2)
    }
  })
})

it('nearly every shape of the sweep is drawn', () => {
  const drawn = FAR_AND_45.filter(([, { points, tipAngle }, saw]) => planned(points, tipAngle, saw))
  expect(drawn.length / FAR_AND_45.length).toBeGreaterThan(0.9)
})

/** Points, tip angle, saw limit; then for cut 1 and cut 2: blade from square, side of the handle, wedge. By hand. */
const BY_HAND = [
  [5, 45, 45, 45, 'away', 0, 31.5, 'away', 0],
  [5, 36, 45, 45, 'away', 9, 36, 'away', 0],
  [6, 60, 45, 30, 'away', 0, undefined, undefined, undefined],
  [8, 90, 45, 0, 'square', 0, 22.5, 'away', 0],
  [8, 110, 45, 20, 'toward', 0, 12.5, 'away', 0],
  [16, 150, 45, 45, 'toward', 15, 3.75, 'away', 0],
  [5, 10, 45, 45, 'away', 35, 45, 'away', 4],
] as const

it.each(BY_HAND)('%d points, tip %d°, saw to %d°: as worked out by hand', (...row) => {
  const [points, tip, limit, ...rest] = row
  const plan = starPlan({ points, 'tip-angle': tip, radius: 250 }, { saw: { ...FAR_SAW, limit } })
  const seen = sawScenes(plan, KERF)
    .slice(0, 2)
    .flatMap((scene) => {
      const leaning = lean(scene)
      const side = Math.abs(leaning) < 1e-9 ? 'square' : leaning > 0 ? 'away' : 'toward'
      return [Number(Math.abs(leaning).toFixed(6)), side, scene.cut.wedge?.angle ?? 0]
    })
  expect(seen).toEqual(rest.filter((each) => each !== undefined))
})

it('shows the face side up at cuts 1 and 2 and down at cut 3, and only the stop of cut 1 lifted out', () => {
  const scenes = sawScenes(starPlan({ points: 5, 'tip-angle': 45, radius: 250 }), KERF)
  expect(scenes.map(({ faceSide }) => faceSide)).toEqual(['up', 'up', 'down'])
  expect(scenes.map(({ stopLiftsOut }) => stopLiftsOut)).toEqual([true, false, false])
})

/** The face of the stop follows the slanted edge at cut 1, and at every cut where that edge overhangs the tip. */
it.each([
  [5, 45, ['slanted', 'square', 'square']],
  [8, 110, ['slanted', 'slanted', 'slanted']],
])('stops an arm of %d points and a tip of %d° with faces %j', (points, tip, faces) => {
  const scenes = sawScenes(starPlan({ points, 'tip-angle': tip, radius: 250 }), KERF)
  const found = scenes.map((scene) => {
    const [foot, top] = scene.stop.map(inWood(scene))
    if (!foot || !top) return 'none'
    return Math.abs(top.x - foot.x) < 1e-6
      ? 'square'
      : Math.abs((top.x - foot.x) / (top.y - foot.y) - 1 / tan(tip)) < 1e-6
        ? 'slanted'
        : 'other'
  })
  expect(found).toEqual(faces)
})
