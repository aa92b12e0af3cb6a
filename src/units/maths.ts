/*
 * Functions that engines work out differently: two of them may return numbers that differ in the last bit, and then a
 * label stands elsewhere in the page's files than in the command line's. These are made of sums and products alone,
 * which IEEE 754 settles to the last bit, as are square roots.
 */
export { default as acos } from '@stdlib/math-base-special-acos'
export { default as asin } from '@stdlib/math-base-special-asin'
export { default as atan } from '@stdlib/math-base-special-atan'
export { default as atan2 } from '@stdlib/math-base-special-atan2'
export { default as cos } from '@stdlib/math-base-special-cos'
export { default as exp } from '@stdlib/math-base-special-exp'
export { default as hypot } from '@stdlib/math-base-special-hypot'
export { default as ln } from '@stdlib/math-base-special-ln'
export { default as log10 } from '@stdlib/math-base-special-log10'
export { default as pow } from '@stdlib/math-base-special-pow'
export { default as sin } from '@stdlib/math-base-special-sin'
export { default as tan } from '@stdlib/math-base-special-tan'

export const square = (value: number): number => value * value
