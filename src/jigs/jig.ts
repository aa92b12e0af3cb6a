import type { CutPart } from '../cutter/cut-part.js'
import type { Outline } from '../geometry/outline.js'
import { type Point, point } from '../geometry/point.js'
import type { JigName } from '../order/order.js'
import type { Mm } from '../units/brand.js'

/**
 * A jig, in mm, as it lies on the saw's table seen from above: the fence's face along y = 0, the wood above it. Made
 * for the right of the blade, the kept piece has the blade on its right here; the saw's operator, who stands opposite,
 * sees it turned by half a turn. The jig for the left is its mirror image.
 */
export interface Jig {
  readonly name: JigName
  readonly parts: readonly JigPart[]
  /** What lies in it, as it lies there. */
  readonly inUse?: InUse
  /** Names of other stars that it serves as well, their wood being the same. */
  readonly serves?: readonly string[]
  /** Places where a hand or the hold-down is told to be, and how far each is from the blade. */
  readonly hands: readonly HandPlace[]
}

export interface JigPart extends CutPart {
  /** What the maker calls it, within this jig: `rail`. It stands on the part itself. */
  readonly word: string
  /** Where screws come up from another part and bite, as wide as the screws: drilled at marked crosses, never cut. */
  readonly pilots?: readonly Outline[]
  /** Lines to draw on it: where another part is glued, where the wood lies. */
  readonly marks: readonly Outline[]
  /** Its outline in the assembly, where it does not lie there as it is cut. */
  readonly footprint?: Outline
  /** As many are cut as these are, and this is how they lie in the assembly. */
  readonly copies?: readonly Outline[]
}

export interface InUse {
  readonly wood: readonly Outline[]
  /** What is kept of it before the cut, where that takes more room. */
  readonly uncut?: Outline
  /** Another jig that the wood lies in. */
  readonly around?: readonly Outline[]
  /** The near side of the blade's slot; absent away from the saw. */
  readonly blade?: readonly [Point, Point]
}

export interface HandPlace {
  readonly place: string
  readonly at: Point
  readonly fromBlade: Mm
}

export const mirroredPoint = ({ x, y }: Point): Point => point(-x, y)

/** Left and right exchanged; still counter-clockwise. */
export const mirroredOutline = ({ vertices, closed }: Outline): Outline => {
  const count = vertices.length
  return {
    closed,
    // Read backwards, an edge's bulge stands at its other end: two changes of sign cancel.
    vertices: vertices.map((_, index) => {
      const { x, y } = vertices[count - 1 - index] ?? { x: 0, y: 0 }
      const bulge = vertices[(2 * count - 2 - index) % count]?.bulge
      return { x: -x, y, ...(bulge === undefined ? {} : { bulge }) }
    }),
  }
}

/** The same jig for the other side of the blade. */
export const mirroredJig = (jig: Jig): Jig => ({
  ...jig,
  parts: jig.parts.map((part) => ({
    ...part,
    outer: mirroredOutline(part.outer),
    inner: part.inner.map(mirroredOutline),
    seats: part.seats.map(mirroredPoint),
    marks: part.marks.map(mirroredOutline),
    ...(part.pilots ? { pilots: part.pilots.map(mirroredOutline) } : {}),
    ...(part.copies ? { copies: part.copies.map(mirroredOutline) } : {}),
    ...(part.footprint ? { footprint: mirroredOutline(part.footprint) } : {}),
  })),
  hands: jig.hands.map((hand) => ({ ...hand, at: mirroredPoint(hand.at) })),
  ...(jig.inUse
    ? {
        inUse: {
          wood: jig.inUse.wood.map(mirroredOutline),
          ...(jig.inUse.around ? { around: jig.inUse.around.map(mirroredOutline) } : {}),
          ...(jig.inUse.blade
            ? { blade: [mirroredPoint(jig.inUse.blade[0]), mirroredPoint(jig.inUse.blade[1])] as const }
            : {}),
          ...(jig.inUse.uncut ? { uncut: mirroredOutline(jig.inUse.uncut) } : {}),
        },
      }
    : {}),
})
