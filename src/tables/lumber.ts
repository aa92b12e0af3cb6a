import table from '../../shared/lumber-sizes.json' with { type: 'json' }
import type { Mm } from '../units/brand.js'
import { inches } from '../units/convert.js'

/** A board width as it is sold and as it measures, dressed and dry. */
export interface BoardWidth {
  /** The name in inches, as in "1x4": not a measure. */
  readonly nominal: number
  readonly dry: Mm
}

/** American Softwood Lumber Standard, DOC PS 20; how it was seen stands in `shared/lumber-sizes.json`. */
export const BOARD_WIDTHS: readonly BoardWidth[] = table.board_width.map((row) => ({
  nominal: row.nominal,
  dry: inches(row.dry_in),
}))
