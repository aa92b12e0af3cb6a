/**
 * Starwright as a library: parse an order, plan it, compose its drawings, lay them on paper, write them. Everything
 * here is a function of its arguments, in Node and in a browser; nothing touches a disk, a clock or a network.
 */

export { cutPlan } from './compose/cut-plan.js'
export { DRAWING_NAMES, type DrawingName } from './compose/drawing-names.js'
export { DRAWINGS, drawingFileName } from './compose/drawings.js'
export { overview, type ShownDrawing } from './compose/overview.js'
export { planJson } from './compose/plan-json.js'
export { LAYERS, type Layer, type LayerName, PENS, type Pen, type PenName } from './drawing/layers.js'
export type { Drawing, Label, Path, Shape } from './drawing/model.js'
export { type InsetShape, insetLimit, insetOutline } from './geometry/inset.js'
export { type Kite, kite, kiteOutline } from './geometry/kite.js'
export { extentsOf, type Outline, signedArea, type Vertex } from './geometry/outline.js'
export type { Point } from './geometry/point.js'
export {
  regularTipAngle,
  type SizeName,
  type Star,
  solveStar,
  starOutline,
  tipAngleLimit,
} from './geometry/star.js'
export { type DrawnFile, type MadeFile, type MadeOrder, makeOrder } from './make.js'
export type { FlagValues } from './order/flags.js'
export type {
  BackingOrder,
  Board,
  Cutter,
  DxfVersion,
  Order,
  Panel,
  Paper,
  Saw,
  Shop,
  StarOrder,
} from './order/order.js'
export { type OrderInput, parseOrder } from './order/parse.js'
export { type Outcome, type Problem, showProblem } from './order/problem.js'
export type { Page, PrintedDrawing } from './paper/page.js'
export { layOnPaper } from './paper/tile.js'
export { type Plan, planOrder, planStar, type StarPlan } from './plan/plan.js'
export type { Warning, WarningCode } from './plan/warnings.js'
export type { Degrees, Mm, Radians } from './units/brand.js'
export { degrees, inches, mm, radians } from './units/convert.js'
export { readAngle } from './units/read-angle.js'
export { readLength, type Units } from './units/read-length.js'
export { showAngle, showLength, showSetting } from './units/show.js'
export { writeDxf } from './write/dxf.js'
export { writePdf } from './write/pdf.js'
export { writeSvg } from './write/svg.js'
