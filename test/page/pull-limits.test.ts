import { describe, expect, it } from 'vitest'
import { editedOrder } from '../../src/order/edit-text.js'
import { jobOf } from '../../src/page/job.js'
import { pullableSize, pullableTipAngle } from '../../src/page/pull-limits.js'

const STARS: readonly [name: string, star: string][] = [
  ['a plain star by its board', '{ points: 5, tip-angle: 45, board-width: 70 }'],
  ['a star of many points', '{ points: 24, tip-angle: 40, across: 400 }'],
  ['a chamfer', '{ points: 5, tip-angle: 45, board-width: 70, thickness: 19, chamfer: 6 }'],
  ['a backing far inside', '{ points: 6, tip-angle: 60, radius: 150, backing: { shape: star, inset: 25 } }'],
  [
    'a backing with a keyhole',
    '{ points: 8, tip-angle: 50, height: 300, thickness: 19, backing: { shape: disc, thickness: 4, hanging: { kind: keyhole } } }',
  ],
  ['a size between two steps', '{ points: 7, tip-angle: 51.43, tip-edge: 88.93 }'],
]

const orderOf = (star: string): string => `units: mm\nstars:\n  - ${star}\n`

/** The star of an order, and the order with a value changed as the page would read it. */
const readStar = (text: string) => {
  const { plan, problems } = jobOf(text)
  const [star] = plan?.stars ?? []
  if (!plan || !star) throw new Error(JSON.stringify(problems))
  return { star, ...plan.order }
}

describe.each(STARS)('what %s can be pulled to', (_, written) => {
  const text = orderOf(written)
  const { star, shop, lengths } = readStar(text)
  const given = (key: string, value: number): boolean =>
    jobOf(editedOrder(text, ['stars', 0, key], value)).problems.length === 0

  // The reader of the order's text is the judge.
  it('is the least and the most size that the order takes, and all between', () => {
    const { limits } = pullableSize(star.order, { shop, lengths, step: 1 })
    if (!limits) throw new Error('nothing to pull')
    const { least, most } = limits
    const takes = (length: number): boolean => given(star.order.size.by, length)
    expect([least - 1, least, most, most + 1].map(takes)).toEqual([false, true, true, false])
    for (let part = 1; part < 10; part++)
      expect(takes(Math.round(least + ((most - least) * part) / 10))).toBe(true)
  })

  it('is the slimmest and the fattest tip that the order takes, and all between', () => {
    const step = 0.5
    const { limits } = pullableTipAngle(star.order, star.star.tipAngle, { shop, lengths, step })
    if (!limits) throw new Error('nothing to pull')
    const { least, most } = limits
    const takes = (angle: number): boolean => given('tip-angle', angle)
    expect([least - step, least, most, most + step].map(takes)).toEqual([false, true, true, false])
    for (let angle = least; angle <= most; angle += 5) expect(takes(angle)).toBe(true)
  })
})

it('nothing, where the step is coarser than all that is taken', () => {
  const { star, shop, lengths } = readStar(orderOf('{ points: 5, tip-angle: 45, tip-edge: 90 }'))
  expect(pullableSize(star.order, { shop, lengths, step: 30_000 }).limits).toBeUndefined()
})
