import { expect, it } from 'vitest'
import type { Artwork } from '../../src/drawing/artwork.js'
import type { Shape } from '../../src/drawing/model.js'
import { artworkShapes } from '../../src/furniture/artwork-shapes.js'
import { defaultFurniture } from '../../src/furniture/furniture-set.js'
import { readFurniture } from '../../src/furniture/read-furniture.js'
import { distance, type Point, point } from '../../src/geometry/point.js'
import { mm, radians } from '../../src/units/convert.js'

const read = (body: string): Artwork => {
  const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="8mm" viewBox="0 0 40 8">${body}</svg>`
  const outcome = readFurniture('a.svg', 'grain-arrow', svg)
  if (!outcome.ok) throw new Error('it is read')
  return outcome.value
}

const vertices = (shapes: readonly Shape[]): Point[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' ? [...shape.vertices] : []))

it('the grain arrow comes to lie with its middle on the point, as wide as asked, turned about it', () => {
  const { grainArrow } = defaultFurniture('mm')
  const shapes = artworkShapes(grainArrow, point(100, 50), mm(60), radians(Math.PI / 2), 'NOTE')
  // Our arrow runs from 1 to 39 of 40 mm: half as long again, a quarter turn on, it runs from -28.5 to 28.5 in y.
  const ys = vertices(shapes).map(({ y }) => y)
  expect(Math.min(...ys)).toBeCloseTo(50 - 28.5, 9)
  expect(Math.max(...ys)).toBeCloseTo(50 + 28.5, 9)
  // The arrow's heads are 3.2 mm wide, here 4.8 mm.
  const xs = vertices(shapes).map(({ x }) => x)
  expect(Math.min(...xs)).toBeCloseTo(100 - 2.4, 9)
  expect(Math.max(...xs)).toBeCloseTo(100 + 2.4, 9)
  const word = shapes.find((shape) => shape.kind === 'label')
  expect(word).toMatchObject({ text: 'GRAIN', anchor: 'middle', layer: 'NOTE' })
  expect(word?.kind === 'label' && word.turn).toBeCloseTo(Math.PI / 2, 12)
  expect(word?.kind === 'label' && word.height).toBeCloseTo(3.5 * 1.5, 2)
  expect(shapes.every(({ layer }) => layer === 'NOTE')).toBe(true)
})

it.each([20, 40, 400])('curves of a circle stay within 0.005 mm of it, %i mm across', (across) => {
  const shapes = artworkShapes(
    read('<circle cx="20" cy="4" r="3" fill="none" stroke="black"/>'),
    point(0, 0),
    mm(across),
    radians(0.3),
    'NOTE',
  )
  const radius = (3 * across) / 40
  const [ring] = shapes
  expect(ring).toMatchObject({ kind: 'path', closed: true })
  const corners = vertices(shapes)
  corners.forEach((corner, index) => {
    const next = corners[(index + 1) % corners.length] ?? corner
    const chordMiddle = point((corner.x + next.x) / 2, (corner.y + next.y) / 2)
    expect(distance(corner, next)).toBeGreaterThan(0)
    expect(Math.abs(distance(corner, point(0, 0)) - radius)).toBeLessThan(0.005)
    expect(Math.abs(distance(chordMiddle, point(0, 0)) - radius)).toBeLessThan(0.005)
  })
})

it('parts of a path become chains of their own, closed where they end at their start', () => {
  const shapes = artworkShapes(
    read('<path d="M1 1h4v2zM8 2h4M20 1l4 0 0 4L20 1" fill="none" stroke="black"/>'),
    point(20, 4),
    mm(40),
    radians(0),
    'MARK',
  )
  expect(shapes.map((shape) => shape.kind === 'path' && [shape.closed, shape.vertices.length])).toEqual([
    [true, 3],
    [false, 2],
    [true, 3],
  ])
})

it('what lines cannot show is refused in a piece that goes into drawings', () => {
  const svg = (body: string): string =>
    `<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="8mm" viewBox="0 0 40 8">${body}</svg>`
  const advice = (body: string): string[] => {
    const outcome = readFurniture('a.svg', 'grain-arrow', svg(body))
    return outcome.ok ? [] : outcome.problems.map((problem) => problem.advice)
  }
  expect(advice('<path d="M1 1h4v2z"/>')).toEqual([
    'Allowed in this piece: fill="none". It goes into drawings of lines only.',
  ])
  expect(advice('<path d="M1 1h4" stroke="red" stroke-dasharray="1"/>')).toEqual([
    'Allowed in this piece: unbroken lines.',
  ])
})
