import type { ArtPath, ArtStep, ArtStroke } from '../drawing/artwork.js'
import { mm } from '../units/convert.js'
import type { FurniturePiece } from './furniture-names.js'
import { readOutline } from './svg-outline.js'
import { artSteps } from './svg-path.js'
import { NARROWEST, type Properties, SHORTEST_DASH } from './svg-properties.js'
import type { Refuse } from './svg-refusal.js'
import { evenScale, type Matrix } from './svg-transform.js'
import type { SvgElement } from './svg-tree.js'

/** A drawn element as artwork; undefined when it is refused or draws nothing. */
export const readMark = (
  element: SvgElement,
  properties: Properties,
  matrix: Matrix,
  { linesOnly }: FurniturePiece,
  refuse: Refuse,
): ArtPath | undefined => {
  const outline = readOutline(element, refuse)
  const { stroke: colour, dashes } = properties
  const steps = artSteps(outline ?? [], matrix)
  const fill = encloses(steps) ? properties.fill : undefined
  if (linesOnly && fill !== undefined)
    refuse(
      element,
      ['fill', fill],
      'Allowed in this piece: fill="none". It goes into drawings of lines only.',
    )
  if (linesOnly && dashes.length > 0)
    refuse(element, ['stroke-dasharray', dashes.join(' ')], 'Allowed in this piece: unbroken lines.')
  const stroke = colour === undefined ? undefined : strokeOf(element, colour, properties, matrix, refuse)
  if (!outline || (!stroke && fill === undefined)) return undefined
  return {
    kind: 'path',
    steps,
    ...(stroke ? { stroke } : {}),
    ...(fill === undefined ? {} : { fill: { colour: fill, rule: properties.fillRule } }),
  }
}

/** Is there anything to fill? A single straight line encloses nothing, but some PDF readers would show it. */
const encloses = (steps: readonly ArtStep[]): boolean => {
  let lines = 0
  for (const step of steps) {
    if (step.to === 'curve') return true
    if (step.to === 'move') lines = 0
    else if (step.to === 'line') lines += 1
    if (lines > 1) return true
  }
  return false
}

const strokeOf = (
  element: SvgElement,
  colour: string,
  { strokeWidth, dashes, join, cap }: Properties,
  matrix: Matrix,
  refuse: Refuse,
): ArtStroke | undefined => {
  const size = evenScale(matrix)
  if (size === undefined)
    return refuse(element, undefined, 'Allowed: lines moved, turned, mirrored, or scaled alike both ways.')
  const [width, scaled] = [strokeWidth * size, dashes.map((dash) => dash * size)]
  if (width < NARROWEST || scaled.some((dash) => dash < SHORTEST_DASH)) {
    const advice = `Allowed, once scaled: lines of ${NARROWEST} mm or more, dashes of ${SHORTEST_DASH} mm or more.`
    return refuse(element, undefined, advice)
  }
  return { colour, width: mm(width), dashes: scaled, join, cap }
}
