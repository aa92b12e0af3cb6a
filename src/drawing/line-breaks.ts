/** A space where a line may end: not inside indents, nor between a figure and its fraction, unit or sign, nor about a ×. */
const BREAK = /(?<=[^ ×]) (?=[^ ])(?!(?:mm|in|mg)\b|[×%]|\d+\/\d+|[+-]\d)/

/** The parts of a text between which a line may end. */
export const unbroken = (text: string): string[] => text.split(BREAK)
