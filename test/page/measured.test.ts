import { expect, it } from 'vitest'
import { besideOf } from '../../src/page/beside.js'
import { measuredAfter } from '../../src/page/measured.js'

const MEASURED = { Jetty: { gap: '1 mm' }, Pier: { gap: '2 mm' } }

it('a gap goes with its star to a new name, and away with it', () => {
  const names = () => ['Jetty', 'Pier']
  expect(measuredAfter(MEASURED, [[['stars', 0, 'name'], 'Quay']], names)).toEqual({
    Quay: { gap: '1 mm' },
    Pier: { gap: '2 mm' },
  })
  expect(measuredAfter(MEASURED, [[['stars', 0], undefined]], names)).toEqual({ Pier: { gap: '2 mm' } })
})

it('nothing passes between stars while two have one name', () => {
  expect(measuredAfter(MEASURED, [[['stars', 0, 'name'], 'Pier']], () => ['Jetty', 'Pier'])).toEqual(MEASURED)
  expect(measuredAfter(MEASURED, [[['stars', 0, 'name'], 'Quay']], () => ['Pier', 'Pier'])).toEqual(MEASURED)
  expect(measuredAfter(MEASURED, [[['stars', 1], undefined]], () => ['Pier', 'Pier'])).toEqual(MEASURED)
})

it('figures of the plan that is shown stay current when only the writing of files is stopped', () => {
  const given = (text: string) => ({ text, furniture: {} })
  const laid = { given: given('a'), order: { stars: [] } }
  const work = { laid, stopped: true, refused: [] } as never
  expect(besideOf(work, given('a'), true)).toBe('halted')
  expect(besideOf(work, given('b'), true)).toBe('stopped')
  const furnished = { ...given('a'), furniture: { caution: '<svg/>' } }
  expect(besideOf(work, furnished, true)).toBe('stopped')
  const rested = { laid, stopped: false, refused: [] } as never
  expect(besideOf(rested, given('b'), true)).toBe('working')
  expect(besideOf(rested, given('b'), false)).toBe('waiting')
  expect(besideOf(rested, given('a'), false)).toBe('current')
})
