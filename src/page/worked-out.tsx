import type { ComponentChildren } from 'preact'
import { useBench } from './bench.js'
import type { Beside } from './beside.js'

const WHY: Readonly<Record<Exclude<Beside, 'current' | 'halted'>, string>> = {
  working: 'Being worked out.',
  stopped: 'Not worked out: the work was stopped, under “The paper, the jigs and the files”.',
  refused: 'Not worked out: see “The paper, the jigs and the files”.',
}

/** Figures and drawings that the worker works out; while they are those of the order before, that stands over them. */
export const WorkedOut = ({
  what,
  children,
}: {
  /** For whoever hears the page. */
  readonly what: string
  /** Nothing before the first ones are there. */
  readonly children: ComponentChildren
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
          {why} {children ? 'What stands here is of the order as it was before.' : ''}
        </p>
      )}
      {children}
    </div>
  )
}
