import {
  A_STAR,
  type BadOrder,
  BOARD_KEYS,
  KERF_ALLOWED,
  ORDER_KEYS,
  REGULAR_ALLOWED,
  SAW_KEYS,
  SHAPES,
  SHOP_KEYS,
  SIZE_ALLOWED,
  SIZES,
  STAR_KEYS,
  STARS_ALLOWED,
  TEXT_ALLOWED,
} from './bad-order.js'

/** Keys nobody knows, groups and lists in the wrong place, several mistakes at once. */
export const KEYS: readonly BadOrder[] = [
  [
    'a key misspelt',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, thicknes: 19 }]',
    [
      `stars[0].thicknes, line 1: given the unknown key "thicknes". Did you mean thickness? Allowed here: ${STAR_KEYS}`,
    ],
  ],
  [
    'a key with an underscore',
    'stars: [{ points: 5, tip_angle: 45, board-width: 70 }]',
    [
      `stars[0]."tip_angle", line 1: given the unknown key "tip_angle". Did you mean tip-angle? Allowed here: ${STAR_KEYS}`,
      `stars[0], line 1: given no shape. ${SHAPES}`,
    ],
  ],
  [
    'a key in capitals',
    'stars: [{ Points: 5, tip-angle: 45, board-width: 70 }]',
    [
      `stars[0].Points, line 1: given the unknown key "Points". Did you mean points? Allowed here: ${STAR_KEYS}`,
      'stars[0], line 1: given tip-angle without points. Say how many points the star has: points, from 3 to 24.',
    ],
  ],
  [
    'a saw key misspelt',
    ['shop: { saw: { kref: 2.4 } }', A_STAR],
    [`shop.saw.kref, line 1: given the unknown key "kref". Did you mean kerf? Allowed here: ${SAW_KEYS}`],
  ],
  [
    "a flag's word for a key",
    ['saw-limit: 50', A_STAR],
    [
      `saw-limit, line 1: given the unknown key "saw-limit". As a key it is shop: saw: limit. Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    "a flag's word for a key, next to its place",
    'stars: [{ regular: 5/2, across: 300, backing-thickness: 4 }]',
    [
      `stars[0].backing-thickness, line 1: given the unknown key "backing-thickness". As a key it is stars: backing: thickness. Allowed here: ${STAR_KEYS}`,
    ],
  ],
  [
    'a key of the saw at the top',
    ['kerf: 2.4', A_STAR],
    [
      `kerf, line 1: given the unknown key "kerf". As a key it is shop: saw: kerf. Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    'a key of the saw in the shop',
    ['shop: { limit: 50 }', A_STAR],
    [
      `shop.limit, line 1: given the unknown key "limit". As a key it is shop: saw: limit. Allowed here: ${SHOP_KEYS}`,
    ],
  ],
  [
    'a key of the saw in a star',
    ['stars:', '  - regular: 5/2', '    across: 300', '    kerf: 2.4'],
    [
      `stars[0].kerf, line 4: given the unknown key "kerf". As a key it is shop: saw: kerf. Allowed here: ${STAR_KEYS}`,
    ],
  ],
  [
    'a key of the paper in the cutter',
    ['shop: { cutter: { margin: 8 } }', A_STAR],
    [
      'shop.cutter.margin, line 1: given the unknown key "margin". As a key it is shop: paper: margin. Allowed here: kind, kerf, bit, tabs, tab, bed, dxf.',
    ],
  ],
  [
    "a flag's word for a key, in its place",
    ['shop: { saw: { saw-limit: 50 } }', A_STAR],
    [
      `shop.saw.saw-limit, line 1: given the unknown key "saw-limit". As a key it is shop: saw: limit. Allowed here: ${SAW_KEYS}`,
    ],
  ],
  [
    'a key of the backing beside it',
    'stars: [{ regular: 5/2, across: 300, inset: 9 }]',
    [
      `stars[0].inset, line 1: given the unknown key "inset". As a key it is stars: backing: inset. Allowed here: ${STAR_KEYS}`,
    ],
  ],
  [
    'a star without its list',
    ['points: 5', 'tip-angle: 45', 'board-width: 70'],
    [
      `points, line 1: given the unknown key "points". As a key it is stars: points. Allowed here: ${ORDER_KEYS}`,
      `order, line 1: given no stars. Add stars. Allowed here: ${ORDER_KEYS}`,
      `tip-angle, line 2: given the unknown key "tip-angle". As a key it is stars: tip-angle. Allowed here: ${ORDER_KEYS}`,
      `board-width, line 3: given the unknown key "board-width". As a key it is stars: board-width. Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    'a key like nothing here',
    ['colour: red', A_STAR],
    [`colour, line 1: given the unknown key "colour". Allowed here: ${ORDER_KEYS}`],
  ],
  [
    'a key of thousands of characters',
    [`? ${'k'.repeat(3000)}`, ': 1', A_STAR],
    [
      `"kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk..." (3000 characters), line 1: given the unknown key "kkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkkk..." (3000 characters). Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    'constructor',
    ['constructor: 1', A_STAR],
    [`constructor, line 1: given the unknown key "constructor". Allowed here: ${ORDER_KEYS}`],
  ],
  [
    '__proto__',
    ['__proto__: { points: 5 }', A_STAR],
    [`"__proto__", line 1: given the unknown key "__proto__". Allowed here: ${ORDER_KEYS}`],
  ],
  [
    '__proto__ of a star',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, __proto__: { quantity: 7 } }]',
    [`stars[0]."__proto__", line 1: given the unknown key "__proto__". Allowed here: ${STAR_KEYS}`],
  ],
  [
    'toString',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, toString: 1 }]',
    [`stars[0].toString, line 1: given the unknown key "toString". Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a number for a key',
    ['7: 1', A_STAR],
    [`"7", line 1: given the unknown key "7". Allowed here: ${ORDER_KEYS}`],
  ],
  [
    'a merge key, which YAML 1.2 does not have',
    [
      'stars:',
      '  - &jetty { name: Jetty, points: 5, tip-angle: 45, board-width: 70 }',
      '  - <<: *jetty',
      '    name: Mill',
      '    regular: 5/2',
      '    across: 300',
    ],
    [`stars[1]."<<", line 3: given the unknown key "<<". Allowed here: ${STAR_KEYS}`],
  ],
  [
    'hostile signs in a key',
    ['"ti\\u202etle\\u001b[2J": 1', A_STAR],
    [
      `"ti\\u202etle\\u001b[2J", line 1: given the unknown key "ti\\u202etle\\u001b[2J". Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    'no stars',
    'title: Winter fair',
    [`order, line 1: given no stars. Add stars. Allowed here: ${ORDER_KEYS}`],
  ],
  ['stars left empty', 'stars:', [`stars, line 1: given an empty value. ${STARS_ALLOWED}`]],
  ['an empty list of stars', 'stars: []', [`stars, line 1: given an empty list. ${STARS_ALLOWED}`]],
  [
    'stars that are one star',
    'stars: { points: 5, tip-angle: 45, board-width: 70 }',
    [`stars, line 1: given a group of keys. ${STARS_ALLOWED}`],
  ],
  [
    'a star that is a word',
    'stars: [Jetty]',
    [`stars[0], line 1: given "Jetty". Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a star that is empty',
    'stars: [null]',
    [`stars[0], line 1: given an empty value. Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a star that is a list',
    'stars: [[5, 45, 70]]',
    [`stars[0], line 1: given a list. Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a star that is an empty list',
    'stars: [[]]',
    [`stars[0], line 1: given a list. Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a star that holds itself',
    'stars: &again [*again]',
    [`stars[0], line 1: given a list. Allowed here: ${STAR_KEYS}`],
  ],
  [
    'a saw that is a list',
    ['shop: { saw: [45] }', A_STAR],
    [`shop.saw, line 1: given a list. Allowed here: ${SAW_KEYS}`],
  ],
  [
    'a saw that is a number',
    ['shop: { saw: 45 }', A_STAR],
    [`shop.saw, line 1: given 45. Allowed here: ${SAW_KEYS}`],
  ],
  [
    'boards that are one board',
    ['shop: { boards: { width: 70, length: 2400 } }', A_STAR],
    ['shop.boards, line 1: given a group of keys. Allowed: a list, each entry begun with a dash.'],
  ],
  [
    'a shop that is an empty list',
    ['shop: []', A_STAR],
    [`shop, line 1: given a list. Allowed here: ${SHOP_KEYS}`],
  ],
  [
    'a hundred and one stars',
    [
      'stars:',
      ...Array.from({ length: 101 }, (_, n) => `  - { name: Star ${n}, regular: 5/2, across: 300 }`),
    ],
    ['stars, line 1: given 101 entries. Allowed: up to 100 stars in one order. Split the order.'],
  ],
  [
    'more stars than the reader looks at',
    `stars: [${'5, '.repeat(501)}]`,
    [
      'order file: given a list of 501 entries. Allowed: up to 500, and less where a message says so. Split the order.',
    ],
  ],
  [
    'several mistakes at once, told from the top down',
    [
      'title: 12',
      'units: mm',
      'shop:',
      '  saw:',
      '    kerf: -2.4',
      '    limt: 45',
      '  boards:',
      '    - width: 70',
      '      price: free',
      'stars:',
      '  - name: Jetty',
      '    points: 5',
      '    tip-angle: 120',
      '    across: 300',
      '    radius: 150',
      '  - name: Mill',
      '    quantity: 0',
      '    regular: 6/3',
      '    board-width: 3 1/2',
    ],
    [
      `title, line 1: given 12. Put quotes around it. ${TEXT_ALLOWED}`,
      `shop.saw.kerf, line 5: given -2.4. A length has no sign. ${KERF_ALLOWED}`,
      `shop.saw.limt, line 6: given the unknown key "limt". Did you mean limit? Allowed here: ${SAW_KEYS}`,
      `shop.boards[0], line 8: given no length. Add length. Allowed here: ${BOARD_KEYS}`,
      'shop.boards[0].price, line 9: given "free". Allowed: a number from 0 to 1000000.',
      `stars[0], line 11: given across and radius. ${SIZES} The others follow from it.`,
      'stars[0].tip-angle, line 13: given 120. A 5-point star needs less than 108°: tip angle and centre angle (72°) together stay below 180°, or there is no valley. Give a smaller tip angle or more points.',
      'stars[1].quantity, line 17: given 0. Allowed: a whole number from 1 to 10000.',
      `stars[1].regular, line 18: given "6/3". ${REGULAR_ALLOWED}`,
      `stars[1].board-width, line 19: given "3 1/2". A fraction needs its unit here: write 3 1/2 in. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'more mistakes than anybody reads',
    ['stars:', ...Array.from({ length: 70 }, () => '  - { regular: 5/2 }')],
    [
      ...Array.from({ length: 60 }, (_, n) => `stars[${n}], line ${n + 2}: given no size. ${SIZES}`),
      'order: given 10 more mistakes. Mend the ones above first.',
    ],
  ],
]
