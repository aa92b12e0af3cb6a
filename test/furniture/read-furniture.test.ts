import fc from 'fast-check'
import { describe, expect, it, test } from 'vitest'
import type { Artwork } from '../../src/drawing/artwork.js'
import type { FurnitureName } from '../../src/furniture/furniture-names.js'
import { readFurniture } from '../../src/furniture/read-furniture.js'
import { showProblem } from '../../src/order/problem.js'
import { BAD_BODIES, HEAD, XMLNS } from './bad-furniture.js'
import { BAD_FILES, BAD_XML } from './bad-furniture-files.js'

const drawing = (body: string): string => `${HEAD}\n${body}\n</svg>`

const told = (text: string, name: FurnitureName = 'register-mark'): readonly string[] => {
  const outcome = readFurniture('mark.svg', name, text)
  return outcome.ok ? ['nothing: the drawing was read'] : outcome.problems.map(showProblem)
}

const read = (body: string): Artwork => {
  const outcome = readFurniture('mark.svg', 'register-mark', drawing(body))
  if (!outcome.ok) throw new Error(outcome.problems.map(showProblem).join('\n'))
  return outcome.value
}

const round = (value: number): number => Math.round(value * 1e9) / 1e9

// Common practice, no published source: what a person is told is judged by reading it.
describe('what cannot be drawn exactly is refused by element and line', () => {
  test.each(BAD_BODIES)('%s', (body, advice) => expect(told(drawing(body))).toEqual(advice))
  test.each(BAD_XML)('%s', (body, advice) => expect(told(drawing(body))).toEqual(advice))
  test.each(BAD_FILES)('%s', (text, advice) => expect(told(text)).toEqual(advice))

  it.each([
    [20, []],
    [21, ['mark.svg: given 1 more mistake. Mend the ones above first.']],
    [100, ['mark.svg: given 80 more mistakes. Mend the ones above first.']],
  ])('of %i mistakes twenty are told, and how many more there are', (count, more) => {
    const all = told(drawing('<image/>\n'.repeat(count)))
    expect(all.slice(0, 20).every((each) => /line \d+: given <image>/.test(each))).toBe(true)
    expect(all.slice(20)).toEqual(more)
  })

  // SVG 2 (CSS Transforms): skewX(45) takes 1,y to 1 + y,y. Lines would get as many widths as directions.
  it('leaning shapes are filled exactly where SVG has them; their lines and lettering are refused', () => {
    const leaning = (body: string): string => `<g transform="skewX(45)">\n${body}</g>`
    const { marks, height } = read(leaning('<rect y="1" width="2" height="3"/>'))
    const [mark] = marks
    const corners = mark?.kind === 'path' ? mark.steps.flatMap((step) => ('at' in step ? [step.at] : [])) : []
    expect(corners.map(({ x, y }) => [round(x), round(height - y)])).toEqual([
      [1, 1],
      [3, 1],
      [6, 4],
      [4, 4],
    ])
    const lined = '<rect width="2" height="3" stroke="black" stroke-width=".2"/>'
    expect(told(drawing(leaning(lined)))).toEqual([
      'mark.svg, line 3: given <rect>. Allowed: lines moved, turned, mirrored, or scaled alike both ways.',
    ])
    const lettered = '<text x="0" y="3" font-family="Arial" font-size="2">Hut</text>'
    expect(told(drawing(leaning(lettered)))).toEqual([
      'mark.svg, line 3: given <text>. Allowed: text moved, turned, or scaled alike both ways, not mirrored.',
    ])
  })
})

