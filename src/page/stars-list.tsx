import { countAt } from '../order/edit-text.js'
import { freshStar } from '../order/new-order.js'
import { useBench } from './bench.js'

/** `Star 3`, or the next number that no star has. */
const freeName = (names: readonly string[]): string => {
  let number = names.length + 1
  while (names.includes(`Star ${number}`)) number += 1
  return `Star ${number}`
}

/** The stars of the order by name, the one that is shown marked; stars can be added and taken away. */
export const StarsList = ({ onShow }: { readonly onShow: (index: number) => void }) => {
  const { plan, document, change, starIndex } = useBench()
  const { stars, order } = plan
  return (
    <nav class="stars" aria-label="Stars of the order">
      {stars.map(({ order: { name } }, index) => (
        <button key={name} type="button" aria-pressed={index === starIndex} onClick={() => onShow(index)}>
          {name}
        </button>
      ))}
      <button
        type="button"
        class="quiet"
        onClick={() => {
          // Of the order as it is written: one with mistakes may have fewer than are shown.
          const count = countAt(document, ['stars'])
          const name = freeName(stars.map((star) => star.order.name))
          change([['stars', count], freshStar(order.lengths.units, name)])
          onShow(count)
        }}
      >
        Add a star
      </button>
      {stars.length > 1 && (
        <button
          type="button"
          class="quiet"
          onClick={() => {
            change([['stars', starIndex], undefined])
            onShow(Math.max(0, starIndex - 1))
          }}
        >
          Take {stars[starIndex]?.order.name ?? 'this star'} away
        </button>
      )}
    </nav>
  )
}
