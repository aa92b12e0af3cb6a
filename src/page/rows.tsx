import type { OrderPlace, OrderValue } from '../order/edit-text.js'
import { useBench } from './bench.js'
import { TextField } from './field.js'

export interface Column {
  readonly key: string
  readonly label: string
}

/** A list of the order, one row an entry, each with its own fields; rows can be added and taken away. */
export const Rows = ({
  place,
  columns,
  name,
  count,
  fresh,
}: {
  readonly place: OrderPlace
  readonly columns: readonly Column[]
  /** What one entry is called. */
  readonly name: string
  readonly count: number
  /** A new entry. */
  readonly fresh: OrderValue
}) => {
  const { change } = useBench()
  return (
    <>
      {Array.from({ length: count }, (_, row) => (
        <fieldset key={row} class="row">
          <legend>
            {name} {row + 1}
          </legend>
          <div class="fields">
            {columns.map(({ key, label }) => (
              <TextField key={key} place={[...place, row, key]} label={label} />
            ))}
            <div class="field">
              <span />
              <button
                type="button"
                class="quiet"
                onClick={() => change([count === 1 ? place : [...place, row], undefined])}
              >
                Take
                <span class="unseen">
                  {' '}
                  {name.toLowerCase()} {row + 1}
                </span>{' '}
                away
              </button>
            </div>
          </div>
        </fieldset>
      ))}
      <button type="button" onClick={() => change([[...place, count], fresh])}>
        Add a {name.toLowerCase()}
      </button>
    </>
  )
}
