import { wrapColumns } from './wrap-columns.js'

/** Columns of what is read on a terminal: what a printed page carries too. */
export const TEXT_WIDTH = 84
const HEADING = 11

/** A line of text under its heading, wrapped beside it. */
export const row = (heading: string, text: string): string[] =>
  wrapColumns(`  ${heading.padEnd(HEADING)}${text}`, TEXT_WIDTH, HEADING + 2)

/** Columns as wide as their widest cell; those named stand to the right. */
export const table = (rows: readonly (readonly string[])[], toRight: ReadonlySet<number>): string[] => {
  const widths = (rows[0] ?? []).map((_, column) =>
    Math.max(...rows.map((cells) => (cells[column] ?? '').length)),
  )
  return rows.map((cells) =>
    cells
      .map((cell, column) =>
        toRight.has(column) ? cell.padStart(widths[column] ?? 0) : cell.padEnd(widths[column] ?? 0),
      )
      .join('  ')
      .trimEnd(),
  )
}

export const titled = (title: string, line: '=' | '-'): string[] => [title, line.repeat(title.length)]
