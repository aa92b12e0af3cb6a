/** Gives every object its handle: hexadecimal, from 1, never twice in a file. */
export type NextHandle = () => string

/** The two block records that own everything drawn. */
export interface Spaces {
  readonly model: string
  readonly paper: string
}

export const handles = (): NextHandle => {
  let last = 0
  return () => {
    last += 1
    return last.toString(16).toUpperCase()
  }
}
