/** The drawings a star can have, in the order of work; the words the command line and the file names use. */
export const DRAWING_NAMES = ['arm-pattern', 'star-mat', 'backing'] as const

export type DrawingName = (typeof DRAWING_NAMES)[number]
