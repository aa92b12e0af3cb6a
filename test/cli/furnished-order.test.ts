import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { readPdf } from '../read-back/read-pdf.js'
import { starwright } from './starwright.js'

let folder = ''
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'starwright-'))
  mkdirSync(join(folder, 'own'))
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

const GRADIENT =
  '<svg xmlns="http://www.w3.org/2000/svg" width="4mm" height="4mm" viewBox="0 0 4 4">\n<linearGradient/></svg>'

const COMMANDS = [
  ['make', '--out', 'made'],
  ['draw', 'arm-pattern', '--to', 'arm.pdf'],
  ['print-check', 'order.yaml'],
]

// Common practice, no published source: whoever mends an order wants to mend it once.
describe.each(COMMANDS)('%s tells mistakes of the order and of its furniture together', (...words) => {
  const run = (order: string) => {
    writeFileSync(join(folder, 'order.yaml'), order)
    const named = words.includes('order.yaml') ? words : [...words, 'order.yaml']
    return starwright([...named, '--furniture', 'own'], { cwd: folder })
  }

  it('in a piece and in a key', () => {
    writeFileSync(join(folder, 'own', 'caution.svg'), GRADIENT)
    const { code, err } = run('stars: [{ points: 2, tip-angle: 45, board-width: 70 }]\n')
    expect(code).toBe(2)
    expect(err).toContain('stars[0].points')
    expect(err).toContain('caution.svg, line 2: given <linearGradient>')
    expect(readdirSync(folder).sort()).toEqual(['order.yaml', 'own'])
  })

  it('in the name of a piece and in a key', () => {
    writeFileSync(join(folder, 'own', 'boat.svg'), GRADIENT)
    const { code, err } = run('stars: [{ points: 2, tip-angle: 45, board-width: 70 }]\n')
    expect(code).toBe(2)
    expect(err).toContain('stars[0].points')
    expect(err).toContain('a file called "boat.svg"')
  })

  it('in a piece and in what only the plan can tell', () => {
    writeFileSync(join(folder, 'own', 'caution.svg'), GRADIENT)
    const { code, err } = run('stars: [{ points: 5, tip-angle: 45, board-width: 70, chamfer: 60 }]\n')
    expect(code).toBe(2)
    expect(err).toContain('caution.svg, line 2')
    if (words[0] === 'make') expect(err).toContain('stars[0].chamfer')
  })
})

it.each([
  [[], ['Print check, A4']],
  [
    ['--title', 'Winter fair'],
    ['Print check, A4', 'Winter fair'],
  ],
])('a print check from flags %j has the title %j, and no star of its own', async (words, titles) => {
  expect(starwright(['print-check', ...words, '--to', 'check.pdf'], { cwd: folder }).code).toBe(0)
  const [page] = await readPdf(Uint8Array.from(readFileSync(join(folder, 'check.pdf'))))
  const { texts = [] } = page ?? {}
  expect(texts).toEqual(expect.arrayContaining(titles))
  expect(texts.filter((text) => /^Star/.test(text))).toEqual([])
})
