import { freshStar } from '../order/new-order.js'
import type { Units } from '../units/read-length.js'
import type { Change } from './bench.js'

/** `Star 3`, or the next number that no star has. */
const freeName = (names: readonly string[]): string => {
  let number = names.length + 1
  while (names.includes(`Star ${number}`)) number += 1
  return `Star ${number}`
}

/** The stars of the order as it is written, the one that is shown marked; stars can be added and taken away. */
export const StarsList = ({
  names,
  shown,
  units,
  change,
  onShow,
}: {
  readonly names: readonly string[]
  /** Counted from 0. */
  readonly shown: number
  readonly units: Units
  readonly change: (...changes: readonly Change[]) => void
  readonly onShow: (index: number) => void
}) => (
  <nav class="stars" aria-label="Stars of the order">
    {names.map((name, index) => (
      // Two stars may have one name, until that is mended.
      <button key={index} type="button" aria-pressed={index === shown} onClick={() => onShow(index)}>
        {name}
      </button>
    ))}
    <button
      type="button"
      class="quiet"
      onClick={() => {
        const star = freshStar(units, freeName(names))
        // Of an order that says `stars:` and no more there is no list to add to.
        change(names.length === 0 ? [['stars'], [star]] : [['stars', names.length], star])
        onShow(names.length)
      }}
    >
      Add a star
    </button>
    {names.length > 1 && (
      <button
        type="button"
        class="quiet"
        onClick={() => {
          change([['stars', shown], undefined])
          onShow(Math.max(0, shown - 1))
        }}
      >
        Take {names[shown] ?? 'this star'} away
      </button>
    )}
  </nav>
)
