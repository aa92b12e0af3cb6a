import { drawingExtents } from '../drawing/bounds.js'
import { LAYERS, type Layer } from '../drawing/layers.js'
import { textWidth } from '../drawing/lettering.js'
import type { Drawing, Label } from '../drawing/model.js'
import type { Extents } from '../geometry/outline.js'
import { add, type Point, polar } from '../geometry/point.js'
import { dxfText } from './dxf-text.js'
import { writeNumber } from './number.js'
import { oneLine } from './one-line.js'
import { type WrittenPath, writtenPaths } from './written-path.js'

/** What a DXF file of either version says. */
export interface DxfContent {
  readonly comments: readonly string[]
  readonly extents: Extents
  /** The used layers, in cutting order: some machines cut a file from its top. */
  readonly layers: readonly LayerContent[]
}

export interface LayerContent {
  readonly layer: Layer
  readonly paths: readonly WrittenPath[]
  readonly texts: readonly DxfLettering[]
}

export interface DxfLettering extends Label {
  /** Near the left end of the baseline, for readers that know no alignment; exact when the anchor is the start. */
  readonly leftEnd: Point
  /** Group 72. */
  readonly alignment: number
}

const ALIGNMENT = { start: 0, middle: 1, end: 2 } as const

export const dxfContent = (drawing: Drawing): DxfContent => ({
  comments: commentsOf(drawing),
  extents: drawingExtents(drawing),
  layers: LAYERS.map((layer) => layerContent(drawing, layer)).filter(
    ({ paths, texts }) => paths.length + texts.length > 0,
  ),
})

/** R12 has no variable for the unit, and importers ignore or double those of later versions: it is said in words. */
const commentsOf = ({ title, trueSize }: Drawing): string[] => [
  `Starwright: ${dxfText(title)}`,
  'UNITS: mm',
  `TRUE SIZE: ${writeNumber(trueSize.across, 2)} mm across, ${writeNumber(trueSize.height, 2)} mm high`,
]

const layerContent = (drawing: Drawing, layer: Layer): LayerContent => ({
  layer,
  paths: writtenPaths(drawing, layer.name),
  texts: drawing.shapes.flatMap((shape) =>
    shape.kind === 'label' && shape.layer === layer.name ? lettering(shape) : [],
  ),
})

const lettering = (label: Label): DxfLettering[] => {
  const text = dxfText(label.text)
  if (text === '') return []
  const alignment = ALIGNMENT[label.anchor]
  const back = (-alignment / 2) * textWidth(oneLine(label.text), label.height)
  return [{ ...label, text, alignment, leftEnd: add(label.at, polar(back, label.turn)) }]
}
