import { labelBox } from '../drawing/bounds.js'
import { MEDIUM, textWidth } from '../drawing/lettering.js'
import type { Label, Shape } from '../drawing/model.js'
import { firstClear } from '../drawing/place-label.js'
import { centredLabel, label } from '../drawing/shapes.js'
import type { Extents } from '../geometry/outline.js'
import { add, between, type Point, point, polar, scale } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { radians } from '../units/convert.js'
import { showAngle, showSetting } from '../units/show.js'
import type { SawScene } from './saw-scene.js'
import { dimensionHeight, leanDirection, leanRadius, type Placing } from './scene-shapes.js'

/** A word further from its thing than this, on paper, is read with another. */
const FURTHEST = 14

/**
 * The words of a scene, each where it is clear and inside `room`; what finds no place stands in the settings and the
 * caption. The stop's distance comes first: it has a place of its own above the fence, or with a wedge stands in the
 * caption.
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
  const place = (candidates: readonly Label[], highest = 0): void => {
    const inRoom = (each: Label): boolean =>
      labelBox(each).every(
        ({ x, y }) => x >= room.min.x && x <= room.max.x && y >= room.min.y && y <= highest,
      )
    const found = firstClear(candidates.filter(inRoom), [...drawn, ...placed])
    if (found) placed.push(found)
  }
  const lean = (leanDirection(scene) - Math.PI / 2) / 2
  const arcMiddle = add(at(scene.pivot), polar(leanRadius(scene, reduced), radians(lean)))
  place(inside(`A ${scene.faceA}`, scene.kept.map(at)))
  if (scene.cut.reading > 0) place(around(showAngle(scene.cut.reading), arcMiddle, 'DIM'))
  if (scene.wedge && scene.cut.wedge)
    place(around(`${showAngle(scene.cut.wedge.angle)} wedge`, middle(scene.wedge.map(at)), 'DIM'), room.max.y)
  place(around('stop', middle(scene.stop.map(at)), 'NOTE'))
  place(around('handle', at(scene.handle), 'NOTE'))
  place(alongFence('fence', scene, placing), room.max.y)
  return placed
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

/** Places on rings about a point, nearest first. */
const around = (text: string, about: Point, layer: Label['layer']): Label[] =>
  Array.from({ length: FURTHEST + 1 }, (_, reach) => reach).flatMap((reach) =>
    Array.from({ length: reach === 0 ? 1 : 16 }, (_, step) =>
      centredLabel(text, add(about, polar(reach, radians((step * Math.PI) / 8))), { layer }),
    ),
  )

/** Places within a convex outline, from its middle toward its corners and the middles of its sides. */
const inside = (text: string, corners: readonly Point[]): Label[] => {
  const heart = middle(corners)
  const toward = corners.flatMap((corner, index) => [
    corner,
    between(corner, corners[(index + 1) % corners.length] ?? corner, 0.5),
  ])
  return [0, 0.15, 0.3, 0.45, 0.6, 0.75].flatMap((share) =>
    toward.map((end) => centredLabel(text, between(heart, end, share))),
  )
}

/** Above the fence's hatching, from its ends inwards. */
const alongFence = (text: string, scene: SawScene, { at, scale: reduced }: Placing): Label[] => {
  const xs = scene.fence.flat().map((end) => at(end).x)
  const [left, right] = [Math.min(...xs), Math.max(...xs)]
  const y = dimensionHeight(scene, reduced)
  return [0, 2, 4, 6, 8, 10, 14, 18].flatMap((inwards) => [
    label(text, point(left + inwards, y)),
    label(text, point(right - inwards, y), { anchor: 'end' }),
  ])
}
