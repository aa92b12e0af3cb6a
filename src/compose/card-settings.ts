import { TAIL, textWidth, wrapText } from '../drawing/lettering.js'
import { label } from '../drawing/shapes.js'
import { blankIsArm } from '../geometry/kite.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import { sentence } from '../order/problem.js'
import type { PlannedCut, StarPlan } from '../plan/plan.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import { settingRest, showAngle, showLength, showSetting } from '../units/show.js'
import { type Block, linesHeight, movedShapes, stacked, textBlock } from './card-blocks.js'
import { biasText, leftOpenText } from './cut-steps.js'

/** Lettering of what must be read at the saw but stands close to a figure. */
const CAPTION = 3.5
/** Between caption and figure, between figures, and below a row, whose height counts tails. */
const UNDER_CAPTION = 1.8
const BETWEEN = 6
const BELOW = 0.8
/** A note beside the figures is not set narrower than this. */
const NARROWEST_NOTE = 42

/** A figure to set, and what it is. */
interface Figure {
  readonly caption: string
  readonly text: string
  /** What an inch fraction leaves out, in half as high figures after it. */
  readonly rest?: string
}

/** The settings of every cut, in figures of one height. */
export const cardSettings = (plan: StarPlan, order: Order, figureHeight: number, width: number): Block => {
  const { star, firstCut, jointCut, blank, stop } = plan
  const rhombus = blankIsArm(star)
  const first = [...sawFigures('Cut 1: saw', firstCut), stopFigure('blank stop', blank.side, firstCut, order)]
  const joint = [...sawFigures('Cuts 2 and 3: saw', jointCut), stopFigure('stop', stop, jointCut, order)]
  const exact = rhombus
    ? ` The board is exactly ${showSetting(star.armStrip, order.lengths)} wide: no cuts 2 and 3.`
    : ''
  return stacked(
    [
      cutRow(first, `${markNote(plan, firstCut, order)}${exact}`, figureHeight, width),
      ...(rhombus ? [] : [cutRow(joint, markNote(plan, jointCut, order), figureHeight, width)]),
    ],
    2.4,
  )
}

const sawFigures = (caption: string, { reading, wedge }: PlannedCut): Figure[] => [
  { caption, text: showAngle(reading) },
  ...(wedge ? [{ caption: '+ wedge', text: showAngle(wedge.angle) }] : []),
]

const stopFigure = (name: string, length: Mm, { wedge }: PlannedCut, { lengths }: Order): Figure => {
  const caption = wedge ? `${name}, along the wedge` : name
  const rest = settingRest(length, lengths)
  return {
    caption,
    text: showLength(length, lengths),
    ...(rest === undefined ? {} : { rest: `${rest} in` }),
  }
}

const markNote = (plan: StarPlan, cut: PlannedCut, order: Order): string => {
  const left = leftOpenText(cut, plan, order)
  const bias = biasText(cut, order)
  const told = bias === undefined ? '' : ` ${sentence(bias)}`
  return `Nearest mark ${showAngle(cut.mark)}: leaves ${left === 'nothing' ? 'nothing open' : `open ${left}`}.${told}`
}

/** Figures from left to right, on a further row where one finds no room; the note beside the last or below. */
const cutRow = (figures: readonly Figure[], note: string, height: number, width: number): Block => {
  const rowHeight = CAPTION + UNDER_CAPTION + height * (1 + TAIL)
  const baseline = CAPTION + UNDER_CAPTION + height
  const restAt = ({ text }: Figure): number => textWidth(text, mm(height)) + height / 4
  const widthOf = (figure: Figure): number =>
    Math.max(
      textWidth(figure.caption, mm(CAPTION)),
      figure.rest === undefined
        ? textWidth(figure.text, mm(height))
        : restAt(figure) + textWidth(figure.rest, mm(height / 2)),
    )
  let [x, row] = [0, 0]
  const shapes = figures.flatMap((figure) => {
    if (x > 0 && x + widthOf(figure) > width) [x, row] = [0, row + 1]
    const top = -row * (rowHeight + BELOW)
    const at = x
    x += widthOf(figure) + BETWEEN
    return [
      label(figure.caption, point(at, top - CAPTION), { height: CAPTION, layer: 'PATTERN' }),
      label(figure.text, point(at, top - baseline), { height, layer: 'PATTERN' }),
      ...(figure.rest === undefined
        ? []
        : [
            label(figure.rest, point(at + restAt(figure), top - baseline), {
              height: height / 2,
              layer: 'PATTERN',
            }),
          ]),
    ]
  })
  const figuresHeight = row * (rowHeight + BELOW) + rowHeight
  const beside = wrapText(note, mm(CAPTION), mm(Math.max(1, width - x)))
  if (width - x >= NARROWEST_NOTE && linesHeight(beside.length, CAPTION) <= rowHeight + 1) {
    const words = textBlock([note], CAPTION, width - x)
    const top = point(x, -row * (rowHeight + BELOW))
    return {
      height: Math.max(figuresHeight, -top.y + words.height),
      shapes: [...shapes, ...movedShapes(words.shapes, top)],
    }
  }
  return stacked([{ height: figuresHeight, shapes }, textBlock([note], CAPTION, width)], BELOW)
}
