import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { REPOSITORY, starwright } from './starwright.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-panel-'))
afterAll(() => rmSync(folder, { recursive: true }))

const EXAMPLE = join(REPOSITORY, 'shared/examples/winter-fair.yaml')

const STAR = ['--points', '5', '--tip-angle', '45', '--across', '300', '--backing', 'star']

const orderWith = (panels: string): string => {
  const file = join(folder, 'order.yaml')
  writeFileSync(
    file,
    `shop: { panels: [${panels}] }
stars: [{ name: Quay, points: 5, tip-angle: 45, across: 300, backing: { shape: star, inset: 12 } }]
`,
  )
  return file
}

describe('draw panel', () => {
  it.each(['svg', 'dxf', 'pdf'])('writes %s and tells what to buy', (ending) => {
    const file = join(folder, `panel.${ending}`)
    const { code, out, err } = starwright(['draw', 'panel', EXAMPLE, '--to', file])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    expect(out).toContain('Buy        1 panel of 1500.0 mm × 1500.0 mm × 4.0 mm, price 24.00')
    expect(out).toContain('1 × Chapel, 4 × Bakery window, 6 × Boathouse')
    expect(readFileSync(file, 'latin1').slice(0, 400)).toMatch(
      { svg: /<svg/, dxf: /SECTION/, pdf: /^%PDF/ }[ending] ?? /^$/,
    )
  })

  it('writes what make writes', () => {
    const [made, drawn] = [join(folder, 'made'), join(folder, 'drawn.dxf')]
    starwright(['make', EXAMPLE, '--out', made, '--quiet'])
    starwright(['draw', 'panel', EXAMPLE, '--to', drawn, '--quiet'])
    expect(readFileSync(drawn)).toEqual(readFileSync(join(made, 'panels/panel-1-1500.0x1500.0mm.dxf')))
  })

  it.each<[string, readonly string[], string]>([
    ['no panel', STAR, 'shop.panels: given no panel. Say what you buy:'],
    [
      'a panel that is not there',
      [EXAMPLE, '--panel', '2'],
      '--panel: given "2". Allowed: 1, for there is one panel.',
    ],
    ['half a panel', [EXAMPLE, '--panel', '0.5'], '--panel: given "0.5". Allowed: 1'],
    ['no time', [EXAMPLE, '--seconds', '0'], '--seconds: given "0". Allowed: whole seconds from 1 to 3600.'],
  ])('%s is refused with the way out', (_, words, told) => {
    const file = join(folder, 'x.svg')
    const { code, err } = starwright(['draw', 'panel', ...words, '--to', file])
    expect(code).toBe(2)
    expect(err).toContain(told)
    expect(err).toContain('Nothing was written.')
    expect(existsSync(file)).toBe(false)
  })

  it('its flags are refused for other drawings', () => {
    const file = join(folder, 'y.svg')
    const asked = ['draw', 'arm-pattern', EXAMPLE, '--star', 'Boathouse', '--panel', '2', '--seconds', '5']
    const { code, err } = starwright([...asked, '--to', file])
    expect(code).toBe(2)
    expect(err).toContain('--panel: given "2". It is for draw panel. Take it out.')
    expect(err).toContain('--seconds: given "5". It is for draw panel. Take it out.')
    expect(existsSync(file)).toBe(false)
  })

  it('another ending, an order without backings, and panels too small are refused', () => {
    const ending = starwright(['draw', 'panel', EXAMPLE, '--to', join(folder, 'x.png')])
    expect([ending.code, ending.err]).toEqual([
      2,
      expect.stringContaining('a file that ends in .svg, .dxf or .pdf'),
    ])
    const file = orderWith('{ length: 250, width: 250, thickness: 4 }')
    const small = starwright(['draw', 'panel', file, '--to', join(folder, 'x.svg')])
    expect([small.code, small.err]).toEqual([2, expect.stringContaining('No panel holds the backing.')])
  })
})
