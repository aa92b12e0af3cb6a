import fc from 'fast-check'
import { afterAll, describe, expect, it } from 'vitest'
import { drawingExtents } from '../../src/drawing/bounds.js'
import { LAYERS, PENS } from '../../src/drawing/layers.js'
import type { Drawing } from '../../src/drawing/model.js'
import { chain, label, line, path, ring } from '../../src/drawing/shapes.js'
import { point } from '../../src/geometry/point.js'
import type { DxfVersion } from '../../src/order/order.js'
import { writeDxf } from '../../src/write/dxf.js'
import { dxfName } from '../../src/write/dxf-text.js'
import {
  expectSamePaths,
  expectSamePlaces,
  labelsInFileOrder,
  pathsInFileOrder,
} from '../read-back/agreement.js'
import { dxfGroups, headerValues, isReal } from '../read-back/dxf-groups.js'
import { openDxfReader } from '../read-back/read-dxf.js'
import { anyDrawing, drawingOf, HOSTILE, HOSTILE_TEXTS, SAMPLER } from './test-drawings.js'

const reader = openDxfReader()
afterAll(reader.close)

const VERSIONS: readonly DxfVersion[] = ['r12', 'r2000']

describe.each(VERSIONS)('DXF %s read back by dxf-parser', (version) => {
  const expectAgreement = async (drawing: Drawing): Promise<void> => {
    const file = await reader.read(writeDxf(drawing, version))
    expectSamePaths(file.outlines, pathsInFileOrder(drawing))
    expectSamePlaces(file.texts, labelsInFileOrder(drawing))
  }

  it('agrees with a drawing that has a bit of everything', () => expectAgreement(SAMPLER))

  it('agrees with any drawing of outlines, arcs and hostile lettering', { timeout: 60_000 }, async () => {
    await fc.assert(fc.asyncProperty(anyDrawing, expectAgreement), { seed: 42, numRuns: 300 })
  })

  it('keeps a 3 m arc at its place, flat, nearly a half turn, or nearly a full one', async () => {
    for (const bulge of [1e-5, 1 - 1e-9, 1 - 1e-4, 1, 1 + 1e-9, 1 + 1e-4, 50]) {
      const vertices = [{ x: 0.00004, y: 1, bulge }, point(3000.00003, 700)]
      await expectAgreement(drawingOf([path('CUT-OUTSIDE', { closed: false, vertices })]))
    }
  })

  it('is the same bytes for the same drawing', () => {
    expect(writeDxf(structuredClone(SAMPLER), version)).toBe(writeDxf(SAMPLER, version))
  })

  it('holds one entity per path and label, whatever the lettering says', async () => {
    const { entities, texts } = await reader.read(writeDxf(HOSTILE, version))
    expect(entities.map(({ type }) => type)).toEqual([
      version === 'r12' ? 'POLYLINE' : 'LWPOLYLINE',
      ...HOSTILE_TEXTS.map(() => 'TEXT'),
    ])
    expect(texts.map(({ layer }) => layer)).toEqual(HOSTILE_TEXTS.map(() => 'NOTE'))
  })

  it.each([
    ['Lake star\n0\nCIRCLE', 'Lake star 0 CIRCLE'],
    ['Lake star\r\n  0\r\nEOF', 'Lake star   0 EOF'],
    ['½ in, 31.5°, ⅛ ′ ⌀ Łódź', '½ in, 31.5°, ⅛ ′ ⌀ Łódź'],
    ['nul\u0000 bell\u0007 delete\u007f next\u0085line\u2028break', 'nul bell delete next line break'],
    ['turned \u202e53.1\u202c and \u200fmarked\u200e', 'turned 53.1 and marked'],
    ['a whole pair \u{1f600}', 'a whole pair ?'],
    ['12 %%d %%c', '12 % %d % %c'],
    ['62 %, %%%%u', '62 %, % % % %u'],
    ['\\U+0041 ^J', '\\U+0041 ^J'],
  ])('says %j as %j', async (given, expected) => {
    const { texts } = await reader.read(writeDxf(drawingOf([label(given, point(0, 0))]), version))
    expect(texts.map(({ text }) => text)).toEqual([expected])
  })

  it('lists every used layer with its colour, and every line type', async () => {
    const { tables } = await reader.read(writeDxf(SAMPLER, version))
    expect(Object.values(tables.layer.layers).map(({ name, colorIndex }) => [name, colorIndex])).toEqual([
      ['0', 7],
      ...LAYERS.map(({ name, dxfColour }) => [name, dxfColour]),
    ])
    const types = Object.values(tables.lineType.lineTypes)
    const ours = types.filter(({ name }) => !/^By/.test(name))
    expect(ours.map(({ name }) => name)).toEqual(['CONTINUOUS', 'DASHED', 'CHAIN', 'DOUBLE-CHAIN'])
    for (const { patternLength, pattern } of ours.slice(1)) {
      const lengths = pattern.map((length) => Math.abs(Number(length)))
      expect(lengths.reduce((sum, length) => sum + length, 0)).toBeCloseTo(patternLength, 9)
    }
    expect(ours[1]?.pattern.map(Number)).toEqual([3, -1.5])
    expect(Object.keys((await reader.read(writeDxf(HOSTILE, version))).tables.layer.layers)).toEqual([
      '0',
      'CUT-OUTSIDE',
      'NOTE',
    ])
  })

  it('gives a path its own line type only where its pen differs from the layer’s', async () => {
    const shapes = [
      line('GUIDE', point(0, 0), point(9, 0)),
      line('GUIDE', point(0, 1), point(9, 1), 'dashed'),
      chain('GUIDE', [point(0, 2), point(9, 2), point(9, 9)], 'chain'),
      line('GUIDE', point(0, 3), point(9, 3), 'wide'),
    ]
    const { entities } = await reader.read(writeDxf(drawingOf(shapes), version))
    expect(entities.map(({ lineType }) => lineType)).toEqual([undefined, 'DASHED', 'CHAIN', undefined])
    const wide = PENS.wide.width * 100
    const weights = entities.map(({ lineweight }) => lineweight)
    expect(weights).toEqual([undefined, undefined, undefined, version === 'r12' ? undefined : wide])
  })

  it('states the extents, lettering included', async () => {
    const { header } = await reader.read(writeDxf(SAMPLER, version))
    const { min, max } = drawingExtents(SAMPLER)
    for (const [name, corner] of [
      ['$EXTMIN', min],
      ['$EXTMAX', max],
    ] as const) {
      const { x, y, z } = header[name] as { x: number; y: number; z: number }
      expect([Math.abs(x - corner.x) < 1e-4, Math.abs(y - corner.y) < 1e-4, z]).toEqual([true, true, 0])
    }
  })

  it('says the unit and the true size in words before everything else', () => {
    const [title, unit, size] = dxfGroups(writeDxf(SAMPLER, version))
    expect(title).toEqual({ code: 999, value: 'Starwright: Winter fair: <star> & "lamp"' })
    expect(unit).toEqual({ code: 999, value: 'UNITS: mm' })
    expect(size).toEqual({ code: 999, value: 'TRUE SIZE: 300.13 mm across, 285.32 mm high' })
  })

  it.each([SAMPLER, HOSTILE])('is ASCII, and its numbers are plain decimals with a dot', (drawing) => {
    const text = writeDxf(drawing, version)
    expect(text).toMatch(/^[\r\n\x20-\x7e]*$/)
    const reals = dxfGroups(text).filter(isReal)
    expect(reals.length).toBeGreaterThan(100)
    for (const { value } of reals) expect(value).toMatch(/^(?!-0\.0$)-?\d+\.\d+$/)
  })

  it('holds no edge of no length', () => {
    const shapes = [
      chain('MARK', [point(0, 0), point(0, 0), point(5, 0), point(5, 4e-7)]),
      line('MARK', point(3, 3), point(3, 3)),
      ring('MARK', point(0, 0), 1e-7),
      line('MARK', point(0, 0), point(5, 0)),
    ]
    const types = dxfGroups(writeDxf(drawingOf(shapes), version)).filter(({ code }) => code === 0)
    expect(types.filter(({ value }) => /LINE$/.test(value)).map(({ value }) => value)).toEqual(['LINE'])
  })

  it('refuses a drawing with a place that is no number', () => {
    const bent = { x: 0, y: 0, bulge: Number.NaN }
    expect(() => writeDxf(drawingOf([line('MARK', point(0, Number.NaN), point(1, 1))]), version)).toThrow(
      RangeError,
    )
    expect(() => writeDxf(drawingOf([chain('MARK', [bent, point(1, 1)])]), version)).toThrow(RangeError)
  })
})

