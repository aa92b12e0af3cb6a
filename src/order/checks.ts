import { centreAngle, FEWEST_POINTS, MOST_POINTS, tipAngleLimit } from '../geometry/star.js'
import { readAngle } from '../units/read-angle.js'
import type { Units } from '../units/read-length.js'
import { showAngle } from '../units/show.js'
import { SHAPE_KEYS, SIZE_KEYS } from './flags.js'
import { asGroup, asList, type Group } from './group.js'
import { jigChecks } from './jig-checks.js'
import { lengthOf } from './length-of.js'
import { plateChecks } from './plate-checks.js'
import { showGiven } from './problem.js'
import type { Path } from './read-yaml.js'
import { REGULAR_ADVICE } from './schema.js'
import { fileNameOf, starName } from './star-name.js'
import type { PathProblem } from './unknown-keys.js'
import { woodChecks } from './wood-checks.js'

/**
 * The rules that join several keys. They read the order as it was written, not as the schema understood it, so that
 * they speak up in the same breath as the schema does.
 */
export const crossChecks = (root: unknown, units: Units): PathProblem[] => {
  const order = asGroup(root)
  if (!order) return []
  const shop = asGroup(order.shop)
  const stars = asList(order.stars)
  return [
    ...paperChecks(asGroup(shop?.paper)),
    ...detentChecks(asGroup(shop?.saw)),
    ...asList(shop?.boards).flatMap((board, index) =>
      boardChecks(asGroup(board), ['shop', 'boards', index], units),
    ),
    ...jigChecks(shop, units),
    ...plateChecks(order, units),
    ...stars.flatMap((star, index) => starChecks(asGroup(star), ['stars', index], units)),
    ...nameChecks(stars),
    ...woodChecks(order, units),
  ]
}

const paperChecks = (paper: Group | undefined): PathProblem[] =>
  paper === undefined
    ? []
    : [
        ...(paper.size !== undefined && paper.roll !== undefined
          ? [
              {
                path: ['shop', 'paper', 'roll'],
                given: 'size and roll',
                advice: 'Allowed: one of them. Take out the other.',
              },
            ]
          : []),
        ...(paper.longest !== undefined && paper.roll === undefined
          ? [
              {
                path: ['shop', 'paper', 'longest'],
                given: `${showGiven(paper.longest)} without roll`,
                advice: 'It is for a roll: add roll, the width of yours, or take it out.',
              },
            ]
          : []),
      ]

/** In [15, 22,5, 30] the comma makes two angles of one: marks that do not rise give it away. */
const detentChecks = (saw: Group | undefined): PathProblem[] => {
  const detents = asList(saw?.detents)
  const angles = detents.map(angleOf)
  const falls = angles.findIndex((angle, index) => {
    const before = angles[index - 1]
    return angle !== undefined && before !== undefined && angle <= before
  })
  return falls < 0
    ? []
    : [
        {
          path: ['shop', 'saw', 'detents', falls],
          given: `${showGiven(detents[falls])} after ${showGiven(detents[falls - 1])}`,
          advice:
            'Allowed: angles from small to large, each once. In a list write a decimal point, not a comma.',
        },
      ]
}

const boardChecks = (board: Group | undefined, path: Path, units: Units): PathProblem[] => {
  const length = lengthOf(board?.length, units)
  return asList(board?.defects).flatMap((entry, index) => {
    const defect = asGroup(entry)
    const from = lengthOf(defect?.from, units)
    const to = lengthOf(defect?.to, units)
    if (from === undefined || to === undefined) return []
    const at = {
      path: [...path, 'defects', index],
      given: `from ${showGiven(defect?.from)} to ${showGiven(defect?.to)}`,
    }
    if (from >= to) return [{ ...at, advice: 'Allowed: from less than to, both measured from the same end.' }]
    if (length !== undefined && to > length) {
      return [
        { ...at, advice: `Allowed: up to the board's length, ${showGiven(board?.length)}. Measure again.` },
      ]
    }
    return []
  })
}

const starChecks = (star: Group | undefined, path: Path, units: Units): PathProblem[] => {
  if (!star) return []
  return [...shapeChecks(star, path), ...sizeChecks(star, path), ...chamferChecks(star, path, units)]
}

