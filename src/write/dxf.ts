import type { Drawing } from '../drawing/model.js'
import type { DxfVersion } from '../order/order.js'
import { dxfContent } from './dxf-content.js'
import { writeR12 } from './dxf-r12.js'
import { writeR2000 } from './dxf-r2000.js'

/** A drawing as ASCII DXF in mm: R12 for old and simple importers, R2000 for those that want the unit in the header. */
export const writeDxf = (drawing: Drawing, version: DxfVersion): string =>
  version === 'r12' ? writeR12(dxfContent(drawing)) : writeR2000(dxfContent(drawing))
