import { newOrder, newOrderInShop } from '../order/new-order.js'
import type { Kept } from './address.js'
import { useBench } from './bench.js'
import { MoreFields } from './more-fields.js'

/** Begins an order: nothing that belongs to the stars of the one before goes with it. */
export const NewOrderButtons = ({
  text,
  onNew,
}: {
  /** The order as it is written. */
  readonly text: string
  readonly onNew: (kept: Partial<Kept> & Pick<Kept, 'order'>) => void
}) => {
  const { units } = useBench().plan.order.lengths
  return (
    <MoreFields name="A new order">
      <p class="files">
        <button type="button" onClick={() => onNew({ order: newOrderInShop(text), wall: '', measured: {} })}>
          For this shop <span class="unseen">a new order</span>
        </button>
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
    </MoreFields>
  )
}
