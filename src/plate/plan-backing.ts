import { compensated } from '../cutter/compensated.js'
import type { CutLines, CutPart } from '../cutter/cut-part.js'
import type { InsetShape } from '../geometry/inset.js'
import { boxOf, type Outline } from '../geometry/outline.js'
import type { Star } from '../geometry/star.js'
import type { BackingOrder, BackingPlaces, Cutter } from '../order/order.js'
import { done, type Outcome, problemsOf, refused } from '../order/problem.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import type { LengthStyle } from '../units/show.js'
import { obstaclesOf } from './clearance.js'
import { type Fixing, planFixing } from './fixing.js'
import { type Hanging, planHanging } from './hanging.js'
import { roomWays } from './more-plate.js'
import { marginOf, plateShape, shapeProblems } from './plate-shape.js'

/** The plate behind a star: one tip up, centre at the origin. */
export interface BackingPlan {
  readonly order: BackingOrder
  /** `auto` is settled here. */
  readonly shape: InsetShape
  /** At least so far inside the star's outline, chamfer included. */
  readonly margin: Mm
  readonly thickness?: Mm
  readonly outline: Outline
  /** The outline's extents. */
  readonly across: Mm
  readonly height: Mm
  /** How much of each joint it covers, from the centre outwards. */
  readonly covers: Mm
  readonly hanging?: Hanging
  readonly fixing?: Fixing
  readonly part: CutPart
  /** What the shop's cutter follows to cut it true. */
  readonly cut: CutLines
}

/** What the plate depends on besides its own keys; a star's name for what is told of it. */
interface Around {
  readonly chamfer: Mm | undefined
  readonly cutter: Cutter
  readonly lengths: LengthStyle
  readonly name: string
}

/** The plate as the order wants it, or everything that does not work, each with what would. */
export const planBacking = (
  star: Star,
  order: BackingOrder,
  at: BackingPlaces,
  { chamfer, cutter, lengths, name }: Around,
): Outcome<BackingPlan> => {
  const problems = shapeProblems(star, order, at, chamfer, cutter, lengths)
  if (problems.length > 0) return refused(problems)
  const shape = plateShape(star, order, marginOf(order, chamfer))
  const { min, max } = boxOf([shape.outline])
  const obstacles = obstaclesOf(shape.outline, star)
  const more = roomWays(star, order, chamfer, lengths)
  const hanging = order.hanging
    ? planHanging(order.hanging, at, obstacles, max.y, more, lengths)
    : done(undefined)
  const takes = hanging.ok ? hanging.value?.takes : undefined
  const fixing = order.fixing
    ? planFixing(order.fixing, at, star, { ...obstacles, takes: takes ?? [] }, max.y, more, lengths)
    : done(undefined)
  if (!hanging.ok || !fixing.ok) return refused([hanging, fixing].flatMap(problemsOf))
  const part: CutPart = {
    name: `backing of "${name}"`,
    outer: shape.outline,
    inner: hanging.value?.openings ?? [],
    seats: [],
    besideOthers: true,
  }
  const cut = compensated(part, cutter, lengths)
  if (!cut.ok) return cut
  return done({
    order,
    ...shape,
    across: mm(max.x - min.x),
    height: mm(max.y - min.y),
    part,
    cut: cut.value,
    ...(order.thickness === undefined ? {} : { thickness: order.thickness }),
    ...(hanging.value ? { hanging: hanging.value } : {}),
    ...(fixing.value ? { fixing: fixing.value } : {}),
  })
}
