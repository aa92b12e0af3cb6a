import type { DryFit, DryFitTerms } from '../fit/dry-fit.js'
import { fitAsWritten } from '../fit/fit-as-written.js'
import type { WrittenMeasurements } from '../fit/read-measurements.js'
import { readTerms, type WrittenTerms } from '../fit/read-terms.js'
import type { Order } from '../order/order.js'
import type { Outcome } from '../order/problem.js'
import type { StarPlan } from '../plan/plan.js'
import type { Measured } from './measured.js'

/** What the fields of one star's dry fit tell. */
export const fitOf = (star: StarPlan, measured: Measured, order: Order): Outcome<DryFit> =>
  fitAsWritten(star, writtenOf(measured), writtenTermsOf(measured), order)

/** How the star was cut; looked at also while nothing is measured. */
export const termsOf = (star: StarPlan, measured: Measured, { shop, lengths }: Order): Outcome<DryFitTerms> =>
  readTerms(writtenTermsOf(measured), star, shop, lengths)

const writtenTermsOf = (measured: Measured): WrittenTerms => ({
  cutAt: measured['cut-at'],
  cleanUp: measured['clean-up'],
})

/** Has anything been measured, or only told with what and how it was cut? */
export const isMeasured = (measured: Measured): boolean =>
  Object.keys(measured).some((key) => !TERMS.includes(key))

const TERMS = ['angles-by', 'lengths-by', 'cut-at', 'clean-up']

/** Several arms stand in one field, with semicolons between. */
const several = (text: string | undefined): readonly string[] => text?.split(';') ?? []

const writtenOf = (measured: Measured): WrittenMeasurements => ({
  gap: measured.gap,
  opensAt: measured['opens-at'],
  willNotDropInBy: measured['will-not-drop-in-by'],
  tip: several(measured['measured-tip']),
  side: several(measured['measured-side']),
  centre: several(measured['measured-centre']),
  tipEdge: several(measured['measured-tip-edge']),
  across: several(measured['measured-across']),
  anglesBy: measured['angles-by'],
  lengthsBy: measured['lengths-by'],
})

/** What the drawing of a star's dry fit is saved as. */
export const dryFitFile = ({ order }: StarPlan, ending: 'svg' | 'pdf'): string =>
  `${order.fileName}-dry-fit.${ending}`
