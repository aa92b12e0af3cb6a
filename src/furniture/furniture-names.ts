import type { Mm } from '../units/brand.js'
import { mm } from '../units/convert.js'

/** What a maker's drawing may be given to letter, written `{title}` in its text. */
export type SlotName =
  | 'title'
  | 'supplementary-title'
  | 'document-type'
  | 'sheet'
  | 'sheets'
  | 'date'
  | 'scale'
  | 'creator'
  | 'frame'

export interface FurniturePiece {
  /** The largest its drawing may be: as much as a page keeps free for it. */
  readonly across: Mm
  readonly height: Mm
  readonly slots: readonly SlotName[]
  /** Those that a page cannot do without. */
  readonly needed: readonly SlotName[]
  /** It goes into drawings too, which know lines and lettering but no colours, widths or fills. */
  readonly linesOnly: boolean
}

export type FurnitureName =
  | 'title-block'
  | 'scale-check-mm'
  | 'scale-check-in'
  | 'caution'
  | 'register-mark'
  | 'grain-arrow'

const piece = (
  across: number,
  height: number,
  { slots = [], needed = [], linesOnly = false }: Partial<FurniturePiece> = {},
): FurniturePiece => ({ across: mm(across), height: mm(height), slots, needed, linesOnly })

const TITLE_FIELDS = [
  'title',
  'supplementary-title',
  'document-type',
  'sheet',
  'sheets',
  'date',
  'scale',
  'creator',
] as const

/** The pieces of sheet furniture; each is a file of that name in `templates/` or in a maker's own folder. */
export const FURNITURE: Readonly<Record<FurnitureName, FurniturePiece>> = {
  'title-block': piece(56, 24, { slots: TITLE_FIELDS, needed: ['title', 'sheet', 'scale'] }),
  'scale-check-mm': piece(102, 16, { slots: ['frame'], needed: ['frame'] }),
  'scale-check-in': piece(102, 16, { slots: ['frame'], needed: ['frame'] }),
  caution: piece(102, 7.5),
  'register-mark': piece(8, 8),
  'grain-arrow': piece(40, 8, { linesOnly: true }),
}

export const FURNITURE_NAMES = Object.keys(FURNITURE) as readonly FurnitureName[]

export const isFurnitureName = (name: string): name is FurnitureName => Object.hasOwn(FURNITURE, name)

export const furnitureFile = (name: FurnitureName): string => `${name}.svg`

/** The text of each piece a maker replaces. */
export type FurnitureTexts = Readonly<Partial<Record<FurnitureName, string>>>
