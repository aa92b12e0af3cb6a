/** White between what is drawn and the edge of a window, in mm: half of the widest pen, and what a hand trims amiss. */
export const PADDING = 1
