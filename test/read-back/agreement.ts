import { expect } from 'vitest'
import { LAYERS } from '../../src/drawing/layers.js'
import type { Drawing, Label, Path } from '../../src/drawing/model.js'
import { distance, type Point } from '../../src/geometry/point.js'
import { lengthOf, type ReadOutline, type ReadText, walk } from './read-outline.js'

/** What every writer must keep to (the project's own requirement), in mm. */
const AGREEMENT = 0.01

/** Points at which two outlines are compared: enough that some fall on every edge of a star. */
const STEPS = 240

/** The drawing's paths in the order of the files: layer by layer in cutting order. */
export const pathsInFileOrder = ({ shapes }: Drawing): Path[] =>
  LAYERS.flatMap(
    ({ name }) => shapes.filter((shape) => shape.kind === 'path' && shape.layer === name) as Path[],
  )

export const labelsInFileOrder = ({ shapes }: Drawing): Label[] =>
  LAYERS.flatMap(
    ({ name }) => shapes.filter((shape) => shape.kind === 'label' && shape.layer === name) as Label[],
  )

/** One path after the other: same layer, same closed flag, same line within 0.01 mm at every step of the way. */
export const expectSamePaths = (read: readonly ReadOutline[], paths: readonly Path[]): void => {
  expect(read).toHaveLength(paths.length)
  paths.forEach((path, index) => {
    const found = read[index]
    if (!found) throw new RangeError(`no path ${index}`)
    expect({ layer: found.layer, closed: found.closed }).toEqual({ layer: path.layer, closed: path.closed })
    expect(worstDistance(found, path), `path ${index} on ${path.layer}`).toBeLessThan(AGREEMENT)
  })
}

const worstDistance = (read: ReadOutline, path: Path): number => {
  const expected = walk(path, STEPS)
  const steps = walk(read, STEPS).map((point, step) => distance(point, expected[step] ?? unreachable))
  const corners = path.vertices.map((vertex) => nearest(vertex, read.vertices))
  return Math.max(...steps, ...corners, Math.abs(lengthOf(read) - lengthOf(path)))
}

const unreachable: Point = { x: Infinity, y: Infinity }

const nearest = (point: Point, among: readonly Point[]): number =>
  Math.min(...among.map((other) => distance(point, other)))

/** Same layer, place, anchor, height and direction; the words are the format's own matter. */
export const expectSamePlaces = (read: readonly ReadText[], labels: readonly Label[]): void => {
  expect(read).toHaveLength(labels.length)
  labels.forEach((label, index) => {
    const found = read[index]
    if (!found) throw new RangeError(`no text ${index}`)
    expect({ layer: found.layer, anchor: found.anchor }).toEqual({ layer: label.layer, anchor: label.anchor })
    expect(distance(found.at, label.at), `place of ${label.text}`).toBeLessThan(AGREEMENT)
    expect(Math.abs(found.height - label.height), `height of ${label.text}`).toBeLessThan(AGREEMENT)
    const off = ((found.turn * Math.PI) / 180 - label.turn) / (2 * Math.PI)
    expect(Math.abs(off - Math.round(off)) * 360, `direction of ${label.text}`).toBeLessThan(0.001)
  })
}
