import { useState } from 'preact/hooks'
import type { DrawingKind } from '../drawing-content.js'
import { useBench } from './bench.js'
import { answerOf } from './open-worker.js'
import { saveAs } from './use-worker.js'
import type { Ask } from './work.js'

/** In the order in which makers want them: to print, to look at, to cut. */
export const KINDS: readonly DrawingKind[] = ['.pdf', '.svg', '.dxf']

/** A button that has a file written beside the page: its code is unpacked only when it is wanted. */
export const AskedFile = ({
  kind,
  of,
  asked,
  disabled = false,
}: {
  readonly kind: DrawingKind
  /** What the file is of, for whoever hears the page. */
  readonly of: string
  readonly asked: Ask
  readonly disabled?: boolean
}) => {
  const name = kind.slice(1).toUpperCase()
  const { job } = useBench()
  const [told, setTold] = useState('')
  const [writing, setWriting] = useState(false)
  const save = async (): Promise<string> => {
    const answer = await answerOf(asked)
    if (answer.answer === 'refused') return answer.problems.join(' ')
    if (answer.answer === 'file') saveAs(answer.path, answer.bytes)
    return ''
  }
  const start = async (): Promise<void> => {
    setWriting(true)
    setTold(`Writing the ${name}.`)
    setTold(await save().catch(String))
    setWriting(false)
  }
  return (
    <>
      <button
        type="button"
        disabled={disabled || job.plan === undefined || writing}
        onClick={() => void start()}
      >
        Save {name}
        <span class="unseen"> of {of}</span>
      </button>
      {told !== '' && <span role="status">{told}</span>}
    </>
  )
}
