import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { parseOrder, planOrder, showAngle } from '../src/index.js'
import { REPOSITORY, starwright } from './cli/starwright.js'

const README = readFileSync(join(REPOSITORY, 'README.md'), 'utf8')
const EXAMPLE = 'shared/examples/winter-fair.yaml'
const folder = mkdtempSync(join(tmpdir(), 'starwright-readme-'))
afterAll(() => rmSync(folder, { recursive: true }))

/** The first fenced block after a mark. */
const blockAfter = (mark: string): string =>
  /```\w*\n([\s\S]*?)```/.exec(README.slice(README.indexOf(mark)))?.[1] ?? ''

describe('the README is true', () => {
  it('shows what the command prints', () => {
    const { out } = starwright(['make', EXAMPLE, '--out', join(folder, 'fair')])
    const shown = blockAfter('<!-- output: npm start -->')
    expect(shown.length).toBeGreaterThan(500)
    expect(out.startsWith(shown)).toBe(true)
  })

  it('shows what draw panel says of the stalls', () => {
    const order = join(folder, 'stalls.yaml')
    writeFileSync(order, blockAfter('<!-- order: draw panel -->'))
    const { out } = starwright(['draw', 'panel', order, '--to', join(folder, 'panel.dxf')])
    const shown = blockAfter('<!-- output: draw panel -->')
    expect(shown.length).toBeGreaterThan(300)
    expect(out.startsWith(shown)).toBe(true)
  })

  it('shows what the seasons do to a star', () => {
    const { out } = starwright(['season', EXAMPLE, '--star', 'Bakery window'])
    const shown = blockAfter('<!-- output: season -->')
    expect(shown.length).toBeGreaterThan(500)
    expect(out).toContain(shown)
  })

  it.each([
    ['choose', [EXAMPLE]],
    ['risk', [EXAMPLE, '--star', 'Boathouse']],
  ])('shows what %s prints', (command, words) => {
    const shown = blockAfter(`<!-- output: ${command} -->`)
    expect(shown.length).toBeGreaterThan(400)
    expect(starwright([command, ...words]).out.startsWith(shown)).toBe(true)
  })

  const drawn = readFileSync(join(REPOSITORY, 'shared/pictures/drawn.txt'), 'utf8')
    .trim()
    .split('\n')
    .map((row) => row.split(' '))

  it.each(drawn)('its picture %s is what the tool draws (npm run pictures)', (name, kind, ...words) => {
    const file = join(folder, name ?? '')
    starwright(['draw', kind ?? '', EXAMPLE, ...words, '--to', file])
    expect(readFileSync(join(REPOSITORY, `shared/pictures/${name}`), 'utf8')).toBe(readFileSync(file, 'utf8'))
  })

  it('shows every picture of jigs on their page', () => {
    const page = readFileSync(join(REPOSITORY, 'shared/jigs.md'), 'utf8')
    const jigs = drawn.flatMap(([name]) => (name?.startsWith('jig-') ? [name] : []))
    expect(jigs.length).toBe(3)
    for (const name of jigs) expect(page).toContain(`](pictures/${name})`)
  })

  it('shows what the cutting list says, and its table adds up', () => {
    const { out } = starwright(['stock', EXAMPLE])
    const shown = blockAfter('<!-- output: stock -->')
    expect(shown.length).toBeGreaterThan(300)
    expect(out).toContain(shown)
    const marks = [...README.matchAll(/^\| (?:trim|\d|the last slot ends) \| ([\d.]+) \| ([\d.]+) \|$/gm)]
    // 70 / sin 45°, and 2.4 / cos 45° for each slot, by hand.
    const expected = [0, 98.995, 201.384, 303.773, 406.162, 508.551, 511.945]
    expect(marks.map(([, near]) => Number(near))).toEqual(expected.map((at) => Number(at.toFixed(1))))
    expect(marks.map(([, , far]) => Number(far))).toEqual(expected.map((at) => Number((at + 70).toFixed(1))))
    expect(out).toContain('22 × C     saw 45°: trim 0.0, then 99.0, 201.4, 303.8, 406.2, 508.6')
  })

  it('its order is a good order', () => {
    const order = parseOrder({ text: blockAfter('## The order') })
    expect(order.ok && planOrder(order.value).ok).toBe(true)
  })

  it('its plan command does what it says', () => {
    const words = /npx starwright (plan --points .*)/.exec(README)?.[1]?.split(' ') ?? []
    expect(starwright(words)).toMatchObject({ code: 0, err: '' })
  })

  it('its dry fit says what it shows', () => {
    const words = /npx starwright (dryfit my-order.yaml .*)/.exec(README)?.[1]?.split(' ') ?? []
    const folder = mkdtempSync(join(tmpdir(), 'starwright-readme-'))
    writeFileSync(join(folder, 'my-order.yaml'), blockAfter('## The order'))
    const { out } = starwright(words.map((word) => (word === 'my-order.yaml' ? join(folder, word) : word)))
    rmSync(folder, { recursive: true })
    expect(out).toContain(blockAfter('<!-- output: dryfit -->'))
  })

  it('its library example prints what it says', () => {
    expect(README).toContain('console.log(showAngle(plan.value.stars[0].jointCut.reading)) // 31.5°')
    const order = parseOrder({ text: 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]' })
    const plan = order.ok ? planOrder(order.value) : order
    const readings = plan.ok ? plan.value.stars.map(({ jointCut }) => showAngle(jointCut.reading)) : []
    expect(readings).toEqual(['31.5°'])
  })
})
