import { readFileSync } from 'node:fs'
import { expect, it } from 'vitest'
import { unfold } from './opened.js'
import { pages } from './pages.js'

/* Whatever an order can say has its field: the keys are those of the published description of orders. */

const { using } = pages()

interface Node {
  readonly properties?: Readonly<Record<string, Node>>
  readonly items?: Node
  readonly anyOf?: readonly Node[]
}

const schema: Node = JSON.parse(
  readFileSync(new URL('../../shared/order.schema.json', import.meta.url), 'utf8'),
)

/** Entries of lists are the first ones. */
const leaves = (node: Node, place: string): readonly string[] =>
  node.properties
    ? Object.entries(node.properties).flatMap(([key, inside]) => leaves(inside, `${place}-${key}`))
    : node.items?.properties
      ? leaves(node.items, `${place}-0`)
      : [place]

/** One field writes it, or it is chosen with another. */
const ELSEWHERE: Readonly<Record<string, string>> = {
  'at-units': 'units',
  'at-jigs': 'at-jigs-blank-stop',
  'at-stars-0-slenderest': 'shape',
  'at-stars-0-backing-shape': 'at-stars-0-backing',
  'at-stars-0-backing-hanging-kind': 'at-stars-0-backing-hanging',
  'at-stars-0-backing-fixing-kind': 'at-stars-0-backing-fixing',
}

/** What one says another cannot say beside it. */
const ORDERS = [
  {
    units: 'in',
    cutter: '{ kind: laser }',
    paper: '{ roll: 24 in }',
    air: 'moisture: 7',
    star: 'points: 5, tip-angle: 45, board-width: 5',
    hanging: 'cord',
  },
  {
    units: 'mm',
    cutter: '{ kind: router, tabs: 2 }',
    paper: '{ size: A4 }',
    air: 'humidity: 30',
    star: 'regular: 5/2, across: 300, wall: { winter: { humidity: 40 } }',
    hanging: 'keyhole',
  },
  ...['height: 300 mm', 'radius: 150 mm', 'tip-edge: 120 mm'].map((size) => ({
    units: 'mm',
    cutter: '{ kind: hand }',
    paper: '{ size: single }',
    air: 'humidity: 30',
    star: `points: 5, tip-angle: 45, ${size}`,
    hanging: 'screws',
  })),
].map(
  ({ units, cutter, paper, air, star, hanging }) => `units: ${units}
shop:
  boards: [{ width: 200 mm, thickness: 19 mm, length: 2400 mm, defects: [{ from: 0, to: 20 mm }] }]
  panels: [{ length: 900 mm, width: 900 mm, thickness: 4 mm }]
  cutter: ${cutter}
  paper: ${paper}
climate: { wall: { winter: { ${air} } } }
stars:
  - { ${star}, backing: { shape: star, inset: 8 mm, hanging: { kind: ${hanging} }, fixing: { kind: nails } } }
`,
)

it('every key of an order has a field', async () => {
  const found = new Set<string>()
  for (const order of ORDERS)
    await using(
      async (page) => {
        expect(await page.locator('.problems li').allTextContents()).toEqual([])
        await unfold(page)
        for (const id of await page.locator('[id]').evaluateAll((all) => all.map(({ id }) => id)))
          found.add(id)
      },
      { hash: `#${new URLSearchParams({ order })}` },
    )
  // $schema is for editors of files.
  const keys = leaves(schema, 'at').filter((key) => key !== 'at-$schema')
  expect(keys.length).toBeGreaterThan(120)
  expect(keys.filter((key) => !found.has(ELSEWHERE[key] ?? key))).toEqual([])
})
