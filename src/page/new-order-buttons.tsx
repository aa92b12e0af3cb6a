import { newOrder, newOrderInShop } from '../order/new-order.js'
import type { Units } from '../units/read-length.js'
import type { Kept } from './address.js'

/** Begins an order: nothing that belongs to the stars of the one before goes with it. */
export const NewOrderButtons = ({
  text,
  units,
  onNew,
}: {
  /** The order as it is written; absent where it cannot be read. */
  readonly text: string | undefined
  readonly units: Units
  readonly onNew: (kept: Partial<Kept> & Pick<Kept, 'order'>) => void
}) => (
  <details class="more">
    <summary>A new order</summary>
    <p class="files">
      {text !== undefined && (
        <button type="button" onClick={() => onNew({ order: newOrderInShop(text), wall: '', measured: {} })}>
          For this shop <span class="unseen">a new order</span>
        </button>
      )}
      <button
        type="button"
        onClick={() => onNew({ order: newOrder(units), wall: '', measured: {}, furniture: {} })}
      >
        For another shop <span class="unseen">a new order</span>
      </button>
    </p>
    <p class="hint">
      For this shop it keeps saw, boards, panels, prices, paper, glue and finish; for another these are left
      empty. Undo brings back the order that is here now.
    </p>
  </details>
)
