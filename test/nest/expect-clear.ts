import { expect } from 'vitest'
import type { Outline } from '../../src/geometry/outline.js'
import type { Wanted } from '../../src/nest/nest.js'
import type { Panel } from '../../src/nest/panel.js'
import type { Boxed } from '../../src/nest/rows-of-boxes.js'
import { areaOf, overlap, region } from '../geometry/clipping.js'
import { betweenChains } from '../geometry/distances.js'
import { cornersOf, standing } from './stars.js'

/** Inside by the edge, apart by the gap, none over another: overlaps by polygon-clipping (Martinez and Rueda). */
export const expectClear = (
  { panels }: Boxed,
  wanted: readonly Wanted[],
  { width, height, edge, gap }: Panel,
) => {
  for (const placed of panels) {
    const stars = placed.map((each) => standing(cornersOf(wanted[each.plate]?.outline as Outline), each))
    const all = stars.flat()
    expect(Math.min(...all.map(({ x, y }) => Math.min(x, y, width - x, height - y)))).toBeGreaterThan(
      edge - 1e-6,
    )
    stars.forEach((one, index) => {
      for (const other of stars.slice(0, index)) {
        // For discs this is the weaker check: chords lie inside the disc. Their centres are checked below.
        expect(betweenChains(one, other)).toBeGreaterThan(gap - 1e-6)
        expect(areaOf(overlap(region(one), region(other)))).toBe(0)
      }
    })
  }
}
