import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showAtLeast } from '../units/show.js'
import { cutRoom } from './cut-room.js'
import { DEFAULTS } from './defaults.js'
import { asGroup, asList, type Group } from './group.js'
import { lengthOf } from './length-of.js'
import { showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import type { PathProblem } from './unknown-keys.js'

/** The rules that join the keys of backings, of panels and of what cuts them. */
export const plateChecks = (order: Readonly<Group>, units: Units): PathProblem[] => {
  const shop = asGroup(order.shop)
  const cutter = asGroup(shop?.cutter)
  return [
    ...tabChecks(cutter),
    ...asList(shop?.panels).flatMap((panel, index) => {
      const path = ['shop', 'panels', index]
      return [...edgeChecks(asGroup(panel), path, units), ...roomChecks(asGroup(panel), cutter, path, units)]
    }),
    ...asList(order.stars).flatMap((star, index) => {
      const backing = asGroup(asGroup(star)?.backing)
      const path = ['stars', index, 'backing']
      return [
        ...radiusChecks(backing, path),
        ...hangingChecks(asGroup(backing?.hanging), [...path, 'hanging'], units),
      ]
    }),
  ]
}

const tabChecks = (cutter: Readonly<Group> | undefined): PathProblem[] => [
  ...(cutter?.tabs !== undefined && cutter.kind !== 'router'
    ? [
        {
          path: ['shop', 'cutter', 'tabs'],
          given: `${showGiven(cutter.tabs)} without kind: router`,
          advice: 'Tabs hold a plate against a bit. Allowed: with kind: router. Take them out.',
        },
      ]
    : []),
  ...(cutter?.tab !== undefined && cutter.tabs === undefined
    ? [
        {
          path: ['shop', 'cutter', 'tab'],
          given: `${showGiven(cutter.tab)} without tabs`,
          advice: 'Say how many to leave on each plate: tabs: 3. Or take it out.',
        },
      ]
    : []),
]

const edgeChecks = (panel: Readonly<Group> | undefined, path: Path, units: Units): PathProblem[] => {
  const edge = lengthOf(panel?.edge, units)
  const sides = [lengthOf(panel?.length, units), lengthOf(panel?.width, units)].filter(
    (side) => side !== undefined,
  )
  return edge !== undefined && sides.some((side) => 2 * edge >= side)
    ? [
        {
          path: [...path, 'edge'],
          given: showGiven(panel?.edge),
          advice: 'Allowed: less than half of the panel, or nothing is left of it.',
        },
      ]
    : []
}

/** In a narrower gap the cutter would run along the neighbour's edge, or through the tabs that hold it. */
const roomChecks = (
  panel: Readonly<Group> | undefined,
  cutter: Readonly<Group> | undefined,
  path: Path,
  units: Units,
): PathProblem[] => {
  const removed = removedBy(cutter, units)
  if (removed === undefined) return []
  const tabbed = cutter?.tabs !== undefined
  const room = cutRoom(removed, tabbed)
  const why = tabbed
    ? ', for the bit runs along every plate and wood must stay between for the tabs to hold to. Or take tabs out.'
    : `, for the ${cutter?.kind === 'router' ? 'bit' : 'beam'} runs there.`
  return (['gap', 'edge'] as const).flatMap((key) => {
    const given = lengthOf(panel?.[key], units)
    const least = room[key]
    return given !== undefined && given < least
      ? [
          {
            path: [...path, key],
            given: showGiven(panel?.[key]),
            advice: `Allowed${tabbed ? ' with tabs' : ''}: from ${showAtLeast(least, { units, nearest: 64 })}${why}`,
          },
        ]
      : []
  })
}

const removedBy = (cutter: Readonly<Group> | undefined, units: Units): number | undefined => {
  if (cutter?.kind === 'router') return cutter.bit === undefined ? DEFAULTS.bit : lengthOf(cutter.bit, units)
  if (cutter?.kind === 'laser')
    return cutter.kerf === undefined ? DEFAULTS.laserKerf : lengthOf(cutter.kerf, units)
  return undefined
}

const radiusChecks = (backing: Readonly<Group> | undefined, path: Path): PathProblem[] => {
  const radius = backing?.['corner-radius']
  return radius !== undefined && backing?.shape !== undefined && backing.shape !== 'star'
    ? [
        {
          path: [...path, 'corner-radius'],
          given: `${showGiven(radius)} beside shape ${showGiven(backing.shape)}`,
          advice: 'It rounds a backing of shape star. Take one of them out.',
        },
      ]
    : []
}

const hangingChecks = (hanging: Readonly<Group> | undefined, path: Path, units: Units): PathProblem[] => {
  if (!hanging) return []
  const keyhole = hanging.kind === 'keyhole'
  const strange = (keyhole ? ['apart'] : ['slot', 'rise']).filter((key) => hanging[key] !== undefined)
  const hole = hanging.hole === undefined ? DEFAULTS.keyholeHead : lengthOf(hanging.hole, units)
  const slot = hanging.slot === undefined ? DEFAULTS.keyholeSlot : lengthOf(hanging.slot, units)
  const rise = hanging.rise === undefined ? DEFAULTS.keyholeRise : lengthOf(hanging.rise, units)
  return [
    ...strange.map((key) => ({
      path: [...path, key],
      given: `${showGiven(hanging[key])} for ${showGiven(hanging.kind)}`,
      advice: `It is for ${keyhole ? 'cord and screws' : 'a keyhole'}. Take it out.`,
    })),
    ...(keyhole && hole !== undefined && slot !== undefined && slot >= hole
      ? [
          {
            path: [...path, hanging.slot === undefined ? 'hole' : 'slot'],
            given: showGiven(hanging.slot ?? hanging.hole),
            advice: "Allowed: a slot narrower than the hole, or it does not hold the screw's head.",
          },
        ]
      : []),
    ...(keyhole && hole !== undefined && slot !== undefined && rise !== undefined && slot < hole
      ? riseChecks(hanging, path, mm((hole + slot) / 2), rise, units)
      : []),
  ]
}

/** Where the screw rests, its shank must have left the round end. */
const riseChecks = (
  hanging: Readonly<Group>,
  path: Path,
  least: Mm,
  rise: number,
  units: Units,
): PathProblem[] =>
  rise >= least
    ? []
    : [
        {
          path: [...path, hanging.rise === undefined ? 'hole' : 'rise'],
          given: `${showGiven(hanging.rise ?? hanging.hole)}${hanging.rise === undefined ? ' without rise' : ''}`,
          advice: `The screw would stay in the round end, and the star come off it. Allowed: a rise from ${showAtLeast(least, { units, nearest: 64 })}.`,
        },
      ]
