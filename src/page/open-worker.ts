import { FIRST_PART, type Packed, READY, unpacked, type WantedPart } from './part-names.js'
import type { Answer, Ask } from './work.js'

/** Starts the worker that lies in the page, and hands it the parts it asks for; they cost nothing until then. */
export const openWorker = async (onAnswer: (answer: Answer) => void): Promise<Worker> => {
  await pageRead()
  const code = await unpacked(packedAt(FIRST_PART)).text()
  const worker = new Worker(URL.createObjectURL(new Blob([code], { type: 'text/javascript' })))
  return new Promise((resolve, reject) => {
    worker.onerror = ({ message }): void => reject(new Error(message))
    worker.onmessage = ({ data, ports: [port] }: MessageEvent<Answer | WantedPart | typeof READY>): void => {
      if (data === READY) resolve(worker)
      else if ('part' in data) port?.postMessage(packedOr(data.part))
      else onAnswer(data)
    }
  })
}

/** The parts stand behind the script that asks for them. */
const pageRead = (): Promise<void> =>
  new Promise((resolve) => {
    if (document.readyState !== 'loading') resolve()
    else document.addEventListener('DOMContentLoaded', () => resolve(), { once: true })
  })

const packedOr = (part: string): Packed | string => {
  try {
    return packedAt(part)
  } catch (error) {
    return String(error)
  }
}

/** @throws Error where the build left no such part in the page */
const packedAt = (part: string): Packed => {
  const found = document.getElementById(`part-${part}`)
  if (!found) throw new Error(`the page has no part ${part}`)
  return {
    bytes: Uint8Array.from(atob(found.textContent), (sign) => sign.charCodeAt(0)),
    needs: found.dataset.needs?.split(' ').filter(Boolean) ?? [],
  }
}

/** What a worker of its own, which waits for nothing else, has to say at last. */
export const answerOf = async (asked: Ask): Promise<Exclude<Answer, { answer: 'doing' }>> => {
  let worker: Worker | undefined
  try {
    return await new Promise((resolve, reject) => {
      openWorker((answer) => {
        if (answer.answer !== 'doing') resolve(answer)
      }).then((opened) => {
        worker = opened
        opened.onerror = () => reject(new Error('the worker failed'))
        opened.postMessage(asked)
      }, reject)
    })
  } finally {
    worker?.terminate()
  }
}
