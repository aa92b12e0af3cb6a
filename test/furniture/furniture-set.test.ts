import { expect, it } from 'vitest'
import { defaultFurniture, furnitureWith } from '../../src/furniture/furniture-set.js'
import { showProblem } from '../../src/order/problem.js'

const MARK =
  '<svg xmlns="http://www.w3.org/2000/svg" width="6mm" height="6mm" viewBox="0 0 6 6"><circle cx="3" cy="3" r="2"/></svg>'

it('a shop has the scale check of its own units; the rest is the same', () => {
  const [metric, imperial] = [defaultFurniture('mm'), defaultFurniture('in')]
  expect(metric.scaleCheck).not.toEqual(imperial.scaleCheck)
  expect(metric.titleBlock).toEqual(imperial.titleBlock)
})

it("the maker's piece stands in place of ours, the others stay", () => {
  const outcome = furnitureWith({ 'register-mark': MARK }, 'mm')
  if (!outcome.ok) throw new Error('it is read')
  expect(outcome.value.registerMark).toMatchObject({ across: 6, height: 6 })
  expect(outcome.value.caution).toEqual(defaultFurniture('mm').caution)
})

it('the mistakes of all pieces are told at once, those of the other units too', () => {
  const outcome = furnitureWith({ 'scale-check-in': '<svg/>', 'register-mark': MARK, caution: 'words' }, 'mm')
  expect(outcome.ok ? [] : outcome.problems.map(showProblem)).toEqual([
    'scale-check-in.svg, line 1: given <svg>. Allowed: <svg xmlns="http://www.w3.org/2000/svg" ...> around the whole drawing.',
    'caution.svg, line 1: given text that is not XML. Text data outside of root node.',
  ])
})
