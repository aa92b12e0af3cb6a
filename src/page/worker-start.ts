import { type Packed, READY, unpacked, type WantedPart, WORKER_PART } from './part-names.js'

/*
 * Unpacks the other parts of the worker as they are used. Opened from a disk, a page may hand its worker no address of
 * code: each of the two has an origin of its own, and only what the worker itself has unpacked is code to it.
 */

const packed = async (part: string): Promise<Packed> => {
  const { port1, port2 } = new MessageChannel()
  const answered = new Promise<Packed | string>((resolve) => {
    port1.onmessage = ({ data }: MessageEvent<Packed | string>): void => resolve(data)
  })
  const wanted: WantedPart = { part }
  self.postMessage(wanted, { transfer: [port2] })
  const answer = await answered
  port1.close()
  if (typeof answer === 'string') throw new Error(answer)
  return answer
}

/** Addresses of unpacked code, each made once. */
const urls = new Map<string, Promise<string>>()

const urlOf = (part: string): Promise<string> => {
  const known = urls.get(part)
  if (known) return known
  const made = unpackedUrl(part)
  urls.set(part, made)
  return made
}

const unpackedUrl = async (part: string): Promise<string> => {
  const found = await packed(part)
  let code = await unpacked(found).text()
  for (const need of found.needs) code = code.replaceAll(`"part:${need}"`, JSON.stringify(await urlOf(need)))
  return URL.createObjectURL(new Blob([code], { type: 'text/javascript' }))
}

const imported = async (part: string): Promise<unknown> => import(/* @vite-ignore */ await urlOf(part))

/** The build writes these in place of what the library imports on use. */
Object.assign(self, {
  part: imported,
  partBytes: async (part: string): Promise<Uint8Array> =>
    new Uint8Array(await unpacked(await packed(part)).arrayBuffer()),
})

imported(WORKER_PART).then(
  () => self.postMessage(READY),
  // Thrown outside a promise, it reaches the page as the worker's error.
  (error: unknown) =>
    setTimeout(() => {
      throw error
    }),
)
