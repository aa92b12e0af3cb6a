import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { numberedPanels, panelDrawing } from '../../src/compose/panel-drawing.js'
import { panelSteps } from '../../src/panels/plan-panels.js'
import { writeDxf } from '../../src/write/dxf.js'
import { area, distancesFrom, type Jts } from '../geometry/jts.js'
import { planOf } from '../orders.js'
import { type DxfReader, openDxfReader } from '../read-back/read-dxf.js'
import type { ReadOutline } from '../read-back/read-outline.js'
import { repeatedEdges } from '../read-back/repeated-edges.js'

/*
 * Panels as a cutter gets them: written as DXF, read back by dxf-parser, and judged by JTS. The order is to be cut by
 * hand, so that the lines are the plates' true edges.
 */

let reader: DxfReader
beforeAll(() => {
  reader = openDxfReader()
})
afterAll(() => reader.close())

const PANELS = [
  { length: 2440, width: 1220, edge: 10, gap: 4 },
  { length: 1525, width: 1525, edge: 0, gap: 8 },
  { length: 900, width: 610, edge: 15, gap: 0.5 },
]

const STARS: readonly (readonly [string, string])[] = [
  ['star', 'points: 5, tip-angle: 45, board-width: 88.9, backing: { shape: star, inset: 12 }'],
  ['slender star', 'regular: 5/2, board-width: 70, backing: { shape: star, inset: 8 }'],
  [
    'rounded star',
    'points: 7, tip-angle: 40, across: 260, backing: { shape: star, inset: 10, corner-radius: 6 }',
  ],
  [
    'polygon with a keyhole',
    'regular: 6/2, across: 280, backing: { shape: polygon, inset: 6, hanging: { kind: keyhole } }',
  ],
  [
    'disc with cord holes',
    'points: 8, tip-angle: 50, across: 300, backing: { shape: disc, inset: 8, hanging: { kind: cord } }',
  ],
  ['smallest plate', 'points: 9, tip-angle: 60, across: 240, backing: { shape: auto, inset: 5, covers: 40 }'],
]

const orderOf = (stars: readonly string[], { length, width, edge, gap }: (typeof PANELS)[number]): string => `
shop: { cutter: { kind: hand }, panels: [{ length: ${length}, width: ${width}, edge: ${edge}, gap: ${gap} }] }
stars: [${stars.map((star) => `{ ${star} }`).join(', ')}]
`

/** Steps of the search that the sweep waits for: what has been placed must be right whenever it is stopped. */
const STEPS = 6

/** What is placed once the search has been stopped, as read from the files, each panel as often as it is cut. */
const cutPanels = async (text: string) => {
  const plan = planOf(text)
  const steps = panelSteps(plan)
  let next = steps.next()
  for (let step = 1; !next.done; step++) next = steps.next(step > STEPS)
  const panels = await Promise.all(
    numberedPanels(next.value).map(async (numbered) => ({
      numbered,
      outlines: (await reader.read(writeDxf(panelDrawing(numbered, plan), 'r2000'))).outlines,
    })),
  )
  return { plan, found: next.value, panels }
}

const on = (layer: string, outlines: readonly ReadOutline[]): ReadOutline[] =>
  outlines.filter((outline) => outline.layer === layer)

interface Extent {
  readonly left: number
  readonly bottom: number
  readonly right: number
  readonly top: number
}

const extentOf = (plate: Jts): Extent => {
  const box = plate.getEnvelopeInternal()
  return { left: box.getMinX(), bottom: box.getMinY(), right: box.getMaxX(), top: box.getMaxY() }
}

const apart = (a: Extent, b: Extent): number =>
  Math.max(a.left - b.right, b.left - a.right, a.bottom - b.top, b.bottom - a.top)

/** Four decimals in the file, and chords of 0.001 mm inside arcs. */
const WRITTEN = 0.0025

const expectRightPanels = async (text: string, { length, width, edge, gap }: (typeof PANELS)[number]) => {
  const { plan, found, panels } = await cutPanels(text)
  expect(found.unplaced).toEqual([])
  const wanted = plan.stars.reduce((sum, { order }) => sum + order.quantity, 0)
  const placed = panels.reduce(
    (sum, { numbered, outlines }) => sum + numbered.filled.times * on('CUT-OUTSIDE', outlines).length,
    0,
  )
  expect(placed).toBe(wanted)
  for (const { numbered, outlines } of panels) {
    const plates = on('CUT-OUTSIDE', outlines)
    const { stars } = numbered.filled.worth
    expect(plates).toHaveLength(stars.reduce((sum, { count }) => sum + count, 0))
    const openings = stars.reduce(
      (sum, { star, count }) => sum + count * (star.backing?.part.inner.length ?? 0),
      0,
    )
    expect(on('CUT-INSIDE', outlines)).toHaveLength(openings)
    expect(plates.every(({ closed }) => closed)).toBe(true)
    expect(repeatedEdges(outlines)).toEqual([])
    const layers = outlines.map(({ layer }) => layer)
    expect(layers.lastIndexOf('CUT-INSIDE')).toBeLessThan(layers.indexOf('CUT-OUTSIDE'))
    const areas = plates.map((plate) => area(plate))
    const extents = areas.map(extentOf)
    areas.forEach((one, index) => {
      const box = extents[index] as Extent
      const free = Math.min(box.left, box.bottom, length - box.right, width - box.top)
      expect(free).toBeGreaterThan(edge - WRITTEN)
      const distanceTo = distancesFrom(one)
      for (let other = 0; other < index; other++) {
        // Boxes so far apart hold plates that are at least as far apart.
        if (apart(box, extents[other] as Extent) > gap) continue
        expect(distanceTo(areas[other] as Jts)).toBeGreaterThan(gap - WRITTEN)
      }
    })
    for (const hole of on('CUT-INSIDE', outlines).map((outline) => area(outline)))
      expect(areas.filter((plate) => plate.contains(hole))).toHaveLength(1)
  }
}

describe.each(PANELS)('on $length × $width mm, edge $edge, gap $gap', (panel) => {
  it.each(STARS)('every %s is inside and clear, and the files hold all of them', async (_, keys) => {
    await expectRightPanels(orderOf([`name: Only, quantity: 75, ${keys}`], panel), panel)
  })

  it('so are stars that share panels', async () => {
    const stars = STARS.map(
      ([, keys], index) => `name: Star ${index + 1}, quantity: ${4 + 3 * index}, ${keys}`,
    )
    await expectRightPanels(orderOf(stars, panel), panel)
  })
})