describe('slots', () => {
  const block = (text: string, room = 'data-room="30"'): string =>
    `<svg ${XMLNS} width="56mm" height="24mm" viewBox="0 0 56 24">
<text x="2" y="9" font-family="Arial" font-size="3" ${room}>${text}</text></svg>`
  const named =
    'Slots: {title}, {supplementary-title}, {document-type}, {sheet}, {sheets}, {date}, {scale}, {creator}.'

  it.each([
    ['{titel}', `mark.svg, line 2: given "{titel}" in <text>. ${named}`],
    ['{}', `mark.svg, line 2: given "{}" in <text>. ${named}`],
    ['{constructor}', `mark.svg, line 2: given "{constructor}" in <text>. ${named}`],
    ['{frame}', `mark.svg, line 2: given "{frame}" in <text>. ${named}`],
    [
      '{title',
      `mark.svg, line 2: given "{title" in <text>. Braces stand around the name of a slot. ${named}`,
    ],
    [
      'title}',
      `mark.svg, line 2: given "title}" in <text>. Braces stand around the name of a slot. ${named}`,
    ],
    [
      '{{title}}',
      `mark.svg, line 2: given "{{title}}" in <text>. Braces stand around the name of a slot. ${named}`,
    ],
  ])('%s is refused', (text, advice) => expect(told(block(text), 'title-block')).toEqual([advice]))

  it('need to know their room', () => {
    expect(told(block('{title}', ''), 'title-block')).toEqual([
      'mark.svg, line 2: given <text>. A text with a slot needs data-room, the width in mm that it may take.',
    ])
  })

  it('need their room inside the drawing', () => {
    expect(told(block('{title}', 'data-room="54.5"'), 'title-block')[0]).toMatch(
      /^mark\.svg, line 2: given <text>\. It reaches 0\.5 mm beyond the right edge:/,
    )
  })

  it.each(['0', '5', '1.5', 'two', ''])('may have 1 to 4 lines: data-lines="%s" is refused', (lines) => {
    expect(told(block('{title}', `data-room="30" data-lines="${lines}"`), 'title-block')).toEqual([
      `mark.svg, line 2: given <text data-lines="${lines}">. Allowed: 1 to 4, beside data-room, the width of each line.`,
    ])
  })

  it('may have lines only beside their room', () => {
    expect(told(block('Hut', 'data-lines="2"'), 'title-block')).toEqual([
      'mark.svg, line 2: given <text data-lines="2">. Allowed: 1 to 4, beside data-room, the width of each line.',
    ])
  })

  // Capitals of 1.8 mm and 2.88 mm from line to line (1.6 of that); tails hang 207/718 of 1.8 mm below: 0.52 mm.
  it.each([
    ['18.4', 3, /^mark\.svg, line 2: given <text>\. It reaches 0\.7 mm beyond the lower edge:/],
    ['17.7', 3, /^nothing: the drawing was read$/],
    ['20.6', 2, /^nothing: the drawing was read$/],
  ])('need room for all of their lines: from y="%s", %i of them', (y, lines, says) => {
    const text = `<text x="2" y="${y}" font-family="Arial" font-size="3" data-room="30" data-lines="${lines}">{title}</text>`
    const svg = `<svg xmlns="http://www.w3.org/2000/svg" width="56mm" height="24mm" viewBox="0 0 56 24">\n${text}\n</svg>`
    expect(told(svg, 'title-block')[0]).toMatch(says)
  })
})

