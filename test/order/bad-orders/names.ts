import {
  A_STAR,
  type BadOrder,
  IN_FILES,
  JOINED,
  NOT_IN_FONT,
  NOT_SHOWN,
  NOTE_ALLOWED,
  RIGHT_TO_LEFT,
  TEXT_ALLOWED,
} from './bad-order.js'

/** Names that cannot be lettered, would leave the folder, or are taken. */
export const NAMES: readonly BadOrder[] = [
  [
    'no name in the quotes',
    'stars: [{ name: "", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "". ${TEXT_ALLOWED}`],
  ],
  [
    'spaces for a name',
    'stars: [{ name: "   ", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "   ". ${TEXT_ALLOWED}`],
  ],
  [
    'a number for a name',
    'stars: [{ name: 7, points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given 7. Put quotes around it. ${TEXT_ALLOWED}`],
  ],
  [
    'a name of 61 characters',
    `stars: [{ name: ${'a'.repeat(61)}, regular: 5/2, across: 300 }]`,
    [
      `stars[0].name, line 1: given "aaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaaa..." (61 characters). ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'a name of 300 characters',
    `stars: [{ name: "${'Star '.repeat(60)}", regular: 5/2, across: 300 }]`,
    [
      `stars[0].name, line 1: given "Star Star Star Star Star Star Star Star Star Star Star Star ..." (300 characters). ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'markup',
    'stars: [{ name: "<b>Jetty</b>", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "<b>Jetty</b>". The character < (U+003C) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'a quote that ends an attribute',
    'stars: [{ name: \'Jetty" onload="x\', points: 5, tip-angle: 45, board-width: 70 }]',
    [
      `stars[0].name, line 1: given "Jetty\\" onload=\\"x". The character " (U+0022) ${IN_FILES} ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'an ampersand entity',
    'stars: [{ name: "Jetty &lt; Mill", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty &lt; Mill". The character ; (U+003B) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'a slash',
    'stars: [{ name: up/down, points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "up/down". The character / (U+002F) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'a backslash',
    "stars: [{ name: 'up\\down', points: 5, tip-angle: 45, board-width: 70 }]",
    [`stars[0].name, line 1: given "up\\\\down". The character \\ (U+005C) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'the folder above',
    'stars: [{ name: "../Jetty", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "../Jetty". The character / (U+002F) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'two dots',
    'stars: [{ name: "..", points: 5, tip-angle: 45, board-width: 70 }]',
    ['stars[0].name, line 1: given "..". Allowed: at least one letter or digit, to name the files by.'],
  ],
  [
    'marks only',
    'stars: [{ name: "!!!", points: 5, tip-angle: 45, board-width: 70 }]',
    ['stars[0].name, line 1: given "!!!". Allowed: at least one letter or digit, to name the files by.'],
  ],
  [
    'a line break',
    'stars: [{ name: "Jetty\\nMill", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty\\nMill". The character U+000A ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'NUL',
    'stars: [{ name: "Jetty\\0", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty\\u0000". The character U+0000 ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'a raw escape',
    ['stars:', '  - name: Jetty\u001b[2J', '    regular: 5/2', '    across: 300'],
    [`stars[0].name, line 2: given "Jetty\\u001b[2J". The character U+001B ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'an override of the reading direction',
    'stars: [{ name: "Jetty\\u202EytteJ", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty\\u202eytteJ". The character U+202E ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'a raw override',
    'stars: [{ name: Jetty\u202e, points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty\\u202e". The character U+202E ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'an Arabic direction mark',
    'stars: [{ name: "Jetty\\u061c", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty\\u061c". The character U+061C ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'an isolate',
    'stars: [{ name: "\\u2066Jetty\\u2069", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "\\u2066Jetty\\u2069". The character U+2066 ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'a sign nobody sees',
    'stars: [{ name: "Jet\\u200Bty", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jet\\u200bty". The character U+200B ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'emoji',
    'stars: [{ name: "🌟 Jetty", points: 5, tip-angle: 45, board-width: 70 }]',
    [
      `stars[0].name, line 1: given "🌟 Jetty". The character 🌟 (U+1F31F) cannot be lettered: pictures are not lettered. ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'Hebrew',
    'stars: [{ name: "שובך", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "שובך". The character ש (U+05E9) ${RIGHT_TO_LEFT} ${TEXT_ALLOWED}`],
  ],
  [
    'Arabic',
    'stars: [{ name: "نجمة", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "نجمة". The character ن (U+0646) ${RIGHT_TO_LEFT} ${TEXT_ALLOWED}`],
  ],
  [
    'Devanagari',
    'stars: [{ name: "तारा", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "तारा". The character त (U+0924) ${JOINED} ${TEXT_ALLOWED}`],
  ],
  [
    'Thai after Latin',
    'stars: [{ name: "Jetty ดาว", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Jetty ดาว". The character ด (U+0E14) ${JOINED} ${TEXT_ALLOWED}`],
  ],
  [
    'Chinese',
    'stars: [{ name: "星", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "星". The character 星 (U+661F) ${NOT_IN_FONT} ${TEXT_ALLOWED}`],
  ],
  [
    'Japanese',
    'stars: [{ name: "ほし", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "ほし". The character ほ (U+307B) ${NOT_IN_FONT} ${TEXT_ALLOWED}`],
  ],
  [
    'Korean',
    'stars: [{ name: "별", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "별". The character 별 (U+BCC4) ${NOT_IN_FONT} ${TEXT_ALLOWED}`],
  ],
  [
    'a Latin letter that the font lacks',
    'stars: [{ name: "Mill ꞓ", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "Mill ꞓ". The character ꞓ (U+A793) ${NOT_IN_FONT} ${TEXT_ALLOWED}`],
  ],
  [
    'a mark that no letter composes with',
    'stars: [{ name: "Mx\\u0301ll", points: 5, tip-angle: 45, board-width: 70 }]',
    [
      `stars[0].name, line 1: given "Mx́ll". The character U+0301 cannot be lettered: it is a mark that does not become one character with the letter before it. ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'an ornament',
    'stars: [{ name: "★ Jetty", points: 5, tip-angle: 45, board-width: 70 }]',
    [
      `stars[0].name, line 1: given "★ Jetty". The character ★ (U+2605) cannot be lettered: only plain signs are lettered. ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'a letter of mathematics',
    'stars: [{ name: "𝐉etty", points: 5, tip-angle: 45, board-width: 70 }]',
    [`stars[0].name, line 1: given "𝐉etty". The character 𝐉 (U+1D409) ${NOT_IN_FONT} ${TEXT_ALLOWED}`],
  ],
  [
    'half a sign',
    '{ "stars": [{ "name": "Jetty\\ud800", "regular": "5/2", "across": 300 }] }',
    [
      `stars[0].name, line 1: given "Jetty\\ud800". The character U+D800 cannot be lettered: it is half a character. ${TEXT_ALLOWED}`,
    ],
  ],
  [
    'a name twice',
    [
      'stars:',
      '  - { name: Jetty, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: Jetty, points: 5, tip-angle: 45, board-width: 70 }',
    ],
    ['stars[1].name, line 3: given "Jetty". Two stars have this name. Give each star a name of its own.'],
  ],
  [
    'a name twice but for spaces',
    [
      'stars:',
      '  - { name: Jetty, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: " Jetty ", points: 5, tip-angle: 45, board-width: 70 }',
    ],
    ['stars[1].name, line 3: given "Jetty". Two stars have this name. Give each star a name of its own.'],
  ],
  [
    'a name that Windows keeps for a device, and the file name it is given instead',
    [
      'stars:',
      '  - { name: CON, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: Con star, points: 5, tip-angle: 45, board-width: 70 }',
    ],
    [
      'stars[1].name, line 3: given "Con star". "CON" makes the same file names. Give each star a name of its own.',
    ],
  ],
  [
    'names that make the same file names',
    [
      'stars:',
      '  - { name: Café by the lake, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: cafe-by the LAKE!, points: 5, tip-angle: 45, board-width: 70 }',
    ],
    [
      'stars[1].name, line 3: given "cafe-by the LAKE!". "Café by the lake" makes the same file names. Give each star a name of its own.',
    ],
  ],
  [
    'names in two scripts that make the same file names',
    [
      'stars:',
      '  - { name: Мельница, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: Melnitsa, points: 5, tip-angle: 45, board-width: 70 }',
    ],
    [
      'stars[1].name, line 3: given "Melnitsa". "Мельница" makes the same file names. Give each star a name of its own.',
    ],
  ],
  [
    'a name without a Latin spelling beside the one its files would be called by',
    [
      'stars:',
      '  - { name: Star 2, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: ʘ, points: 5, tip-angle: 45, board-width: 70 }',
    ],
    [
      'stars[1].name, line 3: given "ʘ". "Star 2" makes the same file names. Give each star a name of its own.',
    ],
  ],
  [
    "a given name that is the third star's own",
    [
      'stars:',
      '  - { name: Star 3, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { name: Mill, points: 5, tip-angle: 45, board-width: 70 }',
      '  - { points: 5, tip-angle: 45, board-width: 70 }',
    ],
    ['stars[2].name, line 4: given "Star 3". Two stars have this name. Give each star a name of its own.'],
  ],
  [
    'a title with markup',
    ['title: "<script>"', A_STAR],
    [`title, line 1: given "<script>". The character < (U+003C) ${IN_FILES} ${TEXT_ALLOWED}`],
  ],
  [
    'a note with markup, and one that is too long',
    [
      'stars:',
      '  - { name: Jetty, note: "larch <b>", points: 5, tip-angle: 45, board-width: 70 }',
      `  - { name: Mill, note: ${'a'.repeat(201)}, points: 5, tip-angle: 45, board-width: 70 }`,
    ],
    [
      `stars[0].note, line 2: given "larch <b>". The character < (U+003C) ${IN_FILES} ${NOTE_ALLOWED}`,
      `stars[1].note, line 3: given "${'a'.repeat(60)}..." (201 characters). ${NOTE_ALLOWED}`,
    ],
  ],
]
