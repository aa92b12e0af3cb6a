import { areaPathsD, FillRule, intersectD, type PathsD } from 'clipper2-ts'
import { describe, expect, it, vi } from 'vitest'
import { jigOf } from '../../src/compose/jigs.js'
import type { CutPart } from '../../src/cutter/cut-part.js'
import { hull } from '../../src/geometry/hull.js'
import { closedOutline } from '../../src/geometry/outline.js'
import { areaBeyond, commonArea, grown, inside } from '../cutter/swept.js'
import { sweptPlans } from './sweep-plans.js'

vi.setConfig({ testTimeout: 120_000 })

/** What the outline leaves free of its convex hull: its notches, each by itself. */
const notches = (part: CutPart): PathsD[] => {
  const around = inside(closedOutline(hull(part.outer.vertices)))
  const free = inside(closedOutline(hull(part.outer.vertices)), part.outer)
  return intersectD(free, around, FillRule.NonZero, 6)
    .filter((path) => Math.abs(areaPathsD([path])) > 0.01)
    .map((path) => [path])
}

describe.each([3, 12, 25])('of a panel %s mm thick', (thickness) => {
  const plans = sweptPlans(`jig-stock: { thickness: ${thickness} mm }`).filter((_, index) => index % 7 === 0)

  it('no wall of gauge and window is thinner than that: between openings, beside holes, around them', () => {
    let walls = 0
    for (const { plan, order, name } of plans) {
      for (const kind of ['angle-gauge', 'trial-window'] as const) {
        const jig = jigOf(kind, plan, order)
        const part = jig.ok ? jig.value.parts[0] : undefined
        if (!part) throw new Error(`${name}: ${kind}`)
        const wood = inside(part.outer)
        const openings = [...part.inner.map((hole) => inside(hole)), ...notches(part)]
        for (const hole of part.inner) {
          const needs = grown(inside(hole), thickness - 0.01)
          expect(areaBeyond(needs, wood), `${name}: ${kind}`).toBeLessThan(1e-3)
        }
        openings.forEach((own, index) => {
          for (const other of openings.slice(index + 1)) {
            const [a, b] = [own, other].map((each) => grown(each, thickness / 2 - 0.01))
            expect(commonArea(a ?? [], b ?? []), `${name}: ${kind}`).toBeLessThan(1e-6)
            walls += 1
          }
        })
      }
    }
    expect(walls).toBeGreaterThan(200)
  })
})

it('says where the hold-down bar is narrower beside its hole than the panel is thick, and what to do', async () => {
  const { jigWords } = await import('../../src/compose/jig-words.js')
  const told = sweptPlans('jig-stock: { bolt: 16 mm }').flatMap(({ plan, order }) => {
    const jig = jigOf('arm-cradle', plan, order)
    if (!jig.ok) return []
    const bar = jig.value.parts.find(({ word }) => word === 'hold-down bar')
    const [a, b] = bar?.outer.vertices.slice(1, 3) ?? []
    const wide = a && b ? Math.hypot(b.x - a.x, b.y - a.y) : 0
    const beside = (wide - order.shop.jigStock.bolt) / 2
    const says = jigWords(jig.value, plan, order).steps.find((step) =>
      step.startsWith('The hold-down bar is only'),
    )
    return [{ beside, thickness: order.shop.jigStock.thickness, says }]
  })
  expect(told.filter(({ says }) => says).length).toBeGreaterThan(10)
  for (const { beside, thickness, says } of told) {
    expect(says !== undefined).toBe(beside < thickness - 1e-6)
    if (says)
      expect(says).toBe(
        `The hold-down bar is only ${beside.toFixed(1)} mm wide beside its holes, less than the panel is thick: cut it from sound hardwood, or give a thinner bolt.`,
      )
  }
})

it('and of every other part of the cradle: what is not told has the panel thickness of wood beside each hole', async () => {
  const { jigWords } = await import('../../src/compose/jig-words.js')
  let told = 0
  for (const { plan, order, name } of sweptPlans('jig-stock: { thickness: 15 mm }')) {
    const jig = jigOf('arm-cradle', plan, order)
    if (!jig.ok) continue
    const { steps } = jigWords(jig.value, plan, order)
    for (const part of jig.value.parts) {
      const wood = inside(part.outer)
      const holes = [...part.inner, ...(part.pilots ?? [])]
      const beyond = holes
        .filter(({ vertices }) => vertices.length === holes[0]?.vertices.length)
        .map((hole) => areaBeyond(grown(inside(hole), 15 - 0.05), wood))
      const says = steps.some((step) => step.startsWith(`The ${part.word} is only`))
      if (says) told += 1
      else expect(Math.max(0, ...beyond), `${name}: ${part.word}`).toBeLessThan(1e-3)
    }
  }
  expect(told).toBeGreaterThan(5)
})
