import { unbroken } from '../drawing/line-breaks.js'

/** Breaks text at spaces so that no line is wider than `width` columns; later lines are indented. */
export const wrapColumns = (text: string, width: number, indent: number): string[] => {
  const lead = /^ */.exec(text)?.[0] ?? ''
  const lines: string[] = []
  let line = lead
  for (const word of unbroken(text.slice(lead.length))) {
    const longer = line.trim() === '' ? `${line}${word}` : `${line} ${word}`
    if (longer.length > width && line.trim() !== '') {
      lines.push(line)
      line = `${' '.repeat(indent)}${word}`
    } else line = longer
  }
  return [...lines, line]
}
