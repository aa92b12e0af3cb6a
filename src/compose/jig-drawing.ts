import { compensated, relievedPart, removedWidth } from '../cutter/compensated.js'
import { notedDrawing } from '../drawing/drawing.js'
import type { Drawing, Path, Shape } from '../drawing/model.js'
import { movedShape } from '../drawing/moved.js'
import { path } from '../drawing/shapes.js'
import { boxOf, type Outline } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { Jig, JigPart } from '../jigs/jig.js'
import type { Cutter, Order } from '../order/order.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import { mm } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { PRINT_CAUTION, SAW_CAUTION } from './cautions.js'
import { partLettering } from './jig-letters.js'
import { JIG_CAUTION } from './jig-phrases.js'
import { jigWords } from './jig-words.js'

/** Wood between two parts, besides what the cutter removes. */
const BETWEEN = 6
/** Parts go into rows of this width, or of the widest part's. */
const ROW = 560

/**
 * The parts of a jig side by side: on paper at their true size, for those who saw by hand, and in the file for the
 * cutter with its width allowed for. Refused when the cutter does not get into one of them.
 */
export const jigDrawing = (jig: Jig, plan: StarPlan, order: Order): Outcome<Drawing> => {
  const words = jigWords(jig, plan, order)
  const { cutter } = order.shop
  const letters = jig.parts.map((part) =>
    partLettering(asCut(part, cutter), words.onParts[part.letter] ?? []),
  )
  const onPaper = partsShapes(jig, letters, { ...cutter, kind: 'hand' }, order.lengths)
  const toCut = partsShapes(jig, letters, cutter, order.lengths)
  if (!onPaper.ok || !toCut.ok) return refused([onPaper, toCut].flatMap(problemsOf))
  const { min, max } = boxOf(outlinesOf(toCut.value))
  const title = `${plan.order.name}: ${words.title}`
  const drawing = notedDrawing({
    kind: jig.name,
    title,
    trueSize: { across: mm(max.x - min.x), height: mm(max.y - min.y) },
    figure: onPaper.value,
    asides: [],
    notes: {
      title,
      lines: [
        ...words.steps,
        ...words.hardware.map((each) => `Needed: ${each}.`),
        JIG_CAUTION,
        SAW_CAUTION,
        PRINT_CAUTION,
      ],
    },
    pieces: outlinesOf(onPaper.value),
  })
  return done({ ...drawing, toCut: toCut.value })
}

const outlinesOf = (shapes: readonly Shape[]): Path[] =>
  shapes.flatMap((shape) => (shape.kind === 'path' && shape.layer === 'CUT-OUTSIDE' ? [shape] : []))

/** Inner cuts, then outlines, then marks, of every part in its place on the panel. */
const partsShapes = (
  jig: Jig,
  letters: readonly (readonly Path[])[],
  cutter: Cutter,
  lengths: LengthStyle,
): Outcome<Shape[]> => {
  const cut = jig.parts.map((part) => compensated(part, cutter, lengths))
  const problems = cut.flatMap(problemsOf)
  if (problems.length > 0) return refused(problems)
  const outers = cut.flatMap((lines) => (lines.ok ? [lines.value.outer] : []))
  const places = sideBySide(outers, removedWidth(cutter) + BETWEEN)
  const shapes = jig.parts.flatMap((part, index): Shape[] => {
    const lines = cut[index]
    if (!lines?.ok) return []
    const own: Shape[] = [
      ...lines.value.inner.map((outline) => path('CUT-INSIDE', outline)),
      path('CUT-OUTSIDE', lines.value.outer),
      ...part.marks.map((mark) => path('MARK', mark)),
      ...(letters[index] ?? []),
    ]
    return own.map((shape) => movedShape(shape, places[index] ?? point(0, 0)))
  })
  return done(shapes)
}

/** Lettering keeps clear of the reliefs too. */
const asCut = (part: JigPart, cutter: Cutter): JigPart => ({
  ...part,
  ...relievedPart(part, removedWidth(cutter)),
})

/** How each line is moved so that all lie in rows, none over another. */
const sideBySide = (outers: readonly Outline[], gap: number): Point[] => {
  const boxes = outers.map((outer) => boxOf([outer]))
  const widest = Math.max(ROW, ...boxes.map(({ min, max }) => max.x - min.x))
  let [x, y, rowHeight] = [0, 0, 0]
  return boxes.map(({ min, max }) => {
    const [across, height] = [max.x - min.x, max.y - min.y]
    if (x > 0 && x + across > widest) {
      x = 0
      y -= rowHeight + gap
      rowHeight = 0
    }
    const by = point(x - min.x, y - max.y)
    x += across + gap
    rowHeight = Math.max(rowHeight, height)
    return by
  })
}
