import { PointInPolygonResult, pointInPolygonD } from 'clipper2-ts'
import { expect, it } from 'vitest'
import { encloses } from '../../src/geometry/crossings.js'
import { gridOver } from '../../src/geometry/grid-over.js'
import { outlineSize } from '../../src/geometry/outline.js'
import { solveStar, starOutline } from '../../src/geometry/star.js'
import { mm } from '../../src/units/convert.js'
import { SHAPES, showShape } from './sweep.js'

it('an independent library (Clipper2) finds the same places of a grid within every star', () => {
  let within = 0
  for (const shape of SHAPES) {
    const outline = starOutline(solveStar(shape.points, shape.tipAngle, 'across', mm(300)))
    const polygon = outline.vertices.map(({ x, y }) => ({ x, y }))
    const told = gridOver(outline, 20).map((at) => ({ at, by: pointInPolygonD(at, polygon, 8) }))
    // A place on an edge belongs to either side.
    const clear = told.filter(({ by }) => by !== PointInPolygonResult.IsOn)
    const found = clear.filter(({ by }) => by === PointInPolygonResult.IsInside)
    expect(
      clear.filter(({ at }) => encloses(outline.vertices, at)),
      showShape(shape),
    ).toEqual(found)
    within += found.length
  }
  expect(within).toBeGreaterThan(20_000)
})

it('the grid is even, row by row, half a step from the box on all sides', () => {
  const outline = starOutline(solveStar(7, 40 as never, 'across', mm(300)))
  const { across, height } = outlineSize(outline)
  const places = gridOver(outline, 5)
  expect(places.length).toBe(25)
  const [first, second, last] = [places[0], places[1], places[24]]
  expect((second?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo(across / 5, 9)
  expect(second?.y).toBe(first?.y)
  expect((last?.x ?? 0) - (first?.x ?? 0)).toBeCloseTo((across * 4) / 5, 9)
  expect((last?.y ?? 0) - (first?.y ?? 0)).toBeCloseTo((height * 4) / 5, 9)
  expect(Math.min(...outline.vertices.map(({ x }) => x))).toBeCloseTo((first?.x ?? 0) - across / 10, 9)
})
