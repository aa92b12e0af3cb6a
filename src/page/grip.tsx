import type { RefObject } from 'preact'
import { useRef } from 'preact/hooks'
import { type Point, point } from '../geometry/point.js'

/** What a pull has done so far. */
export interface Pull {
  /** Where the grip is pulled to, in the drawing's mm, y up. */
  readonly to: Point
  /** From where it was, in pixels, y up. */
  readonly by: Point
  /** Of the drawing, in mm. */
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
  readonly least: number
  readonly most: number
  readonly valueText: string
  readonly onPull: (pull: Pull) => void
  /** One step more or less by key, ten with Page Up and Page Down. */
  readonly onStep: (steps: number) => void
  /** To the least, or to the most, that this saw cuts: Home and End. */
  readonly onEnd: (end: 'least' | 'most') => void
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
const ENDS: Readonly<Record<string, 'least' | 'most'>> = { Home: 'least', End: 'most' }

/** A finger's breadth on a phone: 44 pixels of the ring's 14. */
const ROOM = 3.2

/** A place of the drawing that can be pulled, or moved by keys. */
export const Grip = (props: Props) => {
  const { drawn, at, size, onPull, onStep, onEnd, onHold } = props
  /** Where the pull began, on the screen and in the drawing. */
  const began = useRef({ x: 0, y: 0, at, on: false })
  const pull = ({ clientX, clientY }: PointerEvent): void => {
    const scale = drawn.current?.getScreenCTM()?.a
    if (!scale) return
    const from = began.current
    const by = point(clientX - from.x, from.y - clientY)
    onPull({
      to: point(from.at.x + by.x / scale, from.at.y + by.y / scale),
      by,
      pixel: 1 / scale,
      on: from.on,
    })
    from.on = true
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
        began.current = { x: event.clientX, y: event.clientY, at, on: false }
        onHold(true)
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
