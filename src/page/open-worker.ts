import type { Answer, Ask } from './work.js'

/** Where the build leaves the worker's code: in the page itself, compressed, so that it costs nothing until it is used. */
const KEPT_AT = 'worker-code'

/** Unpacks the worker that lies in the page, and starts it. */
export const openWorker = async (onAnswer: (answer: Answer) => void): Promise<Worker> => {
  const packed = document.getElementById(KEPT_AT)?.textContent ?? ''
  const bytes = Uint8Array.from(atob(packed.trim()), (sign) => sign.charCodeAt(0))
  const unpacked = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip'))
  const code = await new Response(unpacked).text()
  const worker = new Worker(URL.createObjectURL(new Blob([code], { type: 'text/javascript' })))
  worker.onmessage = ({ data }: MessageEvent<Answer>): void => onAnswer(data)
  return worker
}

/** One file from a worker of its own, which waits for nothing else; or why there is none. */
export const fileOf = async (asked: Ask): Promise<Extract<Answer, { answer: 'file' | 'refused' }>> => {
  let worker: Worker | undefined
  try {
    return await new Promise((resolve, reject) => {
      openWorker((answer) => {
        if (answer.answer === 'file' || answer.answer === 'refused') resolve(answer)
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
