/** Row number from the top and column letter from the left: `2B`. I and O are left out (ISO 5457), for 1 and 0. */
export const pageName = (row: number, column: number): string => `${row + 1}${columnLetters(column)}`

const LETTERS = 'ABCDEFGHJKLMNPQRSTUVWXYZ'

const columnLetters = (column: number): string =>
  (column < LETTERS.length ? '' : columnLetters(Math.floor(column / LETTERS.length) - 1)) +
  LETTERS.charAt(column % LETTERS.length)
