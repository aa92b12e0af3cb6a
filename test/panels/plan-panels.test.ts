import { describe, expect, it } from 'vitest'
import { numberedPanels, panelDrawing } from '../../src/compose/panel-drawing.js'
import { panelPages } from '../../src/compose/panel-sheet.js'
import { panelText } from '../../src/compose/panel-words.js'
import type { PanelPlan } from '../../src/panels/panel-plan.js'
import { panelSteps, planPanels } from '../../src/panels/plan-panels.js'
import { briefStock } from '../../src/stock/stock.js'
import { writeDxf } from '../../src/write/dxf.js'
import { planOf } from '../orders.js'

const order = (panels: string, stars: string): string => `
shop:
  boards: [{ width: 90, thickness: 19, length: 2400, price: 7 }]
  panels: [${panels}]
stars: [${stars}]
`

const DISC = 'points: 8, tip-angle: 50, across: 300'
const SHEET = '{ length: 1220, width: 610, thickness: 4, price: 12, edge: 10, gap: 5 }'

const disc = (name: string, quantity: number, more = ''): string =>
  `{ name: ${name}, quantity: ${quantity}, ${DISC}, backing: { shape: disc, inset: 8${more} } }`

describe('panels to buy', () => {
  it('stars of one thickness share panels, others have their own', () => {
    const found = planPanels(
      planOf(
        order(
          `${SHEET}, { length: 1220, width: 610, thickness: 6, price: 15, edge: 10, gap: 5 }`,
          [
            disc('A', 2, ', thickness: 4'),
            disc('B', 2, ', thickness: 4'),
            disc('C', 1, ', thickness: 6'),
          ].join(', '),
        ),
      ),
    )
    expect(found.uses.map(({ stars }) => stars.map(({ order: { name } }) => name))).toEqual([
      ['A', 'B'],
      ['C'],
    ])
    expect(found.uses.map(({ panel, count }) => [panel.thickness, count])).toEqual([
      [4, 1],
      [6, 1],
    ])
  })

  it('the panel that comes cheapest in all is taken, not the cheapest panel', () => {
    // One disc of 211 mm goes on the small one, eight and more on the large one for less.
    const small = '{ length: 300, width: 300, thickness: 4, price: 5 }'
    const [few] = planPanels(planOf(order(`${SHEET}, ${small}`, disc('A', 1)))).uses
    const [many] = planPanels(planOf(order(`${SHEET}, ${small}`, disc('A', 8)))).uses
    expect([few?.panel.price, many?.panel.price]).toEqual([5, 12])
  })

  it('a panel just as wide as a disc, which the search takes for a little wider, holds it all the same', () => {
    const [star] = planOf(order(SHEET, disc('A', 3))).stars
    const exact = (star?.backing?.across ?? 0) + 20
    const tight = `{ length: ${exact}, width: ${exact}, thickness: 4, price: 1, edge: 10, gap: 5 }`
    const { uses, panels, unplaced } = planPanels(planOf(order(`${tight}, ${SHEET}`, disc('A', 3))))
    expect(unplaced).toEqual([])
    expect(uses.map(({ panel, count }) => [panel.price, count])).toEqual([[1, 3]])
    expect(panels.map(({ times, plates }) => [times, plates.length])).toEqual([[3, 1]])
    const [at] = panels.flatMap(({ plates }) => plates.map((laid) => laid.at))
    expect(at?.x).toBeCloseTo(exact / 2, 6)
    expect(at?.y).toBeCloseTo(exact / 2, 6)
  })

  it('what no panel holds is told, and the rest is laid', () => {
    const found = planPanels(
      planOf(
        order(
          SHEET,
          `${disc('A', 1)}, { name: B, points: 8, tip-angle: 50, across: 3000, backing: { shape: disc, inset: 8 } }`,
        ),
      ),
    )
    expect(found.unplaced.map(({ order: { name } }) => name)).toEqual(['B'])
    expect(found.uses.map(({ count }) => count)).toEqual([1])
    expect(panelText(found)).toContain('B: no panel holds its backing')
  })

  it('rows of boxes are shared by the stars too, and no layout is told to need fewer than its area', () => {
    const found = planPanels(planOf(order(SHEET, `${disc('A', 3)}, ${disc('B', 3)}`)))
    // Discs of 204 mm with 5 mm between: 5 in a row of 1200 mm, 2 rows in 590 mm, so that ten go on a panel.
    const across = Number(found.uses[0]?.stars[0]?.backing?.across)
    expect(Math.floor(1205 / (across + 5)) * Math.floor(595 / (across + 5))).toBeGreaterThanOrEqual(6)
    expect(found.uses.map(({ inBoxes, count, atLeast }) => [inBoxes, count, atLeast])).toEqual([[1, 1, 1]])
  })
})