// SVG 2: 4 (inheritance), 6.6 (style), 7.4 (units), 8.5 (transform), 10 (shapes), 13 (painting); from memory.
describe('SVG is read as it is defined', () => {
  it('y runs up from the lower edge, fill is black and stroke none where nothing is said', () => {
    expect(read('<path d="M1 2h3v1z"/>')).toEqual({
      across: 8,
      height: 8,
      marks: [
        {
          kind: 'path',
          fill: { colour: '#000000', rule: 'nonzero' },
          steps: [
            { to: 'move', at: { x: 1, y: 6 } },
            { to: 'line', at: { x: 4, y: 6 } },
            { to: 'line', at: { x: 4, y: 5 } },
            { to: 'start' },
          ],
        },
      ],
    })
  })

  it('a group hands its properties down, an element has the last word, style before attributes', () => {
    const { marks } = read(
      `<g fill="none" stroke="#0f8" stroke-width=".5" stroke-linejoin="round">
        <path d="M1 1h2" style="stroke:red; stroke-width: .25px; -editor-own: yes" stroke="blue"/>
        <path d="M1 2h2"/><path d="M2 3h1" fill="none" stroke="none"/>
      </g>`,
    )
    expect(marks.map((mark) => mark.kind === 'path' && mark.stroke)).toEqual([
      { colour: '#ff0000', width: 0.25, dashes: [], join: 'round', cap: 'butt' },
      { colour: '#00ff88', width: 0.5, dashes: [], join: 'round', cap: 'butt' },
    ])
  })

  it('transforms apply from the inside out and scale lines and dashes', () => {
    const { marks } = read(
      '<g transform="translate(4 4) rotate(90)"><path fill="none" stroke="black" stroke-width=".1" stroke-dasharray=".2" transform="scale(2)" d="M0 0h1"/></g>',
    )
    const [mark] = marks
    if (mark?.kind !== 'path' || !mark.stroke) throw new Error('a line')
    expect(mark.stroke.width).toBeCloseTo(0.2, 12)
    expect(mark.stroke.dashes).toEqual([0.4, 0.4])
    const [, end] = mark.steps
    if (end?.to !== 'line') throw new Error('a line')
    // Turned by 90° on the page, where y runs down, +x becomes down: from the middle 2 mm towards the lower edge.
    expect(end.at.x).toBeCloseTo(4, 12)
    expect(end.at.y).toBeCloseTo(2, 12)
  })

  it('text takes references for signs, one space for several, and its direction from the transform', () => {
    const { marks } = read(
      '<text transform="translate(4 4) rotate(-90)" font-size="2" font-family="Helvetica" text-anchor="middle">  a &lt;  &#233;&#x21; </text>',
    )
    expect(marks).toMatchObject([{ kind: 'text', text: 'a < é!', anchor: 'middle', at: { x: 4, y: 4 } }])
    const [mark] = marks
    if (mark?.kind !== 'text') throw new Error('a text')
    // -90° on the page reads upwards: a quarter turn counter-clockwise.
    expect(mark.turn).toBeCloseTo(Math.PI / 2, 12)
    // Adobe Font Metrics of Helvetica: CapHeight 718.
    expect(mark.height).toBeCloseTo(2 * 0.718, 12)
  })

  it('what an editor keeps for itself is passed over, and so are comments and descriptions', () => {
    const { marks } = read(
      `<!-- > <path d="M1 1h9v1z"/> --><e:view xmlns:e="http://lake.example/editor" e:zoom="2"><e:grid/></e:view>
      <metadata><r:RDF xmlns:r="http://www.w3.org/1999/02/22-rdf-syntax-ns#"/></metadata><desc>a</desc>
      <path xmlns:e="http://lake.example/editor" e:nodes="cc" xml:lang="de" id="a" data-b="c" d="M1 1h2v1z"><title>b</title></path>`,
    )
    expect(marks).toHaveLength(1)
  })

  it('a straight line encloses nothing, so its default fill is left out', () => {
    const [mark] = read('<path d="M1 1h2M1 2h2" stroke="black"/>').marks
    expect(mark).not.toHaveProperty('fill')
  })
})

