/* Room for the furniture in the strip below the window, in mm. The pieces' largest sizes stand in `furniture-names`. */

/** Scale check with the caution panel under it, page map, title block: each in a box of this height. */
export const BOX_HEIGHT = 24
export const CHECK_WIDTH = 102
export const MAP_WIDTH = 24
export const TITLE_WIDTH = 56

/** White between two boxes, and between them and the window. */
export const GAP = 2

/** What a corrected page says of its printer. */
const CORRECTION_HEIGHT = 7

/** Side by side; where the sheet is too narrow for that the title block stands above the others. */
export const STRIP_WIDTH = CHECK_WIDTH + MAP_WIDTH + TITLE_WIDTH + 2 * GAP

export const inOneRow = (across: number): boolean => across >= STRIP_WIDTH

/** Height of the strip on a sheet whose window is `across` wide. */
export const stripHeight = (across: number, corrected: boolean): number =>
  (inOneRow(across) ? 1 : 2) * (BOX_HEIGHT + GAP) + (corrected ? CORRECTION_HEIGHT : 0)
