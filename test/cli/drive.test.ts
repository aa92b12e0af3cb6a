import { expect, it } from 'vitest'
import { drive } from '../../src/cli/drive.js'

/** Counts until it is asked to stop, and tells at which step that was; at most 100. */
function* counting(): Generator<number, number, boolean | undefined> {
  for (let step = 1; step < 100; step++) if ((yield step) === true) return step
  return 100
}

const asked = () => process.listenerCount('SIGINT')

it('asks the work to stop with the best so far on Ctrl-C, and takes its hands off the next one', async () => {
  const before = asked()
  const ended = await drive(counting(), (step) => {
    expect(asked()).toBe(step > 7 ? before : before + 1)
    if (step === 7) process.emit('SIGINT')
  })
  expect(ended).toBe(7)
  expect(asked()).toBe(before)
})

it('runs to the last step by itself, and to the end of the time it is given', async () => {
  const seen: number[] = []
  expect(await drive(counting(), (step) => seen.push(step))).toBe(100)
  expect(seen).toHaveLength(99)
  expect(await drive(counting(), () => {}, { until: performance.now() - 1 })).toBe(1)
})

it('takes its hands off Ctrl-C when the work fails', async () => {
  const before = asked()
  const failing = function* (): Generator<number, number, boolean | undefined> {
    yield 1
    throw new RangeError('a fault')
  }
  await expect(drive(failing(), () => {})).rejects.toThrow('a fault')
  expect(asked()).toBe(before)
})
