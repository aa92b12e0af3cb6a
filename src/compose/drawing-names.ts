import { JIG_NAMES } from '../order/order.js'

/** The drawings a star can have, in the order of work; the words the command line and the file names use. */
export const DRAWING_NAMES = ['arm-pattern', 'star-mat', 'backing'] as const

/** The page that shows a star's jigs put together. */
export const JIG_CARD = 'jig-card'

/** A panel with the backings of all stars. */
export const PANEL = 'panel'

/** Everything `draw` draws. */
export const DRAWN_NAMES = [...DRAWING_NAMES, PANEL, ...JIG_NAMES, JIG_CARD] as const

export type DrawingName = (typeof DRAWING_NAMES)[number]

export type DrawnName = (typeof DRAWN_NAMES)[number]
