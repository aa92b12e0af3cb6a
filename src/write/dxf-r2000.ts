import { type Layer, PENS, penOf } from '../drawing/layers.js'
import { point } from '../geometry/point.js'
import { toDegrees } from '../units/convert.js'
import type { DxfContent, DxfLettering, LayerContent } from './dxf-content.js'
import { handles, type NextHandle, type Spaces } from './dxf-handles.js'
import { lineTypeOf, lineWeight } from './dxf-linetype.js'
import { BULGE_DECIMALS, polylineFlags, strokeEnds } from './dxf-path.js'
import { r2000Tables } from './dxf-r2000-tables.js'
import { flat, real, section, spatial, tag } from './dxf-tags.js'
import { dxfName } from './dxf-text.js'
import type { WrittenPath } from './written-path.js'

/**
 * DXF R2000 (AC1015), with the sections, tables, owners and markers that strict readers ask for. Sources: AutoCAD DXF
 * reference; ezdxf documentation, "DXF internals", for what a file must hold at least.
 */
export const writeR2000 = (content: DxfContent): string => {
  const next = handles()
  const spaces: Spaces = { model: next(), paper: next() }
  const body = [
    section('CLASSES', ''),
    section('TABLES', r2000Tables(content, spaces, next)),
    section('BLOCKS', blocks(spaces, next)),
    section('ENTITIES', content.layers.map((layer) => entities(layer, spaces.model, next)).join('')),
    section('OBJECTS', objects(next)),
  ]
  const comments = content.comments.map((comment) => tag(999, comment))
  return [...comments, section('HEADER', header(content, next())), ...body, tag(0, 'EOF')].join('')
}

const MILLIMETRES = 4
const METRIC = 1

const header = ({ extents }: DxfContent, handleSeed: string): string =>
  [
    tag(9, '$ACADVER') + tag(1, 'AC1015'),
    tag(9, '$DWGCODEPAGE') + tag(3, 'ANSI_1252'),
    tag(9, '$INSBASE') + spatial(10, point(0, 0)),
    tag(9, '$EXTMIN') + spatial(10, extents.min),
    tag(9, '$EXTMAX') + spatial(10, extents.max),
    tag(9, '$LTSCALE') + real(40, 1),
    tag(9, '$MEASUREMENT') + tag(70, METRIC),
    tag(9, '$INSUNITS') + tag(70, MILLIMETRES),
    tag(9, '$HANDSEED') + tag(5, handleSeed),
  ].join('')

const blocks = ({ model, paper }: Spaces, next: NextHandle): string =>
  block('*Model_Space', model, '', next) + block('*Paper_Space', paper, tag(67, 1), next)

const block = (name: string, owner: string, space: string, next: NextHandle): string =>
  [
    tag(0, 'BLOCK') + tag(5, next()) + tag(330, owner) + tag(100, 'AcDbEntity') + space + tag(8, '0'),
    tag(100, 'AcDbBlockBegin') +
      tag(2, name) +
      tag(70, 0) +
      spatial(10, point(0, 0)) +
      tag(3, name) +
      tag(1, ''),
    tag(0, 'ENDBLK') + tag(5, next()) + tag(330, owner) + tag(100, 'AcDbEntity') + space + tag(8, '0'),
    tag(100, 'AcDbBlockEnd'),
  ].join('')

const objects = (next: NextHandle): string => {
  const [root, groups] = [next(), next()]
  return [
    tag(0, 'DICTIONARY') + tag(5, root) + tag(330, '0') + tag(100, 'AcDbDictionary') + tag(281, 1),
    tag(3, 'ACAD_GROUP') + tag(350, groups),
    tag(0, 'DICTIONARY') + tag(5, groups) + tag(330, root) + tag(100, 'AcDbDictionary') + tag(281, 1),
  ].join('')
}

const entities = ({ layer, paths, texts }: LayerContent, owner: string, next: NextHandle): string =>
  [
    ...paths.map((path) => pathEntity(path, layer, owner, next)),
    ...texts.map((text) => textEntity(text, owner, next)),
  ].join('')

const entity = (type: string, layer: string, look: string, owner: string, next: NextHandle): string =>
  [
    tag(0, type) + tag(5, next()) + tag(330, owner),
    tag(100, 'AcDbEntity') + tag(8, dxfName(layer)) + look,
  ].join('')

const pathEntity = (path: WrittenPath, layer: Layer, owner: string, next: NextHandle): string => {
  const type = lineTypeOf(path.pen ?? layer.pen)
  const weight = lineWeight(penOf(path))
  const look =
    (type.name === lineTypeOf(layer.pen).name ? '' : tag(6, type.name)) +
    (weight === lineWeight(PENS[layer.pen]) ? '' : tag(370, weight))
  const stroke = strokeEnds(path)
  if (stroke) {
    return [
      entity('LINE', layer.name, look, owner, next) + tag(100, 'AcDbLine'),
      spatial(10, stroke.from) + spatial(11, stroke.to),
    ].join('')
  }
  return [
    entity('LWPOLYLINE', layer.name, look, owner, next) + tag(100, 'AcDbPolyline'),
    tag(90, path.vertices.length) + tag(70, polylineFlags(path, type.pattern.length > 0)) + real(43, 0),
    ...path.vertices.map(
      (vertex) => flat(10, vertex) + (vertex.bulge === 0 ? '' : real(42, vertex.bulge, BULGE_DECIMALS)),
    ),
  ].join('')
}

const textEntity = (text: DxfLettering, owner: string, next: NextHandle): string =>
  [
    entity('TEXT', text.layer, '', owner, next) + tag(100, 'AcDbText'),
    spatial(10, text.leftEnd) + real(40, text.height) + tag(1, text.text) + real(50, toDegrees(text.turn)),
    tag(7, 'STANDARD') + (text.alignment === 0 ? '' : tag(72, text.alignment) + spatial(11, text.at)),
    tag(100, 'AcDbText'),
  ].join('')
