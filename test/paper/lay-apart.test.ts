import { describe, expect, it } from 'vitest'
import { drawJig } from '../../src/compose/jigs.js'
import type { Drawing, Path } from '../../src/drawing/model.js'
import { furnitureWith } from '../../src/furniture/furniture-set.js'
import { boxOf, edgeLength, type Outline, outlineSize, signedArea } from '../../src/geometry/outline.js'
import { add } from '../../src/geometry/point.js'
import type { JigName, Order } from '../../src/order/order.js'
import { layFigure } from '../../src/paper/lay-figure.js'
import { printedPlaces } from '../../src/paper/layout.js'
import type { Page } from '../../src/paper/page.js'
import { layOnPaper } from '../../src/paper/tile.js'
import { sweptPlans } from '../jigs/sweep-plans.js'

const laid = (name: JigName, swept: ReturnType<typeof sweptPlans>[number]) => {
  const drawn = drawJig(name, swept.plan, swept.order)
  if (!drawn.ok) return undefined
  const furniture = furnitureWith({}, 'mm')
  const print = furniture.ok ? layOnPaper(drawn.value.drawing, swept.order, furniture.value) : furniture
  return print.ok ? { drawing: drawn.value.drawing, print: print.value } : undefined
}

const cutLines = ({ figure }: Drawing): Path[] =>
  figure.filter((shape): shape is Path => shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE')

/** Outlines that a page shows from end to end, with their area and length: what turning and moving leaves alone. */
const wholeOn = (page: Page): { area: number; length: number }[] =>
  page.views.flatMap(({ shapes, window, shift }) =>
    shapes.flatMap((shape) => {
      if (shape.kind !== 'path' || shape.layer !== 'CUT-OUTSIDE') return []
      const { min, max } = boxOf([shape])
      const [low, high] = [add(min, shift), add(max, shift)]
      const inside =
        low.x >= window.min.x && low.y >= window.min.y && high.x <= window.max.x && high.y <= window.max.y
      return inside ? [measured(shape)] : []
    }),
  )

const measured = (outline: Outline) => ({
  area: Math.abs(signedArea(outline)),
  length: Number(edgeLength(outline)),
})

/** A4 and Letter less 10 mm all round and the strip of furniture below. */
const WINDOWS = { A4: [190, 251], Letter: [195.9, 233] } as const
/** Room for a pen's width, and for the grid that the search lays over a figure. */
const SPARE = 8

/** Does it go on a sheet for certain, or certainly not? */
const goesOnSheet = (outline: Outline, { shop: { paper } }: Order): boolean | undefined => {
  const { across, height } = outlineSize(outline)
  const [wide, high] = WINDOWS['size' in paper.sheet && paper.sheet.size === 'Letter' ? 'Letter' : 'A4']
  const spare = Math.min(wide - Math.min(across, height), high - Math.max(across, height))
  // Aslant a sheet holds what is as long as its diagonal.
  const never = Math.min(across, height) > wide || Math.max(across, height) > Math.hypot(wide, high)
  return spare > SPARE ? true : never ? false : undefined
}

describe.each(['paper: { size: A4 }', 'paper: { size: Letter }'])('%s', (shop) => {
  const plans = sweptPlans(shop).filter((_, index) => index % 23 === 0)

  it('every part of a jig that goes on a sheet lies whole on one; where a part is too large, the jig takes no more sheets than as one figure', () => {
    let whole = 0
    for (const swept of plans) {
      for (const name of ['blank-stop', 'arm-cradle', 'angle-gauge', 'trial-window'] as const) {
        const jig = laid(name, swept)
        if (!jig) continue
        const told = `${swept.name}: ${name}`
        const { drawing, print } = jig
        const names = print.pages.map((page) => page.name)
        expect(new Set(names).size, told).toBe(names.length)
        const figure = layFigure(drawing, swept.order.shop.paper)
        const asOne = printedPlaces(figure.figure.layout).length + (figure.notesApart ? 1 : 0)
        const shown = print.pages.flatMap(wholeOn)
        const lines = cutLines(drawing)
        const goes = lines.map((line) => goesOnSheet(line, swept.order))
        if (goes.includes(false)) expect(print.pages.length, told).toBeLessThanOrEqual(asOne)
        else if (!goes.includes(undefined)) {
          for (const line of lines) {
            const { area, length } = measured(line)
            const found = shown.filter(
              (each) => Math.abs(each.area - area) < 1e-6 * area && Math.abs(each.length - length) < 1e-6,
            )
            expect(found.length, told).toBeGreaterThan(0)
            whole += 1
          }
        }
      }
    }
    expect(whole).toBeGreaterThan(20)
  })
})
