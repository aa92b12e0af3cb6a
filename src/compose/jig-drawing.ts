import { compensated, relievedPart } from '../cutter/compensated.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Path, Shape } from '../drawing/model.js'
import { cutOutlines, laidShapes } from '../drawing/moved.js'
import { path } from '../drawing/shapes.js'
import { layBoxes } from '../geometry/lay-boxes.js'
import { boxOf, type Extents } from '../geometry/outline.js'
import { point } from '../geometry/point.js'
import { cuttingRoom } from '../jigs/cutting-room.js'
import { withDrilledHoles } from '../jigs/drilled.js'
import type { Jig, JigPart } from '../jigs/jig.js'
import { levelling, turnedPart } from '../jigs/levelled.js'
import type { Cutter, Order, Shop } from '../order/order.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import { removedWidth } from '../order/removed-width.js'
import type { StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { LOOSE_CAUTION, PRINT_CAUTION, SAW_CAUTION } from './cautions.js'
import { partLettering, turnedWords } from './jig-letters.js'
import { JIG_CAUTION, nameWords } from './jig-phrases.js'
import { jigWords } from './jig-words.js'
import { sizeText } from './size-text.js'

/** Wood between two parts, besides what the cutter removes. */
const BETWEEN = 6
/** Between the rooms on two panels, one below the other. */
const SHEETS_APART = 20

/** A jig's drawing, and on how many panels its parts lie for the cutter. */
export interface JigSheets {
  readonly drawing: Drawing
  readonly sheets: number
}

/**
 * The parts of a jig side by side: on paper at their true size, for those who saw by hand, and in the file for the
 * cutter with its width allowed for. Refused when the cutter does not get into one of them.
 */
export const jigDrawing = (jig: Jig, plan: StarPlan, order: Order): Outcome<JigSheets> => {
  const words = jigWords(jig, plan, order)
  const { cutter } = order.shop
  const lettered = jig.parts.map((part): Lettered => {
    const by = levelling(part.outer)
    const lies = turnedPart(part, by)
    const onPart = (words.onParts[part.word] ?? []).map((line) => turnedWords(line, by))
    return { part: lies, letters: partLettering(asCut(lies, cutter), onPart) }
  })
  const onPaper = partsShapes(jig, lettered, { ...cutter, kind: 'hand' }, order)
  const toCut = partsShapes(jig, lettered, cutter, order)
  if (!onPaper.ok || !toCut.ok) return refused([onPaper, toCut].flatMap(problemsOf))
  const figure = onPaper.value.parts.flat()
  const shapes = toCut.value.parts.flat()
  const { min, max } = boxOf(cutOutlines(shapes))
  const title = `${plan.order.name}: ${words.title}`
  const drawing = notedDrawing({
    kind: jig.name,
    title,
    trueSize: { across: mm(max.x - min.x), height: mm(max.y - min.y) },
    figure,
    apart: onPaper.value.parts,
    asides: [],
    notes: {
      title,
      lines: [
        ...words.steps,
        ...words.hardware.map((each) => `Needed: ${each}.`),
        ...nameWords(plan),
        'Orange lines are outlines; magenta ones are inside, and cut first; green ones are marks.',
        ...(cutter.kind === 'hand' ? [] : [LOOSE_CAUTION]),
        ...(jig.inUse?.blade ? [JIG_CAUTION, SAW_CAUTION] : [SAW_CAUTION]),
        PRINT_CAUTION,
      ],
    },
    pieces: cutOutlines(figure),
  })
  return done({ drawing: { ...drawing, toCut: shapes }, sheets: toCut.value.sheets })
}

/** Inner cuts, then outlines, then marks, of every part in its place on the panel. */
const partsShapes = (
  jig: Jig,
  lettered: readonly Lettered[],
  cutter: Cutter,
  { shop, lengths }: Order,
): Outcome<LaidOut> => {
  const parts = lettered.map(({ part }) => withDrilledHoles(part, removedWidth(cutter)))
  const cut = parts.map((part) => compensated(part, cutter, lengths))
  const problems = cut.flatMap(problemsOf)
  if (problems.length > 0) return refused(problems)
  const drawn = parts.flatMap((part, index): Drawn[] => {
    const lines = cut[index]
    if (!lines?.ok) return []
    const { min, max } = boxOf([lines.value.outer])
    const shapes: Shape[] = [
      ...lines.value.inner.map((outline) => path('CUT-INSIDE', outline)),
      path('CUT-OUTSIDE', lines.value.outer),
      ...part.marks.map((mark) => path('MARK', mark)),
      ...(lettered[index]?.letters ?? []),
    ]
    return (part.copies ?? [part.outer]).map(() => ({ part, shapes, min, max }))
  })
  return laidOut(jig, drawn, cutter, shop, lengths)
}

/** A part as it is cut, and the strokes of its words. */
interface Lettered {
  readonly part: JigPart
  readonly letters: readonly Path[]
}

interface LaidOut {
  /** The shapes of each part that is cut. */
  readonly parts: readonly (readonly Shape[])[]
  readonly sheets: number
}

/** A part's shapes as they are cut, and the box around them. */
interface Drawn extends Extents {
  readonly part: JigPart
  readonly shapes: readonly Shape[]
}

const laidOut = (
  jig: Jig,
  drawn: readonly Drawn[],
  cutter: Cutter,
  shop: Shop,
  lengths: LengthStyle,
): Outcome<LaidOut> => {
  const removed = removedWidth(cutter)
  // On paper, for a hand saw, the panel sets no limit: its parts are cut apart first.
  const whole = cutter.kind === 'hand' ? undefined : cuttingRoom(shop)
  const room = whole && { across: whole.length - removed, height: whole.width - removed }
  const boxes = drawn.map(({ min, max }) => ({ across: max.x - min.x, height: max.y - min.y }))
  const places = layBoxes(boxes, removed + BETWEEN, room)
  if (!places) {
    const { part, size } = drawn
      .map(({ part, min, max }) => ({ part, size: { across: mm(max.x - min.x), height: mm(max.y - min.y) } }))
      .reduce((a, b) =>
        Math.max(b.size.across, b.size.height) > Math.max(a.size.across, a.size.height) ? b : a,
      )
    const onto = whole ? sizeText({ across: whole.length, height: whole.width }, lengths) : ''
    return refused([
      {
        place: 'jigs',
        given: jig.name,
        advice: `Its ${part.name}, ${sizeText(size, lengths)}, does not go onto ${onto}, the panel of that thickness or the cutter's bed. Give a larger one, make the star smaller, or saw this jig by hand from its PDF: cutter: { kind: hand }.`,
      },
    ])
  }
  const apart = (room?.height ?? 0) + SHEETS_APART
  const sheets = 1 + Math.max(...places.map(({ sheet }) => sheet))
  return done({
    sheets,
    parts: drawn.map(({ shapes, min, max }, index) => {
      const place = places[index]
      if (!place) throw new RangeError('every part has a place')
      return laidShapes(shapes, { min, max }, place.turned, point(place.x, place.y - place.sheet * apart))
    }),
  })
}

/** Lettering keeps clear of the reliefs too. */
const asCut = (part: JigPart, cutter: Cutter): JigPart => ({
  ...part,
  ...relievedPart(part, removedWidth(cutter)),
})
