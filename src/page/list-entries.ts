/**
 * The entries of a list of numbers as people type it on one line: `0 15 22.5`, `0, 15, 22.5`, `0; 15; 22,5`. A comma
 * between two digits is a decimal comma, as elsewhere in an order, where it can be one: not in a list with a decimal
 * point, and not in `0,15,30`. Decimal commas become points, as a list of the order has them.
 */
export const listEntries = (typed: string): string[] => {
  const hasPoint = /\d\.\d/.test(typed)
  return typed
    .split(/[\s;]+/)
    .map((part) => part.replace(/^,+|,+$/g, ''))
    .flatMap((part) => {
      const pieces = part.split(',')
      return pieces.length === 2 && !hasPoint ? [pieces.join('.')] : pieces
    })
    .filter(Boolean)
}
