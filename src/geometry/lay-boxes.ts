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

type Turns = (box: Box) => boolean

/** Which boxes are turned, where they go either way: none, those that lie, those that stand. */
const TURNS: readonly Turns[] = [
  () => false,
  ({ across, height }) => across > height,
  ({ across, height }) => height > across,
]

/**
 * Boxes in rows or columns on as few sheets as these allow, none over another: the highest first, each into the first
 * row that has room for it. Of several ways with as few sheets the one that takes the least of them.
 *
 * @param room of a sheet; without one all boxes go onto one, as they are
 * @returns undefined for a box that goes onto no sheet
 */
export const layBoxes = (
  boxes: readonly Box[],
  gap: number,
  room: Box | undefined,
): readonly LaidBox[] | undefined => {
  if (!room) {
    const across = Math.max(ROW, ...boxes.map((box) => box.across))
    return inRows(boxes, gap, { across, height: Number.POSITIVE_INFINITY }, () => false)
  }
  const ways = [false, true].flatMap((columns) =>
    TURNS.flatMap((turns) => {
      const laid = columns ? inColumns(boxes, gap, room, turns) : inRows(boxes, gap, room, turns)
      return laid ? [{ laid, sheets: sheetsOf(laid), taken: takenBy(laid, boxes) }] : []
    }),
  )
  return ways.sort((a, b) => a.sheets - b.sheets || a.taken - b.taken)[0]?.laid
}

const quarterTurned = ({ across, height }: Box): Box => ({ across: height, height: across })

const inColumns = (boxes: readonly Box[], gap: number, room: Box, turns: Turns): LaidBox[] | undefined =>
  inRows(boxes.map(quarterTurned), gap, quarterTurned(room), turns)?.map(({ x, y, ...laid }) => ({
    ...laid,
    x: y,
    y: x,
  }))

interface Shelf {
  readonly sheet: number
  readonly y: number
  readonly height: number
  /** Where the next box begins. */
  end: number
}

const inRows = (boxes: readonly Box[], gap: number, room: Box, turns: Turns): LaidBox[] | undefined => {
  const goes = ({ across, height }: Box): boolean => across <= room.across && height <= room.height
  const lying = boxes.map((box, index) => {
    const turned = turns(box) ? goes(quarterTurned(box)) || !goes(box) : !goes(box)
    return { index, turned, ...(turned ? quarterTurned(box) : box) }
  })
  if (!lying.every(goes)) return undefined
  const shelves: Shelf[] = []
  const laid: LaidBox[] = new Array(boxes.length)
  for (const { index, turned, across, height } of lying.sort((a, b) => b.height - a.height)) {
    const shelf =
      shelves.find((each) => each.end + across <= room.across && height <= each.height) ??
      openShelf(shelves, height, gap, room.height)
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

const sheetsOf = (laid: readonly LaidBox[]): number => 1 + Math.max(-1, ...laid.map(({ sheet }) => sheet))

/** The areas around what lies on each sheet, from its corner on. */
const takenBy = (laid: readonly LaidBox[], boxes: readonly Box[]): number => {
  const reach = Array.from({ length: sheetsOf(laid) }, () => ({ x: 0, y: 0 }))
  for (const [index, { sheet, x, y, turned }] of laid.entries()) {
    const box = boxes[index] ?? { across: 0, height: 0 }
    const { across, height } = turned ? quarterTurned(box) : box
    const far = reach[sheet]
    if (!far) continue
    far.x = Math.max(far.x, x + across)
    far.y = Math.max(far.y, y + height)
  }
  return reach.reduce((sum, { x, y }) => sum + x * y, 0)
}
