import { mm } from '../units/convert.js'
import type { Units } from '../units/read-length.js'
import { showSize } from '../units/show.js'
import { DEFAULTS } from './defaults.js'
import { asGroup, type Group } from './group.js'
import { lengthOf } from './length-of.js'
import { showGiven } from './problem.js'
import type { PathProblem } from './unknown-keys.js'
import { usualScrew } from './wood-screw.js'

/** The rules that join the keys of jig stock: in a hole as wide as itself no screw bites. */
export const jigChecks = (shop: Readonly<Group> | undefined, units: Units): PathProblem[] => {
  const stock = asGroup(shop?.['jig-stock'])
  const pilot = lengthOf(stock?.pilot, units)
  const thickness = mm(lengthOf(stock?.thickness, units) ?? DEFAULTS.jigThickness)
  const screw = mm(lengthOf(stock?.screw, units) ?? usualScrew(thickness))
  return pilot !== undefined && pilot >= screw
    ? [
        {
          path: ['shop', 'jig-stock', 'pilot'],
          given: showGiven(stock?.pilot),
          advice: `A wood screw does not bite in a hole as wide as its own, ${showSize(screw, { units, nearest: 64 })}. Allowed: less than that; five eighths will do.`,
        },
      ]
    : []
}
