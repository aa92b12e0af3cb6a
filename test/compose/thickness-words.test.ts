import { describe, expect, test } from 'vitest'
import { fixingText } from '../../src/compose/backing-words.js'
import { weightText } from '../../src/compose/body-words.js'
import { cutPlan } from '../../src/compose/cut-plan.js'
import { cuttingList } from '../../src/compose/cutting-list.js'
import { planJson } from '../../src/compose/plan-json.js'
import { stockJson } from '../../src/compose/stock-json.js'
import { planPanels } from '../../src/panels/plan-panels.js'
import { briefStock } from '../../src/stock/stock.js'
import { planOf } from '../orders.js'

// Common practice, no published source: what a person is told is judged by reading it.

const THICK = '{ width: 70, thickness: 19, length: 2400, price: 9 }'
const THIN = '{ name: shed door, width: 70, thickness: 12, length: 2400, price: 4 }'
const UNTOLD = '{ width: 70, length: 2400, price: 5 }'
const PLY3 = '{ length: 1200, width: 600, thickness: 3, price: 20 }'
const PLY6 = '{ length: 1200, width: 600, thickness: 6, price: 10 }'

const planFor = (boards: readonly string[], panels: readonly string[], ...stars: readonly string[]) =>
  planOf(
    `{ shop: { wood: { species: white oak }, boards: [${boards.join(', ')}], panels: [${panels.join(', ')}] }, stars: [${stars.join(', ')}] }`,
  )
const star = (name: string, more = '') =>
  `{ name: ${name}, points: 5, tip-angle: 45, board-width: 70${more === '' ? '' : `, ${more}`} }`
const BACKED = 'backing: { shape: star, inset: 9 }'

const stockFor = (plan: ReturnType<typeof planFor>) => {
  const stock = briefStock(plan, planPanels(plan))
  if (!stock.ok) throw new Error(JSON.stringify(stock.problems))
  return stock.value
}

/** What the plan takes for granted of thicknesses. */
const told = (plan: ReturnType<typeof planFor>) =>
  cutPlan(plan)
    .replace(/\n {2}(?=\S)/g, ' ')
    .split('\n')
    .filter((text) => text.startsWith('- ') && text.includes(' thick'))

describe('the plan tells which thickness it took for granted, once:', () => {
  test('of boards and panels that differ', () => {
    expect(told(planFor([THICK, THIN], [PLY3, PLY6], star('Jetty', BACKED), star('Pier', BACKED)))).toEqual([
      '- Jetty, Pier: arms 19.0 mm thick, as board 1; give thickness for another (12.0 mm)',
      "- Jetty, Pier: backing 3.0 mm thick, as panel 1; give the backing's thickness for another (6.0 mm)",
    ])
    expect(told(planFor([THIN, THICK], [PLY6, PLY3], star('Jetty', BACKED)))).toEqual([
      '- Jetty: arms 12.0 mm thick, as "shed door"; give thickness for another (19.0 mm)',
      "- Jetty: backing 6.0 mm thick, as panel 1; give the backing's thickness for another (3.0 mm)",
    ])
  })

  test('of boards that tell none', () => {
    expect(told(planFor([UNTOLD, THICK], [], star('Jetty')))).toEqual([
      '- Jetty: arms 19.0 mm thick, as board 2; boards that tell none are taken to be so too',
    ])
  })

  test('not where the order gives it, or where there is no other', () => {
    expect(told(planFor([THICK], [PLY3], star('Jetty', BACKED)))).toEqual([])
    expect(
      told(
        planFor(
          [THICK, THIN],
          [PLY3, PLY6],
          star('Jetty', 'thickness: 12, backing: { inset: 9, thickness: 6 }'),
        ),
      ),
    ).toEqual([])
  })
})

