import { difference, FillRule, type Path64 } from 'clipper2-ts'
import { point } from '../geometry/point.js'
import { isWithin, PER_MM, type Polygon, toPath, toPolygon } from './no-fit.js'
import { corners, isEmpty, type Panel, type Placed, type Room, roomFor, turned } from './panel.js'
import type { PlateSet } from './plate-set.js'

/** The room without what the rounding of its corners would add. */
const onGrid = ({ left, bottom, right, top }: Room): Room => ({
  left: Math.ceil(left * PER_MM) / PER_MM,
  bottom: Math.ceil(bottom * PER_MM) / PER_MM,
  right: Math.floor(right * PER_MM) / PER_MM,
  top: Math.floor(top * PER_MM) / PER_MM,
})

/** Ways a plate is turned when it is put into what is left; fewer where it looks alike after less than a turn. */
const TURNS = 24

/**
 * Puts up to `most` more plates of one kind into the room that is left, each as far to the left as it goes, then as
 * low. Plates stand clear of all that are placed.
 */
export const fill = (
  plates: PlateSet,
  plate: number,
  most: number,
  panel: Panel,
  placed: readonly Placed[],
): Placed[] => {
  const added: Placed[] = []
  const coming = plates.polygons[plate]
  if (!coming) throw new RangeError(`there is no plate ${plate}`)
  const symmetry = plates.symmetries[plate] ?? 1
  const turns = Math.ceil(TURNS / symmetry)
  const step = (2 * Math.PI) / (turns * symmetry)
  // Turned against what lies there by the same steps everywhere, so that few no-fit polygons serve all panels.
  const begin = placed[0]?.turn ?? 0
  const ways = Array.from({ length: turns }, (_, index) => begin + index * step).map((by) => {
    const polygon = turned(coming, by)
    const forbidden = new Map<string, Polygon>()
    const around = (other: Placed): Polygon => {
      const key = `${other.plate} ${other.turn}`
      const known = forbidden.get(key)
      if (known) return known
      const made = plates.between(other, { plate, turn: by })
      forbidden.set(key, made)
      return made
    }
    const room = onGrid(roomFor(polygon, panel))
    let left: Path64[] = isEmpty(room) ? [] : [toPath(corners(room))]
    const take = (others: readonly Placed[]): void => {
      if (left.length === 0 || others.length === 0) return
      left = difference(
        left,
        others.map((other) => toPath(around(other).map(({ x, y }) => point(x + other.at.x, y + other.at.y)))),
        FillRule.NonZero,
      )
    }
    const isFree = (at: { x: number; y: number }, others: readonly Placed[]): boolean =>
      at.x >= room.left &&
      at.x <= room.right &&
      at.y >= room.bottom &&
      at.y <= room.top &&
      others.every((other) => !isWithin(point(at.x - other.at.x, at.y - other.at.y), around(other)))
    take(placed)
    return { by, take, isFree, places: () => left.flatMap(toPolygon) }
  })
  while (added.length < most) {
    const all = [...placed, ...added]
    const next = ways
      .flatMap(({ by, places, isFree }) =>
        places()
          .filter((at) => isFree(at, all))
          .map((at): Placed => ({ plate, turn: by, at })),
      )
      .sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y || a.turn - b.turn)[0]
    if (!next) break
    added.push(next)
    if (added.length < most) for (const way of ways) way.take([next])
  }
  return added
}
