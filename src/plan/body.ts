import { edgeLength, type Outline, signedArea } from '../geometry/outline.js'
import { type Star, starOutline } from '../geometry/star.js'
import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'
import * as maths from '../units/maths.js'

/** What a star is as a body: wood to weigh, faces to coat, joints to glue. */
export interface StarBody {
  /** Of all arms, chamfers cut off; in mm³. */
  readonly armsVolume: number
  /** In mm³; absent without a plate, or while its thickness is unknown. */
  readonly plateVolume?: number
  readonly coated: CoatedAreas
  readonly glue: GluedParts
}

/** What is coated when the plate is on, in mm². */
export interface CoatedAreas {
  /** The arms' flat front. */
  readonly front: number
  /** The sloped faces along the tip edges. */
  readonly chamfers: number
  /** The arms' outer edges, and the plate's where its thickness is known. */
  readonly edges: number
  /** The arms' back where no plate lies on it, and the plate's back. */
  readonly back: number
  readonly all: number
}

export interface GluedParts {
  /** All joints end to end. */
  readonly joints: Mm
  /** One face of every joint, in mm². */
  readonly jointArea: number
  /** The face of the plate, in mm²; 0 without one. */
  readonly plateArea: number
}

/**
 * Chamfers slope at 45°, so that one that reaches `chamfer` in from the tip edges also goes that deep. Below it the
 * star's section is the outline, and within it the outline's sharp inset, which is the star scaled (see `inset.ts`);
 * volume and areas are integrals over that.
 *
 * @param thickness of the arms
 * @param chamfer less than the thickness and than the star's edge distance
 */
export const starBody = (
  star: Star,
  { thickness, chamfer = mm(0), plate }: { thickness: Mm; chamfer?: Mm; plate?: Plate },
): StarBody => {
  const outline = starOutline(star)
  const area = signedArea(outline)
  const left = 1 - chamfer / star.edgeDistance
  const front = area * maths.square(left)
  const openings = plate?.openings ?? []
  const plateArea = plate
    ? openings.reduce((sum, opening) => sum - signedArea(opening), signedArea(plate.outline))
    : 0
  const plateEdges = plate?.thickness === undefined ? 0 : edgeLength(plate.outline) * plate.thickness
  const coated = {
    front,
    chamfers: (area - front) * Math.SQRT2,
    edges: edgeLength(outline) * (thickness - chamfer) + plateEdges,
    back: area,
  }
  const joints = mm(star.points * star.jointEdge)
  return {
    armsVolume: area * (thickness - chamfer) + ((area * star.edgeDistance) / 3) * (1 - maths.pow(left, 3)),
    ...(plate?.thickness === undefined ? {} : { plateVolume: plateArea * plate.thickness }),
    coated: { ...coated, all: coated.front + coated.chamfers + coated.edges + coated.back },
    glue: { joints, jointArea: joints * thickness, plateArea },
  }
}

/** The backing as a body; its thickness may be unknown. */
export interface Plate {
  readonly outline: Outline
  /** Holes it hangs by. */
  readonly openings?: readonly Outline[]
  readonly thickness?: Mm
}
