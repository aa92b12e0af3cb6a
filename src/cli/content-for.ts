import type { Drawing } from '../drawing/model.js'
import { DRAWING_KINDS, drawingContent } from '../drawing-content.js'
import type { Furniture } from '../furniture/furniture-set.js'
import type { FileContent } from '../make-files.js'
import type { Order } from '../order/order.js'
import type { Outcome } from '../order/problem.js'
import { fileKind } from './file-kind.js'

/** A drawing in the format that the file's ending names. */
export const contentFor = async (
  file: string,
  drawing: Drawing,
  order: Order,
  furniture: Furniture,
): Promise<Outcome<FileContent>> => {
  const kind = fileKind(file, DRAWING_KINDS)
  return kind.ok ? drawingContent(kind.value, drawing, order, furniture) : kind
}
