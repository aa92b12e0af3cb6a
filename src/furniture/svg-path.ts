import svgpath from 'svgpath'
import type { ArtStep } from '../drawing/artwork.js'
import { between, type Point, point } from '../geometry/point.js'
import { arcCurves, type SvgArc } from './svg-arc.js'
import { LARGEST_NUMBER } from './svg-numbers.js'
import { type Matrix, placed } from './svg-transform.js'

/** A step of an outline in the element's own coordinates, y down. */
export type SvgStep =
  | { readonly to: 'move' | 'line'; readonly at: Point }
  | { readonly to: 'curve'; readonly from: Point; readonly toward: Point; readonly at: Point }
  | { readonly to: 'arc'; readonly arc: SvgArc }
  | { readonly to: 'start' }

export const PATH_ALLOWED = `Allowed: path data of M, L, H, V, C, S, Q, T, A and Z, numbers up to ${LARGEST_NUMBER}.`

/** Path data as steps; undefined unless all of it is understood. */
export const readPath = (data: string): readonly SvgStep[] | undefined => {
  // The parser knows a command R of its own, and spaces that are none in SVG.
  if (!/^[\s\d+\-.,eMLHVCSQTAZ]*$/i.test(data) || /[^\t\n\f\r\x20-\x7e]/.test(data)) return undefined
  const parsed = svgpath(data)
  const { err, segments } = parsed as unknown as {
    readonly err: string
    readonly segments: (string | number)[][]
  }
  if (err !== '' || segments.length === 0) return undefined
  const numbers = segments.flatMap((segment) => segment.slice(1)) as number[]
  if (!numbers.every((value) => Math.abs(value) <= LARGEST_NUMBER)) return undefined
  const steps: SvgStep[] = []
  parsed
    .abs()
    .unshort()
    .iterate(([command, ...values], _, x, y) => {
      steps.push(stepOf(command, values as number[], point(x, y)))
    })
  return steps
}

const stepOf = (command: string, values: readonly number[], now: Point): SvgStep => {
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0] = values
  switch (command) {
    case 'M':
      return { to: 'move', at: point(a, b) }
    case 'L':
      return { to: 'line', at: point(a, b) }
    case 'H':
      return { to: 'line', at: point(a, now.y) }
    case 'V':
      return { to: 'line', at: point(now.x, a) }
    case 'C':
      return { to: 'curve', from: point(a, b), toward: point(c, d), at: point(e, f) }
    case 'Q': {
      // A quadratic is the cubic with handles two thirds of the way to its one control point.
      const [middle, at] = [point(a, b), point(c, d)]
      return { to: 'curve', from: between(now, middle, 2 / 3), toward: between(at, middle, 2 / 3), at }
    }
    case 'A':
      return {
        to: 'arc',
        arc: { radii: point(a, b), turned: c, large: d === 1, sweep: e === 1, to: point(f, g) },
      }
    case 'Z':
    case 'z':
      return { to: 'start' }
    default:
      throw new Error(`path data are read without a command ${command}`)
  }
}

/** The steps where the matrix places them, arcs as Beziers. After going back to its start an outline moves there. */
export const artSteps = (steps: readonly SvgStep[], matrix: Matrix): ArtStep[] => {
  const made: ArtStep[] = []
  let [start, now] = [point(0, 0), point(0, 0)]
  const at = (spot: Point): Point => placed(matrix, spot)
  for (const step of steps) {
    if (made.at(-1)?.to === 'start' && step.to !== 'move') {
      if (step.to === 'start') continue
      made.push({ to: 'move', at: at(start) })
    }
    if (step.to === 'start') {
      made.push(step)
      now = start
      continue
    }
    if (step.to === 'arc') made.push(...arcSteps(now, step.arc, at))
    else if (step.to === 'curve')
      made.push({ to: 'curve', from: at(step.from), toward: at(step.toward), at: at(step.at) })
    else made.push({ to: step.to, at: at(step.at) })
    now = step.to === 'arc' ? step.arc.to : step.at
    if (step.to === 'move') start = now
  }
  return made
}

const arcSteps = (now: Point, arc: SvgArc, at: (spot: Point) => Point): ArtStep[] => {
  const curves = arcCurves(now, arc)
  if (curves.length === 0) return [{ to: 'line', at: at(arc.to) }]
  return curves.map((curve) => ({
    to: 'curve',
    from: at(curve.from),
    toward: at(curve.toward),
    at: at(curve.at),
  }))
}
