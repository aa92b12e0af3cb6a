import type { WrittenPath } from './written-path.js'

/** Decimals of a bulge: half a metre of chord multiplies it. */
export const BULGE_DECIMALS = 10

const CLOSED = 1
/** Dashes run on around the corners, instead of starting anew at each. */
const DASHES_RUN_ON = 128

/** Group 70 of a polyline. */
export const polylineFlags = ({ closed }: WrittenPath, dashed: boolean): number =>
  (closed ? CLOSED : 0) + (dashed ? DASHES_RUN_ON : 0)

/** The two ends of a path that is a single straight stroke. */
export const strokeEnds = ({ vertices, closed }: WrittenPath) => {
  const [from, to, ...more] = vertices
  return from && to && more.length === 0 && !closed && from.bulge === 0 ? { from, to } : undefined
}
