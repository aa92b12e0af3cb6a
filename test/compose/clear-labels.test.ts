import { describe, expect, it } from 'vitest'
import { DRAWING_NAMES } from '../../src/compose/drawing-names.js'
import { DRAWINGS } from '../../src/compose/drawings.js'
import { labelIsClear } from '../../src/drawing/place-label.js'
import { oneStar } from '../orders.js'

/*
 * ISO 129-1: figures are not crossed by lines. Every label of every drawing against everything else in it, over stars
 * of all regimes: tip angle below, at and above the centre angle, 90°, above 90°, fine and blunt, small and large.
 */

const SHAPES = [
  ...[3, 4, 5, 6, 7, 8, 9, 10, 12, 16, 24].flatMap((points) => {
    const limit = 180 - 360 / points
    return [20, 36, 45, 60, 90, 110, 135, 160]
      .filter((tip) => tip < limit - 2)
      .map((tip) => `points: ${points}, tip-angle: ${tip}`)
  }),
  'regular: 5/2',
  'regular: 6/2',
  'regular: 12/5',
]
const SIZES = ['across: 120', 'across: 300', 'radius: 700']

describe.each(SIZES)('labels of a star with %s', (size) => {
  it.each(SHAPES)('%s lie clear of all lines and of each other', (shape) => {
    const plan = oneStar(`${shape}, ${size}, chamfer: 1, backing: { inset: 2 }`)
    const [star] = plan.stars
    if (!star) throw new Error('a plan has its star')
    for (const name of DRAWING_NAMES) {
      const shapes = DRAWINGS[name](star, plan.order)?.shapes ?? []
      const crossed = shapes
        .filter((label) => label.kind === 'label')
        .filter(
          (label) =>
            !labelIsClear(
              label,
              shapes.filter((other) => other !== label),
              0.2,
            ),
        )
        .map((label) => `${name}: ${label.text}`)
      expect(crossed).toEqual([])
    }
  })
})
