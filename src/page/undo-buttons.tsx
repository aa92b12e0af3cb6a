import { redone, type Steps, undone } from './steps.js'

/** A step back, a step on. */
export const UndoButtons = ({
  steps: { past, future },
  onStep,
}: {
  readonly steps: Steps
  readonly onStep: (step: (steps: Steps) => Steps) => void
}) => (
  <div class="field">
    <span />
    <div class="back-and-on">
      <button type="button" disabled={past.length === 0} onClick={() => onStep(undone)}>
        Undo
      </button>
      <button type="button" disabled={future.length === 0} onClick={() => onStep(redone)}>
        Redo
      </button>
    </div>
  </div>
)
