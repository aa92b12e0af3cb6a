import { describe, expect, it } from 'vitest'
import { drawJig, jigOf } from '../../src/compose/jigs.js'
import { makeOrder } from '../../src/make.js'
import { JIG_NAMES } from '../../src/order/order.js'
import { parseOrder } from '../../src/order/parse.js'
import { planOrder } from '../../src/plan/plan.js'

const starOf = (text: string) => {
  const order = parseOrder({ text })
  const plan = order.ok ? planOrder(order.value) : order
  const star = plan.ok ? plan.value.stars[0] : undefined
  if (!order.ok || !star) throw new Error('a good order')
  return { order: order.value, star }
}

/** Arms of 40 mm: less than 50 mm lies beside the blade, which nothing can hold (common practice, no published source). */
const SMALL = 'name: Wren, points: 5, tip-angle: 30, tip-edge: 40'
const SAW_JIGS = ['blank-stop', 'first-cut-wedge', 'arm-cradle', 'joint-cut-wedge'] as const

describe('an arm that is too small for the saw', () => {
  const { order, star } = starOf(`shop: { saw: { limit: 25 } }\nstars: [{ ${SMALL} }]`)

  it.each(SAW_JIGS)('gets no %s, and is told what to do', (name) => {
    const jig = jigOf(name, star, order)
    expect(jig.ok ? undefined : jig.problems).toEqual([
      {
        place: 'jigs',
        given: name,
        advice:
          'An arm of "Wren" is too small for a miter saw, in any jig: cut it with a fine hand saw in a miter box, or make the star larger.',
      },
    ])
  })

  it('still gets its gauge and its window, and make writes no jig for the saw', () => {
    for (const name of JIG_NAMES.filter((each) => !SAW_JIGS.some((saw) => saw === each))) {
      if (name !== 'glue-up-frame') expect(drawJig(name, star, order).ok, name).toBe(true)
    }
    const made = makeOrder({ text: `stars: [{ ${SMALL} }]` })
    const files = made.ok ? made.value.files.map(({ path }) => path) : []
    expect(files.filter((path) => path.includes('angle-gauge')).length).toBe(3)
    expect(files.filter((path) => /blank-stop|arm-cradle/.test(path))).toEqual([])
  })

  it('refuses the order that asks for one by name', () => {
    const made = makeOrder({ text: `jigs: [arm-cradle]\nstars: [{ ${SMALL} }]` })
    expect(made.ok ? [] : made.problems.map(({ place, given }) => [place, given])).toEqual([
      ['jigs', 'arm-cradle'],
    ])
  })
})

describe("the star's name on the parts", () => {
  const notes = (name: string): string => {
    const { order, star } = starOf(`stars: [{ name: "${name}", points: 5, tip-angle: 36, radius: 150 }]`)
    const drawn = drawJig('angle-gauge', star, order)
    if (!drawn.ok) throw new Error('a gauge can be made')
    const { notes } = drawn.value.drawing
    return (notes?.lines ?? []).join('\n')
  }

  it('is told where its signs have no strokes, as it is lettered then', () => {
    expect(notes('Звезда')).toContain('On the parts the name reads "Zvezda":')
    expect(notes('Brücke')).not.toContain('On the parts')
    expect(notes('Boathouse')).not.toContain('On the parts')
  })
})
