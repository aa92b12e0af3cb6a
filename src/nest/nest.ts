import { type Outline, outlineSize, signedArea } from '../geometry/outline.js'
import { areaBound, fewestPanels } from './area-bound.js'
import { fill } from './fill.js'
import { inBoxes } from './in-boxes.js'
import { lonePlate } from './lone-plate.js'
import type { Panel, Placed } from './panel.js'
import { type PlateSet, plateSet } from './plate-set.js'
import { containing } from './polygon.js'
import { type Boxed, rowsOfBoxes } from './rows-of-boxes.js'
import { lastOf, type Steps, untilStopped } from './run-steps.js'
import { STEPS, searchPanel } from './search-panel.js'

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
export interface Nesting extends Boxed {
  /** Did the caller end it before its last step? */
  readonly stopped: boolean
}

/**
 * Tells how far it is many times a second; `true` given back ends the search with the best so far, rows of boxes at
 * least, and it tells nothing more.
 */
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
  const boxed = rowsOfBoxes(wanted, panel)
  const first = yield* nestInOrder(largestFirst, wanted, plates, panel, seed)
  const settled = first.stopped || first.panels.length <= fewestPanels(wanted, panel)
  if (settled || mostFirst.every((plate, place) => plate === largestFirst[place])) return better(first, boxed)
  const second = yield* nestInOrder(mostFirst, wanted, plates, panel, seed)
  const best = second.stopped
    ? { ...first, stopped: true }
    : second.panels.length < first.panels.length
      ? second
      : first
  return better(best, boxed)
}

/** Rows of boxes only where they hold all plates on fewer panels. */
const better = (found: Nesting, boxed: Boxed): Nesting =>
  boxed.panels.length < found.panels.length && boxed.unplaced.every((count) => count === 0)
    ? { ...boxed, stopped: found.stopped }
    : found

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
  /** Plates that come after the end of the search. */
  const after = wanted.map((each) => ({ ...each, count: 0 }))
  let stopped = false
  for (const plate of order) {
    const { outline, count } = wanted[plate] as Wanted
    const boxes = panelOfBoxes(wanted, plate, panel)
    const told = (most: number, step: number): NestStep => ({
      plate,
      most: Math.max(most, boxes.length),
      step,
      steps: STEPS,
    })
    let left = count
    for (const placed of panels) {
      if (left === 0 || stopped) break
      const filled = yield* untilStopped(fill(plates, plate, left, panel, placed), () => told(0, 0))
      stopped = filled.stopped
      const added = filled.last ?? []
      placed.push(...added)
      left -= added.length
    }
    if (left === 0) continue
    stopped ||= (yield told(0, 0)) === true
    if (stopped) {
      after[plate] = { outline, count: left }
      continue
    }
    // Plates that even rows of boxes would hold need no search: they go one by one into the panel's left end.
    if (boxes.length >= left) {
      const few = yield* untilStopped(fill(plates, plate, left, panel, []), () => told(0, 0))
      stopped = few.stopped
      if (few.last?.length === left) {
        panels.push([...few.last])
        continue
      }
    }
    const enough = enoughFor(left, areaBound(outline, panel))
    let best: readonly Placed[] = []
    for (const { placed, step } of stopped ? [] : searchPanel(plates, plate, panel, seed)) {
      best = placed
      stopped = (yield told(best.length, step)) === true
      if (stopped || enough(best.length)) break
    }
    const found = fromLeft(best.length < boxes.length ? boxes : best)
    const alone = found.length > 0 ? undefined : lonePlate(outline, panel)
    const full = alone ? [{ plate, ...alone }] : found
    if (full.length === 0) unplaced[plate] = left
    else for (; left > 0; left -= full.length) panels.push(full.slice(0, left))
  }
  const boxed = rowsOfBoxes(after, panel)
  const alone = eachAlone(
    wanted.map(({ outline }, plate) => ({ outline, count: boxed.unplaced[plate] ?? 0 })),
    panel,
  )
  return {
    panels: [...panels, ...boxed.panels, ...alone.panels],
    unplaced: unplaced.map((count, plate) => count + (alone.unplaced[plate] ?? 0)),
    stopped,
  }
}

/** Plates that go on only turned have a panel each after the end of a search. */
const eachAlone = (wanted: readonly Wanted[], panel: Panel): Boxed => {
  const laid = wanted.map(({ outline, count }) => (count === 0 ? undefined : lonePlate(outline, panel)))
  return {
    panels: wanted.flatMap(({ count }, plate) => {
      const alone = laid[plate]
      return alone ? Array.from({ length: count }, (): Placed[] => [{ plate, ...alone }]) : []
    }),
    unplaced: wanted.map(({ count }, plate) => (laid[plate] ? 0 : count)),
  }
}

/** All steps at once. */
export const nest = (wanted: readonly Wanted[], panel: Panel, seed: number): Nesting =>
  lastOf(nestSteps(wanted, panel, seed))

/** As many of one plate as rows of boxes hold. */
const panelOfBoxes = (wanted: readonly Wanted[], plate: number, panel: Panel): readonly Placed[] => {
  const alone = wanted.map(({ outline }, index) => ({
    outline,
    count: index === plate ? inBoxes(outlineSize(outline), panel) : 0,
  }))
  return rowsOfBoxes(alone, panel).panels[0] ?? []
}

/** Could a panel that holds more plates save one? */
const enoughFor =
  (count: number, bound: number) =>
  (most: number): boolean =>
    most > 0 && Math.ceil(count / most) <= Math.ceil(count / bound)

/** From left to right, so that a panel begun leaves one piece. */
const fromLeft = (placed: readonly Placed[]): Placed[] =>
  [...placed].sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y)
