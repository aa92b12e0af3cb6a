import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { starwright } from './starwright.js'

const folder = mkdtempSync(join(tmpdir(), 'starwright-stock-'))
afterAll(() => rmSync(folder, { recursive: true }))

const EXAMPLE = 'shared/examples/winter-fair.yaml'
const stock = (input: string, ...words: readonly string[]) => starwright(['stock', '-', ...words], { input })

describe('stock --json', () => {
  it('keeps its contract: mm and money, unrounded', () => {
    const { code, out, err } = starwright(['stock', EXAMPLE, '--json'])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    const plan = JSON.parse(out)
    expect(Object.keys(plan)).toEqual([
      'title',
      'units',
      'costIn',
      'cost',
      'bound',
      'proved',
      'yield',
      'blanks',
      'boards',
      'stars',
    ])
    expect(plan).toMatchObject({ units: 'mm', costIn: 'money', proved: true })
    expect(plan.bound).toBe(plan.cost)
    const boards = plan.boards as { price: number; times: number; strips: { blanks: { mark: string }[] }[] }[]
    expect(boards.reduce((sum, { price, times }) => sum + price * times, 0)).toBeCloseTo(plan.cost, 9)
    const arms = boards.flatMap(({ strips, times }) => strips.map(({ blanks }) => times * blanks.length))
    expect(arms.reduce((sum, count) => sum + count, 0)).toBe(30 + 24 + 8)
    // The stars together pay for the boards.
    const stars = plan.stars as { boards: number; quantity: number }[]
    expect(stars.reduce((sum, { boards: each, quantity }) => sum + each * quantity, 0)).toBeCloseTo(
      plan.cost,
      9,
    )
  })
})

describe('stock', () => {
  it('prints a list no wider than 84 columns, with the verdict, the marks and the cautions', () => {
    const { code, out } = starwright(['stock', EXAMPLE])
    expect(code).toBe(0)
    expect(out).toContain('Take       3 boards, price 29.20')
    expect(out).toContain('No choice of these boards costs less.')
    expect(out).toContain("The saw's manual and local rules")
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(84)
  })

  it('draws the list as SVG and PDF, and keeps a file that is there', () => {
    for (const ending of ['svg', 'pdf']) {
      const file = join(folder, `boards.${ending}`)
      expect(starwright(['stock', EXAMPLE, '--to', file, '--quiet'])).toMatchObject({ code: 0, out: '' })
      expect(readFileSync(file, 'latin1')).toContain(ending === 'svg' ? '<svg' : '%PDF-1.7')
      expect(starwright(['stock', EXAMPLE, '--to', file, '--kerf', '3', '--quiet'])).toMatchObject({
        code: 2,
      })
    }
  })

  it('fifteen arms, three stars, come from one 8 ft board of 3 1/2 in (common practice, no published source)', () => {
    const order = `{ units: in, shop: { saw: { kerf: 3/32 }, boards: [{ width: 3 1/2, length: 8 ft }] }, stars: [{ quantity: 3, points: 5, tip-angle: 45, board-width: 3 1/2 }] }`
    expect(stock(order).out).toContain('Take       1 board')
  })
})

const STAR = 'stars: [{ name: Jetty, points: 5, tip-angle: 45, board-width: 70 }]'

describe('boards that do not serve are told with the star and the way out:', () => {
  it.each<[what: string, order: string, words: readonly string[], told: readonly string[]]>([
    [
      'no boards',
      `{ ${STAR} }`,
      [],
      [
        'shop.boards: given no boards. Add those you can buy or have on the rack, such as boards: [{ width: 70 mm, length: 2400 mm, price: 6.80 }].',
      ],
    ],
    [
      'boards that are too narrow',
      `{ shop: { boards: [{ width: 60, length: 2400 }] }, ${STAR} }`,
      [],
      [
        'stars[0].board-width, line 1: given 70.0 mm. Jetty: No board is 70.0 mm wide, as the arms need; the widest is 60.0 mm. Buy a wider one, or size the star with board-width: out of the widest board it comes 234.1 mm across. A sound board from 70.0 mm wide and 172.4 mm long would do for one arm.',
      ],
    ],
    [
      'boards with defects everywhere',
      `{ shop: { boards: [{ width: 70, length: 400, defects: [{ from: 100, to: 150 }, { from: 250, to: 300 }] }] }, ${STAR} }`,
      [],
      [
        'stars[0].board-width, line 1: given 70.0 mm. Jetty: No board has sound wood long enough for one arm: it takes 172.4 mm of length. A sound board from 70.0 mm wide and 172.4 mm long would do for one arm.',
      ],
    ],
    [
      'too few boards',
      `{ shop: { boards: [{ width: 70, length: 400, count: 1 }] }, ${STAR} }`,
      [],
      [
        'shop.boards: given boards for 3 of 5 arms of Jetty. Add boards, raise count, or make fewer stars: about 274.8 mm of sound wood, 70.0 mm wide, is missing. Or list what can be bought, with its price and without a count.',
      ],
    ],
    [
      'a time and a file that cannot be meant',
      `{ shop: { boards: [{ width: 70, length: 2400 }] }, ${STAR} }`,
      ['--seconds', 'soon', '--to', '../boards.dxf'],
      [
        '--seconds: given "soon". Allowed: whole seconds from 1 to 3600. Left out: 8.',
        '--to: given "../boards.dxf". Allowed: a file that ends in .svg or .pdf.',
      ],
    ],
  ])('%s', (_, order, words, told) => {
    const { code, out, err } = stock(order, ...words)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err.split('\n').slice(0, -2)).toEqual(told)
    expect(existsSync('../boards.dxf')).toBe(false)
  })
})
