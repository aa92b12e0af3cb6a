import { beforeEach, describe, expect, it, vi } from 'vitest'
import { areaBound, fewestPanels } from '../../src/nest/area-bound.js'
import { type Nesting, type NestStep, nestSteps, type Wanted } from '../../src/nest/nest.js'
import { rowsOfBoxes } from '../../src/nest/rows-of-boxes.js'
import { oneStar } from '../orders.js'
import { expectClear } from './expect-clear.js'
import { panel, plate } from './stars.js'

/** Work since it was last set back: polygons given to the polygon library, and places looked up in a polygon. */
const work = vi.hoisted(() => ({ clipped: 0, lookedUp: 0 }))

vi.mock('clipper2-ts', async (original) => {
  const clipper = await original<typeof import('clipper2-ts')>()
  return {
    ...clipper,
    minkowskiSum: (...given: Parameters<typeof clipper.minkowskiSum>) => {
      work.clipped += given[0].length
      return clipper.minkowskiSum(...given)
    },
    union: (...given: Parameters<typeof clipper.union>) => {
      work.clipped += given[0].length
      return clipper.union(...given)
    },
    inflatePaths: (...given: Parameters<typeof clipper.inflatePaths>) => {
      work.clipped += given[0].length
      return clipper.inflatePaths(...given)
    },
    difference: (...given: Parameters<typeof clipper.difference>) => {
      work.clipped += given[1].length
      return clipper.difference(...given)
    },
  }
})

vi.mock('../../src/nest/no-fit.js', async (original) => {
  const noFit = await original<typeof import('../../src/nest/no-fit.js')>()
  return {
    ...noFit,
    isWithin: (...given: Parameters<typeof noFit.isWithin>) => {
      work.lookedUp++
      return noFit.isWithin(...given)
    },
  }
})

beforeEach(() => {
  Object.assign(work, { clipped: 0, lookedUp: 0 })
})

const MINUTE = 60_000
const SHEET = panel(1220, 610, 10, 4)

/** Rounded plates of many corners are what takes longest. */
const manyCorners = (points: number, tipAngle: number, count: number): Wanted => {
  const keys = `points: ${points}, tip-angle: ${tipAngle}, across: 240, backing: { shape: star, inset: 5, corner-radius: 2 }`
  const [star] = oneStar(keys).stars
  if (!star?.backing) throw new Error('the star has no backing')
  return { outline: star.backing.outline, count }
}

/** Stopped as soon as it tells a step that is wanted; how often it told, before and after. */
const stoppedAt = (
  wanted: readonly Wanted[],
  isWanted: (told: NestStep, count: number) => boolean,
): { readonly nesting: Nesting; readonly after: number } => {
  const steps = nestSteps(wanted, SHEET, 1)
  let next = steps.next()
  let [before, after, stop] = [0, 0, false]
  while (!next.done) {
    if (stop) after++
    stop ||= isWanted(next.value, ++before)
    if (stop) Object.assign(work, { clipped: 0, lookedUp: 0 })
    next = steps.next(stop)
  }
  return { nesting: next.value, after }
}

const countsOf = ({ panels, unplaced }: Nesting, wanted: readonly Wanted[]): number[] =>
  wanted.map(
    (_, plate) => panels.flat().filter((each) => each.plate === plate).length + (unplaced[plate] ?? 0),
  )

