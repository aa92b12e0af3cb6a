import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { FURNITURE_NAMES, furnitureFile } from '../../src/furniture/furniture-names.js'
import { furnitureWith } from '../../src/furniture/furniture-set.js'
import { showProblem } from '../../src/order/problem.js'

/*
 * ISO 7200 asks every title block for the title and the sheet number; ISO 5455 for the scale on every drawing. The
 * frame's size is our own proof of the scale both ways.
 */

const RULER = '<path d="M1 2v4M101 2v4" fill="none" stroke="black" stroke-width="0.2"/>'

const svg = (across: number, height: number, texts: readonly string[], more = ''): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${across}mm" height="${height}mm" viewBox="0 0 ${across} ${height}">
${texts.map((text, row) => `<text x="2" y="${4 + 4 * row}" font-family="Arial" font-size="2.5" data-room="50">${text}</text>`).join('\n')}
${more}</svg>`

const told = (pieces: Parameters<typeof furnitureWith>[0]): readonly string[] => {
  const outcome = furnitureWith(pieces, 'mm')
  return outcome.ok ? [] : outcome.problems.map(showProblem)
}

describe('a piece of the maker’s own', () => {
  it('letters what a page cannot do without', () => {
    expect(
      told({
        'title-block': svg(56, 24, ['Blatt {sheet}/{sheets}', 'Seehütte']),
        'scale-check-mm': svg(102, 16, ['100 mm'], RULER),
      }),
    ).toEqual([
      'title-block.svg: given a drawing without {title}, {scale}. Letter {title}, {sheet}, {scale} in it, each in a text element with its data-room.',
      'scale-check-mm.svg: given a drawing without {frame}. Letter {frame} in it, each in a text element with its data-room.',
    ])
  })

  it('is taken when it does, in any words and order', () => {
    expect(
      told({
        'title-block': svg(56, 24, ['Blatt {sheet} von {sheets}, {scale}', '{title}']),
        'scale-check-mm': svg(102, 16, ['{frame}'], RULER),
        caution: svg(102, 7.5, ['Hände weg']),
      }),
    ).toEqual([])
  })

  it('has room for what must never be cut short', () => {
    const [problem, ...more] = told({
      'title-block': `<svg xmlns="http://www.w3.org/2000/svg" width="56mm" height="24mm" viewBox="0 0 56 24">
<text x="2" y="6" font-family="Arial" font-size="2.5" data-room="9">Masstab {scale}</text>
<text x="2" y="12" font-family="Arial" font-size="2.5" data-room="20">{sheet}/{sheets}</text>
<text x="2" y="18" font-family="Arial" font-size="2.5" data-room="9">{title}</text></svg>`,
    })
    expect(more).toEqual([])
    // "Masstab 1:1" in Helvetica, capitals 1.5 mm: 11 signs of 556, 222 or 278 to 833 thousandths (Adobe Font Metrics).
    expect(problem).toMatch(
      /^title-block\.svg: given "Masstab \{scale\}" with data-room="9"\. It needs 1[01]\.\d mm at least/,
    )
  })

  it.each([
    ['no stroke', ''],
    ['strokes 98 mm apart', '<path d="M2 2v4M100 2v4" fill="none" stroke="black" stroke-width="0.2"/>'],
    ['a level line of 100 mm', '<path d="M1 4h100" fill="none" stroke="black" stroke-width="0.2"/>'],
  ])('of a scale check has a ruler, not %s', (_, more) => {
    expect(told({ 'scale-check-mm': svg(102, 16, ['{frame}'], more) })).toEqual([
      'scale-check-mm.svg: given a drawing without a ruler. Draw two upright strokes 100 mm apart, to lay a steel rule on.',
    ])
  })

  it.each(['mm', 'in'] as const)('ours in %s want nothing', (units) => {
    const ours = Object.fromEntries(
      FURNITURE_NAMES.map((name) => [name, readFileSync(`templates/${furnitureFile(name)}`, 'utf8')]),
    )
    expect(furnitureWith(ours, units).ok).toBe(true)
  })
})
