import type { Outline } from '../geometry/outline.js'
import { fill } from './fill.js'
import { polygonArea } from './lattice.js'
import { containing, type Polygon } from './no-fit.js'
import type { Panel, Placed } from './panel.js'
import { searchPanel } from './search-panel.js'

/** Equal plates to be cut. The outline is closed, counter-clockwise, and holds its origin. */
export interface Wanted {
  readonly outline: Outline
  /** A whole number, 0 or more. */
  readonly count: number
}

/** Asked and told after every step of the search. */
export interface Watch {
  /** Most plates on one panel so far, and how far the search of this plate is. */
  readonly progress?: (plate: number, most: number, step: number, steps: number) => void
  /** True ends the search of every plate with the best so far, after its first step. */
  readonly stopped?: () => boolean
}

/** What is on each panel, and how many of each plate find room on none. */
export interface Nesting {
  readonly panels: readonly (readonly Placed[])[]
  readonly unplaced: readonly number[]
}

/**
 * All plates on as few panels as the search finds: the largest first by lattice, then each smaller one first into what
 * the panels before it leave. The same wanted plates, panel and seed give the same nesting everywhere, unless stopped.
 */
export const nest = (wanted: readonly Wanted[], panel: Panel, seed: number, watch: Watch = {}): Nesting => {
  const plates = wanted.map(({ outline }) => containing(outline))
  const panels: Placed[][] = []
  const unplaced = wanted.map(() => 0)
  for (const plate of largestFirst(plates)) {
    let left = wanted[plate]?.count ?? 0
    for (const placed of panels) {
      if (left === 0) break
      const added = fill(plates, plate, left, panel, placed)
      placed.push(...added)
      left -= added.length
    }
    if (left === 0) continue
    const full = fullPanel(plates, plate, panel, seed, watch)
    if (full.length === 0) unplaced[plate] = left
    else for (; left > 0; left -= full.length) panels.push(full.slice(0, left))
  }
  return { panels, unplaced }
}

const largestFirst = (plates: readonly Polygon[]): number[] =>
  plates.map((_, plate) => plate).sort((a, b) => area(plates, b) - area(plates, a))

const area = (plates: readonly Polygon[], plate: number): number => polygonArea(plates[plate] ?? [])

/** The best panel full of one plate, from left to right, so that a panel begun leaves one piece. */
const fullPanel = (
  plates: readonly Polygon[],
  plate: number,
  panel: Panel,
  seed: number,
  { progress, stopped }: Watch,
): Placed[] => {
  let best: readonly Placed[] = []
  for (const { placed, step, steps } of searchPanel(plates, plate, panel, seed)) {
    best = placed
    progress?.(plate, best.length, step, steps)
    if (stopped?.()) break
  }
  return [...best].sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
}
