import { expect, it } from 'vitest'
import { jigWords } from '../../src/compose/jig-words.js'
import { drawJigs, jigOf } from '../../src/compose/jigs.js'
import { makeOrder } from '../../src/make.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'
import { areaBeyond, inside } from '../cutter/swept.js'

/** Five and six points of one tip angle from one board: the blank is the board's width over the sine, whatever the points. */
const ORDER = {
  text: `stars:
  - { name: Boathouse, points: 5, tip-angle: 50, board-width: 70 }
  - { name: Jetty, points: 5, tip-angle: 52, board-width: 70 }
  - { name: Chapel, points: 6, tip-angle: 50, board-width: 70 }
  - { name: Wren, points: 5, tip-angle: 50, board-width: 71 }`,
}

const planned = () => {
  const order = parseOrder(ORDER)
  const plan = order.ok ? planOrder(order.value) : order
  if (!order.ok || !plan.ok) throw new Error('a good order')
  return { order: order.value, stars: plan.value.stars }
}

it('stars with equal blanks get one blank stop, told for both; others get their own', () => {
  const { order, stars } = planned()
  const stops = stars.flatMap((star) =>
    drawJigs(star, order, stars).filter(({ name }) => name === 'blank-stop'),
  )
  const served = stops.map((stop) =>
    'drawn' in stop ? stop.drawn.ok && (stop.drawn.value.jig.serves ?? []) : stop.needless,
  )
  expect(served).toEqual([
    ['Chapel'],
    [],
    'The blank stop of "Boathouse" serves "Chapel" too: their blanks are the same.',
    [],
  ])
  const [first] = stops
  if (!first || !('drawn' in first) || !first.drawn.ok || !stars[0]) throw new Error('one is drawn')
  const { steps, onParts } = jigWords(first.drawn.value.jig, stars[0], order)
  expect(steps.join(' ')).toContain('The same stop serves every blank of "Boathouse" and "Chapel".')
  expect(onParts.plate?.map(({ text }) => text)).toEqual(expect.arrayContaining(['Boathouse', 'Chapel']))
})

it('that one is what the other would get by itself, by Clipper2', () => {
  const { order, stars } = planned()
  const [own, other, wider] = [stars[0], stars[2], stars[3]].map((star) => {
    const jig = star && jigOf('blank-stop', star, order)
    if (!jig?.ok) throw new Error('a stop can be made')
    return jig.value.parts.map(({ outer }) => inside(outer))
  })
  own?.forEach((part, index) => {
    expect(areaBeyond(part, other?.[index] ?? [])).toBeLessThan(1e-3)
    expect(areaBeyond(other?.[index] ?? [], part)).toBeLessThan(1e-3)
  })
  expect(own?.some((part, index) => areaBeyond(wider?.[index] ?? [], part) > 1)).toBe(true)
})

it('make writes it once', () => {
  const made = makeOrder(ORDER)
  const files = made.ok ? made.value.files.map(({ path }) => path) : []
  const stars = files.filter((path) => /blank-stop.*dxf$/.test(path)).map((path) => path.split('/')[0])
  expect(stars).toEqual(['boathouse', 'jetty', 'wren'])
})
