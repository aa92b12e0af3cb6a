import { type Layer, PENS } from '../drawing/layers.js'
import { between, point } from '../geometry/point.js'
import type { DxfContent } from './dxf-content.js'
import type { NextHandle, Spaces } from './dxf-handles.js'
import { LINE_TYPES, type LineType, lineTypeOf, lineWeight, patternLength } from './dxf-linetype.js'
import { flat, real, spatial, tag } from './dxf-tags.js'
import { dxfName } from './dxf-text.js'

/** The begin of a table's entry: its type, handle, owner and the marker all entries share. */
type Entry = (marker: string) => string

export const r2000Tables = (content: DxfContent, spaces: Spaces, next: NextHandle): string => {
  const table = (name: string, rows: readonly ((entry: Entry) => string)[], marker = ''): string => {
    const owner = next()
    const entries = rows.map((row) => row((kind) => entryHead(name, next(), owner, kind)))
    return tableHead(name, owner, rows.length) + marker + entries.join('') + tag(0, 'ENDTAB')
  }
  return [
    table('VPORT', [(entry) => viewport(entry, content)]),
    table(
      'LTYPE',
      [BY_BLOCK, BY_LAYER, ...LINE_TYPES].map((type) => (entry) => lineType(entry, type)),
    ),
    table('LAYER', [
      (entry) => layerZero(entry),
      ...content.layers.map(
        ({ layer }) =>
          (entry: Entry) =>
            usedLayer(entry, layer),
      ),
    ]),
    table('STYLE', [textStyle]),
    table('VIEW', []),
    table('UCS', []),
    table('APPID', [(entry) => entry('AcDbRegAppTableRecord') + tag(2, 'ACAD') + tag(70, 0)]),
    table('DIMSTYLE', [dimensionStyle], tag(100, 'AcDbDimStyleTable')),
    blockRecords(spaces, next()),
  ].join('')
}

const tableHead = (name: string, handle: string, count: number): string =>
  [
    tag(0, 'TABLE') + tag(2, name) + tag(5, handle) + tag(330, '0'),
    tag(100, 'AcDbSymbolTable') + tag(70, count),
  ].join('')

const entryHead = (type: string, handle: string, owner: string, marker: string): string =>
  [
    // A dimension style keeps its handle in group 105; group 5 is one of its settings.
    tag(0, type) + tag(type === 'DIMSTYLE' ? 105 : 5, handle) + tag(330, owner),
    tag(100, 'AcDbSymbolTableRecord') + tag(100, marker),
  ].join('')

/** What a program shows first: the whole drawing. */
const viewport = (entry: Entry, { extents: { min, max } }: DxfContent): string => {
  const [across, height] = [max.x - min.x, max.y - min.y]
  return [
    entry('AcDbViewportTableRecord') + tag(2, '*Active') + tag(70, 0),
    flat(10, point(0, 0)) + flat(11, point(1, 1)) + flat(12, between(min, max, 0.5)),
    flat(13, point(0, 0)) + flat(14, point(10, 10)) + flat(15, point(10, 10)),
    real(16, 0) + real(26, 0) + real(36, 1) + spatial(17, point(0, 0)),
    real(40, Math.max(height, across / VIEW_ASPECT, 1) * 1.1) + real(41, VIEW_ASPECT) + real(42, 50),
    real(43, 0) +
      real(44, 0) +
      real(50, 0) +
      real(51, 0) +
      tag(71, 0) +
      tag(72, 1000) +
      tag(73, 1) +
      tag(74, 3),
    tag(75, 0) + tag(76, 0) + tag(77, 0) + tag(78, 0),
  ].join('')
}

const VIEW_ASPECT = 4 / 3

const BY_BLOCK: LineType = { name: 'ByBlock', title: '', pattern: [] }
const BY_LAYER: LineType = { name: 'ByLayer', title: '', pattern: [] }

const lineType = (entry: Entry, type: LineType): string =>
  [
    entry('AcDbLinetypeTableRecord') + tag(2, type.name) + tag(70, 0) + tag(3, type.title),
    tag(72, 65) + tag(73, type.pattern.length) + real(40, patternLength(type)),
    ...type.pattern.map((length) => real(49, length) + tag(74, 0)),
  ].join('')

const layerZero = (entry: Entry): string =>
  entry('AcDbLayerTableRecord') + tag(2, '0') + tag(70, 0) + tag(62, 7) + tag(6, 'CONTINUOUS')

const usedLayer = (entry: Entry, { name, dxfColour, pen }: Layer): string =>
  [
    entry('AcDbLayerTableRecord') + tag(2, dxfName(name)) + tag(70, 0) + tag(62, dxfColour),
    tag(6, lineTypeOf(pen).name) + tag(370, lineWeight(PENS[pen])),
  ].join('')

const textStyle = (entry: Entry): string =>
  [
    entry('AcDbTextStyleTableRecord') + tag(2, 'STANDARD') + tag(70, 0) + real(40, 0) + real(41, 1),
    real(50, 0) + tag(71, 0) + real(42, 2.5) + tag(3, 'txt') + tag(4, ''),
  ].join('')

const dimensionStyle = (entry: Entry): string =>
  entry('AcDbDimStyleTableRecord') + tag(2, 'STANDARD') + tag(70, 0)

/** The records have their handles already, since blocks and entities name them as owner. */
const blockRecords = ({ model, paper }: Spaces, owner: string): string => {
  const record = (name: string, handle: string): string =>
    entryHead('BLOCK_RECORD', handle, owner, 'AcDbBlockTableRecord') + tag(2, name) + tag(340, '0')
  return [
    tableHead('BLOCK_RECORD', owner, 2) + record('*Model_Space', model) + record('*Paper_Space', paper),
    tag(0, 'ENDTAB'),
  ].join('')
}
