import { type Box, labelBox } from '../drawing/bounds.js'
import { MEDIUM, textWidth } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { boxIsClearOf } from '../drawing/place-label.js'
import { centredLabel, label } from '../drawing/shapes.js'
import { type Side, shapeSides } from '../drawing/sides.js'
import type { Extents } from '../geometry/outline.js'
import { add, between, type Point, point, polar, scale } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { degrees, radians } from '../units/convert.js'
import { showAngle, showSetting } from '../units/show.js'
import type { SawScene } from './saw-scene.js'
import { dimensionHeight, leanDirection, leanRadius, type Placing } from './scene-shapes.js'

/** A word further from its thing than this, on paper, is read with another. */
const FURTHEST = 14

/** A word above the fence's hatching stands higher than a dimension line by what its tails need. */
const OVER_HATCHING = 1

/** Around a thing, counter-clockwise from its right. */
const WAYS = Array.from({ length: 16 }, (_, step) => polar(1, radians((step * Math.PI) / 8)))

/**
 * The words of a scene, each where it is clear and inside `room`; what finds no place stands in the settings and the
 * caption. The stop's distance comes first: it has a place of its own above the fence, or with a wedge stands in the
 * settings only.
 */
export const sceneLettering = (
  scene: SawScene,
  placing: Placing,
  order: Order,
  drawn: readonly Shape[],
  room: Extents,
): Label[] => {
  const { at, scale: reduced } = placing
  const placed: Label[] = scene.wedge ? [] : [stopDistance(scene, placing, order, room)]
  const sides = [...drawn, ...placed].flatMap(shapeSides)
  const place = (candidates: Iterable<Candidate>, highest = 0): void => {
    const found = firstClear(candidates, { min: room.min, max: point(room.max.x, highest) }, sides)
    if (!found) return
    placed.push(found)
    sides.push(...shapeSides(found))
  }
  const lean = (leanDirection(scene) - Math.PI / 2) / 2
  const arcMiddle = add(at(scene.pivot), polar(leanRadius(scene, reduced), radians(lean)))
  place(inside(`face ${scene.faceSide}`, scene.kept.map(at)))
  if (scene.cut.reading > 0) place(around(showAngle(scene.cut.reading), arcMiddle, 'DIM'))
  if (scene.wedge && scene.cut.wedge) place(wedgeWords(scene, placing), room.max.y)
  place(around('stop', middle(scene.stop.map(at)), 'NOTE'))
  place(around('handle', at(scene.handle), 'NOTE'))
  place(alongFence('fence', scene, placing), room.max.y)
  return placed
}

/** A word at the origin, measured once for all places where it is tried. */
interface Word {
  readonly label: Label
  readonly box: Box
}

/** A word, and where it may go. */
type Candidate = readonly [word: Word, by: Point]

const wordOf = (at: Label): Word => ({ label: at, box: labelBox(at) })

/** The first that lies wholly in the room and clear of all sides. */
const firstClear = (
  candidates: Iterable<Candidate>,
  { min, max }: Extents,
  sides: readonly Side[],
): Label | undefined => {
  for (const [{ label: word, box }, by] of candidates) {
    // Upright words: the box's lower left and upper right corners are all of it.
    const [low, high] = [add(box[0], by), add(box[2], by)]
    if (low.x < min.x || low.y < min.y || high.x > max.x || high.y > max.y) continue
    const moved: Box = [low, add(box[1], by), high, add(box[3], by)]
    if (boxIsClearOf(moved, sides)) return { ...word, at: add(word.at, by) }
  }
  return undefined
}

/** Over its dimension line, moved aside where it would leave the room. */
const stopDistance = (
  scene: SawScene,
  { at, scale: reduced }: Placing,
  order: Order,
  room: Extents,
): Label => {
  const [stop, blade] = [at(scene.measured[0]), at(scene.measured[1])]
  const text = showSetting(scene.length, order.lengths)
  const worded = `stop ${text}`
  const width = (words: string) => textWidth(words, MEDIUM)
  const shown = width(worded) <= room.max.x - room.min.x ? worded : text
  const half = width(shown) / 2
  const x = Math.min(Math.max((stop.x + blade.x) / 2, room.min.x + half), room.max.x - half)
  return label(shown, point(x, dimensionHeight(scene, reduced) + 2.1), { layer: 'DIM', anchor: 'middle' })
}

const middle = (corners: readonly Point[]): Point =>
  scale(
    corners.reduce((sum, corner) => add(sum, corner), point(0, 0)),
    1 / corners.length,
  )

/** About the wedge's middle, or along the fence that it lies on. */
function* wedgeWords(scene: SawScene, placing: Placing): Generator<Candidate> {
  const { wedge = [], cut } = scene
  const text = `${showAngle(cut.wedge?.angle ?? degrees(0))} wedge`
  yield* around(text, middle(wedge.map(placing.at)), 'DIM')
  yield* alongFence(text, scene, placing, 'DIM')
}

/** Places on rings about a point, nearest first. */
function* around(text: string, about: Point, layer: Label['layer']): Generator<Candidate> {
  const word = wordOf(centredLabel(text, point(0, 0), { layer }))
  yield [word, about]
  for (let reach = 1; reach <= FURTHEST; reach++)
    for (const way of WAYS) yield [word, add(about, scale(way, reach))]
}

/** Places within a convex outline, from its middle toward its corners and the middles of its sides. */
function* inside(text: string, corners: readonly Point[]): Generator<Candidate> {
  const word = wordOf(centredLabel(text, point(0, 0)))
  const heart = middle(corners)
  const toward = corners.flatMap((corner, index) => [
    corner,
    between(corner, corners[(index + 1) % corners.length] ?? corner, 0.5),
  ])
  for (const share of [0, 0.15, 0.3, 0.45, 0.6, 0.75])
    for (const end of toward) yield [word, between(heart, end, share)]
}

/** Above the fence's hatching, from its ends inwards. */
function* alongFence(
  text: string,
  scene: SawScene,
  { at, scale: reduced }: Placing,
  layer: Label['layer'] = 'NOTE',
): Generator<Candidate> {
  const xs = scene.fence.flat().map((end) => at(end).x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const y = dimensionHeight(scene, reduced) + OVER_HATCHING
  const [fromLeft, fromRight] = [
    wordOf(label(text, point(0, 0), { layer })),
    wordOf(label(text, point(0, 0), { layer, anchor: 'end' })),
  ]
  for (const inwards of [0, 2, 4, 6, 8, 10, 14, 18]) {
    yield [fromLeft, point(left + inwards, y)]
    yield [fromRight, point(right - inwards, y)]
  }
}
