import { PENS, type Pen, type PenName } from '../drawing/layers.js'
import { dxfName } from './dxf-text.js'

/** A line of the LTYPE table: `pattern` holds dashes as positive and gaps as negative lengths, in mm. */
export interface LineType {
  readonly name: string
  readonly title: string
  readonly pattern: readonly number[]
}

const CONTINUOUS: LineType = { name: 'CONTINUOUS', title: 'Solid line', pattern: [] }

const isDashed = (pen: PenName): boolean => PENS[pen].dashes.length > 0

const dashedType = (pen: PenName): LineType => ({
  name: dxfName(pen.toUpperCase()),
  title: `Dashes and gaps in mm: ${PENS[pen].dashes.join(' ')}`,
  pattern: PENS[pen].dashes.map((dash, index) => (index % 2 === 0 ? dash : -dash)),
})

/** The solid line and one type per dash pattern. */
export const LINE_TYPES: readonly LineType[] = [
  CONTINUOUS,
  ...(Object.keys(PENS) as PenName[]).filter(isDashed).map(dashedType),
]

export const lineTypeOf = (pen: PenName): LineType => (isDashed(pen) ? dashedType(pen) : CONTINUOUS)

/** Group 370: hundredths of a mm. */
export const lineWeight = ({ width }: Pen): number => Math.round(width * 100)

export const patternLength = ({ pattern }: LineType): number =>
  pattern.reduce((sum, length) => sum + Math.abs(length), 0)
