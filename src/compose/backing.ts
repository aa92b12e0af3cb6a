import { labelBox } from '../drawing/bounds.js'
import { reach, TAIL, wrapText } from '../drawing/lettering.js'
import type { Drawing, Label, Shape } from '../drawing/model.js'
import { boxIsClear } from '../drawing/place-label.js'
import { cross, label, path } from '../drawing/shapes.js'
import { distanceToEdge } from '../geometry/leaves-room.js'
import { edges, outlineSize } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { sentence } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import type { StarPlan } from '../plan/plan.js'
import type { BackingPlan } from '../plate/plan-backing.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'
import { showLength } from '../units/show.js'
import { fixingText, hangingText } from './backing-words.js'
import { CENTRE_CROSS, nailMarks, plateCuts, upMark } from './plate-cuts.js'
import { sizeText } from './size-text.js'

/** Lettering as large as fits, from a title's height down to what a printer still renders. */
const HEIGHTS = [5, 3.5, 2.5, 1.8]

/** White around the cross and inside the outline. */
const WHITE = 1

/** From line to line, over the height of a capital. */
const LINE_SPACING = 1.7

/**
 * The plate behind the star, one tip up: on paper at its true size; in a file for a laser or a router the lines that
 * beam or bit follow. Its note lies inside the outline, so that the file's overall size is the outline's own and can be
 * compared with what the cutter's software shows.
 */
export const backing = (plan: StarPlan, plate: BackingPlan, order: Order): Drawing => {
  const { lengths, shop } = order
  const byHand = removedWidth(shop.cutter) === 0
  const trueSize = outlineSize(plate.cut.outer)
  const title = `${plan.order.name}: backing`
  const inside = `${showLength(plate.margin, lengths)} inside the star`
  const ownSize = sizeText({ across: plate.across, height: plate.height }, lengths)
  const centre = cross('GUIDE', point(0, 0), CENTRE_CROSS)
  const plain: Shape[] = [
    ...plate.part.inner.map((opening) => path('CUT-INSIDE', opening)),
    path('CUT-OUTSIDE', plate.outline),
    ...nailMarks(plate),
    ...centre,
  ]
  const up = label('UP', point(0, CENTRE_CROSS + WHITE + TAIL * UP), { height: UP, anchor: 'middle' })
  const onPaper = [ownSize, `drawn in mm, ${inside}`, 'true size, no kerf allowance']
  const inFile = byHand
    ? onPaper
    : [`cut to ${ownSize}`, inside, `the line is ${sizeText(trueSize, lengths)}: ${allowance(order)}`]
  const held = [hangingText(plan, lengths), fixingText(plan, lengths)].filter((text) => text !== undefined)
  const noted = (shapes: readonly Shape[], word: readonly string[], lines: readonly string[]): Shape[] => [
    ...shapes,
    ...noteInside({ name: title, word, below: lines }, radiusInside(plate), shapes),
  ]
  // Once is enough where the cutter marks the word.
  const toRead = upMark(plate).length > 0 ? [] : ['UP']
  return {
    kind: 'backing',
    title,
    trueSize,
    shapes: noted(plain, ['UP'], onPaper),
    ...(byHand ? {} : { toCut: noted([...plateCuts(plate, shop.cutter), ...centre], toRead, inFile) }),
    // On paper the note goes where no seam runs through it.
    figure: [...plain, up],
    notes: { title, lines: [...onPaper, ...held.map(sentence)] },
    asides: [up],
    pieces: [plate.outline],
  }
}

/** `it allows for a bit of 3.2 mm`. */
const allowance = ({ shop, lengths }: Order): string =>
  `it allows for a ${shop.cutter.kind === 'router' ? 'bit' : 'kerf'} of ${showLength(removedWidth(shop.cutter), lengths)}`

/** Of the largest circle about the centre that the plate holds. */
const radiusInside = ({ outline }: BackingPlan): number =>
  Math.min(...edges(outline).map((edge) => distanceToEdge(point(0, 0), edge)))

/** Height of the word on paper that says which tip is the top one. */
const UP = mm(3.5)

/** From line to line where accents would meet tails otherwise. */
const tallSpacing = (text: string): number => reach(text).above + reach(text).below + 0.2

/** The name above the cross and under it a word, if any; the lines below the cross. */
interface Note {
  readonly name: string
  readonly word: readonly string[]
  readonly below: readonly string[]
}

/**
 * Lines above and below the centre cross, inside the circle that the outline holds and clear of holes and marks: as
 * large as fits, the name broken only where it finds no room otherwise. What finds none even so is left out, for a line
 * outside would make the file larger than the outline.
 */
const noteInside = ({ name, word, below }: Note, radius: number, drawn: readonly Shape[]): Label[] => {
  const room = radius - WHITE
  const inTheWay = drawn.filter(({ layer }) => layer === 'CUT-INSIDE' || layer === 'MARK')
  const layOut = (names: readonly string[], height: number): Label[] => {
    const above = [...names, ...word]
    const spacing = Math.max(LINE_SPACING, ...above.map(tallSpacing))
    return [
      ...above.map((text, row) => {
        const fromCross = above.length - 1 - row
        return label(text, point(0, CENTRE_CROSS + WHITE + (TAIL + fromCross * spacing) * height), {
          height,
          anchor: 'middle',
        })
      }),
      ...below.map((text, row) =>
        label(text, point(0, -CENTRE_CROSS - WHITE - height - row * LINE_SPACING * height), {
          height,
          anchor: 'middle',
        }),
      ),
    ]
  }
  const fits = (each: Label): boolean =>
    labelBox(each).every(({ x, y }) => maths.hypot(x, y) < room) &&
    boxIsClear(labelBox(each), inTheWay, WHITE)
  const whole = HEIGHTS.map((height) => layOut([name], height))
  const broken = HEIGHTS.map((height) => layOut(wrapText(name, mm(height), mm(1.6 * room)), height))
  return [...whole, ...broken].find((labels) => labels.every(fits)) ?? (whole.at(-1) ?? []).filter(fits)
}
