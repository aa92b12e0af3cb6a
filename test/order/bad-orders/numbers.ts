import {
  A_STAR,
  type BadOrder,
  inchesAllowed,
  inchesMeant,
  lengthAllowed,
  mmMeant,
  SIZE_ALLOWED,
  TIP_ANGLE_ALLOWED,
  UNITS_ALLOWED,
} from './bad-order.js'

/** Lengths, counts and words of a choice that cannot be meant. */
export const NUMBERS: readonly BadOrder[] = [
  [
    'a unit nobody saws by',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70 km }]',
    [`stars[0].board-width, line 1: given "70 km". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'a length in degrees',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70° }]',
    [`stars[0].board-width, line 1: given "70°". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'a negative length',
    'stars: [{ points: 5, tip-angle: 45, board-width: -70 }]',
    [`stars[0].board-width, line 1: given -70. A length has no sign. ${SIZE_ALLOWED}`],
  ],
  [
    'a negative length with its unit',
    'stars: [{ points: 5, tip-angle: 45, board-width: -70 mm }]',
    [`stars[0].board-width, line 1: given "-70 mm". A length has no sign. ${SIZE_ALLOWED}`],
  ],
  [
    'a length of nothing',
    'stars: [{ points: 5, tip-angle: 45, board-width: 0 }]',
    [`stars[0].board-width, line 1: given 0. ${SIZE_ALLOWED}`],
  ],
  [
    'an empty length',
    'stars: [{ points: 5, tip-angle: 45, board-width: "" }]',
    [`stars[0].board-width, line 1: given "". It is empty. ${SIZE_ALLOWED}`],
  ],
  [
    'a list for a length',
    'stars: [{ points: 5, tip-angle: 45, board-width: [70] }]',
    [`stars[0].board-width, line 1: given a list. ${SIZE_ALLOWED}`],
  ],
  [
    'true for a length',
    'stars: [{ points: 5, tip-angle: 45, board-width: true }]',
    [`stars[0].board-width, line 1: given true. ${SIZE_ALLOWED}`],
  ],
  [
    'not a number',
    'stars: [{ points: 5, tip-angle: .nan, board-width: .nan }]',
    [
      `stars[0].tip-angle, line 1: given NaN. ${TIP_ANGLE_ALLOWED}`,
      `stars[0].board-width, line 1: given NaN. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'infinity',
    'stars: [{ points: .inf, tip-angle: .inf, board-width: .inf }]',
    [
      'stars[0].points, line 1: given Infinity. Allowed: a whole number from 3 to 24.',
      `stars[0].tip-angle, line 1: given Infinity. It is not a finite number. ${TIP_ANGLE_ALLOWED}`,
      `stars[0].board-width, line 1: given Infinity. It is not a finite number. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'minus infinity',
    'stars: [{ points: 5, tip-angle: 45, board-width: -.inf }]',
    [`stars[0].board-width, line 1: given -Infinity. A length has no sign. ${SIZE_ALLOWED}`],
  ],
  [
    '1e308',
    'stars: [{ points: 1e308, tip-angle: 1e308, board-width: 1e308 }]',
    [
      'stars[0].points, line 1: given "1e308". Allowed: a whole number from 3 to 24.',
      `stars[0].tip-angle, line 1: given "1e308". It is not an angle in degrees. ${TIP_ANGLE_ALLOWED}`,
      `stars[0].board-width, line 1: given "1e308". It is not a length. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    '1e308 inches',
    ['units: in', 'stars: [{ points: 5, tip-angle: 45, board-width: 1e308 }]'],
    [`stars[0].board-width, line 2: given "1e308". It is not a length. ${inchesAllowed(0.197, 787)}`],
  ],
  [
    '1e400',
    'stars: [{ points: 5, tip-angle: 45, board-width: 1e400 }]',
    [`stars[0].board-width, line 1: given "1e400". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'an exponent in quotes',
    'stars: [{ points: 5, tip-angle: 45, board-width: "7e1" }]',
    [`stars[0].board-width, line 1: given "7e1". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'a comma that may mean thousands',
    'stars: [{ points: 5, tip-angle: 45, across: "1,250" }]',
    [
      `stars[0].across, line 1: given "1,250". The comma can mean thousands or decimals: leave it out, or write a point. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'metres with a comma that may mean thousands',
    ['stars:', '  - regular: 5/2', '    across: 1,125 m'],
    [
      `stars[0].across, line 3: given "1,125 m". The comma can mean thousands or decimals: leave it out, or write a point. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'a decimal comma between braces, which YAML takes for the end of the value',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70,5 mm }]',
    [
      'stars[0]."5 mm", line 1: given the unknown key "5 mm". Between braces a comma ends the value: write a decimal point, or put quotes around the value.',
    ],
  ],
  [
    'a decimal comma between braces and nothing after it',
    'stars: [{ points: 5, tip-angle: 22,5, board-width: 70 }]',
    [
      'stars[0]."5", line 1: given the unknown key "5". Between braces a comma ends the value: write a decimal point, or put quotes around the value.',
    ],
  ],
  [
    'a fraction without its unit in a millimetre order',
    'stars: [{ points: 5, tip-angle: 45, board-width: 3 1/2 }]',
    [
      `stars[0].board-width, line 1: given "3 1/2". A fraction needs its unit here: write 3 1/2 in. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'a fraction of nothing',
    'stars: [{ points: 5, tip-angle: 45, board-width: 3 1/0 in }]',
    [`stars[0].board-width, line 1: given "3 1/0 in". The fraction divides by zero. ${SIZE_ALLOWED}`],
  ],
  [
    'numbers left over',
    ['units: in', 'stars: [{ points: 5, tip-angle: 45, board-width: 5 1/2 6 }]'],
    [`stars[0].board-width, line 2: given "5 1/2 6". It is not a length. ${inchesAllowed(0.197, 787)}`],
  ],
  [
    'digits after a fraction sign',
    'stars: [{ points: 5, tip-angle: 45, board-width: 3½5 in }]',
    [`stars[0].board-width, line 1: given "3½5 in". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'numbers as a program writes them',
    'stars: [{ points: 0x5, tip-angle: 0o55, board-width: 7e1 }]',
    [
      'stars[0].points, line 1: given "0x5". Allowed: a whole number from 3 to 24.',
      `stars[0].tip-angle, line 1: given "0o55". It is not an angle in degrees. ${TIP_ANGLE_ALLOWED}`,
      `stars[0].board-width, line 1: given "7e1". It is not a length. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'inches in a millimetre order',
    'stars: [{ points: 5, tip-angle: 45, board-width: 3.5 }]',
    [`stars[0].board-width, line 1: given 3.5. ${inchesMeant(3.5)} ${SIZE_ALLOWED}`],
  ],
  [
    'millimetres in an inch order',
    ['units: in', 'stars: [{ points: 5, tip-angle: 45, board-width: 3 1/2, thickness: 19 }]'],
    [`stars[0].thickness, line 2: given 19. ${mmMeant(19)} ${inchesAllowed(0.02, 7.87)}`],
  ],
  [
    'a number that fits neither unit',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, thickness: 900 }]',
    [`stars[0].thickness, line 1: given 900. ${lengthAllowed(0.5, 200)}`],
  ],
  [
    'two units',
    'stars: [{ points: 5, tip-angle: 45, board-width: 7 cm 5 mm }]',
    [`stars[0].board-width, line 1: given "7 cm 5 mm". It is not a length. ${SIZE_ALLOWED}`],
  ],
  [
    'a length longer than a line',
    'stars: [{ points: 5, tip-angle: 45, board-width: "7777777777777777777777777777777777777777777777777777777777777777777777" }]',
    [
      `stars[0].board-width, line 1: given "777777777777777777777777777777777777777777777777777777777777..." (70 characters). It is longer than 64 characters. ${SIZE_ALLOWED}`,
    ],
  ],
  [
    'no stars of a kind',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, quantity: 0 }]',
    ['stars[0].quantity, line 1: given 0. Allowed: a whole number from 1 to 10000.'],
  ],
  [
    'some stars',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, quantity: some }]',
    ['stars[0].quantity, line 1: given "some". Allowed: a whole number from 1 to 10000.'],
  ],
  [
    'an unknown backing',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, backing: { shape: square } }]',
    ['stars[0].backing.shape, line 1: given "square". Allowed: star, polygon, disc or auto.'],
  ],
  [
    'a negative inset',
    'stars: [{ points: 5, tip-angle: 45, board-width: 70, backing: { inset: -3 } }]',
    [`stars[0].backing.inset, line 1: given -3. A length has no sign. ${lengthAllowed(0, 1000)}`],
  ],
  [
    'units in capitals',
    ['units: In', 'stars: [{ regular: 5/2, across: 12 }]'],
    [`units, line 1: given "In". Did you mean in? ${UNITS_ALLOWED}`],
  ],
  ['units of no kind', ['units: foot', A_STAR], [`units, line 1: given "foot". ${UNITS_ALLOWED}`]],
  ['centimetres for units', ['units: cm', A_STAR], [`units, line 1: given "cm". ${UNITS_ALLOWED}`]],
  [
    'units in full, by which the rest is read',
    ['units: inches', 'stars: [{ points: 5, tip-angle: 45, board-width: 3 1/2 }]'],
    [`units, line 1: given "inches". Did you mean in? ${UNITS_ALLOWED}`],
  ],
  [
    'an unknown fraction',
    ['nearest: 0.1', A_STAR],
    ['nearest, line 1: given 0.1. Allowed: 1/8, 1/16, 1/32 or 1/64.'],
  ],
  [
    'a fraction with a space in it',
    ['nearest: 1/ 32', A_STAR],
    ['nearest, line 1: given "1/ 32". Did you mean 1/32? Allowed: 1/8, 1/16, 1/32 or 1/64.'],
  ],
]
