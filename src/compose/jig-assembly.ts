import type { Shape } from '../drawing/model.js'
import { line, path } from '../drawing/shapes.js'
import { outlineSides } from '../drawing/sides.js'
import { hatch } from '../geometry/hatch.js'
import { boxOf, mapped, type Outline } from '../geometry/outline.js'
import { add, type Point, point, scale, subtract } from '../geometry/point.js'
import type { Jig } from '../jigs/jig.js'
import { radians } from '../units/convert.js'
import type { Block } from './card-blocks.js'
import { BESIDE, type Placed, partNumbers } from './part-number.js'

/** In mm on paper: room for a picture, and for numbers on either side of it. */
export const PICTURE_ACROSS = 74
const PICTURE_HEIGHT = 54
/** How deep the fence's hatching is, and how far its strokes are apart. */
const FENCE = 1.8

/** The jig put together, as the saw's operator sees it from above: the fence at the top. */
export const assembly = (jig: Jig): Block => {
  const upright = jig.inUse?.blade === undefined
  const seen = ({ x, y }: Point): Point => (upright ? point(x, y) : point(0 - x, 0 - y))
  const lie = (outline: Outline): Outline => mapped(outline, seen)
  const placed = jig.parts.flatMap(({ outer, inner, footprint, copies }, index): Placed[] =>
    (copies ?? [footprint ?? outer]).map((outline) => ({
      number: index + 1,
      outline: lie(outline),
      holes: footprint || copies ? [] : inner.map(lie),
    })),
  )
  const parts = placed.map(({ outline }) => outline)
  const wood = jig.inUse?.wood.map(lie) ?? []
  const blade = jig.inUse?.blade?.map(seen) ?? []
  const around = jig.inUse?.around?.map(lie) ?? []
  const uncut = jig.inUse?.uncut ? [lie(jig.inUse.uncut)] : []
  const { min, max } = boxOf([...parts, ...around, ...uncut, ...wood, { closed: false, vertices: blade }])
  const reduced = Math.min((PICTURE_ACROSS - 2 * BESIDE) / (max.x - min.x), PICTURE_HEIGHT / (max.y - min.y))
  const lower = upright ? 0 : FENCE
  const at = (place: Point): Point =>
    add(scale(subtract(place, point(min.x, max.y)), reduced), point(BESIDE, -lower))
  const small = (outline: Outline): Outline => mapped(outline, at)
  const shrunk = placed.map(
    ({ number, outline, holes }): Placed => ({
      number,
      outline: small(outline),
      holes: holes.map(small),
    }),
  )
  const pieces = wood.map(small)
  const [surrounds, left] = [around.map(small), uncut.map(small)]
  const right = BESIDE + (max.x - min.x) * reduced
  const [from, to] = blade.map(at)
  const shapes: Shape[] = [
    ...pieces.flatMap(woodShapes),
    ...surrounds.map((outline) => path('NOTE', outline)),
    ...left.map((outline) => path('NOTE', outline, 'dashed')),
    ...shrunk.flatMap(({ outline, holes }) => [outline, ...holes].map((each) => path('DIM', each))),
    ...(from && to ? [line('CUT-OUTSIDE', from, to, 'chain'), ...fenceBeside(from.x, right)] : []),
    ...partNumbers(jig.parts.length, {
      placed: shrunk,
      wood: pieces,
      lines: [...surrounds, ...left, { closed: false, vertices: blade.map(at) }],
      right,
    }),
  ]
  return { height: (max.y - min.y) * reduced + lower, shapes }
}

/** The fence's face above the picture, open where the blade passes. */
const fenceBeside = (blade: number, right: number): Shape[] => {
  const stretches = [
    [BESIDE, Math.min(right, blade - FENCE)],
    [Math.max(BESIDE, blade + FENCE), right],
  ] as const
  return stretches.flatMap(([start, end]) => {
    const strokes = Math.max(0, Math.floor((end - start) / FENCE))
    return end <= start
      ? []
      : [
          line('PATTERN', point(start, -FENCE), point(end, -FENCE)),
          ...Array.from({ length: strokes }, (_, index) => {
            const foot = point(start + index * FENCE, -FENCE)
            return line('NOTE', foot, add(foot, point(FENCE, FENCE)))
          }),
        ]
  })
}

const woodShapes = (wood: Outline): Shape[] => [
  path('PATTERN', wood),
  ...hatch(
    outlineSides(wood).map(([corner]) => corner),
    radians(0),
    1.8,
  ).map(([a, b]) => line('GUIDE', a, b)),
]
