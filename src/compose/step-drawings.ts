import { shapeExtents } from '../drawing/bounds.js'
import type { Shape } from '../drawing/model.js'
import { blankIsArm } from '../geometry/kite.js'
import { point } from '../geometry/point.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { HAND_DISTANCE_TEXT } from '../plan/warnings.js'
import * as maths from '../units/maths.js'
import { trimmed } from '../units/show.js'
import {
  type Block,
  fittedText,
  lineBlock,
  linesHeight,
  movedShapes,
  stacked,
  textBlock,
} from './card-blocks.js'
import { settingText } from './cut-steps.js'
import { type SawScene, sawScenes } from './saw-scene.js'
import { sceneLettering } from './scene-lettering.js'
import { type Placing, sceneExtents, sceneShapes } from './scene-shapes.js'

/** Between the drawings, and between a drawing and its words. */
const BESIDE = 4
const BELOW = 2
/** A setting with a wedge is longer. */
const HEADINGS = [
  { height: 5, lines: 1 },
  { height: 3.5, lines: 2 },
]
const CAPTION = 3.5
const LEGEND = 2.5
/** For the stop's distance, or a word, above the fence's hatching. */
const DISTANCE = 7.5

/** The drawings are reduced by one of these, times a power of ten: figures a maker can say. */
const REDUCTIONS = [1, 1.2, 1.4, 1.6, 1.8, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 4.5, 5, 5.5, 6, 7, 8, 9, 10]

/** A true drawing for every cut, side by side, all to one scale, each over a few words; not higher than `height`. */
export const stepDrawings = (plan: StarPlan, order: Order, width: number, height: number): Block => {
  const words = lettered(plan, order, width)
  const { scenes, across, headings, captions } = words
  const headingHeight = highest(headings)
  const room = height - wordsHeight(words)
  const reduction = reductionFor(scenes, across, room)
  const drawn = scenes.map((scene) => drawnScene(scene, 1 / reduction, across, room, order))
  const lowest = Math.min(...drawn.map((shapes) => shapeExtents(shapes).min.y))
  const top = Math.max(...drawn.map((shapes) => shapeExtents(shapes).max.y))
  const cells = scenes.map((_, index): Block => {
    const cell = stacked(
      [
        { height: headingHeight, shapes: headings[index]?.shapes ?? [] },
        { height: top - lowest, shapes: movedShapes(drawn[index] ?? [], point(0, -top)) },
        captions[index] ?? lineBlock([], CAPTION),
      ],
      BELOW,
    )
    return { ...cell, shapes: movedShapes(cell.shapes, point(index * (across + BESIDE), 0)) }
  })
  const row: Block = {
    height: Math.max(...cells.map((cell) => cell.height)),
    shapes: cells.flatMap((cell) => cell.shapes),
  }
  return stacked([row, textBlock([legend(reduction, drawn, plan)], LEGEND, width)], BELOW)
}

/** Height that the words over and under the drawings take, with the white between. */
export const stepWords = (plan: StarPlan, order: Order, width: number): number =>
  wordsHeight(lettered(plan, order, width))

const wordsHeight = ({ headings, captions }: ReturnType<typeof lettered>): number =>
  highest(headings) + highest(captions) + linesHeight(1, LEGEND) + 3 * BELOW + DISTANCE

const highest = (blocks: readonly Block[]): number => Math.max(...blocks.map(({ height }) => height))

const lettered = (plan: StarPlan, order: Order, width: number) => {
  const scenes = sawScenes(plan, order.shop.saw.kerf)
  const across = (width - BESIDE * (scenes.length - 1)) / scenes.length
  return {
    scenes,
    across,
    headings: scenes.map(({ name, cut }) => fittedText(`${name}: ${settingText(cut)}`, HEADINGS, across)),
    captions: scenes.map((scene) => textBlock([captionText(scene, plan)], CAPTION, across)),
  }
}

/** One scene in the middle of its cell; the fence's face lies along y = 0. */
const drawnScene = (
  scene: SawScene,
  reduced: number,
  across: number,
  room: number,
  order: Order,
): Shape[] => {
  const { min, max } = sceneExtents(scene)
  const aside = across / 2 - (reduced * (min.x + max.x)) / 2
  const placing: Placing = {
    scale: reduced,
    at: ({ x, y }) => point(x * reduced + aside, y * reduced),
  }
  const lines = sceneShapes(scene, placing)
  const above = max.y * reduced
  const within = { min: point(0, above - room), max: point(across, above + DISTANCE) }
  return [...lines, ...sceneLettering(scene, placing, order, lines, within)]
}

/** The least reduction at which every scene finds room. */
const reductionFor = (scenes: readonly SawScene[], across: number, room: number): number => {
  const needed = Math.max(
    ...scenes.map((scene) => {
      const { min, max } = sceneExtents(scene)
      return Math.max((max.x - min.x) / across, (max.y - min.y) / room)
    }),
  )
  const power = maths.pow(10, Math.floor(maths.log10(needed)))
  const factor = REDUCTIONS.find((each) => each * power >= needed) ?? 10
  return factor * power
}

/** What the drawing cannot show. With a wedge the stop's distance, along its edge, stands in the settings only. */
const captionText = (scene: SawScene, { firstCut }: StarPlan): string => {
  switch (scene.name) {
    case 'Cut 1':
      return 'Trim the end. Marked face side up. Lift the stop, then cut.'
    case 'Cut 2':
      return `${firstCut.wedge && !scene.wedge ? 'Wedge off. ' : ''}Face side up. Arm clamped, offcut free.`
    case 'Cut 3':
      return `Face side down, the edge of cut 1 on the ${scene.wedge ? 'wedge' : 'fence'}.`
  }
}

const legend = (reduction: number, drawn: readonly (readonly Shape[])[], plan: StarPlan): string => {
  const ratio = reduction >= 1 ? `1 : ${trimmed(reduction, 3)}` : `${trimmed(1 / reduction, 3)} : 1`
  const limits = drawn.flat().some((shape) => shape.kind === 'path' && shape.pen === 'double-chain')
  return [
    `Seen from above, ${ratio}.`,
    ...(blankIsArm(plan.star) ? [] : ['Hatched: waste. Dashed: cuts to come.']),
    ...(limits ? [`Dash, two dots: hands outside, ${HAND_DISTANCE_TEXT}.`] : []),
  ].join(' ')
}
