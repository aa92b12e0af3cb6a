import { useRef, useState } from 'preact/hooks'
import { type Point, point, polar, scale } from '../geometry/point.js'
import { starOutline, tipAngleLimit } from '../geometry/star.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees } from '../units/brand.js'
import { degrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { LengthStyle } from '../units/show.js'
import { showAngle, showLength } from '../units/show.js'
import { Grip, type Pull } from './grip.js'
import { pulledTipAngle, steppedRange, valleyShare } from './pull.js'
import type { WoodTone } from './wood-tones.js'

interface Props {
  readonly plan: StarPlan
  readonly lengths: LengthStyle
  readonly tone: WoodTone
  /** Centre to tip of the largest star of this shape that the saw's crosscut takes, in mm, where that is known. */
  readonly largest?: number
  /** The star's new size over its old one; `on` while the same pull goes on. */
  readonly onSize: (factor: number, on: boolean) => void
  readonly onSizeStep: (steps: number) => void
  /** To the largest that the saw takes, where that is known. */
  readonly onLargest?: () => void
  readonly onTipAngle: (tipAngle: Degrees, on: boolean) => void
  readonly onTipAngleStep: (steps: number) => void
  /** The step of the saw's scale. */
  readonly readsTo: Degrees
}

/** From the tip that is pulled to the valley that is, at least: grips that touch are pulled by mistake. */
const GRIPS_APART = degrees(30)

/** The star as it hangs, y down as SVG has it, with a grip at its top tip and one in a valley to the right. */
export const StarView = (props: Props) => {
  const { star, tipAngles } = props.plan
  const { lengths, tone } = props
  const drawn = useRef<SVGSVGElement>(null)
  const [held, setHeld] = useState<number>()
  const fits = star.radius * 1.22
  const reach = held ?? fits
  const hold = (holds: boolean): void => setHeld(holds ? fits : undefined)
  const size = reach * 0.045
  const text = reach * 0.08
  const corners = starOutline(star).vertices
  const valley = Math.ceil(GRIPS_APART / star.centreAngle - 0.5)
  const way = toRadians(degrees(90 - star.centreAngle * (valley + 0.5)))
  const valleyAt = (tipAngle: Degrees): Point => polar(star.radius * valleyShare(star.points, tipAngle), way)
  const range = tipAngles && ([valleyAt(tipAngles.least), valleyAt(tipAngles.most)] as const)
  const ends = tipAngles && steppedRange(tipAngles, props.readsTo)
  /** The tip angle where the pull of the valley began. */
  const began = useRef(star.tipAngle)
  const pullValley = ({ by, pixel, on }: Pull): void => {
    if (!on) began.current = star.tipAngle
    const outwards = by.x * maths.cos(way) + by.y * maths.sin(way)
    const from = { points: star.points, tipAngle: began.current, range: ends }
    props.onTipAngle(pulledTipAngle(from, outwards, pixel / star.radius), on)
  }
  const up = props.largest === undefined ? undefined : Math.min(props.largest, reach * 1.03)
  const left = Math.min(...corners.map(({ x }) => x))
  const low = Math.min(...corners.map(({ y }) => y))
  return (
    // biome-ignore lint/a11y/useSemanticElements: a drawing that holds two grips is no fieldset
    <svg
      ref={drawn}
      class="star"
      viewBox={`${-reach * 1.08} ${-reach * 1.04} ${2.16 * reach} ${2.16 * reach}`}
      role="group"
      aria-label={`Star of ${star.points} points, tip ${showAngle(star.tipAngle)}, ${showLength(star.across, lengths)} across`}
    >
      {corners.map((tip, index) =>
        index % 2 === 1 ? null : (
          <g key={index} class="arm">
            <polygon
              points={pointsOf([point(0, 0), corners.at(index - 1) ?? tip, tip])}
              fill={tone.light}
              stroke="none"
            />
            <polygon
              points={pointsOf([point(0, 0), tip, corners[(index + 1) % corners.length] ?? tip])}
              fill={tone.dark}
              stroke="none"
            />
            <path d={`M0 0L${at(corners[(index + 1) % corners.length] ?? tip)}`} class="joint" />
          </g>
        ),
      )}
      <polygon class="outline" points={pointsOf(corners)} />
      {range && (
        <g class="saw-range">
          <path d={`M${at(range[0])}L${at(range[1])}`} stroke-width={size * 0.5} />
          <title>What this saw can cut without a wedge</title>
        </g>
      )}
      {up !== undefined && (
        <g class="saw-range">
          <path d={`M0 ${-Math.min(star.radius * 0.72, up / 2)}V${-up}`} stroke-width={size * 0.5} />
          <title>How large this saw can cut it</title>
        </g>
      )}
      <Figure x={0} y={-low + text * 1.3} size={text}>
        {showLength(star.across, lengths)}
      </Figure>
      <Figure x={left - text * 0.5} y={(-low - star.radius) / 2} size={text} turned>
        {showLength(star.height, lengths)}
      </Figure>
      <Figure x={0} y={-star.radius * 0.62} size={text * 0.95}>
        {showAngle(star.tipAngle)}
      </Figure>
      <Grip
        drawn={drawn}
        at={point(0, star.radius)}
        size={size}
        name="Size of the star, centre to tip"
        value={Math.round(star.radius)}
        least={1}
        most={10_000}
        valueText={showLength(star.radius, lengths)}
        onPull={({ to, on }) => props.onSize(Math.max(0.02, to.y / star.radius), on)}
        onStep={props.onSizeStep}
        onEnd={(end) => end === 'most' && props.onLargest?.()}
        onHold={hold}
      />
      <Grip
        drawn={drawn}
        at={scale(polar(1, way), star.valleyRadius)}
        size={size}
        name="Tip angle, slimmer or fatter"
        value={star.tipAngle}
        least={1}
        most={tipAngleLimit(star.points)}
        valueText={showAngle(star.tipAngle)}
        onPull={pullValley}
        onStep={props.onTipAngleStep}
        onEnd={(end) => ends && props.onTipAngle(ends[end], false)}
        onHold={hold}
      />
    </svg>
  )
}

const Figure = (props: {
  readonly x: number
  readonly y: number
  readonly size: number
  readonly turned?: boolean
  readonly children: string
}) => (
  <text
    class="figure"
    x={props.x}
    y={props.y}
    font-size={props.size}
    text-anchor="middle"
    {...(props.turned ? { transform: `rotate(-90 ${props.x} ${props.y})` } : {})}
  >
    {props.children}
  </text>
)

const at = ({ x, y }: Point): string => `${x.toFixed(3)} ${(-y).toFixed(3)}`
const pointsOf = (corners: readonly Point[]): string => corners.map(at).join(' ')
