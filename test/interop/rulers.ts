import { execFileSync } from 'node:child_process'
import { type GreyImage, readPgm } from './read-pgm.js'

const DOTS_PER_INCH = 600
export const MM_PER_DOT = 25.4 / DOTS_PER_INCH

/** What is no white paper, in grey. */
export const DARK = 200

export const dots = (length: number): number => Math.round(length / MM_PER_DOT)

/**
 * A page as poppler draws it.
 *
 * @param printer what becomes of a millimetre across and up the page: it is drawn with so many more dots
 */
export const render = (file: string, page: number, printer = { x: 1, y: 1 }): GreyImage =>
  readPgm(
    execFileSync(
      'pdftoppm',
      [
        '-gray',
        ...['-rx', String(DOTS_PER_INCH * printer.x), '-ry', String(DOTS_PER_INCH * printer.y)],
        ...['-f', String(page), '-l', String(page), file],
      ],
      { maxBuffer: 2 ** 30 },
    ),
  )

/** The row of the scale check's bar: the longest dark run below the frame, from the frame's left side. */
export const barRow = (image: GreyImage, left: number, frameBottom: number, along: number): number => {
  const [from, to] = [dots(along - frameBottom + 6), dots(along - frameBottom + 22)]
  const row = Array.from({ length: to - from }, (_, index) => from + index).find((y) => {
    const dark = Array.from({ length: dots(101) }, (_, index) => image.at(dots(left + 0.3) + index, y))
    return dark.every((grey) => grey < DARK)
  })
  if (row === undefined) throw new Error('no bar')
  return row
}

/** From the middle of the first dark run in a row to the middle of the last one before the text. */
export const tickSpan = (image: GreyImage, y: number): number => {
  const middles: number[] = []
  let start: number | undefined
  for (let x = 0; x < dots(116); x++) {
    const dark = image.at(x, y) < DARK
    if (dark && start === undefined) start = x
    if (!dark && start !== undefined) {
      middles.push((start + x - 1) / 2)
      start = undefined
    }
  }
  return (middles.at(-1) ?? Number.NaN) - (middles[0] ?? Number.NaN)
}

/** Middles of the first and the last dark run. */
export const outermost = (length: number, isDark: (index: number) => boolean): [number, number] => {
  const dark = Array.from({ length }, (_, index) => index).filter(isDark)
  const run = (start: number, step: number): number => {
    let end = start
    while (isDark(end + step)) end += step
    return (start + end) / 2
  }
  const [first, last] = [dark[0] ?? 0, dark.at(-1) ?? 0]
  return [first === 0 ? 0 : run(first, 1), run(last, -1)]
}