// AutoCAD DXF reference, header section: $ACADVER AC1009 is R12, AC1015 is 2000; $INSUNITS 4 is mm, $MEASUREMENT 1 metric.
describe('the header of a DXF file', () => {
  it('declares R12 and no variable that is younger', () => {
    const groups = dxfGroups(writeDxf(SAMPLER, 'r12'))
    expect(headerValues(groups, '$ACADVER')).toEqual(['AC1009'])
    expect(headerValues(groups, '$INSUNITS')).toEqual([])
    expect(headerValues(groups, '$MEASUREMENT')).toEqual([])
    expect(groups.filter(({ code }) => code === 100 || code === 330)).toEqual([])
  })

  it('declares R2000 and mm', () => {
    const groups = dxfGroups(writeDxf(SAMPLER, 'r2000'))
    expect(headerValues(groups, '$ACADVER')).toEqual(['AC1015'])
    expect(headerValues(groups, '$INSUNITS')).toEqual(['4'])
    expect(headerValues(groups, '$MEASUREMENT')).toEqual(['1'])
  })
})

// AutoCAD R12: symbol names hold letters, digits, $, - and _, at most 31 of them.
it.each([
  ['CUT-OUTSIDE', 'CUT-OUTSIDE'],
  ['a b.c<>/\\":;?*|=,`é', 'a_b_c______________'],
  ['0\n0\nEOF', '0_0_EOF'],
  ['x'.repeat(40), 'x'.repeat(31)],
])('the name %j becomes %j', (given, expected) => {
  expect(dxfName(given)).toBe(expected)
})
