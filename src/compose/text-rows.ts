import { wrapColumns } from './wrap-columns.js'

/** Columns of a card: what a terminal and a printed page both carry. */
export const WIDTH = 84
const HEADING = 11

/** A heading in the margin and its text beside it, wrapped. */
export const row = (heading: string, text: string): string[] =>
  wrapColumns(`  ${heading.padEnd(HEADING - 1)} ${text}`, WIDTH, HEADING + 2)

/** Lines begun with a dash under a heading; nothing at all when there are none. */
export const listing = (heading: string, lines: readonly string[]): string[] =>
  lines.length === 0
    ? []
    : [`${heading}:`, ...lines.flatMap((text) => wrapColumns(`- ${text}`, WIDTH, 2)), '']

/** Cells below one another in columns that are at least `least` wide. */
export const columns = (table: readonly (readonly string[])[], least: readonly number[]): string[] => {
  const widths = least.map((width, column) =>
    Math.max(width, ...table.map((cells) => (cells[column] ?? '').length)),
  )
  return table.map((cells) =>
    `    ${cells.map((cell, column) => cell.padEnd(widths[column] ?? 0)).join('  ')}`.trimEnd(),
  )
}

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
