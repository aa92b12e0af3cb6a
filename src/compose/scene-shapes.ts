import { arrow } from '../drawing/dimension.js'
import type { Path, Shape } from '../drawing/model.js'
import { arc, chain, line, path, ring } from '../drawing/shapes.js'
import { hatch } from '../geometry/hatch.js'
import { boxOf, closedOutline, type Extents } from '../geometry/outline.js'
import { add, direction, distance, leftOf, type Point, point, scale } from '../geometry/point.js'
import { HAND_DISTANCE } from '../plan/warnings.js'
import { radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import type { SawScene, Stretch } from './saw-scene.js'

/** Shorter on paper, a line at that distance says nothing. */
const SHORTEST_LIMIT = 8
/** The widest that leaves a stroke in the waste. */
const HATCH_SPACINGS = [1.8, 0.9, 0.45]
/** Radius on paper of the arc that shows the blade's lean. */
const ARC = 9
/** Between the fence's hatching and the dimension line above it. */
const ABOVE_FENCE = 1.2
/** A dimension on paper that is shorter has no room for its arrows. */
const ARROWS = 7
/** How deep the fence's hatching goes, and how far apart its strokes are, in the scene's units. */
const FENCE_DEPTH = 0.8

/** A scene's place on paper: in mm of the workshop to mm on paper, and back for sizes. */
export interface Placing {
  /** Paper over workshop. */
  readonly scale: number
  readonly at: (place: Point) => Point
}

/** The box around everything that is drawn true to scale, in mm of the workshop. */
export const sceneExtents = (scene: SawScene): Extents => {
  const { wood, goesOn, stop, wedge, blade, fence, handle, unit } = scene
  const grip = [point(-unit, -unit), point(unit, unit)].map((corner) => add(handle, corner))
  const behind = fence.map(([end]) => add(end, point(0, FENCE_DEPTH * unit)))
  const drawn = [wood, goesOn ?? [], stop, wedge ?? [], blade.near, blade.far, ...fence, grip, behind]
  return boxOf([{ closed: false, vertices: drawn.flat() }])
}

/** Everything of a scene but its lettering. */
export const sceneShapes = (scene: SawScene, placing: Placing): Shape[] => [
  ...fenceLines(scene, placing),
  ...woodLines(scene, placing),
  ...stopLines(scene, placing),
  ...bladeLines(scene, placing),
  ...handLimits(scene, placing),
  ...(scene.wedge ? [] : stopDimension(scene, placing)),
]

const fenceLines = ({ fence, unit }: SawScene, { at, scale: reduced }: Placing): Path[] =>
  fence.flatMap(([from, to]) => {
    const [left, right] = from.x < to.x ? [at(from), at(to)] : [at(to), at(from)]
    const depth = FENCE_DEPTH * unit * reduced
    const strokes = Math.floor((right.x - left.x) / depth)
    return [
      line('PATTERN', left, right),
      line('PATTERN', add(left, point(0, 0.4)), add(right, point(0, 0.4))),
      ...Array.from({ length: strokes }, (_, index) => {
        const foot = add(left, point(index * depth, 0.4))
        return line('NOTE', foot, add(foot, point(depth, depth - 0.4)))
      }),
    ]
  })

const woodLines = ({ wood, goesOn, waste, toCome }: SawScene, { at }: Placing): Path[] => {
  const corners = wood.map(at)
  const [tip, endAtFence, endAbove, slanted] = corners
  const outline =
    goesOn && tip && endAtFence && endAbove && slanted
      ? [chain('PATTERN', [endAtFence, tip, slanted, endAbove]), chain('NOTE', goesOn.map(at))]
      : [path('PATTERN', closedOutline(corners))]
  return [
    ...outline,
    ...hatching(waste.map(at)),
    ...toCome.map(([from, to]) => line('NOTE', at(from), at(to), 'dashed')),
  ]
}

const hatching = (corners: readonly Point[]): Path[] => {
  for (const spacing of HATCH_SPACINGS) {
    const strokes = hatch(corners, radians(-Math.PI / 4), spacing)
    if (strokes.length > 0) return strokes.map(([from, to]) => line('NOTE', from, to))
  }
  return []
}

/** A stop that is lifted out before the cut is dashed. */
const stopLines = ({ stop, stopLiftsOut, wedge }: SawScene, { at }: Placing): Path[] => [
  path('PATTERN', closedOutline(stop.map(at)), stopLiftsOut ? 'dashed' : 'wide'),
  ...(wedge ? [path('NOTE', closedOutline(wedge.map(at)))] : []),
]

/** The slot's near side wide, its far side narrow; the handle; the square from the fence and the arc of the lean. */
const bladeLines = ({ blade, handle, unit, pivot }: SawScene, { at, scale: reduced }: Placing): Path[] => {
  const [from, to] = [at(blade.near[0]), at(blade.near[1])]
  const foot = at(pivot)
  const radius = leanRadius({ blade, pivot }, reduced)
  const down = -Math.PI / 2
  const lean = leanDirection({ blade })
  const leans = Math.abs(lean - down) > SAME_ANGLE
  return [
    line('PATTERN', from, to),
    line('NOTE', at(blade.far[0]), at(blade.far[1])),
    ring('PATTERN', at(handle), unit * reduced),
    ...(leans
      ? [
          line('NOTE', foot, add(foot, point(0, -radius - 3)), 'chain'),
          arc('DIM', foot, radius, Math.min(lean, down), Math.max(lean, down)),
        ]
      : []),
  ]
}

/** Of the blade from the fence toward the operator, counter-clockwise from +x: straight down is -90°. */
export const leanDirection = ({ blade: { near } }: Pick<SawScene, 'blade'>): number => {
  const toward = direction(near[0], near[1])
  return maths.atan2(toward.y, toward.x)
}

/** On paper; less where the blade's way is short. */
export const leanRadius = ({ blade, pivot }: Pick<SawScene, 'blade' | 'pivot'>, reduced: number): number =>
  Math.min(ARC, 0.6 * reduced * distance(pivot, blade.near[1]))

/** Lines at the hands' distance on both sides of the blade, as far as they run through the scene. */
const handLimits = (scene: SawScene, { at, scale: reduced }: Placing): Path[] => {
  const { min, max } = sceneExtents(scene)
  const { near, far } = scene.blade
  const along = direction(near[0], near[1])
  const towardStop = leftOf(along)
  return [
    add(near[0], scale(towardStop, HAND_DISTANCE)),
    add(far[0], scale(towardStop, -HAND_DISTANCE)),
  ].flatMap((start) => {
    const seen = within(start, along, min, point(max.x, 0))
    return seen && distance(...seen) * reduced >= SHORTEST_LIMIT
      ? [line('NOTE', at(seen[0]), at(seen[1]), 'double-chain')]
      : []
  })
}

/** The stretch of a line, not level, that lies in an upright box. */
const within = (start: Point, along: Point, min: Point, max: Point): Stretch | undefined => {
  const reaches = (from: number, speed: number, low: number, high: number): readonly [number, number] => {
    if (Math.abs(speed) < SAME_ANGLE) return from >= low && from <= high ? [-Infinity, Infinity] : [0, 0]
    const [one, other] = [(low - from) / speed, (high - from) / speed]
    return [Math.min(one, other), Math.max(one, other)]
  }
  const across = reaches(start.x, along.x, min.x, max.x)
  const up = reaches(start.y, along.y, min.y, max.y)
  const [enter, leave] = [Math.max(across[0], up[0]), Math.min(across[1], up[1])]
  return enter < leave ? [add(start, scale(along, enter)), add(start, scale(along, leave))] : undefined
}

/** How high above the fence's face the stop's dimension line stands, on paper. */
export const dimensionHeight = ({ unit }: SawScene, reduced: number): number =>
  FENCE_DEPTH * unit * reduced + ABOVE_FENCE

/** Stop to blade along the fence, above the fence's hatching. */
const stopDimension = (scene: SawScene, { at, scale: reduced }: Placing): Shape[] => {
  const y = dimensionHeight(scene, reduced)
  const onLine = (end: Point): Point => point(at(end).x, y)
  const [stop, blade] = [onLine(scene.measured[0]), onLine(scene.measured[1])]
  const toward = direction(blade, stop)
  return [
    ...[stop, blade].map((end) =>
      line('DIM', add(end, point(0, -ABOVE_FENCE + 0.3)), add(end, point(0, 0.3))),
    ),
    line('DIM', blade, stop),
    ...(distance(stop, blade) < ARROWS ? [] : [...arrow(blade, toward), ...arrow(stop, scale(toward, -1))]),
  ]
}
