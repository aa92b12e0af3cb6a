/** The parts of the worker that it begins with: what unpacks the others, and what lays out. */
export const FIRST_PART = 'worker-start.js'
export const WORKER_PART = 'worker.js'

/** A part as it lies in the page: compressed, with the names of the parts that its code imports at once. */
export interface Packed {
  readonly bytes: Uint8Array<ArrayBuffer>
  readonly needs: readonly string[]
}

/** What the worker asks the page for, on a channel on which one {@link Packed} or the reason against it comes back. */
export interface WantedPart {
  readonly part: string
}

/** What the worker says when it can be asked. */
export const READY = 'ready'

export const unpacked = ({ bytes }: Packed): Response =>
  new Response(new Blob([bytes]).stream().pipeThrough(new DecompressionStream('gzip')))
