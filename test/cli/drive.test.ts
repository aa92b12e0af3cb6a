import { expect, it } from 'vitest'
import { drive } from '../../src/cli/drive.js'
import type { Progress } from '../../src/cli/terminal.js'

/** Counts until it is asked to stop, and tells at which step that was; at most 100. */
function* counting(): Generator<number, number, boolean | undefined> {
  for (let step = 1; step < 100; step++) if ((yield step) === true) return step
  return 100
}

/** A line that is not shown, and all that stood on it. */
const line = (): { readonly progress: Progress; readonly said: string[] } => {
  const said: string[] = []
  return { progress: { show: (doing) => said.push(doing), clear: () => said.push('') }, said }
}

const asked = () => process.listenerCount('SIGINT')

it('asks the work to stop with the best so far on Ctrl-C, and takes its hands off the next one', async () => {
  const before = asked()
  const { progress, said } = line()
  const tell = (step: number): string => {
    expect(asked()).toBe(step > 7 ? before : before + 1)
    if (step === 7) queueMicrotask(() => process.emit('SIGINT'))
    return `${step}`
  }
  const ended = await drive(counting(), tell, progress)
  expect(ended).toBe(7)
  expect(said.slice(-3)).toEqual(['7', 'stopping', ''])
  expect(asked()).toBe(before)
})

it('runs to the last step by itself, and to the end of the time it is given', async () => {
  const { progress, said } = line()
  expect(await drive(counting(), String, progress)).toBe(100)
  expect(said).toHaveLength(100)
  expect(await drive(counting(), String, progress, { until: performance.now() - 1 })).toBe(1)
})

it('takes its hands off Ctrl-C when the work fails', async () => {
  const before = asked()
  const failing = function* (): Generator<number, number, boolean | undefined> {
    yield 1
    throw new RangeError('a fault')
  }
  await expect(drive(failing(), String, line().progress)).rejects.toThrow('a fault')
  expect(asked()).toBe(before)
})
