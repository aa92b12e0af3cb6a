/** What a maker's drawing holds, and everything the maker is told about it. */
export type BadDrawing = readonly [given: string, told: readonly string[]]

// What recurs in what the maker is told, word for word.

const ELEMENTS =
  'Allowed elements: g, path, line, polyline, polygon, rect, circle, text, title, desc, metadata.'
const PROPERTIES =
  'fill, fill-rule, stroke, stroke-width, stroke-dasharray, stroke-linejoin, stroke-linecap, font-size, font-family, text-anchor.'
const COLOURS = 'Allowed: none, #rgb, #rrggbb or one of the 17 basic colour names, such as black.'
const WIDTHS = 'Allowed: 0.02 or more, without a unit: 1 is 1 mm.'
const DASHES = 'Allowed: none, or up to 8 lengths of 0.05 or more, without units.'
const NUMBERS = 'Allowed: a number from -9999 to 9999, without a unit: 1 is 1 mm.'
const TRANSFORMS =
  'Allowed: translate, scale, rotate, matrix, skewX and skewY, one after the other, which leave nothing flat.'
const PATHS = 'Allowed: path data of M, L, H, V, C, S, Q, T, A and Z, numbers up to 9999.'
const PLACES = 'Allowed: two places or more, such as 0,0 10,0 10,5.'
const OVER =
  "it would be printed over something else. Half of a line's width and the tails and accents of letters count."
const SIZES = 'Allowed: a number above 0, in mm; in style with px after it, which is the same here.'
const UNBENT = 'Allowed: text moved, turned, or scaled alike both ways, not mirrored.'
const TEXT_PLACE = 'Allowed: text in text elements, where it is drawn.'
/** How the texts are lettered. */
const SET = 'font-size="2" font-family="Arial"'
export const XMLNS = 'xmlns="http://www.w3.org/2000/svg"'
/** How the drawing of a register mark begins. */
export const HEAD = `<svg ${XMLNS} width="8mm" height="8mm" viewBox="0 0 8 8">`

