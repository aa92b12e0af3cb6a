import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { showAngle, showLength } from '../units/show.js'
import { type Block, fittedText, headingBlock, stacked, textBlock } from './card-blocks.js'
import { BY_HAND_WAY, TOO_SMALL } from './cut-steps.js'

const WARNING = 7
const WORDS = 5
const BETWEEN = 4

/** In place of the saw's settings and steps, for an arm that nothing can hold beside a spinning blade. */
export const handSawBlock = ({ star, kite }: StarPlan, { lengths }: Order, width: number): Block =>
  stacked(
    [
      headingBlock('Saw by hand'),
      fittedText(
        TOO_SMALL,
        [
          { height: WARNING, lines: 1 },
          { height: WORDS, lines: 1 },
        ],
        width,
      ),
      textBlock(
        [
          `${BY_HAND_WAY} Board ${showLength(star.armStrip, lengths)} wide.`,
          `Tip ${showAngle(star.tipAngle)}, centre ${showAngle(star.centreAngle)}, sides ${showAngle(star.sideAngle)}; tip edges ${showLength(star.tipEdge, lengths)}, ${showLength(kite.width, lengths)} across the valleys.`,
        ],
        WORDS,
        width,
      ),
    ],
    BETWEEN,
  )
