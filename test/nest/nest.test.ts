import { describe, expect, it } from 'vitest'
import { outlineSize } from '../../src/geometry/outline.js'
import { inBoxes } from '../../src/nest/in-boxes.js'
import { type Nesting, nest, nestSteps } from '../../src/nest/nest.js'
import { expectClear } from './expect-clear.js'
import { panel, plate } from './stars.js'

const MINUTE = 60_000

const countOf = ({ panels }: Nesting, of: number): number =>
  panels.flat().filter((each) => each.plate === of).length

describe('the panel of the issue', () => {
  const outline = plate(5, 45, 88.9, 12)
  const sheet = panel(2440, 1220, 10, 4)

  it('holds 54 plates or more, boxes 32, twice the same', { timeout: 2 * MINUTE }, () => {
    const wanted = [{ outline, count: 54 }]
    const nesting = nest(wanted, sheet, 1)
    expect(nesting.panels.map((placed) => placed.length)).toEqual([54])
    expect(inBoxes(outlineSize(outline), sheet)).toBe(32)
    expectClear(nesting, wanted, sheet)
    expect(nest(wanted, sheet, 1)).toEqual(nesting)
  })

  it('keeps the best so far when it is stopped', { timeout: MINUTE }, () => {
    const steps = nestSteps([{ outline, count: 1000 }], sheet, 1)
    let next = steps.next()
    while (!next.done && next.value.step < 4) next = steps.next()
    const most = next.done ? 0 : next.value.most
    const last = steps.next(true)
    const nesting = last.done ? last.value : undefined
    expect(most).toBeGreaterThan(40)
    expect(nesting?.stopped).toBe(true)
    expect(nesting?.panels[0]).toHaveLength(most)
    expect(nesting?.panels.flat()).toHaveLength(1000)
  })
})

describe.each([
  ['5 points, 45°', plate(5, 45, 40, 6)],
  ['5 points, 36°', plate(5, 36, 40, 6)],
  ['8 points, 30°', plate(8, 30, 40, 6)],
  ['disc', plate(5, 45, 60, 6, 'disc')],
  ['polygon', plate(7, 40, 40, 6, 'polygon')],
])('%s', (_, outline) => {
  it.each([[panel(900, 600, 10, 4)], [panel(610, 305, 0, 8)]])(
    'is clear of its neighbours and of the edges',
    { timeout: 2 * MINUTE },
    (sheet) => {
      const wanted = [{ outline, count: 70 }]
      const nesting = nest(wanted, sheet, 7)
      expect(countOf(nesting, 0) + (nesting.unplaced[0] ?? 0)).toBe(70)
      expectClear(nesting, wanted, sheet)
      expect(nesting.panels[0]?.length ?? 0).toBeGreaterThanOrEqual(
        Math.min(70, inBoxes(outlineSize(outline), sheet)),
      )
    },
  )
})

it('keeps the centres of discs two radii and the gap apart', { timeout: 2 * MINUTE }, () => {
  const outline = plate(5, 45, 80, 6, 'disc')
  const radius = Math.max(...outline.vertices.map(({ x }) => Math.abs(x)))
  const nesting = nest([{ outline, count: 12 }], panel(610, 305, 0, 8), 7)
  expect(countOf(nesting, 0)).toBe(12)
  for (const placed of nesting.panels)
    placed.forEach(({ at }, index) => {
      for (const other of placed.slice(0, index))
        expect(Math.hypot(at.x - other.at.x, at.y - other.at.y)).toBeGreaterThanOrEqual(2 * radius + 8)
    })
})

it('puts smaller plates into what the larger leave', { timeout: 2 * MINUTE }, () => {
  const wanted = [
    { outline: plate(5, 45, 20, 3), count: 12 },
    { outline: plate(5, 45, 60, 6), count: 5 },
  ]
  const sheet = panel(1220, 610, 10, 4)
  const nesting = nest(wanted, sheet, 1)
  expect([countOf(nesting, 0), countOf(nesting, 1)]).toEqual([12, 5])
  expect(nesting.panels).toHaveLength(1)
  expectClear(nesting, wanted, sheet)
})

it('tells plates that no panel holds', { timeout: MINUTE }, () => {
  const nesting = nest([{ outline: plate(5, 45, 88.9, 12), count: 3 }], panel(200, 200, 10, 4), 1)
  expect(nesting).toEqual({ panels: [], unplaced: [3], stopped: false })
})
