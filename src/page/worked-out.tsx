import type { ComponentChildren } from 'preact'
import { useBench } from './bench.js'
import type { Beside } from './beside.js'

const WHY: Readonly<Record<Exclude<Beside, 'current'>, string>> = {
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
  const is = beside === 'current'
  return (
    // biome-ignore lint/a11y/useSemanticElements: a group of results is no fieldset
    <div
      role="group"
      aria-label={is ? what : `${what}, of the order before`}
      aria-busy={beside === 'working'}
      class={is ? '' : 'before'}
    >
      {!is && (
        <p class="before-note">
          {WHY[beside]} {children ? 'What stands here is of the order as it was before.' : ''}
        </p>
      )}
      {children}
    </div>
  )
}