describe('between two steps', () => {
  it('little is worked out, however many corners a plate has', { timeout: 2 * MINUTE }, () => {
    const steps = nestSteps([manyCorners(24, 25, 100)], SHEET, 1)
    let all = 0
    const most = { clipped: 0, lookedUp: 0 }
    for (let step = 0; step < 900; step++) {
      steps.next()
      most.clipped = Math.max(most.clipped, work.clipped)
      most.lookedUp = Math.max(most.lookedUp, work.lookedUp)
      all += work.lookedUp
      Object.assign(work, { clipped: 0, lookedUp: 0 })
    }
    // An edge is swept by a whole plate; some hundred places are looked up for a row of a lattice.
    expect(most.clipped).toBeLessThan(1000)
    expect(most.lookedUp).toBeLessThan(40_000)
    expect(all).toBeGreaterThan(20 * most.lookedUp)
  })

  it('the same holds where single plates are put into what is left', { timeout: 2 * MINUTE }, () => {
    const steps = nestSteps([{ outline: plate(5, 45, 60, 6), count: 9 }, manyCorners(8, 40, 3)], SHEET, 1)
    let most = 0
    for (let next = steps.next(); !next.done; next = steps.next()) {
      most = Math.max(most, work.clipped)
      Object.assign(work, { clipped: 0, lookedUp: 0 })
    }
    expect(most).toBeGreaterThan(0)
    expect(most).toBeLessThan(1000)
  })
})

describe('when it is stopped', () => {
  const wanted = [
    { outline: plate(5, 45, 60, 6), count: 30 },
    { outline: plate(6, 60, 40, 5), count: 40 },
    { outline: plate(5, 45, 30, 4), count: 50 },
  ]

  it.each([1, 2, 40, 900, 2500])(
    'at step %i it tells nothing more and cuts no more polygons, and has all plates clear of each other on no more panels than rows of boxes take',
    { timeout: MINUTE },
    (step) => {
      const { nesting, after } = stoppedAt(wanted, (_, count) => count === step)
      expect([nesting.stopped, after, work.clipped, work.lookedUp]).toEqual([true, 0, 0, 0])
      expect(countsOf(nesting, wanted)).toEqual([30, 40, 50])
      expect(nesting.unplaced).toEqual([0, 0, 0])
      expectClear(nesting, wanted, SHEET)
      expect(nesting.panels.length).toBeLessThanOrEqual(rowsOfBoxes(wanted, SHEET).panels.length)
    },
  )

  it('while plates go into what others leave, those that went in stay there', { timeout: MINUTE }, () => {
    const both = [
      { outline: plate(5, 45, 60, 6), count: 3 },
      { outline: plate(5, 45, 20, 3), count: 60 },
    ]
    let told = 0
    const { nesting } = stoppedAt(both, ({ plate }) => plate === 1 && ++told === 200)
    expect(nesting.stopped).toBe(true)
    expect(nesting.panels[0]?.filter((each) => each.plate === 1).length).toBeGreaterThan(0)
    expect(countsOf(nesting, both)).toEqual([3, 60])
    expectClear(nesting, both, SHEET)
  })
})

it('how much panel a plate takes at least is worked out once for all panels with one gap', () => {
  const { outline } = manyCorners(12, 30, 1)
  Object.assign(work, { clipped: 0 })
  const told = [panel(900, 600, 10, 4), panel(1220, 610, 0, 4), panel(900, 600, 10, 4)].map((sheet) => [
    areaBound(outline, sheet),
    fewestPanels([{ outline, count: 500 }], sheet),
  ])
  expect(work.clipped).toBe(1)
  expect(told[2]).toEqual(told[0])
  expect(told[1]).not.toEqual(told[0])
  areaBound(outline, panel(900, 600, 10, 5))
  expect(work.clipped).toBe(2)
})

it('rows of boxes hold plates of several sizes clear of each other, each as often as it is wanted', () => {
  const wanted = [
    { outline: plate(5, 45, 60, 6), count: 7 },
    { outline: plate(8, 50, 40, 6, 'disc'), count: 5 },
    { outline: plate(7, 40, 40, 6, 'polygon'), count: 11 },
  ]
  const boxed = rowsOfBoxes(wanted, SHEET)
  expect(wanted.map((_, plate) => boxed.panels.flat().filter((each) => each.plate === plate).length)).toEqual(
    [7, 5, 11],
  )
  expectClear(boxed, wanted, SHEET)
})
