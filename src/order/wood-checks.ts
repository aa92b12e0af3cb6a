import type { Units } from '../units/read-length.js'
import { COEFFICIENT, readMeasure } from '../units/read-measure.js'
import { asGroup, asList, type Group } from './group.js'
import { showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import type { PathProblem } from './unknown-keys.js'

/** The rules that join the keys of wood and of air. */
export const woodChecks = (order: Readonly<Group>, units: Units): PathProblem[] => {
  const shop = asGroup(order.shop)
  const climate = asGroup(order.climate)
  return [
    ...movementChecks(asGroup(shop?.wood), ['shop', 'wood'], units),
    ...asList(shop?.boards).flatMap((board, index) =>
      movementChecks(asGroup(asGroup(board)?.wood), ['shop', 'boards', index, 'wood'], units),
    ),
    ...airChecks(climate?.workshop, ['climate', 'workshop']),
    ...wallChecks(climate?.wall, ['climate', 'wall']),
    ...asList(order.stars).flatMap((star, index) =>
      wallChecks(asGroup(star)?.wall, ['stars', index, 'wall']),
    ),
  ]
}

/** A species, or both of its own figures; the one along the rings is the larger in every wood of the table. */
const movementChecks = (wood: Readonly<Group> | undefined, path: Path, units: Units): PathProblem[] => {
  if (!wood) return []
  const own = (['tangential', 'radial'] as const).filter((key) => wood[key] !== undefined)
  const [only] = own
  if (only === undefined) return []
  if (wood.species !== undefined) {
    return [
      {
        path: [...path, only],
        given: `${showGiven(wood[only])} beside species`,
        advice: 'The species says how the wood moves. Take one of them out.',
      },
    ]
  }
  if (own.length === 1) {
    const missing = only === 'radial' ? 'tangential' : 'radial'
    return [
      {
        path: [...path, only],
        given: `${showGiven(wood[only])} without ${missing}`,
        advice: `A table of woods has both: add ${missing}.`,
      },
    ]
  }
  const [tangential, radial] = [wood.tangential, wood.radial].map((written) => coefficientOf(written, units))
  return tangential !== undefined && radial !== undefined && radial > tangential
    ? [
        {
          path: [...path, 'radial'],
          given: `${showGiven(wood.radial)}, more than tangential ${showGiven(wood.tangential)}`,
          advice:
            'Wood moves more along its rings (tangential) than across them (radial). Are the two swapped?',
        },
      ]
    : []
}

const wallChecks = (written: unknown, path: Path): PathProblem[] => {
  const wall = asGroup(written)
  return [...airChecks(wall?.winter, [...path, 'winter']), ...airChecks(wall?.summer, [...path, 'summer'])]
}

const ALLOWED_AIR = 'Allowed: humidity and temperature, or moisture.'

/** Temperature alone says nothing of the wood; a meter's moisture says all. */
const airChecks = (written: unknown, path: Path): PathProblem[] => {
  const air = asGroup(written)
  if (!air) return []
  const keys = (['humidity', 'temperature', 'moisture'] as const).filter((key) => air[key] !== undefined)
  if (keys.includes('moisture') && keys.length > 1) {
    return [{ path, given: keys.join(' and '), advice: `${ALLOWED_AIR} Take one of them out.` }]
  }
  if (keys.length === 0 && Object.keys(air).length === 0) {
    return [{ path, given: 'an empty group of keys', advice: ALLOWED_AIR }]
  }
  return keys.length === 1 && keys[0] === 'temperature'
    ? [
        {
          path,
          given: 'temperature without humidity',
          advice: `${ALLOWED_AIR} The wood goes by the humidity: add it.`,
          lacks: 'humidity',
        },
      ]
    : []
}

const coefficientOf = (written: unknown, units: Units): number | undefined => {
  if (typeof written !== 'string' && typeof written !== 'number') return undefined
  const reading = readMeasure(written, COEFFICIENT, units)
  return 'value' in reading ? reading.value : undefined
}
