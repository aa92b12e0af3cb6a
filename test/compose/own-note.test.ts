import { expect, it } from 'vitest'
import { cutPlan } from '../../src/compose/cut-plan.js'
import { planJson } from '../../src/compose/plan-json.js'
import { makeOrder } from '../../src/make.js'

const NOTE = "larch from the old jetty, silver side out & tips up; Ø 12 mm × 2 isn't 11"

const made = await makeOrder({
  text: JSON.stringify({ stars: [{ note: NOTE, points: 5, 'tip-angle': 45, across: 200, backing: {} }] }),
})
if (!made.ok) throw new Error('the order is right')
const { plan, drawings, files } = made.value

const textOf = (kind: string): string =>
  (drawings.find(({ drawing }) => drawing.kind === kind)?.drawing.shapes ?? [])
    .flatMap((shape) => (shape.kind === 'label' ? [shape.text] : []))
    .join(' ')

it("the maker's note stands on arm pattern and star mat, in the plan and on the overview, word for word", () => {
  for (const kind of ['arm-pattern', 'star-mat']) expect(textOf(kind)).toContain(`Note: ${NOTE}`)
  expect(cutPlan(plan).replaceAll(/\s+/g, ' ')).toContain(`Note ${NOTE}`)
  expect(JSON.parse(planJson(plan)).stars).toMatchObject([{ note: NOTE }])
  const page = String(files.find(({ path }) => path === 'index.html')?.content)
  expect(page).toContain(`<p>${NOTE.replace('&', '&amp;')}</p>`)
})

it('a file to cut does not carry it', () => {
  expect(textOf('backing')).toContain('UP')
  expect(textOf('backing')).not.toContain('larch')
})
