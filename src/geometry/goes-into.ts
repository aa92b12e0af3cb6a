/** Does a box go into a room, as it lies or turned by a quarter? */
export const goesInto = (
  across: number,
  height: number,
  { width, length }: { readonly width: number; readonly length: number },
): boolean =>
  Math.min(across, height) <= Math.min(width, length) && Math.max(across, height) <= Math.max(width, length)
