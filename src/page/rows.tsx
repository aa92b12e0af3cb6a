import type { ComponentChildren } from 'preact'
import type { OrderPlace, OrderValue } from '../order/edit-text.js'
import { useBench } from './bench.js'
import { TextField } from './field.js'

export interface Column {
  readonly key: string
  readonly label: string
  readonly hint?: string
  /** A name, which may look like a number. */
  readonly words?: boolean
}

/** A list of the order, one row an entry, each with its own fields; rows can be added and taken away. */
export const Rows = ({
  place,
  columns,
  name,
  of = '',
  count,
  fresh,
  more,
}: {
  readonly place: OrderPlace
  readonly columns: readonly Column[]
  /** What one entry is called. */
  readonly name: string
  /** What the list belongs to, where there are several, as ` of board 2`. */
  readonly of?: string
  readonly count: number
  /** A new entry. */
  readonly fresh: OrderValue
  /** What few entries need. */
  readonly more?: (place: OrderPlace) => ComponentChildren
}) => {
  const { change } = useBench()
  return (
    <>
      {Array.from({ length: count }, (_, row) => (
        <fieldset key={row} class="row">
          <legend>
            {name} {row + 1}
            {of}
          </legend>
          <div class="fields">
            {columns.map(({ key, ...column }) => (
              <TextField key={key} place={[...place, row, key]} {...column} />
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
                  {of}
                </span>{' '}
                away
              </button>
            </div>
          </div>
          {more?.([...place, row])}
        </fieldset>
      ))}
      <button type="button" onClick={() => change([[...place, count], fresh])}>
        Add a {name.toLowerCase()}
        {of !== '' && <span class="unseen">{of}</span>}
      </button>
    </>
  )
}
