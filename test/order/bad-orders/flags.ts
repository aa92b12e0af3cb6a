import type { OrderInput } from '../../../src/order/parse.js'
import {
  A_STAR,
  DETENT_ALLOWED,
  inchesMeant,
  KERF_ALLOWED,
  lengthAllowed,
  NOT_SHOWN,
  ORDER_KEYS,
  PAPERS,
  SHAPES,
  SIZE_ALLOWED,
  SIZES,
  TEXT_ALLOWED,
  TIP_ANGLE_ALLOWED,
  UNITS_ALLOWED,
} from './bad-order.js'

/** What is wrong, what was typed, and everything the maker is told about it. */
export type BadFlags = readonly [what: string, input: OrderInput, told: readonly string[]]

const TWO_STARS = [
  'stars:',
  '  - { name: Boathouse, points: 5, tip-angle: 45, board-width: 70 }',
  '  - { name: Bakery window, regular: 6/2, across: 300 }',
].join('\n')

const STAR_WITHOUT_FILE =
  '--star: given no order file. It chooses a star of an order file. To name the star, use --name.'

/** Mistakes in flags are told by the flag's own name. */
export const FLAGS: readonly BadFlags[] = [
  [
    'a bad length',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70 km' } },
    [`--board-width: given "70 km". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'a negative kerf',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', kerf: '-2.4' } },
    [`--kerf: given "-2.4". A length has no sign. ${KERF_ALLOWED}`],
  ],
  [
    'a tip angle too big for the points',
    { flags: { points: '5', 'tip-angle': '108', 'board-width': '70mm' } },
    [
      '--tip-angle: given "108". A 5-point star needs less than 108°: tip angle and centre angle (72°) together stay below 180°, or there is no valley. Give a smaller tip angle or more points.',
    ],
  ],
  [
    'points in a word',
    { flags: { points: 'five', 'tip-angle': '45', 'board-width': '70mm' } },
    ['--points: given "five". Allowed: a whole number from 3 to 24.'],
  ],
  [
    'a bad detent',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', detents: '0, 22.5, left' } },
    [`--detents: given "left". It is not an angle in degrees. ${DETENT_ALLOWED}`],
  ],
  [
    'an unknown paper',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', paper: 'postcard' } },
    [`--paper: given "postcard". ${PAPERS}`],
  ],
  [
    'a paper size and a roll',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', paper: 'A4', roll: '610' } },
    ['--roll: given size and roll. Allowed: one of them. Take out the other.'],
  ],
  [
    'two sizes',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', across: '300' } },
    [`flags: given board-width and across. ${SIZES} The others follow from it.`],
  ],
  [
    'two shapes',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', regular: '5/2' } },
    [`flags: given tip-angle and regular. ${SHAPES}`],
  ],
  ['no shape', { flags: { 'board-width': '70mm' } }, [`flags: given no shape. ${SHAPES}`]],
  ['no size', { flags: { points: '5', 'tip-angle': '45' } }, [`flags: given no size. ${SIZES}`]],
  [
    'no points',
    { flags: { slenderest: true, 'board-width': '70mm' } },
    ['flags: given slenderest without points. Say how many points the star has: points, from 3 to 24.'],
  ],
  [
    'a bare fraction in millimetres',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '3-1/2' } },
    [`--board-width: given "3-1/2". A fraction needs its unit here: write 3-1/2 in. ${SIZE_ALLOWED}`],
  ],
  [
    'inches in millimetres',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '3.5' } },
    [`--board-width: given "3.5". ${inchesMeant(3.5)} ${SIZE_ALLOWED}`],
  ],
  [
    'an inset without sense',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', inset: 'twelve' } },
    [`--inset: given "twelve". It is not a length. ${lengthAllowed(0, 1000)}`],
  ],
  [
    'units of no kind',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', units: 'foot' } },
    [`--units: given "foot". ${UNITS_ALLOWED}`],
  ],
  [
    'units in full',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '3 1/2', units: 'inches' } },
    [`--units: given "inches". Did you mean in? ${UNITS_ALLOWED}`],
  ],
  [
    'hostile signs',
    { flags: { points: '5', 'tip-angle': '45', 'board-width': '70mm', title: 'A\u001b[2J\u202e' } },
    [`--title: given "A\\u001b[2J\\u202e". The character U+001B ${NOT_SHOWN} ${TEXT_ALLOWED}`],
  ],
  [
    'several at once',
    { flags: { points: '2', 'tip-angle': '-1', 'board-width': '0', kerf: '99' } },
    [
      `--kerf: given "99". ${KERF_ALLOWED}`,
      '--points: given "2". Allowed: a whole number from 3 to 24.',
      `--tip-angle: given "-1". It is not an angle in degrees. ${TIP_ANGLE_ALLOWED}`,
      `--board-width: given "0". ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'over an order: points beside its regular',
    { text: ['stars: [{ regular: 5/2, across: 300 }]'].join('\n'), flags: { points: '6' } },
    ['--points: given "6" beside regular. regular says the points already. Take points out.'],
  ],
  [
    'over an order: a bad value, and a mistake of the file',
    { text: ['titel: x', A_STAR].join('\n'), flags: { across: 'wide' } },
    [
      `--across: given "wide". It is not a length. ${SIZE_ALLOWED}`,
      `titel, line 1: given the unknown key "titel". Did you mean title? Allowed here: ${ORDER_KEYS}`,
    ],
  ],
  [
    'over an order of two stars without --star',
    {
      text: TWO_STARS,
      flags: { across: '300' },
    },
    [
      '--star: given nothing. The order has 2 stars: say which one the flags are for, with --star and one of "Boathouse", "Bakery window".',
    ],
  ],
  [
    'over an order of two stars with a --star it does not have',
    {
      text: TWO_STARS,
      flags: { across: '300' },
      star: 'Boathose',
    },
    ['--star: given "Boathose". Did you mean Boathouse? Allowed: "Boathouse", "Bakery window".'],
  ],
  [
    'a --star it does not have, told alone, before anything about the flags and the file',
    { text: `titel: Winter fair\n${TWO_STARS}`, flags: { across: 'wide' }, star: 'Boathose' },
    ['--star: given "Boathose". Did you mean Boathouse? Allowed: "Boathouse", "Bakery window".'],
  ],
  [
    '--star with flags alone',
    { flags: { regular: '5/2', across: '300' }, star: 'Jetty' },
    [STAR_WITHOUT_FILE],
  ],
  [
    '--star with flags alone, told before anything about the flags',
    { flags: { regular: '5/1', kerf: '-1' }, star: 'Jetty' },
    [STAR_WITHOUT_FILE],
  ],
  ['--star and nothing else', { star: 'Jetty' }, [STAR_WITHOUT_FILE]],
  [
    'a --star far from any name',
    {
      text: TWO_STARS,
      star: 'Chapel',
    },
    ['--star: given "Chapel". Allowed: "Boathouse", "Bakery window".'],
  ],
  [
    'a --star in lower case, close to a name',
    {
      text: TWO_STARS,
      star: 'bakery windw',
    },
    ['--star: given "bakery windw". Did you mean Bakery window? Allowed: "Boathouse", "Bakery window".'],
  ],
  [
    'a hostile --star',
    {
      text: TWO_STARS,
      star: '\u001b[2J<b>',
    },
    ['--star: given "\\u001b[2J<b>". Allowed: "Boathouse", "Bakery window".'],
  ],
  [
    '--star over a chosen star, bad value',
    {
      text: TWO_STARS,
      flags: { across: 'wide' },
      star: 'bakery-window',
    },
    [`--across: given "wide". It is not a length. ${SIZE_ALLOWED}`],
  ],
]
