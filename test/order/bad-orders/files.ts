import {
  A_STAR,
  type BadOrder,
  COLUMNS_OR_BRACKETS,
  COLUMNS_OR_COLON,
  NO_DIRECTIVES,
  NO_TAGS,
  NOT_YAML,
  ORDER_KEYS,
  QUOTE_IT,
  SIGN_MISSING,
  TOO_DEEP,
} from './bad-order.js'

/** Files that are no order at all, and files that mean harm. */
export const FILES: readonly BadOrder[] = [
  ['an empty file', '', ['order file: given an empty file. An order needs at least stars: with one star.']],
  [
    'a file of comments',
    ['# winter fair', ''],
    ['order file: given an empty file. An order needs at least stars: with one star.'],
  ],
  ['null', 'null', ['order file: given an empty file. An order needs at least stars: with one star.']],
  [
    'a list at the top',
    ['- points: 5', '- tip-angle: 45'],
    [`order, line 1: given a list. Allowed here: ${ORDER_KEYS}`],
  ],
  ['a word', 'hello', [`order, line 1: given "hello". Allowed here: ${ORDER_KEYS}`]],
  ['a number', '42', [`order, line 1: given 42. Allowed here: ${ORDER_KEYS}`]],
  [
    'a web page',
    ['<!DOCTYPE html>', '<html><body>stars: 5</body></html>'],
    [`order file, line 1: ${NOT_YAML} ${COLUMNS_OR_COLON}`],
  ],
  [
    'JSON that is not closed',
    '{ "stars": [',
    [
      `order file, line 1: ${NOT_YAML} ${COLUMNS_OR_BRACKETS}`,
      `order file, line 1: ${NOT_YAML} ${SIGN_MISSING}`,
    ],
  ],
  [
    'JSON with a missing comma',
    ['{ "units": "mm"', '  "stars": [] }'],
    [`order file, line 2: ${NOT_YAML} ${SIGN_MISSING}`],
  ],
  [
    'a key twice',
    ['title: Winter fair', 'title: Lantern walk', A_STAR],
    ['order file, line 2: given the key "title" a second time. Keep one of the two.'],
  ],
  [
    'a key twice in a star',
    ['stars:', '  - regular: 5/2', '    across: 300', '    across: 400'],
    ['order file, line 4: given the key "across" a second time. Keep one of the two.'],
  ],
  [
    'keys twice, line after line',
    ['title: Winter fair', 'title: Lantern walk', 'units: mm', 'units: in', A_STAR],
    [
      'order file, line 2: given the key "title" a second time. Keep one of the two.',
      'order file, line 4: given the key "units" a second time. Keep one of the two.',
    ],
  ],
  [
    'a tab for spaces',
    ['stars:', '\t- points: 5'],
    [`order file, line 2: ${NOT_YAML} Indent with spaces, not with tabs.`],
  ],
  [
    'a colon in a text',
    ['title: Winter fair: by the lake', A_STAR],
    [`order file, line 1: ${NOT_YAML} ${COLUMNS_OR_COLON}`],
  ],
  [
    'the sign for inches after a quoted number',
    ['stars:', '  - regular: 5/2', '    across: "12 1/2""'],
    [
      `order file, line 3: ${NOT_YAML} Something is left over after the value, or stands here twice. Put ' around the whole value; in a length write in for ".`,
    ],
  ],
  [
    'a function',
    ['title: !!js/function "function () { return 1 }"', A_STAR],
    [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`],
  ],
  ['an unknown tag', ['title: !secret winter', A_STAR], [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`]],
  [
    'hostile signs in a tag',
    ['title: !!x%1B%E2%80%AE winter', A_STAR],
    [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`],
  ],
  ['binary', ['title: !!binary d2ludGVy', A_STAR], [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`]],
  ['a set', ['shop: !!set { saw }', A_STAR], [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`]],
  ['a date', ['shop: !!timestamp 2030-12-06', A_STAR], [`order file, line 1: ${NOT_YAML} ${NO_TAGS}`]],
  [
    'another version of YAML, where 0100 is 64',
    ['%YAML 1.1', '---', 'stars: [{ regular: 5/2, across: 0100 }]'],
    [`order file, line 1: ${NO_DIRECTIVES}`],
  ],
  [
    'a directive further down',
    ['# winter fair', '', '%TAG ! x', '---', A_STAR],
    [`order file, line 3: ${NO_DIRECTIVES}`],
  ],
  [
    'an alias without its anchor',
    ['title: *winter', A_STAR],
    ['order file: given an alias without its anchor. Write the values out instead of repeating them with *.'],
  ],
  ['an unclosed quote', ['title: "Winter fair', A_STAR], [`order file, line 2: ${NOT_YAML} ${SIGN_MISSING}`]],
  [
    'a bad escape',
    ['title: "Winter \\q fair"', A_STAR],
    [`order file, line 1: ${NOT_YAML} In double quotes a backslash begins an escape: use single quotes.`],
  ],
  [
    'a value that begins with a mark',
    ['title: @winter', A_STAR],
    [`order file, line 1: ${NOT_YAML} ${QUOTE_IT}`],
  ],
  [
    'aliases of aliases of aliases',
    [
      'a: &a [x, x, x, x, x, x, x, x, x]',
      ...['ab', 'bc', 'cd', 'de', 'ef', 'fg', 'gh', 'hi', 'ij'].map(
        ([from, to]) => `${to}: &${to} [${Array(9).fill(`*${from}`).join(', ')}]`,
      ),
      'stars: *j',
    ],
    ['order file: given too many repeated aliases. Write the values out instead of repeating them with *.'],
  ],
  ['brackets in brackets', `stars: ${'['.repeat(5000)}`, [TOO_DEEP]],
  ['braces in braces', '{a: '.repeat(5000), [TOO_DEEP]],
  ['dashes after dashes', `${'- '.repeat(5000)}x`, [TOO_DEEP]],
  ['question marks after question marks', `${'? '.repeat(5000)}x`, [TOO_DEEP]],
  [
    'a megabyte',
    'x'.repeat(2 ** 20),
    ['order file: given 1048576 characters. Allowed: up to 65536. Is this the right file?'],
  ],
]
