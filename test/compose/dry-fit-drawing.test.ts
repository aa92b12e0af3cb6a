import { describe, expect, it } from 'vitest'
import { dryFitDrawing } from '../../src/compose/dry-fit-drawing.js'
import type { Path } from '../../src/drawing/model.js'
import { centreAngle } from '../../src/geometry/star.js'
import { degrees, mm } from '../../src/units/convert.js'
import { dryFitOf, measurement } from '../fit/dry-fits.js'
import { areaOf, overlap, region } from '../geometry/clipping.js'
import { planOf } from '../orders.js'

// The arms as an independent library sees them (polygon-clipping): wood does not overlap, the ring gapes as measured.

const CASES = [3, 5, 6, 8, 12, 24].flatMap((points) => [-1, 1].map((sign) => [points, sign] as const))

const drawingOf = (points: number, sign: number) => {
  const tip = points === 3 ? 40 : Math.min(60, 170 - centreAngle(points)) * 0.9
  const plan = planOf(JSON.stringify({ stars: [{ points, 'tip-angle': tip.toFixed(1), radius: 150 }] }))
  const [star] = plan.stars
  if (!star) throw new Error('one star')
  const fit = dryFitOf(star, [measurement('gap', sign * 3, 0.2)])
  return { fit, drawing: dryFitDrawing(fit, plan.order) }
}

describe.each(CASES)('%i points, gap of %i', (points, sign) => {
  const { fit, drawing } = drawingOf(points, sign)
  const arms = drawing.pieces.map(({ vertices }) => region(vertices))

  it('draws every arm, and none over another', () => {
    expect(arms).toHaveLength(points)
    arms.forEach((arm, index) => {
      for (const other of arms.slice(index + 1)) expect(areaOf(overlap(arm, other))).toBeLessThan(1e-4)
    })
  })

  it('states its factor, and draws the ring by it', () => {
    const factor = Number(/drawn (\d+) times as large/.exec(drawing.notes?.lines[0] ?? '')?.[1] ?? 1)
    const [first] = drawing.pieces
    const [apex, right, , left] = first?.vertices ?? []
    if (!apex || !right || !left) throw new Error('an arm has corners')
    const way = (to: { x: number; y: number }) => Math.atan2(to.y - apex.y, to.x - apex.x)
    const centre = (((((way(left) - way(right)) * 180) / Math.PI) % 360) + 360) % 360
    expect(360 - points * centre).toBeCloseTo(factor * fit.closure, 6)
  })

  it('marks both faces of every arm to be recut', () => {
    expect(fit.verdict).toBe('turn')
    const faces = drawing.figure.filter(
      (shape): shape is Path => shape.kind === 'path' && shape.pen === 'dashed',
    )
    expect(faces).toHaveLength(2 * points)
  })
})

it('a star that closes is drawn closed, with nothing marked', () => {
  const plan = planOf('stars: [{ points: 5, tip-angle: 45, board-width: 88.9 }]')
  const [star] = plan.stars
  if (!star) throw new Error('one star')
  const drawing = dryFitDrawing(
    dryFitOf(star, [measurement('gap', 0, 0.3)], { accepted: mm(1), reading: degrees(31.5) }),
    plan.order,
  )
  expect(drawing.figure.some((shape) => shape.kind === 'path' && shape.pen === 'dashed')).toBe(false)
})
