import { bitsAt, STEP } from '../nest/random.js'
import * as maths from '../units/maths.js'

/*
 * Normal draws by the ziggurat of Marsaglia and Tsang, The ziggurat method for generating random variables (2000),
 * layer and place taken from different bits of a draw, as Doornik (2005) asks. Nearly every draw is one comparison and
 * one product: a million stars are a hundred million draws.
 */

const LAYERS = 128
/** Where the tail begins, and the area of each layer, for 128 of them (table of the paper). */
const TAIL = 3.442619855899
const AREA = 9.91256303526217e-3

/** Half of the range of the signed 24-bit place within a layer. */
const PLACES = 2 ** 23
const UNSIGNED = 2 ** 32

const density = (x: number): number => maths.exp((-x * x) / 2)

/** Right ends of the layers, from the widest to the top; the first is that of a box with the tail's area in it. */
const ends = (): Float64Array => {
  const found = new Float64Array(LAYERS + 1)
  found[0] = AREA / density(TAIL)
  found[1] = TAIL
  for (let layer = 2; layer < LAYERS; layer++) {
    const outer = found[layer - 1] ?? 0
    found[layer] = Math.sqrt(-2 * maths.ln(AREA / outer + density(outer)))
  }
  return found
}

const ENDS = ends()
const HEIGHTS = ENDS.map(density)
const WIDTHS = ENDS.map((end) => end / PLACES)
/** Places nearer than this lie below the density whatever their height. */
const SURE = Int32Array.from({ length: LAYERS }, (_, layer) =>
  Math.floor((PLACES * (ENDS[layer + 1] as number)) / (ENDS[layer] as number)),
)

/**
 * Draws of mean 0 and standard deviation 1, the same ones for the same whole number `seed` on every machine.
 *
 * @returns fills a list with the next draws; many at once, for then all it reckons with stays at hand
 */
export const normalDraws = (seed: number): ((into: Float64Array) => void) => {
  let state = seed | 0
  const next = (): number => {
    state = (state + STEP) | 0
    return bitsAt(state)
  }
  const uniform = (): number => ((next() >>> 0) + 0.5) / UNSIGNED

  /** Beyond the last layer: Marsaglia (1964). */
  const tail = (): number => {
    for (;;) {
      const x = -maths.ln(uniform()) / TAIL
      const y = -maths.ln(uniform())
      if (2 * y > x * x) return TAIL + x
    }
  }

  /** A draw that begins with these bits, wherever they lie. */
  const drawn = (first: number): number => {
    for (let bits = first; ; bits = next()) {
      const layer = bits & (LAYERS - 1)
      const x = (bits >> 8) * (WIDTHS[layer] as number)
      if (Math.abs(bits >> 8) < (SURE[layer] as number)) return x
      if (layer === 0) return bits < 0 ? -tail() : tail()
      const low = HEIGHTS[layer] as number
      const high = HEIGHTS[layer + 1] as number
      if (low + uniform() * (high - low) < density(x)) return x
    }
  }

  return (into) => {
    let at = state
    for (let index = 0; index < into.length; index++) {
      at = (at + STEP) | 0
      const bits = bitsAt(at)
      const layer = bits & (LAYERS - 1)
      const place = bits >> 8
      if (Math.abs(place) < (SURE[layer] as number)) into[index] = place * (WIDTHS[layer] as number)
      else {
        state = at
        into[index] = drawn(bits)
        at = state
      }
    }
    state = at
  }
}
