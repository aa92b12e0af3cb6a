import type { Layer } from '../drawing/layers.js'
import { point } from '../geometry/point.js'
import { toDegrees } from '../units/convert.js'
import type { DxfContent, DxfLettering, LayerContent } from './dxf-content.js'
import { LINE_TYPES, type LineType, lineTypeOf, patternLength } from './dxf-linetype.js'
import { BULGE_DECIMALS, polylineFlags, strokeEnds } from './dxf-path.js'
import { real, section, spatial, tag } from './dxf-tags.js'
import { dxfName } from './dxf-text.js'
import type { WrittenPath } from './written-path.js'

/** DXF R12 (AC1009): the version that the oldest importers take. Source: AutoCAD Release 12 DXF reference. */
export const writeR12 = (content: DxfContent): string =>
  [
    ...content.comments.map((comment) => tag(999, comment)),
    section('HEADER', header(content)),
    section('TABLES', tables(content)),
    section('ENTITIES', content.layers.map(entities).join('')),
    tag(0, 'EOF'),
  ].join('')

const header = ({ extents }: DxfContent): string =>
  [
    tag(9, '$ACADVER') + tag(1, 'AC1009'),
    tag(9, '$INSBASE') + spatial(10, point(0, 0)),
    tag(9, '$EXTMIN') + spatial(10, extents.min),
    tag(9, '$EXTMAX') + spatial(10, extents.max),
    tag(9, '$LTSCALE') + real(40, 1),
  ].join('')

const tables = ({ layers }: DxfContent): string =>
  [
    table('LTYPE', LINE_TYPES.map(lineTypeEntry)),
    table('LAYER', [
      layerEntry('0', 7, 'CONTINUOUS'),
      ...layers.map(({ layer }) =>
        layerEntry(dxfName(layer.name), layer.dxfColour, lineTypeOf(layer.pen).name),
      ),
    ]),
    table('STYLE', [styleEntry]),
  ].join('')

const table = (name: string, entries: readonly string[]): string =>
  tag(0, 'TABLE') + tag(2, name) + tag(70, entries.length) + entries.join('') + tag(0, 'ENDTAB')

const lineTypeEntry = (type: LineType): string =>
  [
    tag(0, 'LTYPE') + tag(2, type.name) + tag(70, 0) + tag(3, type.title),
    tag(72, 65) + tag(73, type.pattern.length) + real(40, patternLength(type)),
    ...type.pattern.map((length) => real(49, length)),
  ].join('')

const layerEntry = (name: string, colour: number, lineType: string): string =>
  tag(0, 'LAYER') + tag(2, name) + tag(70, 0) + tag(62, colour) + tag(6, lineType)

const styleEntry = [
  tag(0, 'STYLE') + tag(2, 'STANDARD') + tag(70, 0) + real(40, 0) + real(41, 1) + real(50, 0),
  tag(71, 0) + real(42, 2.5) + tag(3, 'txt') + tag(4, ''),
].join('')

const entities = ({ layer, paths, texts }: LayerContent): string =>
  paths.map((path) => pathEntity(path, layer)).join('') + texts.map(textEntity).join('')

const pathEntity = (path: WrittenPath, layer: Layer): string => {
  const type = lineTypeOf(path.pen ?? layer.pen)
  const place =
    tag(8, dxfName(layer.name)) + (type.name === lineTypeOf(layer.pen).name ? '' : tag(6, type.name))
  const stroke = strokeEnds(path)
  if (stroke) return tag(0, 'LINE') + place + spatial(10, stroke.from) + spatial(11, stroke.to)
  return [
    tag(0, 'POLYLINE') + place + tag(66, 1) + spatial(10, point(0, 0)),
    tag(70, polylineFlags(path, type.pattern.length > 0)),
    ...path.vertices.map(
      (vertex) =>
        tag(0, 'VERTEX') +
        place +
        spatial(10, vertex) +
        (vertex.bulge === 0 ? '' : real(42, vertex.bulge, BULGE_DECIMALS)),
    ),
    tag(0, 'SEQEND') + place,
  ].join('')
}

const textEntity = ({ layer, text, at, leftEnd, height, turn, alignment }: DxfLettering): string =>
  [
    tag(0, 'TEXT') + tag(8, dxfName(layer)) + spatial(10, leftEnd) + real(40, height) + tag(1, text),
    real(50, toDegrees(turn)) + tag(7, 'STANDARD'),
    alignment === 0 ? '' : tag(72, alignment) + spatial(11, at),
  ].join('')
