import { describe, expect, it } from 'vitest'
import { DRAWING_NAMES } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import type { Plan } from '../../src/plan/plan.js'
import { planOf } from '../orders.js'
import { FURNITURE } from '../prints.js'

/*
 * ISO 129-1: figures are not crossed by lines. Every label of every drawing against everything else in it, over stars
 * of all regimes: tip angle below, at and above the centre angle, 90°, above 90°, fine and blunt, small and large.
 */

const SHAPES = [
  ...[3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 24].flatMap((points) => {
    const limit = 180 - 360 / points
    return [20, 36, 45, 60, 90, 110, 135, 160]
      .filter((tip) => tip < limit - 2)
      .map((tip) => ({ points, 'tip-angle': tip }))
  }),
  ...['5/2', '6/2', '12/5'].map((regular) => ({ regular })),
]
const SIZES = [{ across: '120 mm' }, { across: '300 mm' }, { radius: '700 mm' }]

const crossedLabels = (plan: Plan): string[] =>
  plan.stars.flatMap((star) =>
    DRAWING_NAMES.flatMap((name) => {
      const shapes = DRAWINGS[name](star, plan.order, FURNITURE)?.shapes ?? []
      return shapes
        .filter((label) => label.kind === 'label')
        .filter((label) => {
          const others = shapes.filter((other) => other !== label)
          return !labelIsClear(label, others, 0.2)
        })
        .map((label) => `${name}: ${label.text}`)
    }),
  )

const planWith = (star: object, words: object, units: string): Plan =>
  planOf(
    JSON.stringify({
      units,
      stars: [{ ...star, ...words, chamfer: '1 mm', backing: { inset: '2 mm' } }],
    }),
  )

describe.each(SIZES)('labels of a star with %j', (size) => {
  it.each(SHAPES)('%j lie clear of all lines and of each other', (shape) => {
    expect(crossedLabels(planWith({ ...shape, ...size }, {}, 'mm'))).toEqual([])
    expect(crossedLabels(planWith({ ...shape, ...size }, {}, 'in'))).toEqual([])
  })
})

const WORDS = [
  { name: 'Щ'.repeat(60), note: `${'Ш'.repeat(100)} ${'Œ'.repeat(99)}` },
  { name: 'W'.repeat(60), note: 'larch from the old jetty, silver side out' },
  { name: 'Ẵ Ặ Ḝ Ģ '.repeat(7).trim(), note: 'Ẵ Ặ Ģ Å ç '.repeat(20).trim() },
  { name: 'ნავი ტბაზე Ѽ Ѿ Ѯ', note: 'ჴ ქ Ⴈ | '.replace('| ', '').repeat(20).trim() },
  { name: 'Łódź ⅜ − ⌀', note: 'Ä Ö Ü Å É ç j g '.repeat(12).trim() },
] as const

describe.each(WORDS)('labels beside the name $name', (words) => {
  it.each(SIZES)('lie clear of all lines and of each other on stars with %j', (size) => {
    for (const shape of SHAPES.filter((_, index) => index % 4 === 0)) {
      for (const units of ['mm', 'in']) {
        expect(crossedLabels(planWith({ ...shape, ...size }, words, units)), JSON.stringify(shape)).toEqual(
          [],
        )
      }
    }
  })

  it.each(SIZES)('are all lettered on arm pattern and star mat of stars with %j', (size) => {
    const plan = planWith({ points: 5, 'tip-angle': 45, ...size }, words, 'mm')
    for (const kind of ['arm-pattern', 'star-mat'] as const) {
      const [star] = plan.stars
      const notes = (star && DRAWINGS[kind](star, plan.order, FURNITURE)?.shapes) ?? []
      const lettered = notes.map((shape) => (shape.kind === 'label' ? shape.text : '')).join('')
      for (const text of Object.values(words)) {
        expect(lettered.replaceAll(' ', '')).toContain(text.normalize('NFC').replaceAll(' ', ''))
      }
    }
  })
})
