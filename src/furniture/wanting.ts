import type { ArtText } from '../drawing/artwork.js'
import { textWidth } from '../drawing/lettering.js'
import { add, type Point, point, turn } from '../geometry/point.js'
import type { Problem } from '../order/problem.js'
import { showAtLeast } from '../units/show.js'
import { FURNITURE, type FurnitureName } from './furniture-names.js'
import { looksOf, UNSEEN } from './painted.js'
import { type DrawnPiece, textsOf } from './read-furniture.js'
import { linesDrop, roomFor, type SlotValues, slotsIn } from './slots.js'
import { firstOf, type Refuse, refuseInto, type Tell } from './svg-refusal.js'
import { wantingLines } from './wanting-lines.js'

/**
 * What a piece lacks that a page cannot do without: sheets that cannot be told apart, or that do not say how large they
 * are, are not to be trusted.
 */
export const wantingIn = (file: string, name: FurnitureName, piece: DrawnPiece): readonly Problem[] => {
  const problems: Problem[] = []
  const refuse = refuseInto(file, problems)
  const tell: Tell = (given, advice) => problems.push({ place: file, given, advice })
  missingSlots(name, piece, tell)
  for (const { mark } of textsOf(piece)) tooNarrow(mark, tell)
  unseenSlots(name, piece, refuse)
  wantingLines(name, piece, tell, refuse)
  return firstOf(file, problems)
}

const inBraces = (slots: readonly string[]): string => slots.map((slot) => `{${slot}}`).join(', ')

const missingSlots = (name: FurnitureName, piece: DrawnPiece, tell: Tell): void => {
  const { needed } = FURNITURE[name]
  const lettered = textsOf(piece).flatMap(({ mark }) => slotsIn(mark.text))
  const missing = needed.filter((slot) => !lettered.includes(slot))
  if (missing.length > 0)
    tell(
      `a drawing without ${inBraces(missing)}`,
      `Letter ${inBraces(needed)} in it, each in a text element with its data-room.`,
    )
}

/** The longest values of what may not be cut short. A title may. */
const WHOLE: SlotValues = { sheet: '24W', sheets: '9999', scale: '1:1', frame: 'Frame 2000.0 × 5000.0 mm' }

const tooNarrow = (mark: ArtText, tell: Tell): void => {
  if (mark.room === undefined || !slotsIn(mark.text).some((slot) => Object.hasOwn(WHOLE, slot))) return
  const needed = roomFor(mark, WHOLE)
  if (needed > mark.room)
    tell(
      `"${mark.text}" with data-room="${mark.room}"`,
      `It needs ${showAtLeast(needed, { units: 'mm', nearest: 1 })} at least, or fewer words of its own: it must never be cut short.`,
    )
}

/** Slots a page needs whose room is painted over, or whose ink does not show there. */
const unseenSlots = (name: FurnitureName, piece: DrawnPiece, refuse: Refuse): void => {
  const { needed } = FURNITURE[name]
  const wanted = textsOf(piece).filter(({ mark }) =>
    slotsIn(mark.text).some((slot) => (needed as readonly string[]).includes(slot)),
  )
  const looks = looksOf(
    piece.artwork,
    wanted.map(({ mark }) => ({ mark, spots: spotsIn(mark), colour: mark.colour })),
  )
  wanted.forEach(({ mark, element }, index) => {
    const unseen = looks[index]?.find((look) => look !== 'seen')
    if (unseen) refuse(element, { text: mark.text }, UNSEEN[unseen])
  })
}

/** Over a capital's height, and from column to column in mm. */
const HEIGHTS = [1 / 6, 1 / 2, 5 / 6]
const COLUMN = 0.5

/** Spots all over the room that a text may take. */
const spotsIn = (mark: ArtText): Point[] => {
  const { text, at, anchor, height, turn: reading, room, lines = 1 } = mark
  const across = room ?? textWidth(text, height)
  const left = anchor === 'start' ? 0 : anchor === 'middle' ? -across / 2 : -across
  const count = Math.ceil(across / COLUMN)
  return Array.from({ length: count }, (_, index) => left + ((index + 0.5) / count) * across).flatMap((x) =>
    Array.from({ length: lines }, (_, index) => (index * linesDrop(mark)) / Math.max(1, lines - 1)).flatMap(
      (drop) => HEIGHTS.map((share) => add(at, turn(point(x, share * height - drop), reading))),
    ),
  )
}
