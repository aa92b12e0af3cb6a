import type { ArtMark, ArtText, Artwork } from '../drawing/artwork.js'
import type { Extents } from '../geometry/outline.js'
import { done, type Outcome, type Problem, refused } from '../order/problem.js'
import { mm } from '../units/convert.js'
import { showAtLeast } from '../units/show.js'
import { SAME_POINT } from '../units/tolerance.js'
import { artExtents } from './art-extents.js'
import { FURNITURE, type FurnitureName, type FurniturePiece } from './furniture-names.js'
import { attributeAdvice, describes, ELEMENT_NAMES } from './svg-allowed.js'
import { readMark } from './svg-mark.js'
import { LARGEST_NUMBER } from './svg-numbers.js'
import { INITIAL, type Properties, readProperties } from './svg-properties.js'
import { firstOf, type Refuse, refuseInto } from './svg-refusal.js'
import { readSize } from './svg-size.js'
import { readText } from './svg-text.js'
import { combined, keepsPlaces, type Matrix, readTransform, TRANSFORM_ALLOWED } from './svg-transform.js'
import { readTree, type SvgElement } from './svg-tree.js'

/** A mark, and the element that draws it. */
export interface DrawnMark<Mark extends ArtMark = ArtMark> {
  readonly mark: Mark
  readonly element: SvgElement
}

/** A piece as it was read, and where each of its marks stands in the file. */
export interface DrawnPiece {
  readonly artwork: Artwork
  readonly drawn: readonly DrawnMark[]
}

export const textsOf = ({ drawn }: DrawnPiece): DrawnMark<ArtText>[] =>
  drawn.flatMap(({ mark, element }) => (mark.kind === 'text' ? [{ mark, element }] : []))

/** A piece of sheet furniture as {@link readPiece} reads it. */
export const readFurniture = (file: string, name: FurnitureName, text: string): Outcome<Artwork> => {
  const piece = readPiece(file, name, text)
  return piece.ok ? done(piece.value.artwork) : piece
}

/**
 * Reads a piece of sheet furniture that can be drawn exactly as its SVG says, or tells what in it cannot, by element
 * and line.
 *
 * @param file what the maker calls it, such as `title-block.svg`
 */
export const readPiece = (file: string, name: FurnitureName, text: string): Outcome<DrawnPiece> => {
  const tree = readTree(file, text)
  if (!tree.ok) return tree
  const problems: Problem[] = []
  const refuse = refuseInto(file, problems)
  const piece = FURNITURE[name]
  const size = readSize(tree.value, piece, refuse)
  const { height } = size ?? piece
  const drawn: DrawnMark[] = []
  const draw = (element: SvgElement, mark: ArtMark): void => {
    const beyond = size && reachBeyond(artExtents(mark), size)
    if (beyond === undefined) drawn.push({ mark, element })
    else refuse(element, undefined, `It reaches ${beyond}: ${OVER_OTHERS}`)
  }
  const upright: Matrix = [1, 0, 0, -1, 0, height]
  walkGroup(tree.value, { properties: INITIAL, matrix: upright }, { piece, refuse, draw })
  if (drawn.length === 0 && problems.length === 0)
    refuse(tree.value, undefined, 'It draws nothing. Leave the file out to have the usual piece.')
  return problems.length > 0 || !size
    ? refused(firstOf(file, problems))
    : done({ artwork: { ...size, marks: drawn.map(({ mark }) => mark) }, drawn })
}

const OVER_OTHERS =
  "it would be printed over something else. Half of a line's width and the tails and accents of letters count."

/** What an element takes from those around it. */
interface Around {
  readonly properties: Properties
  readonly matrix: Matrix
}

/** What stays the same on the way through a drawing. */
interface Walk {
  readonly piece: FurniturePiece
  readonly refuse: Refuse
  readonly draw: (element: SvgElement, mark: ArtMark) => void
}

/** An svg or a group: its own properties and transform, and everything in it. */
const walkGroup = (element: SvgElement, around: Around, walk: Walk): void => {
  const { refuse } = walk
  const text = element.text.trim()
  if (text !== '') refuse(element, { text }, 'Allowed: text in text elements, where it is drawn.')
  const inside = insideOf(element, around, refuse)
  for (const child of element.children) {
    if (child.origin === 'editor') continue
    if (child.origin !== 'svg' || !ELEMENT_NAMES.includes(child.name))
      refuse(child, undefined, `Allowed elements: ${ELEMENT_NAMES.join(', ')}.`)
    else if (child.name === 'g') walkGroup(child, inside, walk)
    else if (describes(child)) tellAttributes(child, refuse)
    else drawMark(child, inside, walk)
  }
}

const drawMark = (element: SvgElement, around: Around, { piece, refuse, draw }: Walk): void => {
  const isText = element.name === 'text'
  const text = element.text.trim()
  if (!isText && text !== '') refuse(element, { text }, 'Allowed: text in text elements, where it is drawn.')
  for (const child of element.children) {
    if (child.origin !== 'editor' && !describes(child))
      refuse(child, undefined, `Allowed in ${element.name}: nothing but title and desc.`)
  }
  const { properties, matrix } = insideOf(element, around, refuse)
  const mark = isText
    ? readText(element, properties, matrix, piece.slots, refuse)
    : readMark(element, properties, matrix, piece, refuse)
  if (mark) draw(element, mark)
}

const insideOf = (element: SvgElement, around: Around, refuse: Refuse): Around => {
  tellAttributes(element, refuse)
  return {
    properties: readProperties(element, around.properties, refuse),
    matrix: matrixOf(element, around.matrix, refuse),
  }
}

const tellAttributes = (element: SvgElement, refuse: Refuse): void => {
  for (const [name, value] of element.attributes) {
    const advice = attributeAdvice(element, name)
    if (advice !== undefined) refuse(element, [name, value], advice)
  }
}

const matrixOf = (element: SvgElement, around: Matrix, refuse: Refuse): Matrix => {
  const written = element.attributes.get('transform')
  if (written === undefined) return around
  const own = readTransform(written)
  const matrix = own && combined(around, own)
  if (matrix && keepsPlaces(matrix)) return matrix
  refuse(element, ['transform', written], TRANSFORM_ALLOWED)
  return around
}

/** `0.4 mm beyond the right edge`, the farthest of the four; undefined when all lies inside. */
const reachBeyond = (
  { min, max }: Extents,
  { across, height }: Pick<Artwork, 'across' | 'height'>,
): string | undefined => {
  const sides = [
    ['left', -min.x],
    ['right', max.x - across],
    ['lower', -min.y],
    ['upper', max.y - height],
  ] as const
  const [side, far] = sides.reduce((most, next) => (next[1] > most[1] ? next : most))
  if (far <= SAME_POINT) return undefined
  return `${showAtLeast(mm(Math.min(far, LARGEST_NUMBER)), { units: 'mm', nearest: 1 })} beyond the ${side} edge`
}
