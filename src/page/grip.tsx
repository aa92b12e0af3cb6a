import type { RefObject } from 'preact'
import { useRef } from 'preact/hooks'
import { type Point, point } from '../geometry/point.js'
import type { Limits } from './pull-limits.js'

/** What a pull has done so far. */
export interface Pull {
  /** From where it was, in pixels, y up. */
  readonly by: Point
  /** Of the drawing where the pull began, in mm: the view may follow the star. */
  readonly pixel: number
  /** The same pull goes on. */
  readonly on: boolean
}

interface Props {
  readonly drawn: RefObject<SVGSVGElement | null>
  readonly at: Point
  /** Radius of the grip, in the drawing's mm. */
  readonly size: number
  /** For whoever hears the page. */
  readonly name: string
  readonly value: number
  /** What it can be moved to at all. */
  readonly limits: Limits
  readonly valueText: string
  readonly onPull: (pull: Pull) => void
  /** One step more or less by key, ten with Page Up and Page Down. */
  readonly onStep: (steps: number) => void
  /** To the least, or to the most, that this saw cuts: Home and End. */
  readonly onEnd: (end: 'least' | 'most') => void
  readonly onHold?: (held: boolean) => void
}

const STEPS: Readonly<Record<string, number>> = {
  ArrowUp: 1,
  ArrowRight: 1,
  ArrowDown: -1,
  ArrowLeft: -1,
  PageUp: 10,
  PageDown: -10,
}
const ENDS: Readonly<Record<string, 'least' | 'most'>> = { Home: 'least', End: 'most' }

/** A finger's breadth on a phone: 44 pixels of the ring's 14. */
const ROOM = 3.2

/** A place of the drawing that can be pulled, or moved by keys. */
export const Grip = (props: Props) => {
  const { drawn, at, size, limits, onPull, onStep, onEnd, onHold } = props
  /** Where the pull began on the screen, with how many pixels to the drawing's mm. */
  const began = useRef({ x: 0, y: 0, scale: 0, on: false })
  const pull = ({ clientX, clientY }: PointerEvent): void => {
    const from = began.current
    if (from.scale === 0) return
    onPull({ by: point(clientX - from.x, from.y - clientY), pixel: 1 / from.scale, on: from.on })
    from.on = true
  }
  const release = (): void => onHold?.(false)
  return (
    <g
      class="grip"
      role="slider"
      tabindex={0}
      aria-label={props.name}
      aria-valuenow={props.value}
      aria-valuemin={Math.min(limits.least, props.value)}
      aria-valuemax={Math.max(limits.most, props.value)}
      aria-valuetext={props.valueText}
      onPointerDown={(event: PointerEvent) => {
        ;(event.currentTarget as Element).setPointerCapture(event.pointerId)
        const scale = drawn.current?.getScreenCTM()?.a ?? 0
        began.current = { x: event.clientX, y: event.clientY, scale, on: false }
        onHold?.(true)
      }}
      onPointerMove={(event: PointerEvent) => {
        if ((event.currentTarget as Element).hasPointerCapture(event.pointerId)) pull(event)
      }}
      onPointerUp={release}
      onPointerCancel={release}
      onKeyDown={(event: KeyboardEvent) => {
        const [steps, end] = [STEPS[event.key], ENDS[event.key]]
        if (steps !== undefined) onStep(steps)
        else if (end !== undefined) onEnd(end)
        else return
        event.preventDefault()
      }}
    >
      <circle class="grip-room" cx={at.x} cy={-at.y} r={size * ROOM} />
      <circle class="grip-ring" cx={at.x} cy={-at.y} r={size} />
    </g>
  )
}
