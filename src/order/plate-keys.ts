import * as v from 'valibot'
import type { Units } from '../units/read-length.js'
import { choiceField, lengthField, wholeField } from './fields.js'
import { BACKING_SHAPES, FASTENER_NAMES, HANGING_NAMES } from './order.js'
import { group } from './schema-group.js'

/** Keys of the plate behind a star, its cutter and its panel. */
export const plateKeys = (units: Units) => {
  const length = (least: number, most: number, says: string, wayOut?: string) =>
    v.optional(lengthField(units, { least, most, says, ...(wayOut === undefined ? {} : { wayOut }) }))

  const hanging = group({
    kind: choiceField(HANGING_NAMES, {
      says: 'How the star hangs: cord, two holes for a cord; keyhole, a slot over a screw; screws, two holes for a hanger',
    }),
    hole: length(1, 40, "Diameter of the holes, or of the keyhole's round end"),
    apart: length(5, 500, 'From hole to hole, middle to middle'),
    slot: length(1, 30, "Width of the keyhole's slot"),
    rise: length(2, 100, "From the middle of the keyhole's round end up to where the screw rests"),
    wall: length(1, 100, 'Plate left between a hole and any edge or joint, at least'),
  })

  const fixing = group({
    kind: choiceField(FASTENER_NAMES, { says: 'What holds the plate: nails or screws, two in each arm' }),
    length: length(3, 200, 'Length of the nails or screws'),
    clear: length(1, 200, 'From a nail or screw to any edge, joint or hole, at least'),
  })

  return {
    backing: {
      shape: v.optional(
        choiceField(BACKING_SHAPES, {
          says: 'Shape of the backing plate: star, polygon, disc, or auto, the smallest that covers the joints',
        }),
      ),
      inset: length(0, 1_000, "How far the backing stays inside the star's outline, chamfer taken off"),
      'corner-radius': length(0.5, 500, 'Rounds the corners of a backing of shape star'),
      covers: length(1, 20_000, 'How much of each joint the backing covers, from the centre, at least'),
      hanging: v.optional(hanging),
      fixing: v.optional(fixing),
    },
    panel: {
      edge: length(0, 500, 'Margin kept free all round'),
      gap: length(0.1, 100, 'Between two plates on the panel, at least; more than the cutter removes'),
    },
    cutter: {
      tabs: v.optional(
        wholeField({ least: 1, most: 24, says: 'Holding tabs that a router leaves on each plate' }),
      ),
      tab: length(1, 50, 'Length of a holding tab'),
    },
  }
}
