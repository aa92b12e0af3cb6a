import type { ComponentChildren } from 'preact'
import { useEffect, useRef, useState } from 'preact/hooks'
import { SAW_CAUTION } from '../compose/cautions.js'
import { SIZE_KEYS } from '../order/flags.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { SHAPE_KEYS } from './shape-changes.js'
import { TableOf } from './table.js'
import type { ChosenStars, ListedStar, WrittenWish } from './work.js'

/** The listed stars with small pictures; two that are picked are compared below them. */
export const ChosenList = ({
  chosen,
  isCurrent,
  isLooking,
  compared,
  onCompare,
  onMore,
  children,
}: {
  readonly chosen: ChosenStars
  /** Or of an order, or a wish, that has changed since. */
  readonly isCurrent: boolean
  readonly isLooking: boolean
  readonly compared: WrittenWish['compare']
  readonly onCompare: (compare: WrittenWish['compare']) => void
  readonly onMore: () => void
  /** The files of what is shown. */
  readonly children: ComponentChildren
}) => {
  const { change, starIndex, plan } = useBench()
  const [first, setFirst] = useState<string>()
  const picked: readonly (string | undefined)[] = compared ?? [first]
  /** The first one waits for the second; a third begins anew. */
  const pick = (number: string): void => {
    if (compared) onCompare(undefined)
    if (compared || first === undefined) setFirst(number)
    else if (first === number) setFirst(undefined)
    else {
      setFirst(undefined)
      onCompare([first, number])
    }
  }
  const take = (keys: NonNullable<ListedStar['keys']>): void =>
    change(...[...SHAPE_KEYS, ...SIZE_KEYS].map((key) => [['stars', starIndex, key], keys[key]] as const))
  const name = plan.stars[starIndex]?.order.name ?? 'the star'
  const isOld = !isCurrent && !isLooking
  return (
    <div class={isOld ? 'before' : ''}>
      {isOld && (
        <p class="before-note">The order, or what is asked for, has changed since. Look for stars again.</p>
      )}
      {chosen.compared && <Compared compared={chosen.compared} />}
      <ol class="choices">
        {chosen.listed.map(({ label, words: [kind, ...words], corners, keys }, index) => {
          const number = String(index + 1)
          return (
            <li key={number}>
              <svg viewBox="-1.05 -1.05 2.1 2.1" aria-hidden="true">
                <polygon class="outline" points={corners} />
              </svg>
              <div>
                <p>
                  <strong>
                    {number}. {kind}
                  </strong>
                </p>
                {words.map((text) => (
                  <p key={text}>{text}</p>
                ))}
                <p class="files">
                  <button
                    type="button"
                    aria-pressed={picked.includes(number)}
                    disabled={!isCurrent}
                    onClick={() => pick(number)}
                  >
                    Compare
                    <span class="unseen">
                      {' '}
                      number {number}, {label}
                    </span>
                  </button>
                  {keys && (
                    <button type="button" disabled={!isCurrent} onClick={() => take(keys)}>
                      Make {name} this one
                      <span class="unseen">
                        , number {number}, {label}
                      </span>
                    </button>
                  )}
                </p>
              </div>
            </li>
          )
        })}
      </ol>
      {chosen.more > 0 && (
        <p>
          <button type="button" disabled={!isCurrent} onClick={onMore}>
            Show more: there are {chosen.more}
          </button>
        </p>
      )}
      <p class="hint">{chosen.foot}</p>
      <p class="files">{children}</p>
      <p class="caution">{SAW_CAUTION}</p>
    </div>
  )
}

/** It comes into sight when it is there: the second star may have been picked far below. */
const Compared = ({
  compared: { title, rows, drawn },
}: {
  readonly compared: NonNullable<ChosenStars['compared']>
}) => {
  const shown = useRef<HTMLDivElement>(null)
  useEffect(() => shown.current?.scrollIntoView(), [title, rows])
  return (
    <div aria-live="polite" class="panel" ref={shown}>
      <h3>Two compared</h3>
      <TableOf caption={title} rows={rows} />
      <DrawnSvg title={title} svg={drawn} />
    </div>
  )
}
