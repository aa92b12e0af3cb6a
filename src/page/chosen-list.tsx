import type { ComponentChildren } from 'preact'
import { useEffect, useRef } from 'preact/hooks'
import { SAW_CAUTION } from '../compose/cautions.js'
import { SIZE_KEYS } from '../order/flags.js'
import { useBench } from './bench.js'
import { DrawnSvg } from './drawn.js'
import { LabelledField } from './field.js'
import { SHAPE_KEYS } from './shape-changes.js'
import { TableOf } from './table.js'
import { TypedInput } from './typed-input.js'
import type { ChosenStars, ListedStar } from './work.js'

/** What a wish keeps of a comparison: the two that are named, numbers of the list too. */
export const [ONE, OTHER] = ['one', 'other'] as const
/** What a wish keeps once it has been looked for. */
export const LOOKED = 'looked'

export interface NamedTwo {
  readonly one?: string | undefined
  readonly other?: string | undefined
}

/** The listed stars with small pictures, and two that are picked or named, compared. */
export const ChosenList = ({
  chosen,
  isCurrent,
  isLooking,
  isTwoCurrent,
  wish: { [ONE]: one, [OTHER]: other },
  comesIntoSight,
  onCompare,
  onMore,
  children,
}: {
  readonly chosen: ChosenStars
  /** Or of an order, or a wish, that has changed since. */
  readonly isCurrent: boolean
  readonly isLooking: boolean
  /** Or two others are named now, one of which there is not. */
  readonly isTwoCurrent: boolean
  readonly wish: Readonly<Record<string, string>>
  /** Is the comparison scrolled to when it is there? */
  readonly comesIntoSight: boolean
  readonly onCompare: (two: NamedTwo) => void
  readonly onMore: () => void
  /** The files of what is shown. */
  readonly children: ComponentChildren
}) => {
  const { change, starIndex, plan } = useBench()
  /** The first one waits for the second; a third begins anew. */
  const pick = (number: string): void => {
    if (one === undefined || other !== undefined) onCompare({ one: number })
    else onCompare(one === number ? {} : { one, other: number })
  }
  const take = (keys: NonNullable<ListedStar['keys']>): void =>
    change(
      ...[...SHAPE_KEYS, ...SIZE_KEYS, ...('thickness' in keys ? ['thickness'] : [])].map(
        (key) => [['stars', starIndex, key], keys[key]] as const,
      ),
    )
  const name = plan.stars[starIndex]?.order.name ?? 'the star'
  const isOld = !isCurrent && !isLooking
  return (
    <div class={isOld ? 'before' : ''}>
      {isOld && (
        <p class="before-note">The order, or what is asked for, has changed since. Look for stars again.</p>
      )}
      <div class="fields">
        <LabelledField id="compare-one" label="Compare" hint={NAMED_AS} problems={[]}>
          {(described) => (
            <TypedInput {...described} text={one ?? ''} onTake={(text) => onCompare({ one: text, other })} />
          )}
        </LabelledField>
        <LabelledField
          id="compare-other"
          label="with"
          hint="or press Compare at two of the list"
          problems={[]}
        >
          {(described) => (
            <TypedInput
              {...described}
              text={other ?? ''}
              onTake={(text) => onCompare({ one, other: text })}
            />
          )}
        </LabelledField>
      </div>
      {chosen.compared && isTwoCurrent && (
        <Compared compared={chosen.compared} comesIntoSight={comesIntoSight} />
      )}
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
                    aria-pressed={[one, other].includes(number)}
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

const NAMED_AS = "a number of the list, a star's name, 5/2 or 5@45"

/** It comes into sight when it is there: the second star may have been picked far below. */
const Compared = ({
  compared: { title, rows, drawn },
  comesIntoSight,
}: {
  readonly comesIntoSight: boolean
  readonly compared: NonNullable<ChosenStars['compared']>
}) => {
  const shown = useRef<HTMLDivElement>(null)
  useEffect(() => {
    if (comesIntoSight) shown.current?.scrollIntoView()
  }, [title, rows])
  return (
    <div aria-live="polite" class="panel" ref={shown}>
      <h3>Two compared</h3>
      <TableOf caption={title} rows={rows} />
      <DrawnSvg title={title} svg={drawn} />
    </div>
  )
}
