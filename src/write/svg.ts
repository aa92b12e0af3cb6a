import { drawingExtents } from '../drawing/bounds.js'
import { LAYERS, type Layer, PENS, type Pen, penOf } from '../drawing/layers.js'
import { type FaceName, faceName, letterSize, textWidth } from '../drawing/lettering.js'
import { escaped } from '../drawing/markup.js'
import type { Drawing, Label } from '../drawing/model.js'
import { distance, type Point, point } from '../geometry/point.js'
import { toDegrees } from '../units/convert.js'
import { WRITTEN } from '../units/tolerance.js'
import { writeNumber, writtenLength } from './number.js'
import { oneLine } from './one-line.js'
import { type WrittenPath, type WrittenVertex, writtenPaths } from './written-path.js'

/**
 * White around the drawing, in mm. None around a drawing to cut: the file's own size is then the outline's, and can be
 * compared with what the cutter's software shows.
 */
const marginOf = ({ shapes }: Drawing): number =>
  shapes.some(({ layer }) => layer === 'CUT-OUTSIDE') ? 0 : 5

/** Decimals of an arc's radius: near a half turn the centre moves by the root of what the radius loses. */
const RADIUS_DECIMALS = 9

/**
 * A drawing at true size: width and height in mm, one user unit to the mm, y turned down in the numbers themselves,
 * so that no program has to apply a transform. One group per used layer, in cutting order.
 */
export const writeSvg = (drawing: Drawing): string => {
  const { min, max } = drawingExtents(drawing)
  const margin = marginOf(drawing)
  const corner = point(writtenLength(min.x) - margin, writtenLength(max.y) + margin)
  const across = writeNumber(writtenLength(max.x) + margin - corner.x)
  const height = writeNumber(corner.y - writtenLength(min.y) + margin)
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${across}mm" height="${height}mm" viewBox="0 0 ${across} ${height}">`,
    '<!-- Starwright -->',
    `<title>${escaped(oneLine(drawing.title))}</title>`,
    ...LAYERS.flatMap((layer) => layerGroup(drawing, layer, corner)),
    '</svg>\n',
  ].join('\n')
}

const layerGroup = (drawing: Drawing, layer: Layer, corner: Point): string[] => {
  const paths = pathElements(writtenPaths(drawing, layer.name), corner)
  const texts = drawing.shapes.flatMap((shape) =>
    shape.kind === 'label' && shape.layer === layer.name ? textElement(shape, layer, corner) : [],
  )
  if (paths.length + texts.length === 0) return []
  const look = `fill="none" stroke="${layer.colour}"${penAttributes(PENS[layer.pen])}`
  return [
    `<g id="${layer.name}" ${look} stroke-linejoin="round">`,
    `<title>${escaped(layer.title)}</title>`,
    ...paths,
    ...texts,
    '</g>',
  ]
}

const penAttributes = ({ width, dashes }: Pen): string =>
  ` stroke-width="${writeNumber(width)}"${
    dashes.length > 0 ? ` stroke-dasharray="${dashes.map((dash) => writeNumber(dash)).join(' ')}"` : ''
  }`

/** One element per path, but one for all the strokes of a pen that follow each other: a hatching has thousands. */
const pathElements = (paths: readonly WrittenPath[], corner: Point): string[] => {
  const found: { readonly pen: string; readonly strokes: boolean; steps: string }[] = []
  for (const path of paths) {
    const strokes = path.vertices.length === 2 && !path.closed
    const pen = path.pen ? penAttributes(penOf(path)) : ''
    const before = found.at(-1)
    if (strokes && before?.strokes && before.pen === pen) before.steps += pathSteps(path, corner)
    else found.push({ pen, strokes, steps: pathSteps(path, corner) })
  }
  return found.map(({ pen, steps }) => `<path${pen} d="${steps}"/>`)
}

const pathSteps = ({ vertices, closed }: WrittenPath, corner: Point): string => {
  const steps = vertices.map((vertex, index) => {
    const before = vertices[index - 1]
    return before ? edgeStep(before, vertex, corner) : `M${place(vertex, corner)}`
  })
  const [first, last] = [vertices[0], vertices.at(-1)]
  if (!closed || !first || !last) return steps.join('')
  return `${steps.join('')}${last.bulge === 0 ? '' : edgeStep(last, first, corner)}Z`
}

const place = ({ x, y }: Point, corner: Point): string =>
  `${writeNumber(x - corner.x)} ${writeNumber(corner.y - y)}`

/** Counter-clockwise on the drawing is counter-clockwise on the screen: the sweep flag of a positive bulge is 0. */
const edgeStep = (from: WrittenVertex, to: WrittenVertex, corner: Point): string => {
  if (from.bulge === 0) return `L${place(to, corner)}`
  const radius = arcRadius(from.bulge, distance(from, to))
  return `A${radius} ${radius} 0 0 ${from.bulge > 0 ? 0 : 1} ${place(to, corner)}`
}

/**
 * Radius from bulge and chord: c(1 + b²) / 4|b| (AutoCAD DXF reference). A half turn? Then a hair less than half the
 * chord, which every reader widens to exactly half (SVG 2, 9.5.1 and B.2.5); a hair more would move the centre.
 */
const arcRadius = (bulge: number, chord: number): string => {
  const radius = (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge))
  const centreFromChord = (chord * Math.abs(1 - bulge * bulge)) / (4 * Math.abs(bulge))
  return centreFromChord < WRITTEN
    ? writeNumber(writtenLength(chord / 2 - WRITTEN))
    : writeNumber(radius, RADIUS_DECIMALS)
}

/** The face the room was measured for, then others in its place. */
const FAMILIES: Readonly<Record<FaceName, string>> = {
  Helvetica: 'Helvetica, Arial, sans-serif',
  'DejaVu Sans': "'DejaVu Sans', Verdana, Helvetica, Arial, sans-serif",
}

const textElement = (label: Label, layer: Layer, corner: Point): string[] => {
  const text = oneLine(label.text)
  if (text === '') return []
  const [x, y] = [writeNumber(label.at.x - corner.x), writeNumber(corner.y - label.at.y)]
  const anchor = label.anchor === 'start' ? '' : ` text-anchor="${label.anchor}"`
  const turn = writeNumber(-toDegrees(label.turn))
  const turned = turn === '0' ? '' : ` transform="rotate(${turn} ${x} ${y})"`
  const letters = `font-family="${FAMILIES[faceName(text)]}" font-size="${writeNumber(letterSize(text, label.height))}"`
  // Where the face is not there, another is set as wide as the room that was kept.
  const room = `textLength="${writeNumber(textWidth(text, label.height))}" lengthAdjust="spacingAndGlyphs"`
  return [
    `<text x="${x}" y="${y}" ${letters} ${room}${anchor}${turned} fill="${layer.colour}" stroke="none">${escaped(text)}</text>`,
  ]
}
