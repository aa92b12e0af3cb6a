import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { readSvg } from '../read-back/read-svg.js'
import { starwright } from './starwright.js'

const ORDER = 'shared/examples/winter-fair.yaml'
const folder = mkdtempSync(join(tmpdir(), 'starwright-risk-'))
afterAll(() => rmSync(folder, { recursive: true }))

describe('risk', () => {
  it('tells the chances of every star, worked out and simulated, and what decides them', () => {
    const { code, out, err } = starwright(['risk', ORDER, '--simulated', '20000'])
    expect({ code, err }).toEqual({ code: 0, err: '' })
    for (const words of [
      'worked out',
      'simulated',
      'Comes from',
      'Needed',
      'Valleys',
      'Wasted',
      'cut one, fit one',
    ]) {
      expect(out.split(words).length, words).toBeGreaterThan(3)
    }
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(84)
  })

  it('--json is the same for the same seed, and the two ways agree', () => {
    const words = ['risk', ORDER, '--star', 'Boathouse', '--json', '--seed', '7', '--true-to', '0']
    const { out } = starwright(words)
    expect(starwright(words).out).toBe(out)
    const [star] = JSON.parse(out).stars
    expect(Math.abs(star.chance.batch - star.simulated.batch.value)).toBeLessThan(
      4 * star.simulated.batch.error,
    )
    expect(star).toMatchObject({ quantity: 6, set: 'told', acceptedGap: 0.5, repeatsTo: 0.05 })
  })

  it('a flag over the order: a saw that repeats better closes more stars', () => {
    const chance = (...flags: string[]) =>
      JSON.parse(
        starwright([
          'risk',
          ORDER,
          '--star',
          'Boathouse',
          '--true-to',
          '0',
          '--json',
          '--simulated',
          '1000',
          ...flags,
        ]).out,
      ).stars[0].chance.batch
    expect(chance('--repeats-to', '0.03')).toBeGreaterThan(chance('--repeats-to', '0.05'))
    expect(chance('--accepted-gap', '0.3')).toBeLessThan(chance('--accepted-gap', '0.5'))
  })

  it('draws the histogram: its bars add up to all stars', () => {
    const file = join(folder, 'gaps.svg')
    const words = ['risk', ORDER, '--star', 'Boathouse', '--to', file, '--json']
    const [star] = JSON.parse(starwright(words).out).stars
    const bars = readSvg(readFileSync(file, 'utf8'))
      .outlines.filter(({ layer, closed }) => layer === 'PATTERN' && closed)
      .map(({ vertices }) => vertices)
    const heights = bars.map(
      (corners) => Math.max(...corners.map(({ y }) => y)) - Math.min(...corners.map(({ y }) => y)),
    )
    const total = heights.reduce((sum, height) => sum + height, 0)
    const shown = star.histogram.shares.filter((share: number) => share > 0)
    expect(bars).toHaveLength(shown.length)
    for (const [bar, height] of heights.entries()) expect(height / total).toBeCloseTo(shown[bar], 4)
  })

  it.each([
    [['risk', ORDER, '--to', 'gaps.svg'], '--star: given nothing. The order has 3 stars'],
    [['risk', ORDER, '--seed', '1.5'], '--seed: given "1.5".'],
    [['risk', ORDER, '--simulated', '1e9'], '--simulated: given "1e9".'],
    [['risk', ORDER, '--set', 'loose'], 'Choices: "told", "marks", "bare"'],
    [['risk', ORDER, '--repeats-to', '-1'], '--repeats-to: given "-1".'],
    [['risk', ORDER, '--accepted-gap', 'NaN'], '--accepted-gap: given "NaN".'],
  ])('%j is refused', (words, told) => {
    const { code, out, err } = starwright(words)
    expect({ code, out }).toEqual({ code: 2, out: '' })
    expect(err).toContain(told)
  })
})
