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

  describe('shows what a page cannot do without', () => {
    const PALE =
      'It hardly shows on what lies under it, and a page cannot do without it. Allowed: ink that does, such as black on white.'
    const COVERED =
      'What stands later in the file is painted over it, and a page cannot do without it. Draw that before it, or elsewhere.'
    const block = (style: string, before = '', after = ''): string =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="56mm" height="24mm" viewBox="0 0 56 24">
${before}
<g font-family="Arial" font-size="2.5">
<text x="2" y="4" data-room="50">{title}</text>
<text x="2" y="9" data-room="30" ${style}>{sheet}/{sheets}</text>
<text x="2" y="14" data-room="30">{scale}</text>
<text x="2" y="19" data-room="30" fill="white">{date}</text>
</g>
${after}</svg>`
    const mark = (body: string): string =>
      `<svg xmlns="http://www.w3.org/2000/svg" width="8mm" height="8mm" viewBox="0 0 8 8">
${body}</svg>`
    const inked = (d: string, more = ''): string =>
      `<path d="${d}" fill="none" stroke="black" stroke-width="0.2" ${more}/>`
    const SHEET = 'title-block.svg, line 5: given "{sheet}/{sheets}" in <text>.'
    const check = (body: string): string => svg(102, 16, ['{frame}'], body)

    // WCAG 2.2, contrast ratio: on white 1.0 for white, 1.1 yellow, 1.8 silver, 3.9 grey; black 5.3 on grey (#808080).
    it.each([
      ['white ink', block('fill="white"'), [`${SHEET} ${PALE}`]],
      ['nearly white ink', block('fill="#fdfdfd"'), [`${SHEET} ${PALE}`]],
      ['yellow ink', block('fill="yellow"'), [`${SHEET} ${PALE}`]],
      ['silver ink', block('fill="silver"'), [`${SHEET} ${PALE}`]],
      ['grey ink', block('fill="gray"'), []],
      ['black on black', block('', '<rect x="1" y="6" width="40" height="4"/>'), [`${SHEET} ${PALE}`]],
      ['white on black', block('fill="white"', '<rect x="1" y="6" width="40" height="4"/>'), []],
      ['black on grey', block('', '<circle cx="17" cy="8" r="7" fill="gray"/>'), []],
      [
        'a shape painted over it',
        block('', '', '<rect x="1" y="6" width="40" height="4" fill="white"/>'),
        [`${SHEET} ${COVERED}`],
      ],
      [
        'a shape over the end of its room',
        block('', '', '<circle cx="30" cy="8" r="2"/>'),
        [`${SHEET} ${COVERED}`],
      ],
      [
        'a curved shape over it',
        block('', '', '<path d="M3 11C3 5 20 5 20 11Z" fill="#eee"/>'),
        [`${SHEET} ${COVERED}`],
      ],
      [
        'a wide line over it',
        block('', '', '<path d="M2 8H30" fill="none" stroke="white" stroke-width="3"/>'),
        [`${SHEET} ${COVERED}`],
      ],
      [
        'a shape around it with a hole for it',
        block('', '', '<path d="M1 5.5H42V12H1ZM1.5 6V10.5H41V6Z"/>'),
        [],
      ],
      [
        'the same, filled all over',
        block('', '', '<path d="M1 5.5H42V12H1ZM1.5 6H41V10.5H1.5Z"/>'),
        [`${SHEET} ${COVERED}`],
      ],
      [
        'a ring by the even-odd rule',
        block('', '', '<path fill-rule="evenodd" d="M1 5.5H42V12H1ZM1.5 6H41V10.5H1.5Z"/>'),
        [],
      ],
      ['thin lines beside and under it', block('', '', inked('M1.5 5V23M32.5 5V23M1 9.8H40')), []],
      ['shapes over what it can do without', block('', '', '<rect x="1" y="16" width="40" height="4"/>'), []],
    ])('in a title block with %s', (_, text, problems) =>
      expect(told({ 'title-block': text })).toEqual(problems),
    )

    it.each([
      ['white ink', RULER.replace('black', 'white'), [`scale-check-mm.svg, line 3: given <path>. ${PALE}`]],
      [
        'no ink but a white ground of 100 mm',
        '<rect x="1" y="5" width="100" height="9" fill="white"/>',
        [`scale-check-mm.svg, line 3: given <rect>. ${PALE}`],
      ],
      ['a black bar of 100 mm', '<rect x="1" y="5" width="100" height="3"/>', []],
      [
        'a shape over one end',
        `${RULER}<rect x="98" y="1" width="4" height="6" fill="#ddd"/>`,
        [`scale-check-mm.svg, line 3: given <path>. ${COVERED}`],
      ],
      ['a shape over all but 1.5 mm of one end', `${RULER}<rect x="98" y="3.5" width="4" height="6"/>`, []],
    ])('in a scale check with a ruler of %s', (_, body, problems) =>
      expect(told({ 'scale-check-mm': check(body) })).toEqual(problems),
    )

    const crossing = (what: string): string =>
      `register-mark.svg${what}. Two straight lines must cross at the middle of the drawing, 4 4: that is the point laid on the neighbour's.`
    it.each([
      ['upright', inked('M4 1v6M1 4h6'), []],
      ['aslant', inked('M1 1L7 7M1 7L7 1'), []],
      ['open in the middle', inked('M4 1v2.5M4 4.5v2.5M1 4h2.5M4.5 4h2.5'), []],
      ['of two filled quarters', '<path d="M4 4V1A3 3 0 0 0 1 4ZM4 4V7A3 3 0 0 0 7 4Z"/>', []],
      ['0.3 mm to the right', inked('M4.3 1v6M1 4h6'), [crossing(', line 2: given <path>')]],
      ['0.1 mm down', inked('M4 1v6M1 4.1h6'), [crossing(', line 2: given <path>')]],
      [
        'moved by its group',
        `<g transform="translate(0.5 0)">\n${inked('M4 1v6')}\n${inked('M1 4h6')}\n</g>`,
        [crossing(', line 3: given <path>')],
      ],
      [
        'no cross at all',
        '<circle cx="4" cy="4" r="2" fill="none" stroke="black" stroke-width="0.2"/>',
        [crossing(': given a drawing without a crossing at its middle')],
      ],
      ['one line only', inked('M4 1v6'), [crossing(': given a drawing without a crossing at its middle')]],
      [
        'in white',
        inked('M4 1v6M1 4h6').replace('black', 'white'),
        [`register-mark.svg, line 2: given <path>. ${PALE}`],
      ],
      [
        'under a disc',
        `${inked('M4 1v6M1 4h6')}<circle cx="4" cy="4" r="3"/>`,
        [`register-mark.svg, line 2: given <path>. ${COVERED}`],
      ],
    ])('in a register mark with a cross %s', (_, body, problems) =>
      expect(told({ 'register-mark': mark(body) })).toEqual(problems),
    )

    it('and is told so in bounded time, however much is painted', () => {
      const wide = (count: number): string =>
        `<path d="M20 12${'l9 0l-9 0'.repeat(count)}" fill="none" stroke="#ddd" stroke-width="9"/>`
      expect(told({ 'title-block': block('', '', wide(20_000)) })).toHaveLength(2)
    })
  })

  it.each(['mm', 'in'] as const)('ours in %s want nothing', (units) => {
    const ours = Object.fromEntries(
      FURNITURE_NAMES.map((name) => [name, readFileSync(`templates/${furnitureFile(name)}`, 'utf8')]),
    )
    expect(furnitureWith(ours, units).ok).toBe(true)
  })
})
