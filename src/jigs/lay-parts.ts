import type { CuttingRoom } from './cutting-room.js'

export interface Box {
  readonly across: number
  readonly height: number
}

/** Where a box lies: its lower left corner on a sheet, which are numbered from 0; turned by a quarter or not. */
export interface LaidBox {
  readonly sheet: number
  readonly x: number
  readonly y: number
  readonly turned: boolean
}

/** Without a limit, rows are so wide, or as the widest box, in mm. */
const ROW = 560

interface Shelf {
  readonly sheet: number
  readonly y: number
  readonly height: number
  /** Where the next box begins. */
  end: number
}

/**
 * Boxes in rows on as few sheets as rows allow, none over another: the highest first, each into the first row that has
 * room for it. Boxes that a sheet takes only turned by a quarter are turned.
 *
 * @returns undefined for a box that goes onto no sheet
 */
export const layBoxes = (
  boxes: readonly Box[],
  gap: number,
  room: CuttingRoom | undefined,
): readonly LaidBox[] | undefined => {
  const wide = room?.length ?? Math.max(ROW, ...boxes.map(({ across }) => across))
  const high = room?.width ?? Number.POSITIVE_INFINITY
  const goes = ({ across, height }: Box): boolean => across <= wide && height <= high
  const lying = boxes.map((box, index) => {
    const turned = !goes(box)
    return { index, turned, ...(turned ? { across: box.height, height: box.across } : box) }
  })
  if (!lying.every(goes)) return undefined
  const shelves: Shelf[] = []
  const laid: LaidBox[] = new Array(boxes.length)
  for (const { index, turned, across, height } of lying.sort((a, b) => b.height - a.height)) {
    const shelf =
      shelves.find((each) => each.end + across <= wide && height <= each.height) ??
      openShelf(shelves, height, gap, high)
    laid[index] = { sheet: shelf.sheet, x: shelf.end, y: shelf.y, turned }
    shelf.end += across + gap
  }
  return laid
}

/** A new row below the others of the first sheet that has room for it, or on a new sheet. */
const openShelf = (shelves: Shelf[], height: number, gap: number, high: number): Shelf => {
  const sheets = Math.max(-1, ...shelves.map(({ sheet }) => sheet)) + 1
  const free = (sheet: number): number =>
    Math.max(0, ...shelves.filter((each) => each.sheet === sheet).map((each) => each.y + each.height + gap))
  let sheet = 0
  while (sheet < sheets && free(sheet) + height > high) sheet += 1
  const shelf = { sheet, y: free(sheet), height, end: 0 }
  shelves.push(shelf)
  return shelf
}
