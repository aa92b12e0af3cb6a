import table from '../../shared/paper-sizes.json' with { type: 'json' }
import type { Mm } from '../units/brand.js'
import { inches, mm, points, toMm } from '../units/convert.js'

/** A sheet of paper, upright: the shorter side across. */
export interface PaperSize {
  readonly name: string
  readonly across: Mm
  readonly along: Mm
}

const ISO_NAMES = ['A4', 'A3', 'A2', 'A1', 'A0'] as const
const AMERICAN_NAMES = {
  'ANSI A / Letter': 'Letter',
  Legal: 'Legal',
  'ANSI B / Tabloid': 'Tabloid',
  'ANSI C': 'ANSI-C',
  'ANSI D': 'ANSI-D',
  'ANSI E': 'ANSI-E',
} as const

type AmericanRow = keyof typeof AMERICAN_NAMES
export type PaperName = (typeof ISO_NAMES)[number] | (typeof AMERICAN_NAMES)[AmericanRow]

/** ISO 32000-1, Annex C.2: the longest page that readers of PDF must accept is 14 400 units. */
export const LONGEST_PAGE = toMm(points(14_400))

/** Sheet sizes after ISO 216 and ASME Y14.1; the sources stand in `shared/paper-sizes.json`. */
export const PAPER_SIZES: readonly PaperSize[] = [
  ...ISO_NAMES.map((name) => isoSize(name)),
  ...table.north_american.flatMap((row) =>
    isAmerican(row.name)
      ? [{ name: AMERICAN_NAMES[row.name], across: inchSide(row.inch, 0), along: inchSide(row.inch, 1) }]
      : [],
  ),
]

export const PAPER_NAMES: readonly PaperName[] = [...ISO_NAMES, ...Object.values(AMERICAN_NAMES)]

/** Is it of the American series, beside which Letter is the desk's size? */
export const isAmericanPaper = (name: PaperName): boolean =>
  Object.values<PaperName>(AMERICAN_NAMES).includes(name)

export const paperSize = (name: PaperName): PaperSize => {
  const found = PAPER_SIZES.find((size) => size.name === name)
  if (!found) throw new RangeError(`no paper size is called ${name}`)
  return found
}

function isoSize(name: (typeof ISO_NAMES)[number]): PaperSize {
  const row = table.iso.find((size) => size.name === name)
  return { name, across: mm(row?.mm[0] ?? Number.NaN), along: mm(row?.mm[1] ?? Number.NaN) }
}

function isAmerican(name: string): name is AmericanRow {
  return Object.hasOwn(AMERICAN_NAMES, name)
}

function inchSide(sides: readonly number[], index: 0 | 1): Mm {
  return inches(sides[index] ?? Number.NaN)
}
