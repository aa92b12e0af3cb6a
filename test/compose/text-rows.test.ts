import { expect, it } from 'vitest'
import { row } from '../../src/compose/text-rows.js'

it.each([
  ['Buy', '  Buy        308 × Quay'],
  ['Panel 3-14', '  Panel 3-14 308 × Quay'],
  ['Panel 13-14', '  Panel 13-14 308 × Quay'],
  ['Panel 113-114', '  Panel 113-114 308 × Quay'],
])('a space stands between the heading "%s" and its text', (heading, told) => {
  expect(row(heading, '308 × Quay')).toEqual([told])
})
