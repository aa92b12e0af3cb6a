import table from '../../shared/lettered-signs.json' with { type: 'json' }

/** First and last code point of a run of signs. */
export type SignRange = readonly [first: number, last: number]

/** Ranges written in hexadecimal, such as `00C0-017F 0386`. */
export const signRanges = (written: string): SignRange[] =>
  written.split(' ').map((range) => {
    const [first = '', last = first] = range.split('-')
    return [Number.parseInt(first, 16), Number.parseInt(last, 16)]
  })

/** Letters and digits that the patterns' lettering sets right; the rule and its source stand in the table. */
const LETTERS = signRanges(table.letters.join(' '))

/** Is the sign a letter or a digit that can be lettered? */
export const isLetteredLetter = (sign: string): boolean => {
  const code = sign.codePointAt(0) ?? 0
  return LETTERS.some(([first, last]) => code >= first && code <= last)
}
