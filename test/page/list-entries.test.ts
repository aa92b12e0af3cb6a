import { expect, it } from 'vitest'
import { listEntries } from '../../src/page/list-entries.js'

it.each([
  ['0 15 22.5', '0 15 22.5'],
  ['0, 15, 22.5', '0 15 22.5'],
  ['0,15,22.5,30', '0 15 22.5 30'],
  ['0,15 22.5', '0 15 22.5'],
  ['0; 15; 22,5', '0 15 22.5'],
  ['0, 15, 22,5, 45', '0 15 22.5 45'],
  ['22,5° 31,6°', '22.5° 31.6°'],
  ['0,15,30', '0 15 30'],
  [' 0 ,15 , 30;', '0 15 30'],
  // The reader of the order then tells that marks must rise, and to write a decimal point.
  ['0,15,22,5,30', '0 15 22 5 30'],
  ['all', 'all'],
  [' , ; ', ''],
])('a list typed as "%s" has the entries %s', (typed, entries) => {
  expect(listEntries(typed).join(' ')).toBe(entries)
})
