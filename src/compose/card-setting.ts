import type { WarningsTold } from './card-words.js'
import type { PictureKind } from './star-picture.js'

/** At the saw nothing is lettered smaller (ISO 3098). */
export const MUST_READ = 3.5

/** A name's heights, each with the lines it may take; the last takes as many as it needs. */
export const LARGE_NAME = [
  { height: 10, lines: 1 },
  { height: 7, lines: 2 },
  { height: 5, lines: 2 },
  { height: MUST_READ, lines: 1 },
]
const SMALL_NAME = LARGE_NAME.filter(({ height }) => height !== 7)
const SMALLEST_NAME = SMALL_NAME.map(({ height }) => ({ height, lines: 1 }))

/** How roomy a card is set. */
export interface Setting {
  /** Height of the saw's figures. */
  readonly figures: number
  readonly name: typeof LARGE_NAME
  readonly picture: PictureKind
  readonly warnings: WarningsTold
  /** The maker's own line, or where it is read. */
  readonly note: 'whole' | 'elsewhere'
}

export const ROOMY: Setting = {
  figures: 14,
  name: LARGE_NAME,
  picture: 'dimensioned',
  warnings: 'all',
  note: 'whole',
}

const TIGHT: Setting = { ...ROOMY, figures: 10, name: SMALL_NAME }
const BARE: Setting = { ...TIGHT, picture: 'bare' }

const atTheSaw = (setting: Setting): Setting => ({ ...setting, warnings: 'at the saw' })

/** The roomiest first. */
export const SETTINGS: readonly Setting[] = [ROOMY, { ...ROOMY, figures: 10 }, TIGHT, BARE, atTheSaw(BARE)]

/** Figures at twice what must be read; then the name smaller too. */
const PACKED: Setting = { ...BARE, figures: 2 * MUST_READ }
const DENSE: Setting = { ...PACKED, name: SMALLEST_NAME }

/** For what the others leave too little room. */
export const PACKED_SETTINGS: readonly Setting[] = [PACKED, atTheSaw(PACKED), DENSE, atTheSaw(DENSE)]
/** When nothing else leaves room: a long note must stay away. */
export const FULLEST: Setting = { ...atTheSaw(DENSE), note: 'elsewhere' }
