import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readSvg } from '../read-back/read-svg.js'
import { starwright } from './starwright.js'

const ORDER = 'shared/examples/winter-fair.yaml'
const folder = mkdtempSync(join(tmpdir(), 'starwright-choose-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('choose', () => {
  it('lists numbered stars with pictures, within the width of a terminal', () => {
    const { code, out, err } = starwright(['choose', ORDER, '--most', '5'])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out.match(/^ {3}\d {2}[⠀-⣿]{8} {2}/gm)).toHaveLength(5)
    const inches = starwright(['choose', 'shared/examples/lantern-walk.yaml', '--most', '500']).out
    expect(Math.max(...`${out}${inches}`.split('\n').map((line) => line.length))).toBeLessThanOrEqual(84)
    expect(out).toContain('4 points, tip 45°, slenderest; 258.7 × 258.7 mm')
  })

  it('--json gives all of them, ranked, in mm and degrees', () => {
    const { out } = starwright(['choose', ORDER, '--points', '5', '--rank', 'size', '--json'])
    const { stars } = JSON.parse(out)
    expect(stars.length).toBeGreaterThan(100)
    const widths = stars.map(({ across }: { across: number }) => across)
    expect(widths).toEqual([...widths].sort((a, b) => b - a))
    const own = stars.find(({ label }: { label: string }) => label === 'Boathouse')
    // The board's 70 mm carry a tip edge of 70 / sin 45°.
    expect(own.tipEdge).toBeCloseTo(70 * Math.SQRT2, 9)
    expect(own).toMatchObject({ slenderest: true, onMarks: true, gapAtMarks: 0, arms: 30 })
  })

  it('needs no order: a size, or a wall, will do', () => {
    const wall = starwright(['choose', '--points', '5', '--space-across', '30cm', '--json'])
    for (const { across } of JSON.parse(wall.out).stars) expect(across).toBeCloseTo(300, 6)
    const edge = starwright(['choose', '--points', '5', '--tip-edge', '100', '--json'])
    for (const { tipEdge } of JSON.parse(edge.out).stars) expect(tipEdge).toBeCloseTo(100, 9)
  })

  it('draws two stars over each other at true size', () => {
    const file = join(folder, 'two.svg')
    const { code, out } = starwright(['choose', ORDER, '--compare', '6/2', 'Chapel', '--to', file])
    expect(code).toBe(0)
    expect(out).toMatch(/^ {2}Width +242\.5 mm +440\.0 mm$/m)
    const text = readFileSync(file, 'utf8')
    const paths = readSvg(text).outlines
    const width = (layer: string) => {
      const xs = paths
        .filter((path) => path.layer === layer)
        .flatMap(({ vertices }) => vertices.map(({ x }) => x))
      return Math.max(...xs) - Math.min(...xs)
    }
    expect(width('PATTERN')).toBeCloseTo((70 / Math.sin(Math.PI / 3)) * 3, 3)
    expect(width('DIM')).toBeCloseTo(440, 3)
  })

  it('writes the list as SVG and PDF', () => {
    for (const name of ['list.svg', 'list.pdf']) {
      const file = join(folder, name)
      expect(starwright(['choose', ORDER, '--to', file, '--quiet'])).toEqual({ code: 0, out: '', err: '' })
      expect(readFileSync(file).length).toBeGreaterThan(5_000)
    }
  })

  it.each([
    [['choose'], 'choose: given neither boards nor a size nor a wall.'],
    [['choose', ORDER, '--points', '2'], '--points: given "2". Allowed: one whole number from 3 to 24.'],
    [['choose', ORDER, '--points', '5', '--points', '6'], '--points: given more than one value.'],
    [['choose', ORDER, '--most', '-3'], '--most: given "-3". Allowed: one whole number from 1 to 10000.'],
    [['choose', ORDER, '--compare', '5/2', '5@45'], '--compare: given "5/2". This star cannot be made'],
    [['choose', ORDER, '--compare', 'Bathouse', '1'], 'Did you mean Boathouse?'],
    [['choose', ORDER, '--compare', '\u001b[31m', '1'], '--compare: given "\\u001b[31m".'],
    [
      ['choose', ORDER, '--to', 'list.txt'],
      '--to: given "list.txt". Allowed: a file that ends in .svg, .dxf or .pdf.',
    ],
    [['choose', '--board-width', '10mm'], 'choose: given a saw that stops at 45°'],
    [['choose', '--space-across', '0', '--points', '5'], '--space-across: given "0".'],
  ])('%j is refused', (words, told) => {
    const { code, out, err } = starwright(words)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(told)
    expect(err).toMatch(/Nothing was written\.\n$/)
  })
})
