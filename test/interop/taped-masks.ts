import type { Point } from '../../src/geometry/point.js'
import { leftOver, type Motion, moveBy, STILL } from '../paper/motion.js'
import type { TapedPage } from '../paper/taped.js'
import type { ReadPage, ReadText } from '../read-back/read-pdf.js'
import { along, emptyMask, type Mask, uppermost } from './taped-image.js'

/** How closely lettering must meet lettering to be the same, in mm. */
const SAME = 0.1

export const hideChain = (mask: Mask, chain: readonly Point[], around: number): void => {
  for (const { at } of along(chain, 0.3)) mask.hide(at, around)
}

/** Frames, trimmed edges, register marks and words along edges, as far as they are seen on the table. */
export const furnitureMask = (pages: readonly TapedPage[], read: readonly ReadPage[]): Mask => {
  const mask = emptyMask()
  const top = uppermost(pages)
  pages.forEach(({ page, onTable }, index) => {
    const figure = new Set(page.figure)
    const hide = (onPage: Point, around: number): void => {
      const at = moveBy(onTable, onPage)
      if (top(at)?.index === index) mask.hide(at, around)
    }
    for (const stroke of read[index]?.strokes ?? []) {
      if (figure.has(stroke)) continue
      const points = stroke.closed ? [...stroke.points, ...stroke.points.slice(0, 1)] : stroke.points
      for (const { at } of along(points, 0.2)) hide(at, 0.4)
    }
    for (const text of read[index]?.lettering ?? []) {
      if (!text.clip) for (const at of spotsOf(text, read[index])) hide(at, 2)
    }
  })
  return mask
}

/** Lettering that stands at other places on the single page, such as notes. */
export const wordMasks = (
  pages: readonly TapedPage[],
  read: readonly ReadPage[],
  single: ReadPage,
  motion: Motion,
) => {
  const own = single.lettering.filter(({ clip }) => clip)
  const theirs = pages.flatMap(({ onTable }, index) =>
    (read[index]?.lettering ?? [])
      .filter(({ clip }) => clip)
      .map((text) => ({ text, onTable, page: read[index] })),
  )
  const isSame = (text: ReadText, other: { text: ReadText; onTable: Motion }): boolean =>
    text.text === other.text.text &&
    leftOver(STILL, [moveBy(motion, text.at)], [moveBy(other.onTable, other.text.at)]) < SAME
  const [ofSingle, ofTaped] = [emptyMask(), emptyMask()]
  for (const text of own) {
    if (theirs.some((other) => isSame(text, other))) continue
    for (const at of spotsOf(text, single)) ofSingle.hide(moveBy(motion, at), 5)
  }
  for (const other of theirs) {
    if (own.some((text) => isSame(text, other))) continue
    for (const at of spotsOf(other.text, other.page)) ofTaped.hide(moveBy(other.onTable, at), 5)
  }
  return { ofSingle, ofTaped }
}

/** Points along a line of lettering. */
const spotsOf = ({ text, at, turn }: ReadText, page: ReadPage | undefined): Point[] => {
  const width = page?.lines.find((line) => line.text === text)?.width ?? 2 * text.length
  return Array.from({ length: Math.ceil(width) + 1 }, (_, step) => ({
    x: at.x + Math.cos(turn) * step - Math.sin(turn),
    y: at.y + Math.sin(turn) * step + Math.cos(turn),
  }))
}
