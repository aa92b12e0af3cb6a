/** A grey image: 0 is black, 255 white; x to the right, y down, in dots. */
export interface GreyImage {
  readonly across: number
  readonly down: number
  readonly at: (x: number, y: number) => number
}

/** Reads a binary portable graymap (P5, netpbm), as pdftoppm writes it. */
export const readPgm = (bytes: Buffer): GreyImage => {
  const header = /^P5\s+(\d+)\s+(\d+)\s+255\s/.exec(bytes.subarray(0, 64).toString('latin1'))
  if (!header) throw new Error('not a graymap')
  const [whole, across, down] = [header[0].length, Number(header[1]), Number(header[2])]
  return { across, down, at: (x, y) => bytes[whole + y * across + x] ?? 255 }
}
