import type { RefObject } from 'preact'
import { useRef } from 'preact/hooks'
import { type Point, point } from '../geometry/point.js'

interface Props {
  readonly drawn: RefObject<SVGSVGElement | null>
  readonly at: Point
  /** Radius of the grip, in the drawing's mm. */
  readonly size: number
  /** For whoever hears the page. */
  readonly name: string
  readonly value: number
  readonly least: number
  readonly most: number
  readonly valueText: string
  /** Where it is pulled to, y up; `on` while the same pull goes on. */
  readonly onPull: (to: Point, on: boolean) => void
  /** One step more or less by key, ten with Page Up and Page Down. */
  readonly onStep: (steps: number) => void
  readonly onHold: (held: boolean) => void
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
}

/** A place of the drawing that can be pulled, or moved by keys. */
export const Grip = (props: Props) => {
  const { drawn, at, size, onPull, onStep, onHold } = props
  const pulls = useRef(false)
  const pulledTo = ({ clientX, clientY }: PointerEvent): Point => {
    const matrix = drawn.current?.getScreenCTM()?.inverse()
    if (!matrix) return at
    const to = new DOMPoint(clientX, clientY).matrixTransform(matrix)
    return point(to.x, -to.y)
  }
  const release = (): void => onHold(false)
  return (
    <g
      class="grip"
      role="slider"
      tabindex={0}
      aria-label={props.name}
      aria-valuenow={props.value}
      aria-valuemin={props.least}
      aria-valuemax={props.most}
      aria-valuetext={props.valueText}
      onPointerDown={(event: PointerEvent) => {
        ;(event.currentTarget as Element).setPointerCapture(event.pointerId)
        pulls.current = false
        onHold(true)
      }}
      onPointerMove={(event: PointerEvent) => {
        if (!(event.currentTarget as Element).hasPointerCapture(event.pointerId)) return
        onPull(pulledTo(event), pulls.current)
        pulls.current = true
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onKeyDown={(event: KeyboardEvent) => {
        const steps = STEPS[event.key]
        if (steps === undefined) return
        event.preventDefault()
        onStep(steps)
      }}
    >
      <circle class="grip-room" cx={at.x} cy={-at.y} r={size * 1.8} />
      <circle class="grip-ring" cx={at.x} cy={-at.y} r={size} />
    </g>
  )
}
