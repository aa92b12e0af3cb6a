import type { Answer } from './work.js'

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
