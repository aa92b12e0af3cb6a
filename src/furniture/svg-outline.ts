import { point } from '../geometry/point.js'
import { NUMBER_ALLOWED, readNumber, readNumbers } from './svg-numbers.js'
import { PATH_ALLOWED, readPath, type SvgStep } from './svg-path.js'
import type { Refuse } from './svg-refusal.js'
import type { SvgElement } from './svg-tree.js'

/** The outline of a drawn element in its own coordinates; undefined when it is refused. */
export const readOutline = (element: SvgElement, refuse: Refuse): readonly SvgStep[] | undefined =>
  OUTLINES[element.name as OutlinedName](element, refuse)

export type OutlinedName = 'path' | 'line' | 'polyline' | 'polygon' | 'rect' | 'circle'

type Outlined = (element: SvgElement, refuse: Refuse) => readonly SvgStep[] | undefined

const lineTo = (x: number, y: number): SvgStep => ({ to: 'line', at: point(x, y) })
const moveTo = (x: number, y: number): SvgStep => ({ to: 'move', at: point(x, y) })

/** A quarter of a circle to a point, the way clocks turn on paper. */
const quarterTo = (radius: number, x: number, y: number): SvgStep => ({
  to: 'arc',
  arc: { radii: point(radius, radius), turned: 0, large: false, sweep: true, to: point(x, y) },
})

/** The element's numbers of those names, 0 where one is not given; undefined when any of them is refused. */
export const numbersOf = (
  element: SvgElement,
  names: readonly string[],
  refuse: Refuse,
): readonly number[] | undefined => {
  const values = names.map((name) => {
    const written = element.attributes.get(name)
    const value = written === undefined ? 0 : readNumber(written)
    return value ?? refuse(element, [name, written ?? ''], NUMBER_ALLOWED)
  })
  return values.every((value) => value !== undefined) ? values : undefined
}

const points =
  (closed: boolean): Outlined =>
  (element, refuse) => {
    const written = element.attributes.get('points') ?? ''
    const [x, y, ...rest] = readNumbers(written) ?? []
    if (x === undefined || y === undefined || rest.length === 0 || rest.length % 2 !== 0)
      return refuse(element, ['points', written], 'Allowed: two places or more, such as 0,0 10,0 10,5.')
    const lines = Array.from({ length: rest.length / 2 }, (_, index) =>
      lineTo(rest[2 * index] ?? 0, rest[2 * index + 1] ?? 0),
    )
    return [moveTo(x, y), ...lines, ...(closed ? [{ to: 'start' } as const] : [])]
  }

const OUTLINES: Readonly<Record<OutlinedName, Outlined>> = {
  path: (element, refuse) => {
    const data = element.attributes.get('d') ?? ''
    return readPath(data) ?? refuse(element, ['d', data], PATH_ALLOWED)
  },
  line: (element, refuse) => {
    const [x1, y1, x2, y2] = numbersOf(element, ['x1', 'y1', 'x2', 'y2'], refuse) ?? []
    if (x1 === undefined || y1 === undefined || x2 === undefined || y2 === undefined) return undefined
    return [moveTo(x1, y1), lineTo(x2, y2)]
  },
  polyline: points(false),
  polygon: points(true),
  rect: (element, refuse) => {
    const [x, y, across, down, rx, ry] =
      numbersOf(element, ['x', 'y', 'width', 'height', 'rx', 'ry'], refuse) ?? []
    if (x === undefined || y === undefined || across === undefined || down === undefined) return undefined
    if (across <= 0 || down <= 0) return refuse(element, undefined, 'Allowed: a width and a height above 0.')
    // One of the two stands for both.
    const radius = element.attributes.has('rx') ? rx : ry
    const other = element.attributes.has('ry') ? ry : rx
    if (radius === undefined || radius !== other || radius < 0 || 2 * radius > Math.min(across, down))
      return refuse(element, undefined, 'Allowed: rx and ry alike, at most half of the shorter side.')
    return rectangle(x, y, x + across, y + down, radius)
  },
  circle: (element, refuse) => {
    const [cx, cy, r] = numbersOf(element, ['cx', 'cy', 'r'], refuse) ?? []
    if (cx === undefined || cy === undefined || r === undefined) return undefined
    if (r <= 0) return refuse(element, undefined, 'Allowed: a radius r above 0.')
    return [
      moveTo(cx + r, cy),
      quarterTo(r, cx, cy + r),
      quarterTo(r, cx - r, cy),
      quarterTo(r, cx, cy - r),
      quarterTo(r, cx + r, cy),
      { to: 'start' },
    ]
  },
}

/** From the upper side's left end on, as SVG has it (SVG 2, 10.2), so that dashes fall alike. */
const rectangle = (left: number, top: number, right: number, bottom: number, r: number): SvgStep[] =>
  r === 0
    ? [moveTo(left, top), lineTo(right, top), lineTo(right, bottom), lineTo(left, bottom), { to: 'start' }]
    : [
        moveTo(left + r, top),
        lineTo(right - r, top),
        quarterTo(r, right, top + r),
        lineTo(right, bottom - r),
        quarterTo(r, right - r, bottom),
        lineTo(left + r, bottom),
        quarterTo(r, left, bottom - r),
        lineTo(left, top + r),
        quarterTo(r, left + r, top),
        { to: 'start' },
      ]