describe('the price of a panel', () => {
  it('is shared by area among the stars that lie on it, and comes to what is paid', () => {
    const plan = planOf(
      order(
        SHEET,
        `${disc('A', 3)}, { name: B, quantity: 2, regular: 5/2, across: 200, backing: { shape: star, inset: 6 } }`,
      ),
    )
    const found = planPanels(plan)
    const stock = briefStock(plan, found)
    if (!stock.ok) throw new Error('no boards')
    const paid = stock.value.stars.reduce(
      (sum, { plan: star, panel }) => sum + (panel ?? Number.NaN) * star.order.quantity,
      0,
    )
    expect(paid).toBeCloseTo(
      found.uses.reduce((sum, { panel, count }) => sum + count * (panel.price ?? 0), 0),
      9,
    )
  })

  it('is not guessed', () => {
    const plan = planOf(order('{ length: 1220, width: 610, thickness: 4 }', disc('A', 3)))
    const stock = briefStock(plan, planPanels(plan))
    expect(stock.ok && stock.value.stars[0]?.panel).toBeUndefined()
  })
})

describe('a search that is stopped', () => {
  const text = order(
    SHEET,
    '{ name: A, quantity: 90, points: 5, tip-angle: 45, across: 200, backing: { shape: star, inset: 6 } }',
  )

  const stoppedAfter = (count: number): PanelPlan => {
    const steps = panelSteps(planOf(text))
    let next = steps.next()
    for (let step = 1; !next.done; step++) next = steps.next(step >= count)
    return next.value
  }

  it('keeps the best so far, says so, and never holds less for more steps', () => {
    const [soon, later] = [stoppedAfter(1), stoppedAfter(2000)]
    expect(soon.stopped && later.stopped).toBe(true)
    expect(panelText(soon)).toContain('the search was ended before its last step')
    const most = ({ panels }: PanelPlan) => Math.max(...panels.map(({ plates }) => plates.length))
    expect(most(soon)).toBeGreaterThan(0)
    expect(most(later)).toBeGreaterThanOrEqual(most(soon))
    for (const { panels } of [soon, later])
      expect(panels.reduce((sum, { times, plates }) => sum + times * plates.length, 0)).toBe(90)
  })

  it('comes out the same for the same steps', () => {
    expect(stoppedAfter(2000).panels).toEqual(stoppedAfter(2000).panels)
  })

  it.each([1, 30, 1500])(
    'after %i steps it takes one more for each kind of panel that is left, and has all plates of four stars',
    (count) => {
      const stars = [6, 7, 8, 9].map(
        (points, index) =>
          `{ name: ${'ABCD'[index]}, quantity: 30, points: ${points}, tip-angle: 40, across: ${260 - 20 * index}, backing: { shape: star, inset: 6 } }`,
      )
      const steps = panelSteps(
        planOf(order(`${SHEET}, { length: 2440, width: 1220, thickness: 4, price: 40 }`, stars.join(', '))),
      )
      let [next, told] = [steps.next(), 0]
      for (; !next.done; told++) next = steps.next(told >= count)
      expect(told).toBeLessThanOrEqual(count + 2)
      expect(next.value.stopped).toBe(true)
      const laid = next.value.panels.flatMap(({ times, plates }) =>
        plates.flatMap(({ star }) => Array.from({ length: times }, () => star.order.name)),
      )
      for (const name of 'ABCD') expect(laid.filter((each) => each === name)).toHaveLength(30)
    },
  )
})

