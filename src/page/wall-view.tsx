import type { Point } from '../geometry/point.js'
import type { Star } from '../geometry/star.js'
import { mm } from '../units/convert.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { hungCorners, roomBelowSlopes, type Wall, wallOutline } from './wall.js'
import type { WoodTone } from './wood-tones.js'

/** The star to scale on the wall it will hang on, to judge its size. */
export const WallView = ({
  star,
  wall,
  lengths,
  tone,
}: {
  readonly star: Star
  readonly wall: Wall
  readonly lengths: LengthStyle
  readonly tone: WoodTone
}) => {
  const top = wall.ridge ?? wall.height
  const hung = hungCorners(star, wall)
  // A star that is larger than the wall is seen whole all the same.
  const wide = 1.06 * Math.max(wall.width, star.across)
  const high = 1.06 * Math.max(top, star.height)
  const { fits, told } = roomTold(star, hung, wall, lengths)
  return (
    <figure class="on-wall">
      <svg
        viewBox={`${-wide / 2} ${-top / 2 - high / 2} ${wide} ${high}`}
        role="img"
        aria-label={`The star on ${wall.ridge === undefined ? 'the wall' : 'the gable'}. ${told}`}
      >
        <polygon class="wall" points={pointsOf(wallOutline(wall))} />
        <polygon class="outline" points={pointsOf(hung)} fill={tone.light} />
      </svg>
      <figcaption class={fits ? 'hint' : 'warnings'}>{told}</figcaption>
    </figure>
  )
}

/** What is left around a star in the middle of a wall, or that it does not go on it. */
const roomTold = (
  star: Star,
  hung: readonly Point[],
  { width, height, ridge }: Wall,
  lengths: LengthStyle,
): { readonly fits: boolean; readonly told: string } => {
  const tooLarge = (by: number, way: string) => ({
    fits: false,
    told: `The star is ${showLength(mm(by), lengths)} ${way} than this.`,
  })
  if (star.across > width) return tooLarge(star.across - width, 'wider')
  if (star.height > (ridge ?? height)) return tooLarge(star.height - (ridge ?? height), 'higher')
  const beside = showLength(mm((width - star.across) / 2), lengths)
  if (ridge === undefined) {
    const above = showLength(mm(height - star.height), lengths)
    return { fits: true, told: `In the middle: ${beside} on both sides, ${above} above and below together.` }
  }
  const room = roomBelowSlopes(hung, { width, height, ridge }, ridge)
  const where = 'In the middle of the gable, half way up to the ridge'
  return room < 0
    ? { fits: false, told: `${where}, the star stands ${showLength(mm(-room), lengths)} over the slopes.` }
    : {
        fits: true,
        told: `${where}: ${beside} on both sides, ${showLength(room, lengths)} to the slopes.`,
      }
}

const pointsOf = (corners: readonly Point[]): string =>
  corners.map(({ x, y }) => `${x.toFixed(2)},${(-y).toFixed(2)}`).join(' ')
