import { expect, it } from 'vitest'
import { cardSettings } from '../../src/compose/card-settings.js'
import { oneStar } from '../orders.js'

/* The large figures are what the stop is set by: they are read back here, a fraction and its rest, and added up. */

const PER_INCH = 25.4

/** `4 1/4 in` and `-0.010 in`, in inches. */
const inchesOf = (text: string): number =>
  text
    .replace(/ in$/, '')
    .split(' ')
    .reduce((sum, part) => {
      const [above, below = '1'] = part.split('/')
      return sum + Number(above) / Number(below)
    }, 0)

it('large figures in inches come to the stop, their rest with its sign', () => {
  const signs = new Set<string>()
  for (let sixteenths = 30; sixteenths < 90; sixteenths++) {
    const { stars, order } = oneStar(
      `points: 5, tip-angle: 45, board-width: ${sixteenths / 16} in`,
      'units: in',
    )
    const [plan] = stars
    if (!plan) throw new Error('one star')
    const labels = cardSettings(plan, order, 7, 184).shapes.flatMap((shape) =>
      shape.kind === 'label' ? [shape] : [],
    )
    for (const [caption, length] of [
      ['blank stop', plan.blank.side],
      ['stop', plan.stop],
    ] as const) {
      const over = labels.find(({ text }) => text === caption)
      const large = labels.find(({ at, text }) => at.x === over?.at.x && / in$/.test(text))
      const rest = labels.find(
        ({ at, text }) => at.y === large?.at.y && at.x > large.at.x && /^[+-]\d\.\d{3} in$/.test(text),
      )
      if (!large) throw new Error(`no figure under ${caption}`)
      if (rest) signs.add(rest.text.charAt(0))
      const told = inchesOf(large.text) + (rest ? inchesOf(rest.text) : 0)
      expect(Math.abs(told - length / PER_INCH), `${large.text} ${rest?.text}`).toBeLessThan(0.0045)
      // A rest that is told is told to a thousandth.
      if (rest) expect(Math.abs(told - length / PER_INCH)).toBeLessThan(0.00051)
    }
  }
  expect([...signs].sort()).toEqual(['+', '-'])
})
