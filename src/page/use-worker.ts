import { useEffect, useRef, useState } from 'preact/hooks'
import { openWorker } from './open-worker.js'
import { type Answer, type Ask, ENOUGH, type Given, isSameGiven, type Laid } from './work.js'

/** What the worker is at. */
export interface Work {
  /** In words; undefined when it rests. */
  readonly doing?: string
  /** Stopped now, it keeps the best so far. */
  readonly keeps?: boolean
  /** The order that was laid last, and what it was made of. */
  readonly laid?: { readonly given: Given; readonly order: Laid }
  readonly refused: readonly string[]
  readonly stopped: boolean
}

/** Milliseconds an order must stay as it is before its pages are searched for. */
const SETTLED = 350

const RESTING: Work = { refused: [], stopped: false }

/** Lays the order on paper beside the page whenever it has settled, and saves files the maker asks for. */
export const useWorker = (given: Given, sound: boolean) => {
  const [work, setWork] = useState(RESTING)
  const latest = useRef(work)
  latest.current = work
  const worker = useRef<Promise<Worker> | undefined>(undefined)
  /** What it works on. */
  const busyWith = useRef<Given | undefined>(undefined)
  const ask = (message: Ask): void => {
    // Work on an order that is no longer wanted is in the way.
    if (busyWith.current && !isSameGiven(busyWith.current, message.given)) end()
    worker.current ??= opened()
    busyWith.current = message.given
    worker.current.then(
      (opened) => opened.postMessage(message),
      (error: unknown) => take({ answer: 'refused', problems: [`Pages cannot be laid out here: ${error}`] }),
    )
  }
  /** What an ended worker still had to say is of no use. */
  const opened = (): Promise<Worker> => {
    const own = openWorker((answer) => {
      if (worker.current === own) take(answer)
    })
    return own
  }
  const take = (answer: Answer): void => {
    if (answer.answer !== 'doing') busyWith.current = undefined
    switch (answer.answer) {
      case 'doing':
        setWork((before) => ({ ...before, doing: answer.what, keeps: answer.keeps }))
        break
      case 'laid':
        setWork({ ...RESTING, laid: { given: answer.given, order: answer.laid } })
        break
      case 'refused':
        setWork({ ...RESTING, refused: answer.problems })
        break
      case 'file':
        saveAs(answer.path.split('/').at(-1) ?? answer.path, answer.bytes)
        setWork(resting)
    }
  }
  const end = (): void => {
    worker.current?.then((opened) => opened.terminate()).catch(() => {})
    worker.current = undefined
    busyWith.current = undefined
  }
  const stop = (): void => {
    if (latest.current.keeps) {
      worker.current?.then((opened) => opened.postMessage(ENOUGH)).catch(() => {})
      setWork((before) => ({ ...before, doing: 'Stopping with the best so far', keeps: false }))
      return
    }
    end()
    setWork((before) => ({ ...resting(before), stopped: true }))
  }
  const lay = (): void => {
    setWork((before) => ({ ...before, doing: 'Laying out', stopped: false }))
    ask({ ask: 'lay', given })
  }
  /** An order that was changed and changed back has been laid already. */
  const settle = (): void => {
    const { laid, stopped } = latest.current
    if (!laid || stopped || !isSameGiven(laid.given, given)) lay()
    else if (busyWith.current && !isSameGiven(busyWith.current, given)) {
      end()
      setWork(resting)
    }
  }
  useEffect(() => {
    if (!sound) return
    const timer = setTimeout(settle, SETTLED)
    return () => clearTimeout(timer)
  }, [given, sound])
  return { work, ask, stop, lay }
}

const resting = ({ doing: _, keeps: __, ...work }: Work): Work => work

/** Hands a file to the browser, which asks where it goes or puts it with the downloads. */
export const saveAs = (name: string, content: string | Uint8Array<ArrayBuffer>): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([content], { type: 'application/octet-stream' }))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
}