test('the thickness stands with the star and its backing', () => {
  const plan = planFor([THIN, THICK], [PLY6], star('Jetty', BACKED))
  const text = cutPlan(plan).replace(/\n +/g, ' ')
  expect(text).toContain('valley to valley 75.8 mm, 12.0 mm thick')
  expect(text).toContain('of 70.0 mm × 2400.0 mm × 12.0 mm, price 4.00')
  expect(text).toMatch(/inside the star: [\d. m×]+, 6\.0 mm thick; covers/)
  const [json] = JSON.parse(planJson(plan)).stars
  expect([json.thickness, json.backing.thickness]).toEqual([12, 6])
})

test('and with every board of the cutting list, and what is planed', () => {
  const stock = stockFor(planFor([THICK, THIN], [], star('Jetty'), star('Pier', 'thickness: 12')))
  const list = cuttingList(stock).replace(/\n +/g, ' ')
  expect(list).toContain('1 × board 1 of the order, 70.0 mm × 2400.0 mm × 19.0 mm')
  expect(list).toContain('1 × "shed door", 70.0 mm × 2400.0 mm × 12.0 mm')
  expect(list).toMatch(/Jetty: 5 arms, 70\.0 mm wide, 19\.0 mm thick/)
  expect(list).toMatch(/Pier: 5 arms, 70\.0 mm wide, 12\.0 mm thick/)
  expect(list).not.toContain('plane')
  const json = JSON.parse(stockJson(stock))
  expect(json.boards.map(({ thickness }: { thickness: number }) => thickness).toSorted()).toEqual([12, 19])
  expect(json.blanks.map(({ thickness }: { thickness: number }) => thickness).toSorted()).toEqual([12, 19])

  const planed = planFor([THICK, THIN], [], star('Jetty', 'thickness: 18'))
  expect(cuttingList(stockFor(planed)).replace(/\n +/g, ' ')).toContain(
    'A is planed to 18.0 mm: plane the wood while it is long, before its first crosscut.',
  )
  expect(cutPlan(planed).replace(/\n +/g, ' ')).toContain(
    '× 19.0 mm, price 9.00, gives 22 arms, planed to 18.0 mm',
  )
})

test('what the backing cannot be weighed without is named, and nothing else', () => {
  const missing = (panels: readonly string[], backing = 'shape: star, inset: 9') => {
    const plan = planFor([THICK], panels, star('Jetty', `backing: { ${backing} }`))
    const [first] = plan.stars
    return first && weightText(first, plan.order)?.replace(/^.*the hanger, /, '')
  }
  const dense = PLY3.replace(' }', ', density: 600 }')
  const untold = '{ length: 1200, width: 600 }'
  expect(missing([PLY3])).toBe('give the density of panel 1')
  expect(missing([dense, PLY3, PLY3])).toBe('give the density of panels 2, 3')
  expect(missing([untold.replace(' }', ', density: 600 }')])).toBe('give its thickness')
  expect(missing([untold])).toBe('give its thickness and the density of panel 1')
  expect(missing([], 'shape: star, inset: 9, thickness: 4')).toBe(
    'give a panel that holds it, with its density',
  )
  expect(missing([dense])).toContain('a hanger rated for')
})

test('likewise what the nails cannot be checked without', () => {
  const nails = 'backing: { inset: 9, fixing: { kind: nails } }'
  const told = (boards: readonly string[], panels: readonly string[]) => {
    const plan = planFor(boards, panels, star('Jetty', nails))
    const [first] = plan.stars
    return first && fixingText(first, plan.order.lengths)?.replace(/^.*; /, '')
  }
  expect(told([], [])).toBe('shorter than plate and arm together: give both thicknesses to have it checked')
  expect(told([THICK], [])).toBe(
    "shorter than plate and arm together: give the backing's thickness to have it checked",
  )
  expect(told([UNTOLD], [PLY3])).toBe(
    "shorter than plate and arm together: give the arms' thickness to have it checked",
  )
  expect(told([THICK], [PLY3])).toBe('up to 20.0 mm long, or they come through')
})
