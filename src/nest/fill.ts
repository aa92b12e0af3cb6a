import { difference, FillRule, type Path64 } from 'clipper2-ts'
import { type Point, point } from '../geometry/point.js'
import { isWithin, PER_MM, toPath, toPolygon } from './no-fit.js'
import { corners, isEmpty, type Panel, type Placed, type Room, roomFor, turned } from './panel.js'
import type { PlateSet } from './plate-set.js'
import type { Polygon } from './polygon.js'
import { type Steps, toldAs } from './run-steps.js'

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
 * low. Plates stand clear of all that are placed. Tells after every part of the work what it has added so far: break
 * off where that will do.
 */
export function* fill(
  plates: PlateSet,
  plate: number,
  most: number,
  panel: Panel,
  placed: readonly Placed[],
): Generator<readonly Placed[], void, undefined> {
  const added: Placed[] = []
  const coming = plates.polygons[plate]
  if (!coming) throw new RangeError(`there is no plate ${plate}`)
  const symmetry = plates.symmetries[plate] ?? 1
  const turns = Math.ceil(TURNS / symmetry)
  const step = (2 * Math.PI) / (turns * symmetry)
  // Turned against what lies there by the same steps everywhere, so that few no-fit polygons serve all panels.
  const begin = placed[0]?.turn ?? 0
  const ways = Array.from({ length: turns }, (_, index) =>
    wayOf(plates, plate, begin + index * step, panel),
  ).filter(({ places }) => places().length > 0)
  const unlike = [...new Map(placed.map((each) => [kindOf(each), each])).values()]
  for (const way of ways) {
    for (const each of unlike) yield* toldAs(way.meet(each), () => added)
    way.take(placed)
    yield added
  }
  while (added.length < most) {
    const all = [...placed, ...added]
    const free: Placed[] = []
    for (const { by, places, isFree } of ways) {
      const found = places().filter((at) => isFree(at, all))
      free.push(...found.map((at): Placed => ({ plate, turn: by, at })))
      yield added
    }
    const next = free.sort((a, b) => a.at.x - b.at.x || a.at.y - b.at.y || a.turn - b.turn)[0]
    if (!next) break
    added.push(next)
    yield added
    if (added.length === most) break
    for (const way of ways) {
      yield* toldAs(way.meet(next), () => added)
      way.take([next])
      yield added
    }
  }
}

/** Plates of one kind and turn forbid a coming one the same places around them. */
const kindOf = ({ plate, turn }: Placed): string => `${plate} ${turn}`

/** The room that a plate turned by so much has, and what others take from it. */
const wayOf = (plates: PlateSet, plate: number, by: number, panel: Panel) => {
  const forbidden = new Map<string, Polygon>()
  /** Finds what another forbids; it must be met before it takes anything. */
  const meet = function* (other: Placed): Steps<void, void> {
    const key = kindOf(other)
    if (!forbidden.has(key)) forbidden.set(key, yield* plates.between(other, { plate, turn: by }))
  }
  const around = (other: Placed): Polygon => {
    const known = forbidden.get(kindOf(other))
    if (!known) throw new RangeError('the plate was not met')
    return known
  }
  const room = onGrid(roomFor(turned(plates.polygons[plate] ?? [], by), panel))
  let left: Path64[] = isEmpty(room) ? [] : [toPath(corners(room))]
  const take = (others: readonly Placed[]): void => {
    if (left.length === 0 || others.length === 0) return
    left = difference(
      left,
      others.map((other) => toPath(around(other).map(({ x, y }) => point(x + other.at.x, y + other.at.y)))),
      FillRule.NonZero,
    )
  }
  const isFree = (at: Point, others: readonly Placed[]): boolean =>
    at.x >= room.left &&
    at.x <= room.right &&
    at.y >= room.bottom &&
    at.y <= room.top &&
    others.every((other) => !isWithin(point(at.x - other.at.x, at.y - other.at.y), around(other)))
  return { by, meet, take, isFree, places: (): Point[] => left.flatMap(toPolygon) }
}
