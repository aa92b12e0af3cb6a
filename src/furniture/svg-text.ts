import type { ArtText } from '../drawing/artwork.js'
import { CAP_HEIGHT, unlettered } from '../drawing/lettering.js'
import { point } from '../geometry/point.js'
import { refusalOf } from '../order/lettered-text.js'
import { mm, radians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { SlotName } from './furniture-names.js'
import { hasLoneBrace, slotsIn } from './slots.js'
import { readNumber } from './svg-numbers.js'
import { numbersOf } from './svg-outline.js'
import type { Properties } from './svg-properties.js'
import type { Refuse } from './svg-refusal.js'
import { evenScale, isMirrored, type Matrix, placed } from './svg-transform.js'
import type { SvgElement } from './svg-tree.js'

/** Three dots of the smallest lettering, with a little to spare. */
const LEAST_ROOM = 2

/**
 * A text element as one line of lettering; undefined when it is refused or draws nothing.
 *
 * @param matrix from the element to the artwork, y down to y up
 */
export const readText = (
  element: SvgElement,
  properties: Properties,
  matrix: Matrix,
  slots: readonly SlotName[],
  refuse: Refuse,
): ArtText | undefined => {
  const { fill, stroke, fontSize, fontNamed, anchor } = properties
  const text = lineOf(element, properties, slots, refuse)
  const [x, y] = numbersOf(element, ['x', 'y'], refuse) ?? []
  const room = readRoom(element, text, refuse)
  const lines = readLines(element, refuse)
  if (stroke !== undefined)
    refuse(element, ['stroke', stroke], 'Allowed: text in its fill only. Give it stroke="none".')
  if (fontSize === undefined) refuse(element, undefined, 'Allowed: text with its font-size, in mm.')
  if (!fontNamed) refuse(element, undefined, 'Allowed: text with font-family="sans-serif".')
  const size = evenScale(matrix)
  // y down to y up is one mirroring; one more would mirror the letters.
  if (size === undefined || !isMirrored(matrix))
    return refuse(element, undefined, 'Allowed: text moved, turned, or scaled alike both ways, not mirrored.')
  if (!text || x === undefined || y === undefined || fontSize === undefined || fill === undefined)
    return undefined
  return {
    kind: 'text',
    text,
    at: placed(matrix, point(x, y)),
    anchor,
    height: mm(fontSize * CAP_HEIGHT * size),
    turn: radians(maths.atan2(matrix[1], matrix[0])),
    colour: fill,
    ...(room === undefined ? {} : { room: mm(room * size) }),
    ...(lines === undefined ? {} : { lines }),
  }
}

/** The text as SVG shows it; undefined when it is refused. */
const lineOf = (
  element: SvgElement,
  { keepsSpaces }: Properties,
  slots: readonly SlotName[],
  refuse: Refuse,
): string | undefined => {
  const written = element.text
  const told = { text: written.trim() }
  const text = written.trim().replace(/[ \t]+/g, ' ')
  if (keepsSpaces && text !== written)
    return refuse(element, told, 'Allowed under xml:space="preserve": no space at the ends, no two together.')
  if (/[\n\r]/.test(text))
    return refuse(element, told, 'Allowed: one line. Give each line its own text element.')
  const strange = unlettered(text)
  if (strange !== undefined) return refuse(element, told, refusalOf(strange))
  const named =
    slots.length === 0 ? 'This piece has no slots.' : `Slots: ${slots.map((slot) => `{${slot}}`).join(', ')}.`
  if (hasLoneBrace(text)) return refuse(element, told, `Braces stand around the name of a slot. ${named}`)
  const unknown = slotsIn(text).find((name) => !(slots as readonly string[]).includes(name))
  return unknown === undefined ? text : refuse(element, { text: `{${unknown}}` }, named)
}

const readRoom = (element: SvgElement, text: string | undefined, refuse: Refuse): number | undefined => {
  const written = element.attributes.get('data-room')
  if (written === undefined) {
    if (text !== undefined && slotsIn(text).length > 0)
      refuse(element, undefined, 'A text with a slot needs data-room, the width in mm that it may take.')
    return undefined
  }
  const room = readNumber(written)
  return room !== undefined && room >= LEAST_ROOM
    ? room
    : refuse(element, ['data-room', written], `Allowed: a width of ${LEAST_ROOM} mm or more.`)
}

const MOST_LINES = 4

const readLines = (element: SvgElement, refuse: Refuse): number | undefined => {
  const written = element.attributes.get('data-lines')
  if (written === undefined) return undefined
  const lines = readNumber(written)
  return element.attributes.has('data-room') && lines !== undefined && LINE_COUNTS.includes(lines)
    ? lines
    : refuse(
        element,
        ['data-lines', written],
        `Allowed: 1 to ${MOST_LINES}, beside data-room, the width of each line.`,
      )
}

const LINE_COUNTS = Array.from({ length: MOST_LINES }, (_, index) => index + 1)
