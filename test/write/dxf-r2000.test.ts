import { describe, expect, it } from 'vitest'
import { writeDxf } from '../../src/write/dxf.js'
import { type DxfRecord, dxfGroups, dxfRecords, headerValues, valuesOf } from '../read-back/dxf-groups.js'
import { SAMPLER } from './test-drawings.js'

// What an AC1015 file must hold at least. Sources: ezdxf documentation, "DXF internals" (seen at commit 5ffc690746f1,
// 2026-06-20); AutoCAD DXF reference. Tolerant readers pass over what is missing here, so each is looked for.

const groups = dxfGroups(writeDxf(SAMPLER, 'r2000'))
const records = dxfRecords(groups)

const between = (first: DxfRecord | undefined, end: string): DxfRecord[] => {
  const start = first ? records.indexOf(first) : -1
  if (start < 0) throw new Error(`there is none that ends with ${end}`)
  const rest = records.slice(start + 1)
  return rest.slice(
    0,
    rest.findIndex(({ type }) => type === end),
  )
}

const section = (name: string): DxfRecord[] =>
  between(
    records.find((record) => record.type === 'SECTION' && valuesOf(record, 2)[0] === name),
    'ENDSEC',
  )

const entries = (table: string): DxfRecord[] =>
  between(
    records.find((record) => record.type === 'TABLE' && valuesOf(record, 2)[0] === table),
    'ENDTAB',
  )

const names = (table: string): string[] =>
  entries(table).map((entry) => (valuesOf(entry, 2)[0] ?? '').toUpperCase())

describe('DXF R2000, for strict readers', () => {
  it('has its sections in order', () => {
    const sections = records.filter(({ type }) => type === 'SECTION').map((record) => valuesOf(record, 2)[0])
    expect(sections).toEqual(['HEADER', 'CLASSES', 'TABLES', 'BLOCKS', 'ENTITIES', 'OBJECTS'])
    expect(records.filter(({ type }) => type === 'ENDSEC')).toHaveLength(6)
    expect(records.at(-1)?.type).toBe('EOF')
  })

  it.each([
    ['LTYPE', ['BYBLOCK', 'BYLAYER', 'CONTINUOUS']],
    ['LAYER', ['0']],
    ['STYLE', ['STANDARD']],
    ['APPID', ['ACAD']],
    ['DIMSTYLE', ['STANDARD']],
    ['BLOCK_RECORD', ['*MODEL_SPACE', '*PAPER_SPACE']],
    ['VPORT', ['*ACTIVE']],
    ['VIEW', []],
    ['UCS', []],
  ])('has a table %s with %j', (table, required) => {
    expect(names(table)).toEqual(expect.arrayContaining(required))
    const head = records.find((record) => record.type === 'TABLE' && valuesOf(record, 2)[0] === table)
    expect(head && valuesOf(head, 70)).toEqual([String(entries(table).length)])
  })

  it('has the blocks of both spaces and the dictionary of groups', () => {
    expect(section('BLOCKS').map(({ type }) => type)).toEqual(['BLOCK', 'ENDBLK', 'BLOCK', 'ENDBLK'])
    const blocks = section('BLOCKS').filter(({ type }) => type === 'BLOCK')
    expect(blocks.map((block) => valuesOf(block, 2)[0]?.toUpperCase())).toEqual([
      '*MODEL_SPACE',
      '*PAPER_SPACE',
    ])
    const [root, groupsOf] = section('OBJECTS')
    expect(root && [valuesOf(root, 330), valuesOf(root, 3)]).toEqual([['0'], ['ACAD_GROUP']])
    expect(root && valuesOf(root, 350)).toEqual(groupsOf && valuesOf(groupsOf, 5))
  })

  const table = (record: string) => ['AcDbSymbolTableRecord', record]
  it.each([
    ['VPORT', table('AcDbViewportTableRecord')],
    ['LTYPE', table('AcDbLinetypeTableRecord')],
    ['LAYER', table('AcDbLayerTableRecord')],
    ['STYLE', table('AcDbTextStyleTableRecord')],
    ['APPID', table('AcDbRegAppTableRecord')],
    ['DIMSTYLE', table('AcDbDimStyleTableRecord')],
    ['BLOCK_RECORD', table('AcDbBlockTableRecord')],
    ['BLOCK', ['AcDbEntity', 'AcDbBlockBegin']],
    ['ENDBLK', ['AcDbEntity', 'AcDbBlockEnd']],
    ['LINE', ['AcDbEntity', 'AcDbLine']],
    ['LWPOLYLINE', ['AcDbEntity', 'AcDbPolyline']],
    ['TEXT', ['AcDbEntity', 'AcDbText', 'AcDbText']],
    ['DICTIONARY', ['AcDbDictionary']],
  ])('%s has handle, owner and the markers %j', (type, markers) => {
    const found = records.filter((record) => record.type === type)
    expect(found.length).toBeGreaterThan(0)
    for (const record of found) {
      expect(valuesOf(record, 100)).toEqual(markers)
      expect(valuesOf(record, type === 'DIMSTYLE' ? 105 : 5)).toHaveLength(1)
      expect(valuesOf(record, 330)).toHaveLength(1)
    }
  })

  it('gives every object a handle of its own, below the seed, and an owner that exists', () => {
    const [seed = ''] = headerValues(groups, '$HANDSEED')
    const handles = records
      .flatMap((record) => [
        ...(record.type === 'SECTION' ? [] : valuesOf(record, 5)),
        ...valuesOf(record, 105),
      ])
      .map((handle) => Number.parseInt(handle, 16))
    expect(new Set(handles).size).toBe(handles.length)
    expect(Math.min(...handles)).toBeGreaterThan(0)
    expect(Math.max(...handles)).toBeLessThan(Number.parseInt(seed, 16))
    const known = new Set([0, ...handles])
    const pointers = groups.filter(({ code }) => code === 330 || code === 340 || code === 350)
    expect(pointers.length).toBeGreaterThan(30)
    expect(pointers.filter(({ value }) => !known.has(Number.parseInt(value, 16)))).toEqual([])
  })

  it('draws everything in model space, and counts the vertices of each polyline', () => {
    const model = entries('BLOCK_RECORD').find((entry) => /model/i.test(valuesOf(entry, 2)[0] ?? ''))
    for (const entity of section('ENTITIES')) {
      expect(valuesOf(entity, 330)).toEqual(model && valuesOf(model, 5))
      if (entity.type !== 'LWPOLYLINE') continue
      expect(valuesOf(entity, 90)).toEqual([String(valuesOf(entity, 10).length)])
    }
  })

  // AutoCAD DXF reference, group 370: line weights in hundredths of a mm, from a fixed list.
  it('gives line weights that exist', () => {
    const weights = groups.filter(({ code }) => code === 370).map(({ value }) => value)
    expect(new Set(weights)).toEqual(new Set(['25', '50']))
  })
})
