import { describe, expect, it } from 'vitest'
import { chain, line, path, ring } from '../../src/drawing/shapes.js'
import type { Vertex } from '../../src/geometry/outline.js'
import { point } from '../../src/geometry/point.js'
import { type WrittenPath, writtenPaths } from '../../src/write/written-path.js'
import { lengthOf } from '../read-back/read-outline.js'
import { drawingOf } from './test-drawings.js'

const written = (vertices: readonly Vertex[], closed: boolean): WrittenPath | undefined =>
  writtenPaths(drawingOf([path('CUT-OUTSIDE', { vertices, closed })]), 'CUT-OUTSIDE')[0]

const corners = (found: WrittenPath | undefined) => found?.vertices.map(({ x, y, bulge }) => [x, y, bulge])

describe('a path in a file', () => {
  it('loses a vertex that repeats the one before it', () => {
    const found = written([point(0, 0), point(9, 0), point(9, 5e-7), point(9, 4)], false)
    expect(corners(found)).toEqual([
      [0, 0, 0],
      [9, 0, 0],
      [9, 4, 0],
    ])
  })

  it('loses a vertex that its written digits cannot tell from the one before it', () => {
    const found = written([point(0, 0), point(9.00001, 0), point(9.00003, 0.00002), point(9, 4)], false)
    expect(found?.vertices).toHaveLength(3)
  })

  it('keeps the arc that leaves the second of two equal vertices', () => {
    const found = written([point(0, 0), point(9, 0), { x: 9, y: 0, bulge: 0.5 }, point(9, 4)], false)
    expect(corners(found)).toEqual([
      [0, 0, 0],
      [9, 0, 0.5],
      [9, 4, 0],
    ])
  })

  it('loses a last vertex that repeats the first of a closed outline, and keeps the arc that leads there', () => {
    const found = written(
      [point(0, 0), point(9, 0), { x: 9, y: 4, bulge: 1 }, { x: 0, y: 0, bulge: 7 }],
      true,
    )
    expect(corners(found)).toEqual([
      [0, 0, 0],
      [9, 0, 0],
      [9, 4, 1],
    ])
  })

  it.each([
    ['a single vertex', [point(3, 3)], true],
    ['one point twice', [point(3, 3), point(3, 3)], false],
    ['one point thrice, closed', [point(3, 3), point(3, 3), point(3, 3 + 1e-7)], true],
    ['no vertex', [], false],
  ])('is left out when it is %s', (_, vertices, closed) => {
    expect(written(vertices, closed)).toBeUndefined()
  })

  it.each([
    ['straight', 0],
    ['bent', 0.4],
  ])('is not cut there and back: a closed path along one %s edge is open', (_, bulge) => {
    const found = written(
      [
        { x: 0, y: 0, bulge },
        { x: 9, y: 0, bulge: -bulge },
      ],
      true,
    )
    expect(found?.closed).toBe(false)
    expect(found && lengthOf(found)).toBeCloseTo(
      lengthOf({ vertices: [{ x: 0, y: 0, bulge }, point(9, 0)], closed: false }),
      9,
    )
  })

  it('keeps a circle of two half turns closed', () => {
    const [found] = writtenPaths(drawingOf([ring('CUT-INSIDE', point(1, 2), 30)]), 'CUT-INSIDE')
    expect(found?.closed).toBe(true)
    expect(corners(found)).toEqual([
      [31, 2, 1],
      [-29, 2, 1],
    ])
  })

  it.each([-2e-16, 2e-16, 3e-15])('half a turn with rounding noise of %s is one arc', (noise) => {
    const found = written(
      [{ x: 0, y: 0, bulge: 1 + noise }, { x: 4, y: 0, bulge: -1 - noise }, point(9, 0)],
      false,
    )
    expect(corners(found)).toEqual([
      [0, 0, 1],
      [4, 0, -1],
      [9, 0, 0],
    ])
  })

  it('parts an arc of more than half a turn in its middle', () => {
    // Three quarters of the circle of radius 10 about 0, 0, from +x to -y: its middle faces 135°.
    const found = written([{ x: 10, y: 0, bulge: Math.tan((3 * Math.PI) / 8) }, point(0, -10)], false)
    const half = Math.tan((3 * Math.PI) / 16)
    expect(found?.vertices).toHaveLength(3)
    expect(found?.vertices[1]).toEqual({ x: -7.0711, y: 7.0711, bulge: found?.vertices[0]?.bulge })
    expect(found?.vertices[0]?.bulge).toBeCloseTo(half, 12)
  })

  it('makes an arc that is flatter than the last written digit a straight edge', () => {
    // Rise of an arc: bulge times half the chord.
    expect(corners(written([{ x: 0, y: 0, bulge: 0.9e-6 }, point(100, 0)], false))?.[0]).toEqual([0, 0, 0])
    expect(corners(written([{ x: 0, y: 0, bulge: 1.1e-6 }, point(100, 0)], false))?.[0]).toEqual([
      0, 0, 1.1e-6,
    ])
  })

  it('is written once, however often it is drawn and whichever way a stroke runs', () => {
    const joint = line('CUT-OUTSIDE', point(0, 0), point(5, 5))
    const back = line('CUT-OUTSIDE', point(5, 5), point(0, 0.00001))
    const outline = path('CUT-OUTSIDE', { closed: true, vertices: [point(0, 0), point(9, 0), point(0, 9)] })
    const shapes = [joint, outline, back, outline, joint]
    expect(writtenPaths(drawingOf(shapes), 'CUT-OUTSIDE')).toHaveLength(2)
  })

  it('is kept beside others that only begin alike', () => {
    const start = [point(0, 0), point(9, 0)]
    const shapes = [
      chain('MARK', start),
      chain('MARK', start, 'dashed'),
      chain('MARK', [...start, point(9, 9)]),
      path('MARK', { closed: true, vertices: [...start, point(9, 9)] }),
      chain('MARK', [{ x: 0, y: 0, bulge: 0.5 }, point(9, 0)]),
      chain('MARK', [{ x: 9, y: 0, bulge: 0.5 }, point(0, 0)]),
    ]
    expect(writtenPaths(drawingOf(shapes), 'MARK')).toHaveLength(6)
  })
})
