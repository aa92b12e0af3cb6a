import { describe, expect, it } from 'vitest'
import { furnitureWith } from '../../src/furniture/furniture-set.js'
import { showProblem } from '../../src/order/problem.js'

/*
 * ISO 7200 asks every title block for the title and the sheet number; ISO 5455 for the scale on every drawing. The
 * frame's size is our own proof of the scale both ways.
 */

const svg = (across: number, height: number, texts: readonly string[]): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" width="${across}mm" height="${height}mm" viewBox="0 0 ${across} ${height}">
${texts.map((text, row) => `<text x="2" y="${4 + 4 * row}" font-family="Arial" font-size="2.5" data-room="50">${text}</text>`).join('\n')}
</svg>`

const told = (pieces: Parameters<typeof furnitureWith>[0]): readonly string[] => {
  const outcome = furnitureWith(pieces, 'mm')
  return outcome.ok ? [] : outcome.problems.map(showProblem)
}

describe('a piece of the maker’s own', () => {
  it('letters what a page cannot do without', () => {
    expect(
      told({
        'title-block': svg(56, 24, ['Blatt {sheet}/{sheets}', 'Seehütte']),
        'scale-check-mm': svg(102, 16, ['100 mm']),
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
        'scale-check-mm': svg(102, 16, ['{frame}']),
        caution: svg(102, 7.5, ['Hände weg']),
      }),
    ).toEqual([])
  })
})
