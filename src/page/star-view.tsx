import { useRef, useState } from 'preact/hooks'
import { add, leftOf, type Point, point, polar, scale, subtract } from '../geometry/point.js'
import { type Star, starOutline } from '../geometry/star.js'
import type { StarPlan } from '../plan/plan.js'
import type { Degrees, Radians } from '../units/brand.js'
import { degrees, toRadians } from '../units/convert.js'
import * as maths from '../units/maths.js'
import type { LengthStyle } from '../units/show.js'
import { showAngle, showLength } from '../units/show.js'
import { Grip, type Pull } from './grip.js'
import { pulledRadius, pulledTipAngle, valleyShare } from './pull.js'
import type { Pulls } from './use-pulls.js'
import type { WoodTone } from './wood-tones.js'

interface Props {
  readonly plan: StarPlan
  readonly lengths: LengthStyle
  readonly tone: WoodTone
  readonly pulls: Pulls
  /** Not to be pulled: it is drawn as the order was before its mistakes. */
  readonly held: boolean
}

/** From the tip that is pulled to the valley that is, at least: grips that touch are pulled by mistake. */
const GRIPS_APART = degrees(30)

const UP = toRadians(degrees(90))

/** How far a view reaches over the star at least, over its radius: figures and grip have room. */
const NEAREST_EDGE = 1.04

/** The star as it hangs, y down as SVG has it, with a grip at its top tip and one in a valley to the right. */
export const StarView = (props: Props) => {
  const { star, tipAngles } = props.plan
  const { lengths, tone, pulls } = props
  const { largest } = pulls.radii
  const { cut } = pulls.tipAngles
  const drawn = useRef<SVGSVGElement>(null)
  /** What the view reached to when the tip was taken hold of. */
  const [held, setHeld] = useState<number>()
  const fits = star.radius * 1.22
  // The view is steady under the finger until the star nears its edge, then it follows.
  const reach = held === undefined ? fits : Math.max(held, star.radius * NEAREST_EDGE)
  const size = reach * 0.045
  const text = reach * 0.08
  const corners = starOutline(star).vertices
  const valley = Math.ceil(GRIPS_APART / star.centreAngle - 0.5)
  const way = toRadians(degrees(90 - star.centreAngle * (valley + 0.5)))
  const valleyAt = (tipAngle: Degrees): Point => polar(star.radius * valleyShare(star.points, tipAngle), way)
  const range = tipAngles && ([valleyAt(tipAngles.least), valleyAt(tipAngles.most)] as const)
  /** The star where the pull began. */
  const began = useRef(star)
  const beginning = (on: boolean): Star => {
    if (!on) began.current = star
    return began.current
  }
  const pullTip = ({ by, pixel, on }: Pull): void => {
    const { radius } = beginning(on)
    pulls.toRadius(pulledRadius({ radius, largest }, by.y, pixel), on)
  }
  const pullValley = ({ by, pixel, on }: Pull): void => {
    const { points, tipAngle, radius } = beginning(on)
    const outwards = by.x * maths.cos(way) + by.y * maths.sin(way)
    pulls.toTipAngle(pulledTipAngle({ points, tipAngle, range: cut }, outwards, pixel / radius), on)
  }
  const up = largest === undefined ? undefined : Math.min(largest, reach * 1.03)
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
      <path class="half" d={halves(corners, -1)} fill={tone.light} />
      <path class="half" d={halves(corners, 1)} fill={tone.dark} />
      <path class="joint" d={corners.map((corner, index) => (isTip(index) ? '' : joint(corner))).join('')} />
      <polygon class="outline" points={pointsOf(corners)} />
      {range && (
        <g class="saw-range">
          <path d={`M${at(range[0])}L${at(range[1])}`} stroke-width={size * 0.5} />
          <path d={range.map((end) => bar(end, way, size * 1.7)).join('')} stroke-width={size * 0.3} />
          <title>What this saw can cut without a wedge</title>
        </g>
      )}
      {up !== undefined && (
        <g class="saw-range">
          <path d={`M0 ${-Math.min(star.radius * 0.72, up / 2)}V${-up}`} stroke-width={size * 0.5} />
          {up === largest && <path d={bar(point(0, up), UP, size * 1.7)} stroke-width={size * 0.3} />}
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
      {!props.held && (
        <>
          <Grip
            drawn={drawn}
            at={point(0, star.radius)}
            size={size}
            name="Size of the star, centre to tip"
            value={Math.round(star.radius)}
            limits={{ least: Math.round(pulls.radii.least), most: Math.round(pulls.radii.most) }}
            valueText={showLength(star.radius, lengths)}
            onPull={pullTip}
            onStep={pulls.bySizeSteps}
            onEnd={(end) => end === 'most' && largest !== undefined && pulls.toRadius(largest, false)}
            onHold={(holds) => setHeld(holds ? fits : undefined)}
          />
          <Grip
            drawn={drawn}
            at={scale(polar(1, way), star.valleyRadius)}
            size={size}
            name="Tip angle, slimmer or fatter"
            value={star.tipAngle}
            limits={pulls.tipAngles}
            valueText={showAngle(star.tipAngle)}
            onPull={pullValley}
            onStep={pulls.byTipAngleSteps}
            onEnd={(end) => cut && pulls.toTipAngle(cut[end], false)}
          />
        </>
      )}
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

/** Of all arms: from the centre over the tip to the valley before it (-1) or after it (1). */
const halves = (corners: readonly Point[], side: -1 | 1): string =>
  corners
    .map((tip, index) => (isTip(index) ? `${joint(corners.at(index + side) ?? tip)}L${at(tip)}Z` : ''))
    .join('')

/** From the centre to a valley. */
const joint = (valley: Point): string => `M0 0L${at(valley)}`

/** Corners of a star begin with a tip. */
const isTip = (index: number): boolean => index % 2 === 0

/** Across the end of a range, where a pull along `way` halts. */
const bar = (end: Point, way: Radians, long: number): string => {
  const across = leftOf(polar(long, way))
  return `M${at(add(end, across))}L${at(subtract(end, across))}`
}

const at = ({ x, y }: Point): string => `${x.toFixed(3)} ${(-y).toFixed(3)}`
const pointsOf = (corners: readonly Point[]): string => corners.map(at).join(' ')
