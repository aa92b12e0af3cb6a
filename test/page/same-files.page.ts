import { join } from 'node:path'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { archiveAsMade } from './as-made.js'
import { pages } from './pages.js'

/*
 * Two engines: Node's works out the files of the command line, Chromium's those of the page. Orders drawn by chance ask
 * for every paper and cutter, for that is how places were found where the last bit of a sine moved a label.
 */

const { folder, using } = pages()

const ORDERS = fc
  .record({
    metric: fc.boolean(),
    points: fc.constantFrom(3, 4, 5, 5, 6, 7, 8, 10, 12),
    slender: fc.integer({ min: 0, max: 60 }),
    across: fc.integer({ min: 200, max: 800 }),
    limit: fc.constantFrom(45, 50, 60),
    cutter: fc.constantFrom('laser', 'router'),
    paper: fc.constantFrom(
      '{ size: A4 }',
      '{ size: A3 }',
      '{ size: Letter }',
      '{ roll: 610 mm }',
      '{ size: single }',
    ),
    backing: fc.constantFrom('none', 'star', 'polygon', 'disc'),
    panels: fc.boolean(),
    jigs: fc.boolean(),
  })
  .map(({ metric, points, slender, across, limit, cutter, paper, backing, panels, jigs }) => {
    const tip = Math.min(170 - 360 / points, 25 + slender)
    const width = metric ? across : `${Math.round(across / 25.4)} 3/8`
    const panel = metric
      ? '{ length: 1200, width: 900, thickness: 4, price: 20 }'
      : '{ length: 4 ft, width: 3 ft, thickness: 1/4, price: 20 }'
    const backed = backing === 'none' ? '' : `, backing: { shape: ${backing}, inset: ${metric ? 8 : '3/8'} }`
    return `title: Lake lights
units: ${metric ? 'mm' : 'in'}
shop:
  saw: { limit: ${limit}, kerf: ${metric ? 2.4 : '3/32'} }
  cutter: { kind: ${cutter} }
  paper: ${paper}
${panels && backing !== 'none' ? `  panels: [ ${panel} ]\n` : ''}${jigs ? 'jigs: [ blank-stop, arm-cradle, angle-gauge, glue-up-frame ]\n' : ''}stars:
  - { name: Boathouse, points: ${points}, tip-angle: ${Number(tip.toFixed(1))}, across: ${width}${backed} }
`
  })

describe('every file in the archive is byte for byte that of the command line', () => {
  it.each(fc.sample(ORDERS, { numRuns: 8, seed: 7 }).map((text, index) => [index + 1, text] as const))(
    'for order %i drawn by chance',
    (number, text) =>
      using(
        async (page) => {
          expect((await archiveAsMade(page, text, join(folder, `drawn-${number}`))).length).toBeGreaterThan(8)
        },
        { hash: `#${new URLSearchParams({ order: text })}` },
      ),
  )
})
