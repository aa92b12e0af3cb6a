/**
 * Starwright as a library: parse an order, plan it, compose its drawings, lay them on paper, write them. Everything
 * here is a function of its arguments, in Node and in a browser; nothing touches a disk, a clock or a network.
 */

export { type Choice, type ChoiceAsked, type Choices, choicesFor } from './choose/choices.js'
export { meant, type PanelUse, panelUse } from './choose/compare.js'
export { RANKS, type RankName, ranked } from './choose/ranks.js'
export type { Shape as StarKind } from './choose/shapes.js'
export { choiceJson, comparisonJson } from './compose/choice-json.js'
export { choiceList, comparisonTable } from './compose/choice-list.js'
export { choiceSheets } from './compose/choice-sheet.js'
export { comparison } from './compose/comparison.js'
export { cutPlan } from './compose/cut-plan.js'
export { DRAWING_NAMES, type DrawingName } from './compose/drawing-names.js'
export { DRAWINGS, drawingFileName } from './compose/drawings.js'
export { gapHistogram } from './compose/gap-histogram.js'
export { overview, type ShownDrawing } from './compose/overview.js'
export { planJson } from './compose/plan-json.js'
export { riskJson } from './compose/risk-json.js'
export { riskReport } from './compose/risk-report.js'
export { shopCard } from './compose/shop-card.js'
export type { Artwork } from './drawing/artwork.js'
export { LAYERS, type Layer, type LayerName, PENS, type Pen, type PenName } from './drawing/layers.js'
export type { Drawing, Label, Notes, Path, Shape } from './drawing/model.js'
export { type BatchRisk, batchRisk, type Needed, type RiskAsked } from './fit/batch-risk.js'
export {
  acceptedClosure,
  type ClosureLaw,
  closureLaw,
  SAW_SETS,
  type SawSet,
} from './fit/closure-law.js'
export { FURNITURE, type FurnitureName, type FurnitureTexts } from './furniture/furniture-names.js'
export { defaultFurniture, type Furniture, furnitureWith } from './furniture/furniture-set.js'
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
export {
  type DrawnFile,
  type FileContent,
  type MadeFile,
  type MadeOrder,
  type MakeOptions,
  makeOrder,
} from './make.js'
export type { FlagValues } from './order/flags.js'
export type {
  BackingOrder,
  Board,
  Cutter,
  DxfVersion,
  Order,
  Panel,
  Paper,
  PaperSheet,
  PrintedCheck,
  PrintedLength,
  Saw,
  Shop,
  StarOrder,
} from './order/order.js'
export { type OrderInput, parseOrder } from './order/parse.js'
export { type Outcome, type Problem, showProblem } from './order/problem.js'
export { cardBook } from './paper/card-book.js'
export type { Bookmark, Page, PrintedBook, PrintedDrawing, View } from './paper/page.js'
export { drawingBook, type PrintedStar, patternBook } from './paper/pattern-book.js'
export { printCheck } from './paper/print-check.js'
export type { Sheet } from './paper/sheet.js'
export { layOnPaper } from './paper/tile.js'
export { type Plan, planOrder, planStar, type StarPlan } from './plan/plan.js'
export type { Warning, WarningCode } from './plan/warnings.js'
export type { Degrees, Mm, Radians } from './units/brand.js'
export { degrees, inches, mm, radians } from './units/convert.js'
export { readAngle } from './units/read-angle.js'
export { readLength, type Units } from './units/read-length.js'
export { showAngle, showLength, showSetting } from './units/show.js'
export { writeDxf } from './write/dxf.js'
export { pdfChunks, writePdf } from './write/pdf.js'
export { writeSvg } from './write/svg.js'
