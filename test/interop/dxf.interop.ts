import { describe, expect, it } from 'vitest'
import type { Path } from '../../src/drawing/model.js'
import { edges, type Outline, signedArea } from '../../src/geometry/outline.js'
import { labelsInFileOrder, pathsInFileOrder } from '../read-back/agreement.js'
import { lengthOf } from '../read-back/read-outline.js'
import { HOSTILE, HOSTILE_TEXTS } from '../write/test-drawings.js'
import { auditDxf } from './audit-dxf.js'
import { enclosedArea, GDAL_ARC_STEP, gdalLines, isClosed } from './gdal-lines.js'
import { writeFiles } from './written-files.js'

const files = writeFiles()

// AutoCAD DXF reference: AC1009 is R12, AC1015 is 2000; $INSUNITS 4 is mm and does not exist in R12.
const VERSIONS = [
  {
    version: 'AC1009',
    unit: 0,
    polyline: 'POLYLINE',
    pathOf: ({ dxfR12 }: (typeof files)[number]) => dxfR12,
  },
  {
    version: 'AC1015',
    unit: 4,
    polyline: 'LWPOLYLINE',
    pathOf: ({ dxfR2000 }: (typeof files)[number]) => dxfR2000,
  },
]

/**
 * How far GDAL's area may be off: the outline by half of the last written digit and by the rise of a chord over
 * {@link GDAL_ARC_STEP}, all along its way.
 */
const areaTolerance = (outline: Outline): number => {
  const largest = Math.max(0, ...edges(outline).map(({ arc }) => arc?.radius ?? 0))
  const rise = largest * (1 - Math.cos((GDAL_ARC_STEP * Math.PI) / 360))
  return lengthOf(outline) * (1e-4 + rise)
}

describe.each(VERSIONS)('DXF $version', ({ version, unit, polyline, pathOf }) => {
  it('leaves ezdxf nothing to repair, and holds what was drawn', () => {
    const audits = auditDxf(files.map(pathOf))
    expect(audits).toHaveLength(files.length)
    audits.forEach((audit, index) => {
      const drawing = files[index]?.drawing ?? HOSTILE
      const paths = pathsInFileOrder(drawing)
      expect(audit).toMatchObject({ version, unit, errors: [], fixes: [] })
      expect(Object.keys(audit.types).filter((type) => !['LINE', polyline, 'TEXT'].includes(type))).toEqual(
        [],
      )
      expect((audit.types.LINE ?? 0) + (audit.types[polyline] ?? 0)).toBe(paths.length)
      expect(audit.types.TEXT ?? 0).toBe(labelsInFileOrder(drawing).length)
      expect(audit.layers).toEqual([...new Set(drawing.shapes.map(({ layer }) => layer))].sort())
    })
  })

  it('keeps hostile lettering to its words in ezdxf', () => {
    const [audit] = auditDxf(files.filter(({ name }) => name === 'hostile').map(pathOf))
    expect(audit?.types).toEqual({ [polyline]: 1, TEXT: HOSTILE_TEXTS.length })
    expect(audit?.texts).toEqual(
      expect.arrayContaining([
        'Lake star 0 CIRCLE 8 0 10 0.0 20 0.0 40 9.0',
        '½ in, 31.5°, 70 × 18 mm, ⅛ ′ ⌀ Łódź',
        '% %c 12 % %d % % % %u 62 % % %',
        ']]>x]]><script/>',
      ]),
    )
  })

  it('keeps names and notes of every script in ezdxf', () => {
    const scripts = files.filter(({ name }) => name.startsWith('scripts/'))
    expect(scripts.length).toBeGreaterThan(5)
    auditDxf(scripts.map(pathOf)).forEach((audit, index) => {
      const labels = labelsInFileOrder(scripts[index]?.drawing ?? HOSTILE).map(({ text }) => text)
      expect([...audit.texts].sort()).toEqual(labels.sort())
    })
  })

  it.each(files)('$name: GDAL finds the paths, closed where they should be, of the right area', (file) => {
    const lines = gdalLines(pathOf(file))
    const paths = pathsInFileOrder(file.drawing)
    expect(lines.map(({ layer }) => layer)).toEqual(paths.map(({ layer }) => layer))
    paths.forEach((path, index) => {
      const line = lines[index]
      if (!line) throw new RangeError(`no line ${index}`)
      // GDAL calls a line closed whose ends meet; a letter's stroke may end where it began.
      expect(isClosed(line), `path ${index} on ${path.layer}`).toBe(path.closed || endsMeet(path))
      if (!path.closed) return
      const off = Math.abs(enclosedArea(line) - signedArea(path))
      expect(off, `area of path ${index} on ${path.layer}`).toBeLessThan(areaTolerance(path))
    })
  })
})

const endsMeet = ({ vertices }: Path): boolean => {
  const [first, last] = [vertices[0], vertices.at(-1)]
  return first !== undefined && last !== undefined && first.x === last.x && first.y === last.y
}