describe('the seed', () => {
  const seeded = (seed: string): PanelPlan =>
    planPanels(
      planOf(
        order(
          '{ length: 900, width: 600 }',
          '{ name: A, quantity: 60, points: 5, tip-angle: 45, across: 150, backing: { shape: star, inset: 6 } }',
        ).replace('shop:', seed === '' ? 'shop:' : `shop:\n  panel-seed: ${seed}`),
      ),
    )

  const bytesOf = (panels: PanelPlan): string =>
    numberedPanels(panels)
      .map((each) => writeDxf(panelDrawing(each, panels.plan), 'r12'))
      .join('')

  const [seven, other] = [seeded('7'), seeded('8')]
  const usual = seeded('')

  it('gives the same bytes when it is the same, others when it is another, and all plates either way', () => {
    expect(bytesOf(seeded('7'))).toBe(bytesOf(seven))
    expect(bytesOf(other)).not.toBe(bytesOf(seven))
    expect(bytesOf(seeded('1'))).toBe(bytesOf(usual))
    for (const { panels } of [seven, other])
      expect(panels.reduce((sum, { times, plates }) => sum + times * plates.length, 0)).toBe(60)
  })

  it('is told on terminal and page where it is not the usual one', () => {
    const onPage = (panels: PanelPlan): string =>
      panelPages(panels)
        .flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])))
        .join(' ')
    for (const tell of [panelText, onPage]) {
      expect(tell(seven)).toContain('begun with panel-seed 7')
      expect(tell(usual)).not.toContain('panel-seed')
    }
  })
})

describe('panels larger than the bed', () => {
  const onBed = (bed: string): string =>
    panelText(
      planPanels(
        planOf(order(SHEET, disc('A', 3)).replace('shop:', `shop:\n  cutter: { kind: laser, bed: ${bed} }`)),
      ),
    ).replaceAll(/\s+/g, ' ')

  it('are told with the way out, but not where they go on, either way round', () => {
    expect(onBed('{ width: 600, length: 900 }')).toContain(
      "A panel of 1220.0 mm × 610.0 mm does not go onto the cutter's bed of 600.0 mm × 900.0 mm. Have it sawn to go on",
    )
    expect(onBed('{ width: 610, length: 1220 }')).not.toContain('does not go onto')
    expect(onBed('{ width: 1220, length: 610 }')).not.toContain('does not go onto')
  })

  const taken = (panels: string, stars: string): (number | undefined)[][] => {
    const cutter = 'shop:\n  cutter: { kind: laser, bed: { width: 600, length: 900 } }'
    const { uses, unplaced } = planPanels(planOf(order(panels, stars).replace('shop:', cutter)))
    expect(unplaced).toEqual([])
    return uses.map(({ panel, stars: on }) => [panel.price, on.length])
  }
  const SMALLER = '{ length: 600, width: 600, thickness: 4, price: 30, edge: 10, gap: 5 }'

  it('are left where another panel of the order goes on, even one that costs more', () => {
    expect(taken(`${SHEET}, ${SMALLER}`, disc('A', 3))).toEqual([[30, 1]])
    expect(taken(SHEET, disc('A', 3))).toEqual([[12, 1]])
  })

  it('are taken for the plates alone that nothing smaller holds', () => {
    const large = '{ name: B, points: 8, tip-angle: 50, across: 1300, backing: { shape: disc, inset: 8 } }'
    const sheet = SHEET.replace('610', '1220')
    expect(taken(`${sheet}, ${SMALLER}`, `${disc('A', 3)}, ${large}`)).toEqual([
      [30, 1],
      [12, 1],
    ])
  })
})

describe('plates that take fewer tabs than were asked for', () => {
  const cutBy = (cutter: string): PanelPlan =>
    planPanels(
      planOf(
        order(
          SHEET.replace('gap: 5', 'gap: 10'),
          `${disc('A', 3)}, { name: B, regular: 5/2, across: 200, backing: { shape: star, inset: 6 } }`,
        ).replace('shop:', `shop:\n  cutter: ${cutter}`),
      ),
    )
  const onPage = (found: PanelPlan): string =>
    panelPages(found)
      .flatMap(({ shapes }) => shapes.flatMap((shape) => (shape.kind === 'label' ? [shape.text] : [])))
      .join(' ')

  it.each([
    ['terminal', panelText],
    ['page', onPage],
  ])('are told by name on the %s of the panels, others not', (_, tell) => {
    const told = tell(cutBy('{ kind: router, tabs: 3 }')).replaceAll(/\s+/g, ' ')
    expect(told).toContain(
      "A: The backing's edge has room for 0 of 3 tabs, none on curves. Hold the plate down",
    )
    expect(told).not.toContain('B: The')
    expect(tell(cutBy('{ kind: router }'))).not.toContain('tabs')
  })
})
