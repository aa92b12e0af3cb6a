import type { Saw } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { sawMarks } from '../plan/saw-setting.js'
import * as maths from '../units/maths.js'
import { showAngle } from '../units/show.js'

/** More lines than this run together on a phone; then only every fifth degree is drawn. */
const MOST_LINES = 140

const RADIUS = 100
/** Degrees between two pointers whose labels would lie on each other. */
const CLOSE = 9
/** Half of the widest label: "2, 3: 31.5°". */
const LABEL = 26

/**
 * The saw's own scale from straight on to its limit on both sides, seen from above with the fence at the top: detents
 * as triangles, and a pointer for each cut at what is to be set.
 */
export const SawDial = ({ saw, plan }: { readonly saw: Saw; readonly plan: StarPlan }) => {
  const all = sawMarks(saw)
  const marks = all.length > MOST_LINES ? all.filter((mark) => mark % 5 === 0) : all
  const both = marks.flatMap((mark) => (mark === 0 ? [0] : [mark, -mark]))
  const pointers = [
    { name: '1', cut: plan.firstCut },
    ...(plan.firstCut.miter === plan.jointCut.miter ? [] : [{ name: '2, 3', cut: plan.jointCut }]),
  ]
  const readings = pointers.map(({ cut }) => cut.reading)
  const isPointed = (mark: number): boolean =>
    readings.some((reading) => Math.abs(reading - mark) < CLOSE / 2)
  const labelAt = (index: number): number => {
    const [first, second] = readings
    const isClose = first !== undefined && second !== undefined && Math.abs(first - second) < CLOSE
    return RADIUS + (isClose && index > 0 ? 30 : 18)
  }
  const side = x(Math.max(saw.limit, ...readings), RADIUS) + 2 * LABEL
  return (
    <svg
      class="dial"
      viewBox={`${-side} -8 ${2 * side} ${RADIUS + 50}`}
      role="img"
      aria-label={pointers
        .map(
          ({ name, cut }) =>
            `Cut ${name}: saw at ${showAngle(cut.reading)}, nearest mark ${showAngle(cut.mark)}`,
        )
        .join('; ')}
    >
      <path class="dial-fence" d={`M${-side} 0H${side}`} />
      <path
        class="dial-rim"
        d={`M${spot(saw.limit, RADIUS)}A${RADIUS} ${RADIUS} 0 0 1 ${spot(-saw.limit, RADIUS)}`}
      />
      {both.map((mark) => {
        const long = Math.abs(mark) % 10 === 0 ? 12 : Math.abs(mark) % 5 === 0 ? 9 : 4
        const line = mark % 1 === 0 ? 'dial-line' : 'dial-line dial-part'
        return <path key={mark} class={line} d={`M${spot(mark, RADIUS)}L${spot(mark, RADIUS - long)}`} />
      })}
      {saw.detents
        .flatMap((detent) => (detent === 0 ? [0] : [detent, -detent]))
        .map((detent) => (
          <path
            key={detent}
            class="dial-detent"
            d={`M${spot(detent, RADIUS + 1)}L${spot(detent - 1.6, RADIUS + 6)}L${spot(detent + 1.6, RADIUS + 6)}Z`}
          />
        ))}
      {pointers.map(({ name, cut: { reading } }, index) => (
        <g key={name} class="dial-pointer">
          <path d={`M0 0L${spot(reading, RADIUS)}`} />
          <text
            x={x(reading, labelAt(index)) + (reading > 5 ? LABEL / 2 : 0)}
            y={y(reading, labelAt(index)) + 4}
          >
            {name}: {showAngle(reading)}
          </text>
        </g>
      ))}
      {both
        .filter((mark) => Math.abs(mark) % 15 === 0 && !isPointed(mark))
        .map((mark) => (
          <text key={mark} class="dial-figure" x={x(mark, RADIUS - 20)} y={y(mark, RADIUS - 20) + 3}>
            {Math.abs(mark)}
          </text>
        ))}
    </svg>
  )
}

/** Angles are counted from square, the way the saw's arm points down from the fence. */
const x = (angle: number, radius: number): number => radius * maths.sin((angle * Math.PI) / 180)
const y = (angle: number, radius: number): number => radius * maths.cos((angle * Math.PI) / 180)
const spot = (angle: number, radius: number): string =>
  `${x(angle, radius).toFixed(2)} ${y(angle, radius).toFixed(2)}`
