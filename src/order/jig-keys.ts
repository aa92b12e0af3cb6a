import * as v from 'valibot'
import type { Units } from '../units/read-length.js'
import { choiceField, lengthField } from './fields.js'
import { group } from './schema-group.js'

/** The keys of `shop: jig-stock`: the panel that jigs are cut from, their hardware, and what they are set out by. */
export const jigStockKeys = (units: Units) => {
  const optionalLength = (least: number, most: number, says: string, wayOut?: string) =>
    v.optional(lengthField(units, { least, most, says, ...(wayOut === undefined ? {} : { wayOut }) }))
  return group({
    thickness: optionalLength(3, 40, 'Thickness of the panel that jigs are cut from'),
    side: v.optional(
      choiceField(['right', 'left'], {
        says: 'On which side of the blade the kept piece lies, as you stand at the saw: right or left',
      }),
    ),
    screw: optionalLength(1.5, 10, 'Diameter of the holes for wood screws'),
    pilot: optionalLength(
      0.5,
      9,
      'Diameter of the pilot holes that wood screws bite in',
      'Five eighths of the screw will do in plywood.',
    ),
    bolt: optionalLength(3, 16, 'Diameter of the holes for bolts and cords'),
    'clamp-across': optionalLength(10, 80, 'Between the holes of a toggle clamp, across its arm'),
    'clamp-along': optionalLength(10, 80, 'Between the holes of a toggle clamp, along its arm'),
    'clamp-slot': optionalLength(
      0,
      30,
      'How much longer than round the holes of a toggle clamp are, along its arm',
    ),
    hands: optionalLength(
      100,
      500,
      'How far from the blade a jig keeps the hands',
      'The standard for miter saws, AS/NZS 62841.3.9:2020, asks for 100 mm or more.',
    ),
    register: optionalLength(
      40,
      1_000,
      'What lies on a fence wedge bears on so much of it at least',
      'On a shorter length a grain of dust turns the wood by more than the saw does.',
    ),
    tolerance: optionalLength(
      0.05,
      5,
      'How much too large or too small an arm may be on every edge, for the trial window',
    ),
    clearance: optionalLength(6, 40, 'Room between the star and the glue-up frame, for its wedges'),
    fit: optionalLength(0, 1, 'How loose the keys of a glue-up frame in parts are, on every edge'),
  })
}
