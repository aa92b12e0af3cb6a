/** Ten metres, a hundred times the largest piece: what is larger is a slip, and would cost digits. */
export const LARGEST_NUMBER = 9999
export const NUMBER_ALLOWED = `Allowed: a number from -${LARGEST_NUMBER} to ${LARGEST_NUMBER}, without a unit: 1 is 1 mm.`

const NUMBER = /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d{1,2})?$/i
const LONGEST_NUMBER = 40

/** A number as SVG writes it, without a unit; undefined when it is none or too large. */
export const readNumber = (written: string): number | undefined => {
  const text = written.trim()
  if (text.length > LONGEST_NUMBER || !NUMBER.test(text)) return undefined
  const value = Number(text)
  return Math.abs(value) <= LARGEST_NUMBER ? value : undefined
}

/** A number with or without `px`, which is the same thing: one unit of the drawing. */
export const readPixels = (written: string): number | undefined =>
  readNumber(written.trim().replace(/px$/, ''))

/** Numbers parted by spaces or single commas. */
export const readNumbers = (written: string): readonly number[] | undefined => {
  const values = written
    .trim()
    .split(/\s*,\s*|\s+/)
    .map(readNumber)
  return values.every((value) => value !== undefined) ? values : undefined
}
