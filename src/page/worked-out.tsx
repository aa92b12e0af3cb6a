import type { ComponentChildren } from 'preact'
import { useBench } from './bench.js'
import type { Beside } from './beside.js'
import type { Work } from './use-worker.js'

const WHY: Readonly<Record<Exclude<Beside, 'current' | 'halted'>, string>> = {
  working: 'Being worked out.',
  waiting: 'Worked out when the mistakes are mended.',
  stopped: 'Not worked out: the work was stopped, under “The paper, the jigs and the files”.',
  refused: 'Not worked out: see “The paper, the jigs and the files”.',
}

/** Figures and drawings that the worker works out; while they are those of the order before, that stands over them. */
export const WorkedOut = ({
  what,
  work,
  stop,
  children,
  has = Boolean(children),
}: {
  /** For whoever hears the page. */
  readonly what: string
  /** For what takes long: how it goes on is told, and it can be stopped, here too. */
  readonly work?: Work
  readonly stop?: () => void
  /** Nothing before the first ones are there. */
  readonly children: ComponentChildren
  /** Do figures stand here already? */
  readonly has?: boolean
}) => {
  const { beside } = useBench()
  const why = beside === 'current' || beside === 'halted' ? undefined : WHY[beside]
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of results is no fieldset
    <div
      role="group"
      aria-label={why === undefined ? what : `${what}, of the order before`}
      aria-busy={beside === 'working'}
      class={why === undefined ? '' : 'before'}
    >
      {why !== undefined && (
        <p class="before-note">
          {why} {has ? 'What stands here is of the order as it was before.' : ''}
        </p>
      )}
      {beside === 'working' && work?.doing !== undefined && stop && (
        <p>
          {work.doing}{' '}
          <button type="button" onClick={stop}>
            Stop<span class="unseen"> working out: {what}</span>
          </button>
        </p>
      )}
      {children}
    </div>
  )
}
