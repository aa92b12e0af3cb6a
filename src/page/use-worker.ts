import { useEffect, useRef, useState } from 'preact/hooks'
import { openWorker } from './open-worker.js'
import type { Answer, Ask, Laid } from './work.js'

/** What the worker is at. */
export interface Work {
  /** In words; undefined when it rests. */
  readonly doing?: string
  /** The order that was laid last, and its text. */
  readonly laid?: { readonly text: string; readonly order: Laid }
  readonly refused: readonly string[]
  readonly stopped: boolean
}

/** Milliseconds an order must stay as it is before its pages are searched for. */
const SETTLED = 350

const RESTING: Work = { refused: [], stopped: false }

/** Lays the order on paper beside the page whenever it has settled, and saves files the maker asks for. */
export const useWorker = (text: string, sound: boolean) => {
  const [work, setWork] = useState(RESTING)
  const worker = useRef<Promise<Worker> | undefined>(undefined)
  const busy = useRef(false)
  const ask = (message: Ask): void => {
    worker.current ??= openWorker(take)
    busy.current = true
    worker.current.then(
      (opened) => opened.postMessage(message),
      (error: unknown) => take({ answer: 'refused', problems: [`Pages cannot be laid out here: ${error}`] }),
    )
  }
  const take = (answer: Answer): void => {
    busy.current = answer.answer === 'doing'
    switch (answer.answer) {
      case 'doing':
        setWork((before) => ({ ...before, doing: answer.what }))
        break
      case 'laid':
        setWork({ ...RESTING, laid: { text: answer.text, order: answer.laid } })
        break
      case 'refused':
        setWork({ ...RESTING, refused: answer.problems })
        break
      case 'file':
        saveAs(answer.path.split('/').at(-1) ?? answer.path, answer.bytes)
        setWork(({ doing: _, ...rest }) => rest)
    }
  }
  const end = (): void => {
    worker.current?.then((opened) => opened.terminate()).catch(() => {})
    worker.current = undefined
    busy.current = false
  }
  const stop = (): void => {
    end()
    setWork(({ doing: _, ...before }) => ({ ...before, stopped: true }))
  }
  const lay = (): void => {
    if (busy.current) end()
    setWork((before) => ({ ...before, doing: 'Laying out', stopped: false }))
    ask({ ask: 'lay', text })
  }
  useEffect(() => {
    if (!sound) return
    const timer = setTimeout(lay, SETTLED)
    return () => clearTimeout(timer)
  }, [text, sound])
  return { work, ask, stop, lay }
}

/** Hands a file to the browser, which asks where it goes or puts it with the downloads. */
export const saveAs = (name: string, content: string | Uint8Array<ArrayBuffer>): void => {
  const link = document.createElement('a')
  link.href = URL.createObjectURL(new Blob([content], { type: 'application/octet-stream' }))
  link.download = name
  link.click()
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000)
}
