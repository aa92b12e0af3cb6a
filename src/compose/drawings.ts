import type { Drawing } from '../drawing/model.js'
import type { Furniture } from '../furniture/furniture-set.js'
import type { Order } from '../order/order.js'
import type { StarPlan } from '../plan/plan.js'
import { armPattern } from './arm-pattern.js'
import { backing } from './backing.js'
import type { DrawingName } from './drawing-names.js'
import { sizeInName } from './size-text.js'
import { starMat } from './star-mat.js'

/** Composes each drawing; undefined when the order does not ask for it. */
export const DRAWINGS: Readonly<Record<DrawingName, Compose>> = {
  'arm-pattern': armPattern,
  'star-mat': starMat,
  backing: (plan, order) => plan.backing && backing(plan, plan.backing, order),
}

type Compose = (plan: StarPlan, order: Order, furniture: Furniture) => Drawing | undefined

/** A drawing's file name without its ending: star, kind, and the true size in millimetres. */
export const drawingFileName = (plan: StarPlan, drawing: Drawing): string =>
  `${plan.order.fileName}-${drawing.kind}-${sizeInName(drawing.trueSize)}`