/** What a register mark holds from line 2 on and cannot be drawn exactly. */
export const BAD_BODIES: readonly BadDrawing[] = [
  ...[
    'foreignObject',
    'clipPath',
    'svg',
    'animate',
    'marker',
    'mask',
    'pattern',
    'filter',
    'switch',
    'symbol',
    'view',
  ].map((name): BadDrawing => [`<${name}/>`, [`mark.svg, line 2: given <${name}>. ${ELEMENTS}`]]),
  ...['1e308', 'NaN', 'Infinity', '0x10', '10%'].map(
    (x): BadDrawing => [
      `<line x1="${x}" stroke="red"/>`,
      [`mark.svg, line 2: given <line x1="${x}">. ${NUMBERS}`],
    ],
  ),
  ...['M1 1 h', '1 1', '', 'M1 1R2 2 3 3', 'M1 1e400', 'M1 99999', 'MNaN 1', 'M1 1A1 1 0 2 0 3 3'].map(
    (d): BadDrawing => [`<path d="${d}"/>`, [`mark.svg, line 2: given <path d="${d}">. ${PATHS}`]],
  ),
  ...['rotate(45deg)', 'perspective(1)', 'scale(0)', 'scale(1,2,3)', 'constructor(1)'].map(
    (by): BadDrawing => [
      `<path d="M1 1h4" transform="${by}"/>`,
      [`mark.svg, line 2: given <path transform="${by}">. ${TRANSFORMS}`],
    ],
  ),
  ['<script>alert(1)</script>', [`mark.svg, line 2: given <script>. ${ELEMENTS}`]],
  ['<image href="a.png" width="8" height="8"/>', [`mark.svg, line 2: given <image>. ${ELEMENTS}`]],
  ['<use href="#a"/>', [`mark.svg, line 2: given <use>. ${ELEMENTS}`]],
  ['<style>path{fill:none}</style>', [`mark.svg, line 2: given <style>. ${ELEMENTS}`]],
  ['<linearGradient id="a"/>', [`mark.svg, line 2: given <linearGradient>. ${ELEMENTS}`]],
  ['<ellipse rx="1" ry="2"/>', [`mark.svg, line 2: given <ellipse>. ${ELEMENTS}`]],
  ['<a><path d="M0 0"/></a>', [`mark.svg, line 2: given <a>. ${ELEMENTS}`]],
  [
    '<text x="1" y="3" font-size="1" font-family="Arial">a<tspan>b</tspan></text>',
    ['mark.svg, line 2: given <tspan>. Allowed in text: nothing but title and desc.'],
  ],
  [
    '<path d="M1 1h4"><animate attributeName="d"/></path>',
    ['mark.svg, line 2: given <animate>. Allowed in path: nothing but title and desc.'],
  ],
  [
    '<path d="M1 1h4" onclick="x()" stroke="red"/>',
    [
      `mark.svg, line 2: given <path onclick="x()">. Allowed on path: d, transform, style, id, data-*, ${PROPERTIES}`,
    ],
  ],
  [
    '<path d="M1 1h4" class="a"/>',
    [
      `mark.svg, line 2: given <path class="a">. Allowed on path: d, transform, style, id, data-*, ${PROPERTIES}`,
    ],
  ],
  [
    '<path d="M1 1h4" filter="url(#a)"/>',
    [
      `mark.svg, line 2: given <path filter="url(#a)">. Allowed on path: d, transform, style, id, data-*, ${PROPERTIES}`,
    ],
  ],
  ['<path d="M1 1h4" fill="url(#a)"/>', [`mark.svg, line 2: given <path fill="url(#a)">. ${COLOURS}`]],
  [
    '<path d="M1 1h4" fill="currentColor"/>',
    [`mark.svg, line 2: given <path fill="currentColor">. ${COLOURS}`],
  ],
  ['<path d="M1 1h4" opacity=".5"/>', ['mark.svg, line 2: given <path opacity=".5">. Allowed: 1.']],
  [
    '<path d="M1 1h4" fill-opacity="0.5"/>',
    ['mark.svg, line 2: given <path fill-opacity="0.5">. Allowed: 1.'],
  ],
  [
    '<path d="M1 1h4" style="fill:none;mix-blend-mode:multiply"/>',
    [`mark.svg, line 2: given <path style="mix-blend-mode:multiply">. Allowed in style: ${PROPERTIES}`],
  ],
  [
    '<path d="M1 1h4" style="fill:red !important"/>',
    [`mark.svg, line 2: given <path fill="red !important">. ${COLOURS}`],
  ],
  [
    '<path d="M1 1h4" style="fill"/>',
    [`mark.svg, line 2: given <path style="fill">. Allowed in style: ${PROPERTIES}`],
  ],
  [
    '<path d="M1 1h4" style="transform:scale(2)"/>',
    [`mark.svg, line 2: given <path style="transform:scale(2)">. Allowed in style: ${PROPERTIES}`],
  ],
  [
    '<path d="M1 1h400" stroke="red" stroke-dasharray="1" transform="scale(.01)"/>',
    [
      'mark.svg, line 2: given <path>. Allowed, once scaled: lines of 0.02 mm or more, dashes of 0.05 mm or more.',
    ],
  ],
  ['<path d="M1 1h4" stroke="#12"/>', [`mark.svg, line 2: given <path stroke="#12">. ${COLOURS}`]],
  [
    '<path d="M1 1h4" stroke="red" stroke-width="0"/>',
    [`mark.svg, line 2: given <path stroke-width="0">. ${WIDTHS}`],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-width="1mm"/>',
    [`mark.svg, line 2: given <path stroke-width="1mm">. ${WIDTHS}`],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-dasharray="1 0"/>',
    [`mark.svg, line 2: given <path stroke-dasharray="1 0">. ${DASHES}`],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-dasharray="10%"/>',
    [`mark.svg, line 2: given <path stroke-dasharray="10%">. ${DASHES}`],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-linecap="square"/>',
    ['mark.svg, line 2: given <path stroke-linecap="square">. Allowed: butt or round.'],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-linejoin="arcs"/>',
    ['mark.svg, line 2: given <path stroke-linejoin="arcs">. Allowed: miter, round or bevel.'],
  ],
  [
    '<path d="M1 1h4" stroke="red" stroke-miterlimit="10"/>',
    ['mark.svg, line 2: given <path stroke-miterlimit="10">. Allowed: 4.'],
  ],
  [
    '<path d="M1 1h4" fill-rule="odd"/>',
    ['mark.svg, line 2: given <path fill-rule="odd">. Allowed: nonzero or evenodd.'],
  ],
  [
    '<path d="M1 1h4v1z" stroke="red" transform="scale(1 2)"/>',
    ['mark.svg, line 2: given <path>. Allowed: lines moved, turned, mirrored, or scaled alike both ways.'],
  ],
  ['<path/>', [`mark.svg, line 2: given <path d="">. ${PATHS}`]],
  [
    '<line x1="1mm" y1="0" x2="1" y2="1" stroke="red"/>',
    [`mark.svg, line 2: given <line x1="1mm">. ${NUMBERS}`],
  ],
  ['<polyline points="1 1 2"/>', [`mark.svg, line 2: given <polyline points="1 1 2">. ${PLACES}`]],
  ['<polygon points="1 1"/>', [`mark.svg, line 2: given <polygon points="1 1">. ${PLACES}`]],
  [
    '<rect x="1" y="1" width="0" height="2"/>',
    ['mark.svg, line 2: given <rect>. Allowed: a width and a height above 0.'],
  ],
  [
    '<rect x="1" y="1" width="4" height="4" rx="1" ry="2"/>',
    ['mark.svg, line 2: given <rect>. Allowed: rx and ry alike, at most half of the shorter side.'],
  ],
  [
    '<rect x="1" y="1" width="4" height="4" rx="3"/>',
    ['mark.svg, line 2: given <rect>. Allowed: rx and ry alike, at most half of the shorter side.'],
  ],
  ['<circle cx="4" cy="4" r="-1"/>', ['mark.svg, line 2: given <circle>. Allowed: a radius r above 0.']],
  [
    '<circle cx="4" cy="4" r="4.1"/>',
    [`mark.svg, line 2: given <circle>. It reaches 0.1 mm beyond the left edge: ${OVER}`],
  ],
  [
    '<path d="M4 4h5v1z"/>',
    [`mark.svg, line 2: given <path>. It reaches 1.0 mm beyond the right edge: ${OVER}`],
  ],
  [
    '<rect x="0" y="0" width="8" height="8" fill="none" stroke="black" stroke-width="0.5"/>',
    [`mark.svg, line 2: given <rect>. It reaches 0.3 mm beyond the left edge: ${OVER}`],
  ],
  [
    '<path d="M4 3L7.5 4.27L4 5.54" fill="none" stroke="black" stroke-width="0.5"/>',
    [`mark.svg, line 2: given <path>. It reaches 0.3 mm beyond the right edge: ${OVER}`],
  ],
  [
    `<text x="1" y="7.9" ${SET}>g</text>`,
    [`mark.svg, line 2: given <text>. It reaches 0.4 mm beyond the lower edge: ${OVER}`],
  ],
  [
    '<text x="1" y="4" font-family="Arial">a</text>',
    ['mark.svg, line 2: given <text>. Allowed: text with its font-size, in mm.'],
  ],
  [
    '<text x="1" y="4" font-size="2">a</text>',
    ['mark.svg, line 2: given <text>. Allowed: text with font-family="sans-serif".'],
  ],
  [
    '<text x="1" y="4" font-size="2em" font-family="Arial">a</text>',
    [`mark.svg, line 2: given <text font-size="2em">. ${SIZES}`],
  ],
  [
    '<text x="1" y="4" font-size="2" font-family="serif">a</text>',
    [
      'mark.svg, line 2: given <text font-family="serif">. Allowed: sans-serif, Helvetica, Arial: the lettering is Helvetica.',
    ],
  ],
  [
    '<text x="1" y="4" style="font-size:2;font-family:Arial">a</text>',
    [`mark.svg, line 2: given <text font-size="2">. ${SIZES}`],
  ],
  [
    `<text x="1" y="4" stroke="red" ${SET}>a</text>`,
    [
      'mark.svg, line 2: given <text stroke="#ff0000">. Allowed: text in its fill only. Give it stroke="none".',
    ],
  ],
  [
    `<text x="1" y="4" font-weight="bold" ${SET}>a</text>`,
    ['mark.svg, line 2: given <text font-weight="bold">. Allowed: normal or 400.'],
  ],
  [`<text x="1 2" y="4" ${SET}>a</text>`, [`mark.svg, line 2: given <text x="1 2">. ${NUMBERS}`]],
  [
    `<text x="1" dx="1" y="4" ${SET}>a</text>`,
    [
      `mark.svg, line 2: given <text dx="1">. Allowed on text: x, y, transform, style, id, data-*, ${PROPERTIES}`,
    ],
  ],
  [`<text x="1" y="4" transform="scale(1 2)" ${SET}>a</text>`, [`mark.svg, line 2: given <text>. ${UNBENT}`]],
  [
    `<text x="-4" y="4" transform="scale(-1 1)" ${SET}>a</text>`,
    [`mark.svg, line 2: given <text>. ${UNBENT}`],
  ],
  [
    `<text x="1" y="4" ${SET}>a\nb</text>`,
    [
      'mark.svg, line 2: given "a\\u000ab" in <text>. Allowed: one line. Give each line its own text element.',
    ],
  ],
  [
    `<text x="1" y="4" xml:space="preserve" ${SET}> a</text>`,
    [
      'mark.svg, line 2: given "a" in <text>. Allowed under xml:space="preserve": no space at the ends, no two together.',
    ],
  ],
  [
    `<text x="1" y="4" ${SET}>\u202ea</text>`,
    [
      'mark.svg, line 2: given "\\u202ea" in <text>. The character U+202E cannot be lettered: it does not show.',
    ],
  ],
  [
    `<text x="1" y="4" ${SET}>木</text>`,
    [
      'mark.svg, line 2: given "木" in <text>. The character 木 (U+6728) cannot be lettered: the font of the lettering does not have it.',
    ],
  ],
  [
    `<text x="1" y="4" ${SET}>{title}</text>`,
    ['mark.svg, line 2: given "{title}" in <text>. This piece has no slots.'],
  ],
  [
    `<text x="1" y="4" ${SET}>{</text>`,
    [
      'mark.svg, line 2: given "{" in <text>. Braces stand around the name of a slot. This piece has no slots.',
    ],
  ],
  ['<g>loose words</g>', [`mark.svg, line 2: given "loose words" in <g>. ${TEXT_PLACE}`]],
  ['<path d="M1 1h2v2z">words</path>', [`mark.svg, line 2: given "words" in <path>. ${TEXT_PLACE}`]],
  ['<html:p xmlns:html="http://www.w3.org/1999/xhtml"/>', [`mark.svg, line 2: given <html:p>. ${ELEMENTS}`]],
  [
    '<path xmlns="http://www.w3.org/1999/xhtml" d="M1 1h2v1z"/>',
    [`mark.svg, line 2: given <path>. ${ELEMENTS}`],
  ],
  [
    '<path xmlns:xlink="http://www.w3.org/1999/xlink" xlink:href="#a" d="M1 1h2v1z"/>',
    [
      `mark.svg, line 2: given <path xlink:href="#a">. Allowed on path: d, transform, style, id, data-*, ${PROPERTIES}`,
    ],
  ],
  [
    '<s:path xmlns:s="http://www.w3.org/2000/svg" d="M1 1h2v1z"/>',
    [`mark.svg, line 2: given <s:path>. ${ELEMENTS}`],
  ],
  [
    '<title onclick="a()">a</title>',
    ['mark.svg, line 2: given <title onclick="a()">. Allowed on title: id, data-*.'],
  ],
  ['', ['mark.svg, line 1: given <svg>. It draws nothing. Leave the file out to have the usual piece.']],
  ['<path d="M1 1&lt;"/>', [`mark.svg, line 2: given <path d="M1 1<">. ${PATHS}`]],
  [
    '<path d="M1 1h40" fill="#12" id="a" onload="b"/>\n<image/>\n\n<rect/>',
    [
      `mark.svg, line 2: given <path onload="b">. Allowed on path: d, transform, style, id, data-*, ${PROPERTIES}`,
      `mark.svg, line 2: given <path fill="#12">. ${COLOURS}`,
      `mark.svg, line 3: given <image>. ${ELEMENTS}`,
      'mark.svg, line 5: given <rect>. Allowed: a width and a height above 0.',
    ],
  ],
  [
    '<path d="M1 1h2v1z" style="fill:url(http://lake/a.svg#b)"/>',
    [`mark.svg, line 2: given <path fill="url(http://lake/a.svg#b)">. ${COLOURS}`],
  ],
  [
    `<text x="1" y="4" data-room="-1" ${SET}>a</text>`,
    ['mark.svg, line 2: given <text data-room="-1">. Allowed: a width of 2 mm or more.'],
  ],
]