const shapeChecks = (star: Group, path: Path): PathProblem[] => {
  const shapes = SHAPE_KEYS.filter((key) => star[key] !== undefined && star[key] !== false)
  if (shapes.length !== 1) {
    return [
      {
        path,
        given: shapes.length === 0 ? 'no shape' : shapes.join(' and '),
        advice:
          'Allowed: one of points with tip-angle, regular (such as 5/2), or points with slenderest: true.',
        ...(shapes.length === 0 ? { lacks: 'tip-angle' } : {}),
      },
    ]
  }
  if (star.regular !== undefined) {
    return [
      ...(star.points === undefined
        ? []
        : [
            {
              path: [...path, 'points'],
              given: `${showGiven(star.points)} beside regular`,
              advice: 'regular says the points already. Take points out.',
            },
          ]),
      ...(regularPoints(star.regular) === undefined && isWrittenRegular(star.regular)
        ? [{ path: [...path, 'regular'], given: showGiven(star.regular), advice: REGULAR_ADVICE }]
        : []),
    ]
  }
  if (star.points === undefined) {
    return [
      {
        path,
        given: `${shapes[0]} without points`,
        advice: `Say how many points the star has: points, from ${FEWEST_POINTS} to ${MOST_POINTS}.`,
        lacks: 'points',
      },
    ]
  }
  return tipAngleChecks(star, path)
}

const isWrittenRegular = (value: unknown): boolean =>
  typeof value === 'string' && /^\d{1,2} ?\/ ?\d{1,2}$/.test(value)

/** n and k of a regular star n/k with 5 to 24 points; undefined when there is no such star. */
export const regularPoints = (written: unknown): { points: number; step: number } | undefined => {
  if (typeof written !== 'string') return undefined
  const [points = Number.NaN, step = Number.NaN] = written.split('/').map(Number)
  return points >= 5 && points <= MOST_POINTS && step >= 2 && 2 * step < points ? { points, step } : undefined
}

const tipAngleChecks = (star: Group, path: Path): PathProblem[] => {
  const points = Number(star.points)
  const written = star['tip-angle']
  if (!(points >= FEWEST_POINTS && points <= MOST_POINTS)) return []
  if (typeof written !== 'string' && typeof written !== 'number') return []
  const reading = readAngle(written)
  if ('refused' in reading || reading.angle < tipAngleLimit(points) || reading.angle > 179) return []
  return [
    {
      path: [...path, 'tip-angle'],
      given: showGiven(written),
      advice: `A ${points}-point star needs less than ${showAngle(tipAngleLimit(points))}: tip angle and centre angle (${showAngle(centreAngle(points))}) together stay below 180°, or there is no valley. Give a smaller tip angle${points < MOST_POINTS ? ' or more points' : ''}.`,
    },
  ]
}

const sizeChecks = (star: Group, path: Path): PathProblem[] => {
  const sizes = SIZE_KEYS.filter((key) => star[key] !== undefined)
  if (sizes.length === 1) return []
  return [
    {
      path,
      given: sizes.length === 0 ? 'no size' : sizes.join(' and '),
      advice: `Allowed: exactly one of ${SIZE_KEYS.join(', ')}.${sizes.length === 0 ? '' : ' The others follow from it.'}`,
      ...(sizes.length === 0 ? { lacks: SIZE_KEYS[0] } : {}),
    },
  ]
}

const chamferChecks = (star: Group, path: Path, units: Units): PathProblem[] => {
  const chamfer = lengthOf(star.chamfer, units)
  const thickness = lengthOf(star.thickness, units)
  return chamfer !== undefined && thickness !== undefined && chamfer >= thickness
    ? [
        {
          path: [...path, 'chamfer'],
          given: showGiven(star.chamfer),
          advice: `Allowed: less than the arm's thickness, ${showGiven(star.thickness)}.`,
        },
      ]
    : []
}

/** Each star's files are named after it, so two stars must not come to the same file name. */
const nameChecks = (stars: readonly unknown[]): PathProblem[] => {
  const taken = new Map<string, string>()
  return stars.flatMap((star, index) => {
    const name = starName(star, index, stars.length)
    const fileName = fileNameOf(name, index)
    const path = ['stars', index, 'name']
    const other = taken.get(fileName)
    if (fileName === '') {
      const shown = asGroup(star)?.name
      return typeof shown === 'string' && shown.trim() !== ''
        ? [
            {
              path,
              given: showGiven(name),
              advice: 'Allowed: at least one letter or digit, to name the files by.',
            },
          ]
        : []
    }
    if (other !== undefined) {
      const same =
        other === name ? 'Two stars have this name' : `${showGiven(other)} makes the same file names`
      return [{ path, given: showGiven(name), advice: `${same}. Give each star a name of its own.` }]
    }
    taken.set(fileName, name)
    return []
  })
}

const angleOf = (written: unknown): number | undefined => {
  if (typeof written !== 'string' && typeof written !== 'number') return undefined
  const reading = readAngle(written)
  return 'refused' in reading ? undefined : reading.angle
}
