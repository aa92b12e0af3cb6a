import { readFileSync } from 'node:fs'
import { inflateSync } from 'node:zlib'

/** An image of four bytes per pixel: red, green, blue, opacity; row by row from the top. */
export interface Image {
  readonly across: number
  readonly down: number
  readonly pixels: Uint8Array
}

/** Reads the kind of PNG that renderers write: 8 bits per channel, RGB or RGBA, not interlaced (ISO/IEC 15948). */
export const readPng = (path: string): Image => {
  const file = readFileSync(path)
  const chunks = pngChunks(file)
  const head = chunks.find(({ type }) => type === 'IHDR')?.content
  if (!head) throw new Error(`${path} is no PNG`)
  const [across, down] = [head.readUInt32BE(0), head.readUInt32BE(4)]
  const [depth, colour, , , interlace] = head.subarray(8)
  const channels = colour === 6 ? 4 : 3
  if (depth !== 8 || interlace !== 0 || (colour !== 6 && colour !== 2))
    throw new Error(`${path}: another kind of PNG`)
  const rows = unfiltered(
    inflateSync(Buffer.concat(chunks.filter(({ type }) => type === 'IDAT').map(({ content }) => content))),
    across * channels,
    down,
    channels,
  )
  return { across, down, pixels: channels === 4 ? rows : withOpacity(rows) }
}

const pngChunks = (file: Buffer): { type: string; content: Buffer }[] => {
  const chunks: { type: string; content: Buffer }[] = []
  for (let offset = 8; offset < file.length; ) {
    const size = file.readUInt32BE(offset)
    const type = file.toString('latin1', offset + 4, offset + 8)
    chunks.push({ type, content: file.subarray(offset + 8, offset + 8 + size) })
    offset += 12 + size
  }
  return chunks
}

/** Each row says how its bytes are predicted from the bytes to the left, above, and above left (ISO/IEC 15948, 9). */
const unfiltered = (coded: Uint8Array, width: number, rows: number, channels: number): Uint8Array => {
  const plain = new Uint8Array(width * rows)
  for (let row = 0; row < rows; row++) {
    const filter = coded[row * (width + 1)] ?? 0
    const start = row * width
    for (let column = 0; column < width; column++) {
      const left = column >= channels ? (plain[start + column - channels] ?? 0) : 0
      const above = row > 0 ? (plain[start + column - width] ?? 0) : 0
      const aboveLeft = row > 0 && column >= channels ? (plain[start + column - width - channels] ?? 0) : 0
      const byte = coded[row * (width + 1) + 1 + column] ?? 0
      plain[start + column] = byte + predicted(filter, left, above, aboveLeft)
    }
  }
  return plain
}

const predicted = (filter: number, left: number, above: number, aboveLeft: number): number => {
  if (filter === 0) return 0
  if (filter === 1) return left
  if (filter === 2) return above
  if (filter === 3) return (left + above) >> 1
  const [a, b, c] = [
    Math.abs(above - aboveLeft),
    Math.abs(left - aboveLeft),
    Math.abs(left + above - 2 * aboveLeft),
  ]
  return a <= b && a <= c ? left : b <= c ? above : aboveLeft
}

const withOpacity = (rgb: Uint8Array): Uint8Array => {
  const pixels = new Uint8Array((rgb.length / 3) * 4)
  for (let index = 0; index < rgb.length / 3; index++) {
    pixels.set(rgb.subarray(3 * index, 3 * index + 3), 4 * index)
    pixels[4 * index + 3] = 255
  }
  return pixels
}

/** The box of pixels of a colour `#rrggbb` that are covered by half or more; edges in pixels from the upper left. */
export const inkBox = ({ across, pixels }: Image, colour: string) => {
  const wanted = [1, 3, 5].map((start) => Number.parseInt(colour.slice(start, start + 2), 16))
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity]
  for (let index = 0; index < pixels.length; index += 4) {
    if ((pixels[index + 3] ?? 0) < 128) continue
    if (wanted.some((value, channel) => Math.abs(value - (pixels[index + channel] ?? 0)) > NEAR)) continue
    const [column, row] = [(index / 4) % across, Math.floor(index / 4 / across)]
    left = Math.min(left, column)
    right = Math.max(right, column + 1)
    top = Math.min(top, row)
    bottom = Math.max(bottom, row + 1)
  }
  return { left, top, right, bottom }
}

/** Renderers store colour times opacity, so that a half covered pixel comes back a little off. */
const NEAR = 8
