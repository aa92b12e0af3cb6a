import { expect, test } from 'vitest'
import { placesOf } from './order-of.js'

// Lines are counted by hand in the texts below; what is found out about a star later is told at these places.

const TEXT = `title: Winter fair
stars:
  - name: Jetty
    points: 5
    tip-angle: 45
    board-width: 70
    chamfer: 3
    backing:
      shape: disc
      inset: 9
  - regular: 6/2
    across: 300
    backing: {}
`

test('keys stand at their lines, missing ones at the group they belong to', () => {
  expect(placesOf({ text: TEXT })).toEqual([
    {
      shape: { place: 'stars[0].tip-angle', line: 5 },
      size: { place: 'stars[0].board-width', line: 6 },
      chamfer: { place: 'stars[0].chamfer', line: 7 },
      backing: expect.objectContaining({ inset: { place: 'stars[0].backing.inset', line: 10 } }),
    },
    {
      shape: { place: 'stars[1].regular', line: 11 },
      size: { place: 'stars[1].across', line: 12 },
      chamfer: { place: 'stars[1].chamfer', line: 11 },
      backing: expect.objectContaining({ inset: { place: 'stars[1].backing.inset', line: 13 } }),
    },
  ])
})

test('a star that is chosen keeps its place in the order', () => {
  expect(placesOf({ text: TEXT, star: 'star 2' })).toMatchObject([
    { size: { place: 'stars[1].across', line: 12 } },
  ])
})

test('what a flag says stands at the flag, without a line', () => {
  const flags = { slenderest: true, height: '300', inset: '5' } as const
  expect(placesOf({ text: TEXT, star: 'Jetty', flags })).toEqual([
    {
      shape: { place: '--slenderest' },
      size: { place: '--height' },
      chamfer: { place: 'stars[0].chamfer', line: 7 },
      backing: expect.objectContaining({ inset: { place: '--inset' } }),
    },
  ])
})

test('with flags alone, what none of them says stands at all of them', () => {
  expect(placesOf({ flags: { regular: '5/2', across: '300', backing: 'star' } })).toEqual([
    {
      shape: { place: '--regular' },
      size: { place: '--across' },
      chamfer: { place: 'flags' },
      backing: expect.objectContaining({ inset: { place: 'flags' } }),
    },
  ])
})