describe('hostile files are refused by the limit that is meant for them', () => {
  const lol = Array.from({ length: 9 }, (_, n) => `<!ENTITY l${n + 1} "${`&l${n};`.repeat(10)}">`).join('')
  const nested = (depth: number): string => '<g>'.repeat(depth) + '</g>'.repeat(depth)

  it.each([
    [
      'entities of entities',
      `<!DOCTYPE svg [<!ENTITY l0 "ha">${lol}]>${drawing('&l9;')}`,
      'a document type (<!DOCTYPE>)',
    ],
    [
      'an external entity',
      `<!DOCTYPE svg [<!ENTITY a SYSTEM "file:///etc/passwd">]>${drawing('&a;')}`,
      'a document type (<!DOCTYPE>)',
    ],
    ['50 MB', drawing(' '.repeat(50_000_000)), '50000091 characters'],
    ['25 000 levels', drawing(nested(25_000)), 'elements within elements'],
    ['17 levels', drawing(nested(16)), 'elements within elements'],
    ['many elements', drawing('<g/>'.repeat(2000)), 'a further element'],
    ['a comment without end', `${HEAD}<!--${'<!--'.repeat(40_000)}`, 'text that is not XML'],
    ['a tag without end', `${HEAD}<path ${'a '.repeat(90_000)}`, 'text that is not XML'],
    [
      'attributes without number',
      drawing(`<path ${Array.from({ length: 15_000 }, (_, n) => `a${n}=""`).join(' ')}/>`),
      '<path a0="">',
    ],
    [
      'spaces in a transform',
      drawing(`<g transform="${' '.repeat(190_000)}x"/>`),
      `<g transform="${' '.repeat(40)}...">`,
    ],
    [
      'brackets in a transform',
      drawing(`<g transform="${'scale('.repeat(30_000)}"/>`),
      `<g transform="${'scale('.repeat(7).slice(0, 40)}...">`,
    ],
    [
      'endless transforms',
      drawing(`<g transform="${'scale(9999)'.repeat(17_000)}"/>`),
      `<g transform="${'scale(9999)'.repeat(4).slice(0, 40)}...">`,
    ],
    [
      'a long number',
      drawing(`<path d="M1 1h4" stroke="red" stroke-width="${'1'.repeat(190_000)}"/>`),
      `<path stroke-width="${'1'.repeat(40)}...">`,
    ],
    ['a long path', drawing(`<path d="M1 1${'h1'.repeat(90_000)}"/>`), '<path>'],
  ])('%s', (_, text, given) => {
    const outcome = readFurniture('mark.svg', 'register-mark', text)
    expect(outcome.ok ? 'read' : outcome.problems[0]?.given).toBe(given)
  })
})

describe('whatever is written, the answer is artwork or a refusal that says something', () => {
  const answered = (text: string): boolean => {
    const outcome = readFurniture('mark.svg', 'register-mark', text)
    if (!outcome.ok) {
      expect(outcome.problems.length).toBeGreaterThan(0)
      return false
    }
    const numbers = JSON.stringify(outcome.value, (_, value) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'NOT FINITE' : value,
    )
    expect(numbers).not.toContain('NOT FINITE')
    return true
  }

  it('any text', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => void answered(drawing(text))),
    )
  })

  it('tags, attributes and values in any order', () => {
    const part = fc.constantFrom(
      ...[
        '<g ',
        '<path ',
        '<rect ',
        '<text ',
        '<circle ',
        '>',
        '/>',
        '</g>',
        '</text>',
        '<!--',
        '-->',
        '&amp;',
      ],
      ...['d="M1 1', 'A3 2 9 1 0 ', 'Q', 'T', 's', 'z', ' 2 3', '-.5', '1e3', '"', ' ', 'x="3" ', 'r="2" '],
      ...[
        'width="4" height="3" ',
        'transform="scale(2)" ',
        'transform="rotate(9) skewX(5)" ',
        '__proto__="a" ',
      ],
      ...[
        'stroke="red" ',
        'style="fill:none" ',
        'font-size="1" font-family="Arial" ',
        'words',
        '{',
        '}',
        "'",
      ],
    )
    fc.assert(
      fc.property(fc.array(part, { maxLength: 30 }), (parts) => void answered(drawing(parts.join('')))),
      { numRuns: 3000 },
    )
  })

  it('drawn elements with any numbers, some of them read', () => {
    const number = fc.oneof(
      { weight: 8, arbitrary: fc.double({ min: 0, max: 8, noNaN: true }) },
      { weight: 1, arbitrary: fc.double() },
    )
    const path = fc
      .tuple(
        fc.constantFrom('L', 'C', 'Q', 'A', 'T', 'S', 'z'),
        fc.array(number, { minLength: 7, maxLength: 7 }),
      )
      .map(([command, values]) => {
        const count = { L: 2, C: 6, Q: 4, A: 7, T: 2, S: 4, z: 0 }[command]
        const rounded = values.map((value, index) =>
          command === 'A' && (index === 3 || index === 4) ? Number(value > 4) : value,
        )
        return `<path d="M4 4${command}${rounded.slice(0, count).join(' ')}"/>`
      })
    let drawn = 0
    fc.assert(
      fc.property(path, (body) => {
        if (answered(drawing(body))) drawn += 1
      }),
      { numRuns: 2000, seed: 7 },
    )
    expect(drawn).toBeGreaterThan(200)
  })
})
