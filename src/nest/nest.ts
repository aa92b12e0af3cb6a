import { type Outline, outlineSize, signedArea } from '../geometry/outline.js'
import { areaBound, fewestPanels } from './area-bound.js'
import { fill } from './fill.js'
import { inBoxes } from './in-boxes.js'
import { containing } from './no-fit.js'
import type { Panel, Placed } from './panel.js'
import { type PlateSet, plateSet } from './plate-set.js'
import { lastOf, type Steps } from './run-steps.js'
import { searchPanel } from './search-panel.js'

/** Equal plates to be cut. The outline is closed, counter-clockwise, and holds its origin. */
export interface Wanted {
  readonly outline: Outline
  /** A whole number, 0 or more. */
  readonly count: number
}

/** How far the search of a plate is, and the most it found on one panel. */
export interface NestStep {
  readonly plate: number
  readonly most: number
  readonly step: number
  readonly steps: number
}

/** What is on each panel, and how many of each plate find room on none. */
export interface Nesting {
  readonly panels: readonly (readonly Placed[])[]
  readonly unplaced: readonly number[]
  /** Did the caller end it before its last step? */
  readonly stopped: boolean
}

/** Tells every step; `true` given back ends the search of every plate with the best so far. */
export type NestSteps = Steps<NestStep, Nesting>

/**
 * All plates on as few panels as the search finds. The largest come first, by lattice, then each smaller one first into
 * what the panels before it leave; where that takes more panels than their area, the plates that take most panel in all
 * come first, and the better of both is kept. A search ends as soon as no better one could save a panel. The same wanted
 * plates, panel and seed give the same steps everywhere.
 */
export function* nestSteps(wanted: readonly Wanted[], panel: Panel, seed: number): NestSteps {
  const largestFirst = inOrderOf(wanted, ({ outline }) => signedArea(outline))
  const mostFirst = inOrderOf(wanted, ({ outline, count }) => count * signedArea(outline))
  const plates = plateSet(
    wanted.map(({ outline }) => containing(outline)),
    panel.gap,
  )
  const first = yield* nestInOrder(largestFirst, wanted, plates, panel, seed)
  const settled = first.stopped || first.panels.length <= fewestPanels(wanted, panel)
  if (settled || mostFirst.every((plate, place) => plate === largestFirst[place])) return first
  const second = yield* nestInOrder(mostFirst, wanted, plates, panel, seed)
  return second.stopped
    ? { ...first, stopped: true }
    : second.panels.length < first.panels.length
      ? second
      : first
}

const inOrderOf = (wanted: readonly Wanted[], worth: (of: Wanted) => number): number[] => {
  const worths = wanted.map(worth)
  return wanted.map((_, plate) => plate).sort((a, b) => (worths[b] ?? 0) - (worths[a] ?? 0))
}

function* nestInOrder(
  order: readonly number[],
  wanted: readonly Wanted[],
  plates: PlateSet,
  panel: Panel,
  seed: number,
): NestSteps {
  const panels: Placed[][] = []
  const unplaced = wanted.map(() => 0)
  let stopped = false
  for (const plate of order) {
    const coming = wanted[plate]
    let left = coming?.count ?? 0
    for (const placed of panels) {
      if (left === 0) break
      const added = fill(plates, plate, left, panel, placed)
      placed.push(...added)
      left -= added.length
    }
    if (!coming || left === 0) continue
    const few = fewPlates(plates, plate, coming.outline, left, panel)
    if (few) {
      panels.push(few)
      continue
    }
    const enough = enoughFor(left, areaBound(coming.outline, panel))
    let best: readonly Placed[] = []
    for (const { placed, step, steps } of searchPanel(plates, plate, panel, seed)) {
      best = placed
      const stop = yield { plate, most: best.length, step, steps }
      stopped ||= stop === true
      if (stopped || enough(best.length)) break
    }
    // Ended before the search put one anywhere: one by one, as few plates are.
    const full = fromLeft(best.length > 0 ? best : fill(plates, plate, left, panel, []))
    if (full.length === 0) unplaced[plate] = left
    else for (; left > 0; left -= full.length) panels.push(full.slice(0, left))
  }
  return { panels, unplaced, stopped }
}

/** All steps at once. */
export const nest = (wanted: readonly Wanted[], panel: Panel, seed: number): Nesting =>
  lastOf(nestSteps(wanted, panel, seed))

/** Plates that even rows of boxes would hold need no search: they go one by one into the panel's left end. */
const fewPlates = (
  plates: PlateSet,
  plate: number,
  outline: Outline,
  count: number,
  panel: Panel,
): Placed[] | undefined => {
  if (inBoxes(outlineSize(outline), panel) < count) return undefined
  const placed = fill(plates, plate, count, panel, [])
  return placed.length === count ? placed : undefined
}

/** Could a panel that holds more plates save one? */
const enoughFor =
  (count: number, bound: number) =>
  (most: number): boolean =>
    most > 0 && Math.ceil(count / most) <= Math.ceil(count / bound)

/** From left to right, so that a panel begun leaves one piece. */
const fromLeft = (placed: readonly Placed[]): Placed[] =>
  [...placed].sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
