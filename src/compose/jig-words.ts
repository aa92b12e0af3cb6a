import { point } from '../geometry/point.js'
import { angleGauge, GAUGE_WORDS, type GaugedAngle } from '../jigs/angle-gauge.js'
import type { Jig } from '../jigs/jig.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { toRadians } from '../units/convert.js'
import { showAngle, showSetting } from '../units/show.js'
import { SAME_ANGLE } from '../units/tolerance.js'
import { cradleWords } from './cradle-words.js'
import { settingText } from './cut-steps.js'
import { drillSteps, withDrillWords } from './drill-words.js'
import { frameWords } from './frame-words.js'
import { boardClamp, handWords, type JigWords, railScrews, sideWords, spacerWords } from './jig-phrases.js'
import { wedgeWords } from './wedge-words.js'
import { windowWords } from './window-words.js'

/** What a jig says, and what is drilled in it because the cutter is too wide for it. */
export const jigWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const words = ownWords(jig, plan, order)
  return {
    ...words,
    onParts: withDrillWords(words.onParts, jig, order),
    steps: [...words.steps, ...drillSteps(jig, order)],
  }
}

const ownWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  switch (jig.name) {
    case 'blank-stop':
      return blankStopWords(jig, plan, order)
    case 'arm-cradle':
      return cradleWords(jig, plan, order)
    case 'first-cut-wedge':
    case 'joint-cut-wedge':
      return wedgeWords(jig, plan, order)
    case 'glue-up-frame':
      return frameWords(plan, order)
    case 'trial-window':
      return windowWords(plan, order)
    case 'angle-gauge':
      return angleGaugeWords(plan, order)
  }
}

const blankStopWords = (jig: Jig, plan: StarPlan, order: Order): JigWords => {
  const { star, blank, firstCut } = plan
  const set = showSetting(blank.side, order.lengths)
  const served = [plan.order.name, ...(jig.serves ?? [])]
  const isSquare = Math.abs(firstCut.miter) < SAME_ANGLE
  const edge = isSquare ? 'square edge' : 'slanted edge'
  const swung = firstCut.miter < 0 ? 'towards' : 'away from'
  const leans =
    firstCut.miter < -SAME_ANGLE
      ? ' The slanted edge leans back; the board still meets it along its whole end.'
      : ''
  return {
    title: 'Blank stop, for cut 1',
    onParts: {
      plate: [
        { text: 'BLANK STOP' },
        ...served.map((name) => ({ text: name })),
        { text: `CUT 1: SAW ${settingText(firstCut)}` },
        { text: `END TO BLADE ${set}` },
        { text: `ANGLE ${showAngle(star.tipAngle)}` },
        ...(isSquare ? [] : [{ text: `HANDLE ${swung.toUpperCase()} STOP` }]),
      ],
      rail: [{ text: 'RAIL' }, { text: 'CLAMPS', near: jig.hands[0]?.at ?? point(0, 0) }],
      spacer: spacerWords(toRadians(star.tipAngle), order),
    },
    steps: [
      `Saw ${settingText(firstCut)}${isSquare ? '' : `, the handle swung ${swung} the stop`}, ${sideWords(order)}. Trim the board's end at this setting. Clamp the rail to the fence so that the board's end, with the spacer between it and the stop's ${edge}, lies ${set} along the fence from the blade's near side.`,
      'Push the board, face side up, against the spacer and clamp it on its long side, beyond the blade. Lift the spacer out, then start the saw: the blank must lie free, or the blade throws it.',
      `Take the blank out when the blade stands still. The same stop serves every blank of ${served.map((name) => `"${name}"`).join(' and ')}.${leans}`,
      ...handWords(jig, order),
    ],
    hardware: [railScrews(1, order), `2 clamps for the rail, ${boardClamp(order)}`],
  }
}

const angleGaugeWords = (plan: StarPlan, order: Order): JigWords => {
  const { angles } = angleGauge(plan, order.shop.jigStock, order.shop.cutter)
  const gaugedAngle = (wanted: GaugedAngle['word']): string =>
    angles.flatMap(({ word, angle }) => (word === wanted ? [`${word} ${showAngle(angle)}`] : [])).join()
  return {
    title: 'Angle gauge',
    onParts: {
      gauge: [
        ...angles.map(({ word, angle, words }) => ({
          text: `${word} ${showAngle(angle)}`,
          in: { middle: words, across: GAUGE_WORDS },
        })),
        { text: plan.order.name },
      ],
    },
    steps: [
      `${gaugedAngle('TIP')} and ${gaugedAngle('CENTRE')} are the notches of the upper edge, ${gaugedAngle('SIDE')} that of the lower. ${gaugedAngle('VALLEY')} is the lower right corner: it goes between the tip edges of two arms that lie together.`,
      'Lay an arm into a notch and hold both against the light: light at the mouth, the angle is too small; at the corner, too large.',
      order.shop.cutter.kind === 'router'
        ? "In each notch one edge runs into the corner; beside the other stands the bit's relief."
        : 'Test the gauge on a printed pattern before you trust it.',
    ],
    hardware: [],
  }
}
