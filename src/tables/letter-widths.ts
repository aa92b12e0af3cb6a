import table from '../../shared/letter-widths.json' with { type: 'json' }

/** What is known of one face of the lettering, in units of which `perSize` make the letter's size. */
export interface FaceTable {
  readonly perSize: number
  /** Height of a capital. */
  readonly capital: number
  /** Advance widths by sign: the widths of all signs the face sets. */
  readonly widths: ReadonlyMap<string, number>
  /** Pairs of signs that the face sets wider apart than their widths, and by how much: by the first, then the second. */
  readonly apart: ReadonlyMap<string, ReadonlyMap<string, number>>
}

interface WrittenFace {
  readonly perSize: number
  readonly capital: number
  readonly widths: Readonly<Record<string, string>>
  readonly apart: Readonly<Record<string, Readonly<Record<string, number>>>>
}

const read = ({ perSize, capital, widths, apart }: WrittenFace): FaceTable => ({
  perSize,
  capital,
  widths: new Map(
    Object.entries(widths).flatMap(([first, run]) =>
      run
        .split(' ')
        .map(
          (width, step) => [String.fromCodePoint(Number.parseInt(first, 16) + step), Number(width)] as const,
        ),
    ),
  ),
  apart: new Map(Object.entries(apart).map(([first, seconds]) => [first, new Map(Object.entries(seconds))])),
})

/** Adobe's metrics of Helvetica for the signs of WinAnsiEncoding. */
export const HELVETICA: FaceTable = read(table.helvetica)

/** The metrics of the font that is embedded where a line leaves WinAnsiEncoding. */
export const DEJAVU: FaceTable = read(table.dejavu)
