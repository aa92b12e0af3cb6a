import { expect, it } from 'vitest'
import { backingText, fixingText } from '../../src/compose/backing-words.js'
import { oneStar } from '../orders.js'

const MM = { units: 'mm', nearest: 32 } as const

it.each(Array.from({ length: 12 }, (_, index) => 200 + 7.3 * index))(
  'what is promised of a backing of a star %f across is no more than is true, and less by no tenth',
  (across) => {
    const [star] = oneStar(
      `points: 5, tip-angle: 45, across: ${across}, backing: { shape: star, inset: 6, fixing: { kind: nails } }`,
    ).stars
    const { covers = 0, fixing } = star?.backing ?? {}
    const told = (text: string | undefined, of: RegExp): number => Number(of.exec(text ?? '')?.[1])
    const covered = told(star && backingText(star, MM), /covers ([\d.]+) mm of each/)
    const clear = told(star && fixingText(star, MM), /in all, ([\d.]+) mm or more from/)
    for (const [shown, real] of [
      [covered, covers],
      [clear, fixing?.clear ?? 0],
    ] as const) {
      expect(shown).toBeLessThanOrEqual(real)
      expect(shown).toBeGreaterThan(real - 0.1)
    }
  },
)
