import { describe, expect, it } from 'vitest'
import type { Saw } from '../../src/order/order.js'
import { exactPairs, markPairs } from '../../src/plan/mark-pairs.js'
import { degrees } from '../../src/units/convert.js'
import { SHAPES } from '../geometry/sweep.js'
import { saw } from './shop-orders.js'

const SAWS: readonly (readonly [string, Saw])[] = [
  ['half degrees', saw(45, 0.5)],
  ['whole degrees and detents', saw(52, 1, [22.5, 31.6, 33.9])],
  ['two degrees', saw(60, 2)],
  ['five degrees', saw(50, 5, [22.5])],
]

const countedMarks = ({ limit, readsTo, detents }: Saw): number[] => {
  const marks = detents.filter((detent) => detent <= limit)
  for (let line = 0; line * readsTo <= limit + 1e-9; line++) marks.push(degrees(line * readsTo))
  return [...new Set<number>(marks)]
}

/** Every pair of marks, the first cut leaning either way, that makes a star with a tip angle this near to the wanted. */
const allPairs = (saw: Saw, points: number, wanted: number, within = 5) => {
  const marks = countedMarks(saw)
  const limit = 180 - 360 / points
  return [...new Set([...marks, ...marks.map((mark) => 0 - mark)])].flatMap((first) => {
    const tip = 90 - first
    const needed = 90 - tip / 2 - 180 / points
    if (tip <= 0 || tip >= limit || Math.abs(tip - wanted) > within || needed > saw.limit + 1e-9) return []
    return marks.map((joint) => {
      const closure = 360 - points * (360 - tip - 2 * (90 + joint))
      return { tip, first, joint, open: Math.abs(closure) < 1e-7 ? 0 : Math.abs(closure) }
    })
  })
}

describe.each(SAWS)('on a saw with %s', (_, saw) => {
  it('the offered pairs are the best of all pairs of marks', () => {
    for (const { points, tipAngle } of SHAPES) {
      const offered = markPairs(saw, points, tipAngle)
      const all = allPairs(saw, points, tipAngle)
      const exact = all.filter(({ open }) => open === 0)
      const nearness = ({ tip }: { tip: number }) => Math.abs(tip - tipAngle)
      if (exact.length > 0) {
        const nearest = exact.map(nearness).sort((a, b) => a - b)
        expect(offered.map(({ closure }) => closure)).toEqual(nearest.slice(0, 3).map(() => 0))
        offered.forEach((pair, index) => {
          expect(Math.abs(pair.tipAngle - tipAngle)).toBeCloseTo(nearest[index] ?? Number.NaN, 8)
        })
      } else {
        // The joint mark that leaves least open, for each first cut.
        const perFirst = new Map<number, number>()
        for (const { first, open } of all)
          perFirst.set(first, Math.min(open, perFirst.get(first) ?? Infinity))
        const least = [...perFirst.values()].sort((a, b) => a - b).slice(0, 3)
        expect(offered).toHaveLength(least.length)
        offered.forEach(({ closure }, index) => {
          expect(Math.abs(closure)).toBeCloseTo(least[index] ?? Number.NaN, 8)
        })
      }
      for (const { tipAngle: tip, first, joint, closure } of offered) {
        expect(tip + first).toBeCloseTo(90, 12)
        expect(360 - points * (360 - tip - 2 * (90 + joint))).toBeCloseTo(closure, 7)
        for (const setting of [Math.abs(first), joint]) {
          expect(Math.min(...countedMarks(saw).map((mark) => Math.abs(mark - setting)))).toBeLessThan(1e-9)
        }
      }
    }
  })
})

describe.each(SAWS)('of all stars that close on marks of a saw with %s', (_, saw) => {
  it('none is left out and none is wrong: every pair of marks tried, for 3 to 24 points', () => {
    for (let points = 3; points <= 24; points++) {
      const closing = allPairs(saw, points, 90, 90).filter(({ open }) => open === 0)
      const wanted = [...closing].sort((a, b) => a.tip - b.tip)
      const found = exactPairs(saw, points)
      expect(found).toHaveLength(wanted.length)
      found.forEach(({ tipAngle, first, joint }, index) => {
        expect(tipAngle).toBeCloseTo(wanted[index]?.tip ?? Number.NaN, 9)
        expect(first).toBeCloseTo(wanted[index]?.first ?? Number.NaN, 9)
        expect(joint).toBeCloseTo(wanted[index]?.joint ?? Number.NaN, 9)
      })
    }
  })
})

// Common practice, no published source: five points, 45° and 31.5°.
it('offers 45 and 31.5 degrees for a five-point star near 45', () => {
  expect(markPairs(saw(45, 0.5), 5, degrees(45.3))[0]).toEqual({
    tipAngle: 45,
    first: 45,
    joint: 31.5,
    closure: 0,
  })
})
