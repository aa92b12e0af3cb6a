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
export { cuttingList } from './compose/cutting-list.js'
export { cuttingPages, cuttingSheet } from './compose/cutting-sheet.js'
export { DRAWING_NAMES, type DrawingName } from './compose/drawing-names.js'
export { DRAWINGS, drawingFileName } from './compose/drawings.js'
export { dryFitCard } from './compose/dry-fit-card.js'
export { dryFitDrawing } from './compose/dry-fit-drawing.js'
export { dryFitJson } from './compose/dry-fit-json.js'
export { gapHistogram } from './compose/gap-histogram.js'
export { jigCard, jigCards } from './compose/jig-card.js'
export { type DrawnJig, drawJig, drawJigs, jigOf, needless, type WantedJig } from './compose/jigs.js'
export { overview, type ShownDrawing } from './compose/overview.js'
export { planJson } from './compose/plan-json.js'
export { riskJson } from './compose/risk-json.js'
export { riskReport } from './compose/risk-report.js'
export { seasonCard } from './compose/season-card.js'
export { seasonJson } from './compose/season-json.js'
export { shopCard } from './compose/shop-card.js'
export { stockJson } from './compose/stock-json.js'
export { compensated, relievedPart } from './cutter/compensated.js'
export type { CutLines, CutPart } from './cutter/cut-part.js'
export type { Artwork } from './drawing/artwork.js'
export { LAYERS, type Layer, type LayerName, PENS, type Pen, type PenName } from './drawing/layers.js'
export type { Drawing, Label, Notes, Path, Shape } from './drawing/model.js'
export { type ArmErrors, armAsCut, type CutArm, closureOf } from './fit/arm.js'
export { type BatchRisk, batchRisk, type Needed, type RiskAsked } from './fit/batch-risk.js'
export {
  acceptedClosure,
  type ClosureLaw,
  closureLaw,
  SAW_SETS,
  type SawSet,
} from './fit/closure-law.js'
export { type DryFit, type DryFitTerms, dryFit, type NewSetting } from './fit/dry-fit.js'
export type { Measurable, Measurement, Spread } from './fit/measurement.js'
export { readMeasurements, type WrittenMeasurements } from './fit/read-measurements.js'
export { readTerms, type WrittenTerms } from './fit/read-terms.js'
export { type Recut, recutArms } from './fit/recut.js'
export { FURNITURE, type FurnitureName, type FurnitureTexts } from './furniture/furniture-names.js'
export { defaultFurniture, type Furniture, furnitureWith } from './furniture/furniture-set.js'
export { type InsetShape, insetLimit, insetOutline } from './geometry/inset.js'
export { type Kite, kite, kiteOutline } from './geometry/kite.js'
export { type GrainAlong, type MovedArm, movedArm } from './geometry/moved-arm.js'
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
export { type CuttingRoom, cuttingRoom } from './jigs/cutting-room.js'
export type { HandPlace, InUse, Jig, JigPart } from './jigs/jig.js'
export { type MakeOptions, makeOrder, makeSteps } from './make.js'
export type { DrawnFile, DrawnPanel, FileContent, MadeFile, MadeOrder } from './make-files.js'
export { areaBound } from './nest/area-bound.js'
export { inBoxes } from './nest/in-boxes.js'
export { type Nesting, type NestStep, type NestSteps, nest, nestSteps, type Wanted } from './nest/nest.js'
export type { Panel as NestedPanel, Placed } from './nest/panel.js'
export type { FlagValues } from './order/flags.js'
export type {
  BackingOrder,
  Board,
  Cutter,
  DxfVersion,
  JigName,
  JigOrder,
  JigStock,
  Order,
  Panel,
  Paper,
  PaperSheet,
  PrintedCheck,
  PrintedLength,
  Saw,
  SawBias,
  Shop,
  SoundPart,
  StarOrder,
} from './order/order.js'
export { JIG_NAMES } from './order/order.js'
export { type OrderInput, parseOrder } from './order/parse.js'
export { type Outcome, type Problem, showProblem } from './order/problem.js'
export { biasAsWritten, withBias } from './order/save-bias.js'
export type { Air, Climate, Finish, Glue, Rings, Stain, Wall, Wood } from './order/season-order.js'
export type { FilledPanel, LaidPlate, PanelPlan } from './panels/panel-plan.js'
export type { PanelWorth, SharedPanels, StarOnPanel } from './panels/panel-worth.js'
export { type PanelStep, type PanelSteps, panelSteps, planPanels } from './panels/plan-panels.js'
export { cardBook, cuttingBook, panelBook } from './paper/card-book.js'
export type { Bookmark, Page, PrintedBook, PrintedDrawing, View } from './paper/page.js'
export { drawingBook, type PrintedStar, patternBook } from './paper/pattern-book.js'
export { printCheck } from './paper/print-check.js'
export type { Sheet } from './paper/sheet.js'
export { layOnPaper } from './paper/tile.js'
export type { CoatedAreas, GluedParts, StarBody } from './plan/body.js'
export { type Plan, planOrder, planStar, type StarPlan } from './plan/plan.js'
export type { Warning, WarningCode } from './plan/warnings.js'
export type { StarWeight } from './plan/weight.js'
export type { Advice, AdviceCode } from './season/advice.js'
export type { AxisLayout } from './season/axis-layout.js'
export { humidityFor, moistureIn } from './season/moisture.js'
export {
  type MovedStar,
  movedStar,
  type SeasonState,
  type StarSeason,
  sizeChange,
  type WoodState,
} from './season/season.js'
export { type AdvisedStar, planSeason, type SeasonPlan } from './season/season-plan.js'
export type { BlankKind } from './stock/blank-kinds.js'
export type { CutBoard, CutStrip, LaidBlank, Offcut, SawCut } from './stock/cut-board.js'
export type { Deadline } from './stock/price-boards.js'
export type { StarCost } from './stock/quotation.js'
export { briefStock, planStock, type StockPlan } from './stock/stock.js'
export { SPECIES, type Species, speciesNamed } from './tables/species.js'
export type { Celsius, Degrees, Hours, Kilograms, Mm, Percent, Radians } from './units/brand.js'
export { celsius, degrees, inches, mm, percent, radians } from './units/convert.js'
export { readAngle } from './units/read-angle.js'
export { readLength, type Units } from './units/read-length.js'
export { showAngle, showLength, showSetting } from './units/show.js'
export { writeDxf } from './write/dxf.js'
export { pdfChunks, writePdf } from './write/pdf.js'
export { writeSvg } from './write/svg.js'
