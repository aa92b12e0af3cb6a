import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
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

  it.each(['arm-pattern', 'star-mat', 'jig-card'])(
    'its picture of the %s is what the tool draws (npm run pictures)',
    (name) => {
      const file = join(folder, `${name}.svg`)
      starwright(['draw', name, EXAMPLE, '--star', 'Boathouse', '--to', file])
      expect(readFileSync(join(REPOSITORY, `shared/pictures/${name}.svg`), 'utf8')).toBe(
        readFileSync(file, 'utf8'),
      )
    },
  )

  it('its order is a good order', () => {
    const order = parseOrder({ text: blockAfter('## The order') })
    expect(order.ok && planOrder(order.value).ok).toBe(true)
  })

  it('its plan command does what it says', () => {
    const words = /npx starwright (plan --points .*)/.exec(README)?.[1]?.split(' ') ?? []
    expect(starwright(words)).toMatchObject({ code: 0, err: '' })
  })

  it('its library example prints what it says', () => {
    expect(README).toContain('console.log(showAngle(plan.value.stars[0].jointCut.reading)) // 31.5°')
    const order = parseOrder({ text: 'stars: [{ points: 5, tip-angle: 45, board-width: 70 }]' })
    const plan = order.ok ? planOrder(order.value) : order
    const readings = plan.ok ? plan.value.stars.map(({ jointCut }) => showAngle(jointCut.reading)) : []
    expect(readings).toEqual(['31.5°'])
  })
})
