import { HAND_DISTANCE_TEXT } from '../plan/warnings.js'

/** The usual cautions, on every pattern and plan. Hand distance: AS/NZS 62841.3.9:2020, safety warnings. */
export const SAW_CAUTION = `Hands stay at least ${HAND_DISTANCE_TEXT} from the blade. Clamp the piece; never leave one loose between blade and stop. The saw's manual and local rules come first.`

/** Of boards that have been something else. Common practice, no published source. */
export const METAL_CAUTION =
  'Cuts run into stretches that are not sound, and trims begin in them. Before you saw, find every nail and screw in such a board and pull it: metal in the cut throws teeth and splinters.'

/** Of what a laser or a router cuts free. Common practice, no published source. */
export const LOOSE_CAUTION =
  'Clamp or tape the panel so that a part that comes free cannot lift into the beam or the bit.'

export const PRINT_CAUTION = 'Print at 100 %, not "fit to page", and measure the scale check before you cut.'

export const RULES_CAUTION = "The saw's manual and local rules come first."

/**
 * The fuller list, for the card that hangs by the saw: what bears on the cuts.
 *
 * Hands, clamping, crossing hands: AS/NZS 62841.3.9:2020, safety warnings. Wood dust: NIOSH recommended exposure limit,
 * NIOSH Pocket Guide, 0667. Trapped offcuts: common practice, no published source.
 */
export const SAW_CAUTIONS: readonly string[] = [
  RULES_CAUTION,
  `Hands stay at least ${HAND_DISTANCE_TEXT} from both sides of the blade and do not cross its line (AS/NZS 62841.3.9:2020); short pieces are clamped or held in a jig.`,
  'Never trap an offcut: the arm is clamped, the offcut free, and the blade comes up only when it stands still.',
  'Eye, ear and dust protection; NIOSH REL for wood dust: 1 mg/m³, averaged over the working day.',
]

/** What the work after the saw has besides. Oily rags: common practice, no published source. */
export const BENCH_CAUTION =
  "Finishes burn, and oily rags catch fire by themselves: no flame near by; rags flat outdoors, or in water in a closed metal can. Follow the product's label."
