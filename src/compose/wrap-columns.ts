/** A space where a line may end: not inside indents, nor between a figure and its fraction, unit or sign. */
export const BREAK = /(?<=[^ ]) (?=[^ ])(?!(?:mm|in)\b|[×%]|\d+\/\d+|[+-]\d)/

/** Breaks text at spaces so that no line is wider than `width` columns; later lines are indented. */
export const wrapColumns = (text: string, width: number, indent: number): string[] => {
  const lead = /^ */.exec(text)?.[0] ?? ''
  const lines: string[] = []
  let line = lead
  for (const word of text.slice(lead.length).split(BREAK)) {
    const longer = line.trim() === '' ? `${line}${word}` : `${line} ${word}`
    if (longer.length > width && line.trim() !== '') {
      lines.push(line)
      line = `${' '.repeat(indent)}${word}`
    } else line = longer
  }
  return [...lines, line]
}
