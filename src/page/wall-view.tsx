import { type Point, point } from '../geometry/point.js'
import { type Star, starOutline } from '../geometry/star.js'
import { mm } from '../units/convert.js'
import { type LengthStyle, showLength } from '../units/show.js'
import { starHeight, type Wall, wallOutline } from './wall.js'
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
  const up = starHeight(wall)
  const hung = starOutline(star).vertices.map(({ x, y }) => point(x, y + up))
  // A star that is larger than the wall is seen whole all the same.
  const wide = 1.06 * Math.max(wall.width, star.across)
  const high = 1.06 * Math.max(top, 2 * star.radius)
  const told = roomTold(star, wall, lengths)
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
      <figcaption class="hint">{told}</figcaption>
    </figure>
  )
}

/** What is left beside and above a star in the middle of a wall. */
const roomTold = (star: Star, { width, height, ridge }: Wall, lengths: LengthStyle): string => {
  if (star.across > width) return 'The star is wider than this.'
  if (star.height > (ridge ?? height)) return 'The star is higher than this.'
  const beside = showLength(mm((width - star.across) / 2), lengths)
  return ridge === undefined
    ? `In the middle: ${beside} on both sides, ${showLength(mm(height - star.height), lengths)} above and below together.`
    : `In the middle of the gable, half way up to the ridge.`
}

const pointsOf = (corners: readonly Point[]): string =>
  corners.map(({ x, y }) => `${x.toFixed(2)},${(-y).toFixed(2)}`).join(' ')
